import { expect, test } from 'vitest';
import { type SpokeLine, spokeDirection } from '../../../server/engine/wheel/spoke-line.ts';
import {
  balanced,
  balanceRatio,
  hoopForce,
  torqueTension,
} from '../../../server/engine/wheel/tension-balance.ts';

function side(count: number, erd: number, circle: number, w: number, degrees: number, o = 0) {
  const line: SpokeLine = {
    rimRadius: erd / 2,
    hubRadius: circle / 2,
    hubOffset: w,
    rimOffset: o,
    angle: (degrees * Math.PI) / 180,
  };
  return [{ count, direction: spokeDirection(line) }];
}

// Derived from lateral statics: (n·w/L) of the right over that of the left; tension left for 1000 N right.
test.each([
  ['28 holes, 34.5 and 18.5', side(14, 602, 44, 34.5, 540 / 7), side(14, 602, 49, 18.5, 540 / 7), 539.462],
  ['rim 2.8 off centre', side(16, 598, 57, 34, 67.5, 2.8), side(16, 598, 57, 20, 67.5, -2.8), 732.735],
  ['2:1', side(8, 594, 40, 38, 0), side(16, 594, 50, 17, 48.75), 888.179],
])('tension on the left for 1000 N on the right: %s', (_, left, right, expected) => {
  const answer = balanced(left, right, { side: 'right', tension: 1000 });
  expect(answer.left).toBeCloseTo(expected, 2);
  expect(balanced(left, right, { side: 'left', tension: answer.left }).right).toBeCloseTo(1000, 6);
});

test('36 spokes at 100 kgf press the rim with about 5700 N (Brandt, as quoted)', () => {
  const one = side(18, 600, 45, 35, 0);
  const hoop = hoopForce(one, one, { left: 980.665, right: 980.665 });
  expect(Math.abs(hoop - 5700)).toBeLessThan(160);
  // Without the lean of the spokes the figure is 36·980.665/2π.
  expect(hoop / 0.9919).toBeCloseTo((36 * 980.665) / (2 * Math.PI), -1);
});

test('the hoop force is what a cut through the rim carries: a ring of even pull holds itself', () => {
  // Second route: half the ring, the pulls of its spokes summed along the cut's normal.
  const n = 3600;
  let across = 0;
  for (let i = 0; i < n / 2; i += 1) across += 10 * Math.sin((2 * Math.PI * (i + 0.5)) / n);
  const radial = [{ count: n / 2, direction: { lateral: 0, radial: 1, tangential: 0 } }];
  expect(hoopForce(radial, radial, { left: 10, right: 10 })).toBeCloseTo(across / 2, 1);
});

test('100 N·m at the hub changes each of 32 spokes by 147 N (derived)', () => {
  const one = side(16, 600, 45, 35, 67.5);
  expect(torqueTension([...one, ...one], 300, 100_000)).toBeCloseTo(147.436, 2);
});

test('a wheel alike on both sides has the ratio 1; mirrored, the ratio is turned over', () => {
  for (let step = 0; step < 30; step += 1) {
    const left = side(16, 600, 40 + step, 38 - step / 3, 3 * step);
    const right = side(16, 600, 45, 18 + step / 5, 67.5);
    expect(balanceRatio(left, left)).toBeCloseTo(1, 12);
    expect(balanceRatio(left, right) * balanceRatio(right, left)).toBeCloseTo(1, 12);
  }
});
