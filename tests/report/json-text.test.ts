import { expect, test } from 'vitest';
import { jsonText } from '../../server/report/json-text.ts';

test('numbers are rounded to a millionth and an open limit is null', () => {
  const data = {
    a: 0.1 + 0.2,
    b: 142.1220655561,
    open: Number.POSITIVE_INFINITY,
    zero: -1e-9,
    list: [1 / 3],
  };
  expect(JSON.parse(jsonText(data))).toEqual({
    a: 0.3,
    b: 142.122066,
    open: null,
    zero: 0,
    list: [0.333333],
  });
});

test('a document ends with one line break', () => {
  expect(jsonText({})).toBe('{}\n');
});
