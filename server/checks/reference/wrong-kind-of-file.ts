import type { Check } from '../check.ts';
import { referencesThat } from './reference-of.ts';

/** A file names one of another kind than it needs. */
export const wrongKindOfFile: Check = {
  code: 'wrong-kind-of-file',
  group: 'reference',
  severity: 'error',
  summary: 'A file names one of another kind than it needs.',
  page: {
    why: 'A wheel is built on a hub, so hub names a file that ends in .hub.yaml. A workshop file or another wheel has no flanges to lace to.',
    bad: 'wheel: Dunlin touring front\nhub: ./saltmarsh.workshop.yaml\n',
    good: 'wheel: Dunlin touring front\nhub: ./dunlin-front.hub.yaml\n',
    sources: ['common practice'],
  },
  *run(analysis) {
    for (const { path, written, state } of referencesThat(analysis, 'wrong-kind')) {
      yield {
        path,
        message: `${written} is no ${state.wanted} file — name a file that ends in .${state.wanted}.yaml`,
        data: { written, wanted: state.wanted },
      };
    }
  },
};
