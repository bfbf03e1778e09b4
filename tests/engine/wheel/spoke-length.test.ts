import { expect, test } from 'vitest';
import { elasticLength } from '../../../server/engine/wheel/elastic-length.ts';
import { lacingAngles } from '../../../server/engine/wheel/hole-pattern.ts';
import {
  lengthSensitivity,
  type SpokeLine,
  spokeDirection,
  spokeLength,
  spokeSpan,
  straightPullAngle,
} from '../../../server/engine/wheel/spoke-line.ts';
import { axialStiffness, roundArea } from '../../../server/engine/wheel/spoke-wire.ts';
import { hoopForce, rimShrinkage } from '../../../server/engine/wheel/tension-balance.ts';

const degrees = Math.PI / 180;

function line(erd: number, circle: number, w: number, angle: number, o = 0): SpokeLine {
  return { rimRadius: erd / 2, hubRadius: circle / 2, hubOffset: w, rimOffset: o, angle: angle * degrees };
}

/** Angle of a crossing by counting holes, degrees: written out here, not taken from the code under test. */
const crossed = (crosses: number, holesOfSide: number) => (360 * crosses) / holesOfSide;

// Derived: the vector from hub hole to rim point, worked out by hand with a second program; lengths less half the hole.
test.each([
  ['32 holes, 3 crossings, alike on both sides', line(600, 45, 35, crossed(3, 16)), 2.6, 292.9193],
  ['28 holes rear, left', line(602, 44, 34.5, crossed(3, 14)), 2.6, 297.5782],
  ['28 holes rear, right', line(602, 49, 18.5, crossed(3, 14)), 2.6, 295.7884],
  ['20 holes, radial', line(590, 38, 38, 0), 2.5, 277.3537],
  ['rim 2.8 off centre, near side', line(598, 57, 34, crossed(3, 16), 2.8), 2.6, 289.6718],
  ['rim 2.8 off centre, far side', line(598, 57, 20, crossed(3, 16), -2.8), 2.6, 288.8913],
  ['2:1, wide phase', line(594, 50, 17, 48.75), 2.6, 280.3589],
  ['2:1, narrow phase', line(594, 50, 17, 41.25), 2.6, 277.9099],
  ['2:1, radial side', line(594, 40, 38, 0), 2.6, 278.2943],
  ['36 holes, 4 crossings, high flange', line(540, 90, 30, crossed(4, 18)), 2.6, 266.2918],
  ['hub hole under the middle of a pair 22 apart', line(586, 40, 36, 2.1514), 2.6, 274.0784],
  ['small wheel, high flange, 1 crossing', line(387, 92.6, 28, crossed(1, 14)), 2.9, 154.198],
  ['staggered holes, near', line(530, 58, 40, crossed(3, 16), 15), 2.6, 255.233],
  ['staggered holes, far', line(530, 58, 40, crossed(3, 16), -15), 2.6, 259.8688],
] as const)('length of a spoke: %s', (_, spoke, hole, expected) => {
  expect(spokeLength(spoke, hole)).toBeCloseTo(expected, 3);
});

test('a straight-pull spoke runs along a tangent: 22 mm circle of touch, head 6 mm behind (derived)', () => {
  // Head at (22, −6), point on the rim at (22, √(298² − 22²)), 33 sideways: both written out.
  const expected = Math.hypot(Math.sqrt(298 ** 2 - 22 ** 2) + 6, 33);
  expect(expected).toBeCloseTo(304.9774, 3);
  const hubRadius = Math.hypot(22, 6);
  const angle = straightPullAngle(hubRadius, 6, 298);
  const spoke = { hubRadius, rimRadius: 298, hubOffset: 33, rimOffset: 0, angle };
  expect(spokeLength(spoke, 0)).toBeCloseTo(expected, 6);
});

test('a research wheel with 36 radial spokes on a 58 x 50 hub needs about 276 mm (Ford 2018)', () => {
  expect(Math.abs(spokeLength(line(608, 58, 25, 0), 0) - 276)).toBeLessThan(1.5);
});

test('lengths answer small changes of each size as they are derived: 0.495, −0.157, 0.119', () => {
  const spoke = line(600, 45, 35, 67.5);
  const slopes = lengthSensitivity(spoke);
  expect(slopes.rimDiameter).toBeCloseTo(0.49519, 4);
  expect(slopes.holeCircle).toBeCloseTo(-0.15686, 4);
  expect(slopes.flangeOffset).toBeCloseTo(0.11896, 4);
  // Second route: differences of the length itself.
  const step = 1e-4;
  const slope = (other: SpokeLine) => (spokeSpan(other) - spokeSpan(spoke)) / step;
  expect(slope({ ...spoke, rimRadius: 300 + step / 2 })).toBeCloseTo(slopes.rimDiameter, 5);
  expect(slope({ ...spoke, hubRadius: 22.5 + step / 2 })).toBeCloseTo(slopes.holeCircle, 5);
  expect(slope({ ...spoke, hubOffset: 35 + step })).toBeCloseTo(slopes.flangeOffset, 5);
});

