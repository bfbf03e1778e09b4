import type { Check } from '../check.ts';
import { referencesThat } from './reference-of.ts';

/** A file names one outside the folders that are open. */
export const outsideWorkspace: Check = {
  code: 'outside-workspace',
  group: 'reference',
  severity: 'error',
  summary: 'A file names one outside the folders that are open.',
  page: {
    why: 'Only files of the open folders are read, so that a spec from somewhere else cannot have files opened that you did not show. It also keeps a wheel whole when its folder is passed on. Copy the hub into this folder, or open the folder that holds both.',
    bad: 'wheel: Dunlin touring front\nhub: ../../elsewhere/dunlin-front.hub.yaml\n',
    good: 'wheel: Dunlin touring front\nhub: ./dunlin-front.hub.yaml\n',
    sources: ['common practice'],
  },
  *run(analysis) {
    for (const { path, written } of referencesThat(analysis, 'outside-workspace')) {
      yield {
        path,
        message: `${written} lies outside the open folders and is not read — copy the file beside this one, or open the folder that holds both`,
        data: { written },
      };
    }
  },
};
