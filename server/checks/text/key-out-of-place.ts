import { removeKey } from '../../spec/edit.ts';
import type { SpecPath } from '../../spec/place.ts';
import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';
import { fromProblems } from './from-problems.ts';

/** A key stands in a section that does not take it. */
export const keyOutOfPlace: Check = {
  code: 'key-out-of-place',
  group: 'text',
  severity: 'error',
  summary: 'A key stands in a section that does not take it.',
  page: {
    why: 'The key is known, but not here, so its value is read nowhere. A seat has a depth, an end cap a length; both stand where the drawing of that part would carry them.',
    bad: pageHub(['    face: 19.4\n', '    face: 19.4\n    depth: 3\n']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: fromProblems('key-out-of-place', ({ spec }, { data, fixes }) => {
    const { key, path } = data;
    if (fixes.length > 0 || typeof key !== 'string' || !Array.isArray(path)) return [];
    const changes = removeKey(spec, [...(path as SpecPath), key]);
    return changes.length === 0 ? [] : [{ title: `Remove ${key}, which is not read here`, changes }];
  }),
};
