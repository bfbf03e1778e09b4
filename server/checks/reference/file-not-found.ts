import { setValue } from '../../spec/edit.ts';
import type { Check } from '../check.ts';
import { referencesThat } from './reference-of.ts';

/** A file names another that is not there. */
export const fileNotFound: Check = {
  code: 'file-not-found',
  group: 'reference',
  severity: 'error',
  summary: 'A file names another that is not there.',
  page: {
    why: 'A wheel takes its flanges, its width and its variant from the hub file it names. Without that file nothing of the wheel can be checked against the hub. The name is written from the folder of the file that names it.',
    bad: 'wheel: Dunlin touring front\nhub: ./dunlin-font.hub.yaml\n',
    good: 'wheel: Dunlin touring front\nhub: ./dunlin-front.hub.yaml\n',
    sources: ['common practice'],
  },
  *run(analysis) {
    for (const { path, written, state } of referencesThat(analysis, 'not-found')) {
      const [near] = state.near;
      yield {
        path,
        message: `${written} is not there — ${near ? `nearest is ${near}` : 'write the file from this folder, as in ./dunlin-front.hub.yaml'}`,
        data: { written, near: state.near },
        fixes: state.near.map((file, index) => ({
          title: `Change to ${file}, which is there`,
          changes: setValue(analysis.spec, path, file),
          preferred: index === 0,
        })),
      };
    }
  },
};
