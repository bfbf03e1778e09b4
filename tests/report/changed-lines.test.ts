import { expect, test } from 'vitest';
import { changedLines } from '../../server/report/changed-lines.ts';

test('only lines that are not in both texts are named, in their order', () => {
  expect(changedLines('a\nb\nc\n', 'a\nx\nc\n')).toEqual(['-b', '+x']);
  expect(changedLines('a\nc', 'a\nb\nc')).toEqual(['+b']);
  expect(changedLines('a\nb\nc\nd', 'b\nd')).toEqual(['-a', '-c']);
  expect(changedLines('a\nb', 'a\nb\n')).toEqual([]);
  expect(changedLines('left\nright', 'right\nleft')).toHaveLength(2);
});
