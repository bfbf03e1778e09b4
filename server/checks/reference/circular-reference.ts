import type { Check } from '../check.ts';
import { referencesThat } from './reference-of.ts';

/** Files name each other in a circle. */
export const circularReference: Check = {
  code: 'circular-reference',
  group: 'reference',
  severity: 'error',
  summary: 'Files name each other in a circle.',
  page: {
    why: 'A wheel names the hub it is built on, and a hub names nobody. Files that lead back to themselves never come to a hub, so there is nothing to take dimensions from.',
    bad: 'wheel: Dunlin touring front\nhub: ./example.wheel.yaml\n',
    good: 'wheel: Dunlin touring front\nhub: ./dunlin-front.hub.yaml\n',
    sources: ['common practice'],
  },
  *run(analysis) {
    for (const { path, written, state } of referencesThat(analysis, 'circular')) {
      yield {
        path,
        message: `${written} leads back to this file, ${state.through.join(' → ')} — name the hub file of this wheel`,
        data: { written, through: state.through },
      };
    }
  },
};
