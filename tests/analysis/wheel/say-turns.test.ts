import { expect, test } from 'vitest';
import { sayTurns } from '../../../server/analysis/wheel/say-turns.ts';

/* A nipple is turned by eighths and quarters: common practice. */
test('turns are told in eighths, in the finding and in the table alike', () => {
  expect(sayTurns(0.01)).toBe('⅛ turn');
  expect(sayTurns(-0.26)).toBe('¼ turn');
  expect(sayTurns(1.02)).toBe('1 turn');
  expect(sayTurns(-1.14)).toBe('1⅛ turns');
  expect(sayTurns(1.97)).toBe('2 turns');
});