test('the shares of a pull in three directions are those of one vector', () => {
  const spoke = line(598, 57, 34, 67.5, 2.8);
  const { lateral, radial, tangential } = spokeDirection(spoke);
  expect(lateral ** 2 + radial ** 2 + tangential ** 2).toBeCloseTo(1, 12);
  // The vector of the table of worked cases: 85.922, 276.240 and 31.2 over 290.972.
  expect(lateral).toBeCloseTo(31.2 / 290.972, 5);
});

test('tension shortens what is cut: 1000 N, 2 mm wire, a rim of 100 mm² of aluminium (derived)', () => {
  const spoke = line(600, 45, 35, 67.5);
  const axial = axialStiffness([{ length: 294, area: roundArea(2) }], 200_000);
  const direction = spokeDirection(spoke);
  const side = [{ count: 16, direction }];
  const hoop = hoopForce(side, side, { left: 1000, right: 1000 });
  const shrinkage = rimShrinkage(hoop, 300, 6.9e6);
  expect(shrinkage).toBeCloseTo(0.2193, 3);
  const cut = elasticLength(spoke, 2.6, { tension: 1000, axial, shrinkage });
  expect(cut.stretch).toBeCloseTo(0.4683, 3);
  expect(cut.length).toBeCloseTo(292.2339, 3);
});

const ordinary = {
  rimPair: 0,
  rimRadius: 297,
  hubPair: null,
  hubRadius: 25,
  phase: 'wider' as const,
};

test('crossings on even holes are whole steps of the flange', () => {
  const angles = lacingAngles({ ...ordinary, spokes: 16, rimHoles: 32, drilling: 'even', crosses: 3 });
  expect(angles.leading / degrees).toBeCloseTo(67.5, 9);
  expect(angles.trailing).toBeCloseTo(angles.leading, 12);
  expect(angles.phaseMatters).toBe(false);
});

test('a 2:1 rim has two angles, 90°/N either side of an even flange, and the phase tells which', () => {
  const wide = { ...ordinary, spokes: 16, rimHoles: 24, drilling: '2:1' as const, crosses: 2 };
  expect(lacingAngles(wide).leading / degrees).toBeCloseTo(48.75, 9);
  expect(lacingAngles({ ...wide, phase: 'narrower' }).leading / degrees).toBeCloseTo(41.25, 9);
  expect(lacingAngles(wide).phaseMatters).toBe(true);
  const few = { ...wide, spokes: 8, crosses: 0 };
  expect(lacingAngles(few)).toMatchObject({ leading: 0, trailing: 0, phaseMatters: false });
});

test('the angles of a 2:1 side are those of its holes drawn one by one', () => {
  // All holes of the side and all holes of the flange, each spoke joined as laced: even flange holes lean forward.
  const rim = Array.from({ length: 24 }, (_, i) => i)
    .filter((i) => i % 3 !== 2)
    .map((i) => i * 15);
  for (const crosses of [1, 2, 3]) {
    const start = 3.75 + 0; // Middle of the even holes over the middle of the pairs: pair at 0 and 15 on 22.5° holes.
    const spread = Array.from({ length: 16 }, (_, j) => {
      const hub = j * 22.5 - start;
      const to = (j % 2 === 0 ? j + crosses : j - crosses + 32) % 16;
      const difference = Math.abs((rim[to] ?? 0) - hub) % 360;
      return Math.min(difference, 360 - difference);
    });
    const angles = lacingAngles({
      ...ordinary,
      spokes: 16,
      rimHoles: 24,
      drilling: '2:1',
      crosses,
      phase: crosses % 2 === 0 ? 'wider' : 'narrower',
    });
    for (const one of spread) expect(one).toBeCloseTo(angles.leading / degrees, 6);
  }
});

test('on a paired rim leading and trailing spokes differ by twice the shift, and radial ones do not', () => {
  const paired = {
    ...ordinary,
    spokes: 10,
    rimHoles: 20,
    drilling: 'paired' as const,
    rimPair: 22,
    rimRadius: 293,
  };
  const angles = lacingAngles({ ...paired, crosses: 2 });
  // Flanges half a hole apart stand 9° from the middle of a pair, whose holes stand asin(11/293) = 2.1514° from it.
  expect((angles.leading - 72 * degrees) / degrees).toBeCloseTo(9 - 2.1514, 3);
  expect((72 * degrees - angles.trailing) / degrees).toBeCloseTo(9 - 2.1514, 3);
  const radial = lacingAngles({ ...paired, crosses: 0 });
  expect(radial.leading).toBeCloseTo(radial.trailing, 12);
});

test('turning a wheel over, or growing it, changes its lengths as it must', () => {
  for (let step = 0; step < 40; step += 1) {
    const spoke = line(400 + 6 * step, 30 + step, 15 + step / 2, 4 * step, step / 10 - 2);
    const mirrored = {
      ...spoke,
      hubOffset: -spoke.hubOffset,
      rimOffset: -spoke.rimOffset,
      angle: -spoke.angle,
    };
    expect(spokeSpan(mirrored)).toBeCloseTo(spokeSpan(spoke), 9);
    const grown = {
      rimRadius: 2 * spoke.rimRadius,
      hubRadius: 2 * spoke.hubRadius,
      hubOffset: 2 * spoke.hubOffset,
      rimOffset: 2 * spoke.rimOffset,
      angle: spoke.angle,
    };
    expect(spokeSpan(grown)).toBeCloseTo(2 * spokeSpan(spoke), 9);
  }
});
