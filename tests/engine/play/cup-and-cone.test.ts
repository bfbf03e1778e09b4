import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compliance } from '../../../server/engine/play/clamp-compression.ts';
import {
  benchPlay,
  gapBetweenBalls,
  mostBalls,
  threadStressDiameter,
  turnOfCone,
  usualBalls,
} from '../../../server/engine/play/cup-and-cone.ts';

const quarter = 6.35;
const threeSixteenths = 4.7625;

test('nine quarter-inch balls are the usual row of a circle that ten just fill; common practice for rear hubs', () => {
  // Ten touch each other where the circle is Dw / sin(π/10) = 6.35 / sin 18° = 20.549 mm.
  expect(mostBalls(quarter, 20.55)).toBe(10);
  expect(usualBalls(quarter, 20.55)).toBe(9);
  expect(mostBalls(quarter, 20.54)).toBe(9);
});

test('ten balls of three sixteenths are the usual row of a circle that eleven just fill; common practice for front hubs', () => {
  // 4.7625 / sin(180° / 11) = 16.904 mm.
  expect(mostBalls(threeSixteenths, 16.91)).toBe(11);
  expect(usualBalls(threeSixteenths, 16.91)).toBe(10);
  expect(mostBalls(threeSixteenths, 16.9)).toBe(10);
});

test('balls laid side by side one after the other meet the first again as the gap says', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 2, max: 8, noNaN: true }),
      fc.double({ min: 2.1, max: 8, noNaN: true }),
      (diameter, times) => {
        const circle = diameter * times;
        // Walks round the circle in steps whose chord is a ball, without an arcsine.
        let angle = 0;
        let count = 0;
        const step = 2 * Math.atan2(diameter, Math.sqrt(circle * circle - diameter * diameter));
        while (angle + step <= 2 * Math.PI + 1e-9) {
          angle += step;
          count++;
        }
        expect(mostBalls(diameter, circle)).toBe(count);
        expect(gapBetweenBalls({ count, diameter, circle })).toBeCloseTo(
          ((2 * Math.PI - angle) * circle) / 2,
          8,
        );
        expect(gapBetweenBalls({ count: count + 1, diameter, circle })).toBeLessThan(1e-7);
      },
    ),
    { seed: 5, numRuns: 200 },
  );
});

test('a hollow axle of M9x1 gives by hand F·L/(E·A)', () => {
  // The stress areas of ISO 898-1, fine threads: M9x1 51.0 mm², M10x1 64.5 mm² (from memory).
  expect((Math.PI / 4) * threadStressDiameter(9, 1) ** 2).toBeCloseTo(51.05, 1);
  expect((Math.PI / 4) * threadStressDiameter(10, 1) ** 2).toBeCloseTo(64.5, 1);
  // 4000 N · 77 mm / (206 000 MPa · (51.046 − 21.237) mm²) = 0.05016 mm.
  const axle = { length: 77, outer: threadStressDiameter(9, 1), inner: 5.2, E: 206_000 };
  expect(benchPlay(compliance([axle]), 4000)).toBeCloseTo(0.05016, 4);
});

test('a cone on a pitch of one millimetre turns a whole turn for a millimetre and 14.4° for 0.04', () => {
  expect(turnOfCone(1, 1)).toBeCloseTo(2 * Math.PI, 12);
  expect((turnOfCone(0.04, 1) * 180) / Math.PI).toBeCloseTo(14.4, 10);
});
