import { expect, test } from 'vitest';
import { strayTensions, tensionStatistics } from '../../../server/engine/wheel/measured-tensions.ts';

test('readings have a mean, a spread and a deviation as written out by hand', () => {
  const answer = tensionStatistics([900, 1000, 1100, 1000]);
  expect(answer).toMatchObject({ count: 4, mean: 1000, least: 900, most: 1100, spread: 0.1 });
  expect(answer?.deviation).toBeCloseTo(Math.sqrt(20_000 / 3), 9);
  expect(tensionStatistics([])).toBeNull();
  expect(tensionStatistics([950])?.deviation).toBe(0);
});

test('spokes outside the band are told, the furthest first, with the turns that bring them to the mean', () => {
  const readings = [1000, 700, 1000, 1240, 1060];
  const stray = strayTensions(readings, 0.1, 300);
  expect(stray.map(({ at }) => at)).toEqual([1, 3]);
  expect(stray[0]).toMatchObject({ tension: 700, turns: 1 });
  expect(stray[1]?.turns).toBeCloseTo(-0.8, 9);
  expect(strayTensions(readings, 0.5, 300)).toEqual([]);
});
