import { expect, test } from 'vitest';
import { printable } from '../../server/report/findings/printable.ts';

test('what a file holds cannot move the cursor, turn the line or break it', () => {
  expect(printable('a\u001b[2Jb\r\nc\u202Ed\u2028e\u0000')).toBe('a·[2Jb··c·d·e·');
});

test('letters, signs and units of a message stay as they are', () => {
  const message = 'clamped width 100.24 mm, wanted 100 ±0.2: −0.04 mm — µm Ø26 × °C';
  expect(printable(message)).toBe(message);
});

test('an endless message is cut', () => {
  expect(printable('x'.repeat(5000)).length).toBeLessThan(500);
});
