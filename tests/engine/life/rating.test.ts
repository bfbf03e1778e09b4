import { expect, test } from 'vitest';
import { allSteel } from '../../../server/engine/contact/ball-contact.ts';
import { hybridRatings } from '../../../server/engine/life/hybrid.ts';
import {
  dynamicFactor,
  dynamicRating,
  relativeBall,
  staticFactor,
  staticRating,
} from '../../../server/engine/life/rating.ts';
import { staticRatingFromStress } from '../../../server/engine/life/static-factor.ts';
import { dynamicFactors, staticFactors } from '../../../server/engine/tables/load-rating-factors.ts';
import { rowsOf } from '../../support/reference-rows.ts';
import { expectPrinted, numbers, workedExample, workedExamples } from '../../support/worked-examples.ts';

const standardSteel = { E: 207_000, nu: 0.3 };
const standardRow = { count: 1, diameter: 1, innerConformity: 0.52, outerConformity: 0.53 };

/** f0 straight from Hertz as ISO 76 defines it: 4200 MPa under Qmax = 5·Fr/(Z·cos α), 207 GPa, 0.3, grooves 0.52/0.53. */
function hertzFactor(relative: number): number {
  return staticRatingFromStress({ ...standardRow, pitch: 1 / relative }, 0, {
    ring: standardSteel,
    ball: standardSteel,
  });
}

test('the whole f0 table of ISO 76 follows from the contacts', () => {
  // ISO 76:2006 Table 1, as GOST 18854-2013: 41 values, printed to a tenth.
  expect(staticFactors).toHaveLength(41);
  staticFactors.forEach((printed, i) => {
    expect(Math.abs(hertzFactor(Math.max(i / 100, 1e-9)) - printed), `at ${i / 100}`).toBeLessThan(0.06);
  });
  for (const example of workedExamples('hertz-f0')) {
    expectPrinted(example, { f0: hertzFactor(numbers(example).gamma ?? 0) });
  }
});

test('the whole fc table of ISO 281 follows the closed form of the textbook', () => {
  // Lundberg and Palmgren as in Harris, Rolling Bearing Analysis (from memory), grooves 0.52 and 0.52; the leading
  // constant is taken out by comparing with the value at 0.16.
  const shape = (g: number): number =>
    ((1 + (1.04 * ((1 - g) / (1 + g)) ** 1.72) ** (10 / 3)) ** -0.3 * g ** 0.3 * (1 - g) ** 1.39) /
    (1 + g) ** (1 / 3);
  expect(dynamicFactors).toHaveLength(40);
  const scale = (dynamicFactors[15] as number) / shape(0.16);
  dynamicFactors.forEach((printed, i) => {
    expect((scale * shape((i + 1) / 100)) / printed, `at ${(i + 1) / 100}`).toBeCloseTo(1, 2.3);
  });
});

test('factors stand between the printed values and say when they leave the table', () => {
  expect(staticFactor(0.105).value).toBeCloseTo((16.4 + 16.1) / 2, 10);
  expect(dynamicFactor(0.105).value).toBeCloseTo((55.5 + 56.6) / 2, 10);
  expect(staticFactor(0.4)).toEqual({ value: 9.4, within: true });
  expect(staticFactor(0.41).within).toBe(false);
  expect(dynamicFactor(0.005).within).toBe(false);
});

test('ratings of ten bearings with printed balls are those of the catalogue', () => {
  for (const example of workedExamples('rating-')) {
    const { d = 0, D = 0, Z = 0, Dw = 0 } = numbers(example);
    const row = { ...standardRow, count: Z, diameter: Dw, pitch: (d + D) / 2 };
    expectPrinted(example, { C: dynamicRating(row).value, C0: staticRating(row).value });
  }
});

test('most rows of the catalogue with balls and ratings agree within two per cent', () => {
  // NMB Minebea, ball bearing catalogue: every row with ball, count, C and C0; some rows contradict themselves.
  const rows = rowsOf('standards/ball_geometry.csv').filter(({ ball_dia_mm, n_balls, C_N, C0_N }) =>
    [ball_dia_mm, n_balls, C_N, C0_N].every((cell) => Number(cell) > 0),
  );
  expect(rows.length).toBeGreaterThan(100);
  const near = rows.filter(({ d_mm, D_mm, ball_dia_mm, n_balls, C_N }) => {
    const pitch = (Number(d_mm) + Number(D_mm)) / 2;
    const row = { ...standardRow, count: Number(n_balls), diameter: Number(ball_dia_mm), pitch };
    return Math.abs(dynamicRating(row).value / Number(C_N) - 1) < 0.02;
  });
  expect(near.length / rows.length).toBeGreaterThan(0.9);
});

test('the worked rating of the standard comes out', () => {
  const example = workedExample('iso281-annex');
  const { Z = 0, Dw = 0, Dpw = 0, alpha = 0, fc = 0 } = numbers(example);
  const angle = (alpha * Math.PI) / 180;
  const row = { ...standardRow, count: Z, diameter: Dw, pitch: Dpw };
  // The standard rounds the ratio to 0.07 and reads fc there.
  expect(dynamicFactor(Math.round(100 * relativeBall(row, angle)) / 100).value).toBe(fc);
  const unrounded = dynamicRating(row, angle).value;
  expectPrinted(example, { C: (unrounded * fc) / dynamicFactor(relativeBall(row, angle)).value });
});

test('wider grooves carry about seven tenths, as the standard says, and are said to lie outside its table', () => {
  // ISO 76:2006 annex: grooves of 0.54 give about 0.7 of C0.
  const row = { ...standardRow, count: 9, diameter: 4, pitch: 20 };
  const wide = { ...row, innerConformity: 0.54, outerConformity: 0.54 };
  const share = staticRatingFromStress(wide, 0, allSteel) / staticRatingFromStress(row, 0, allSteel);
  expect(share).toBeGreaterThan(0.63);
  expect(share).toBeLessThan(0.75);
  expect(staticRating(wide).valid).toBe(false);
  expect(staticRating(row).valid).toBe(true);
});

test('ceramic balls keep the dynamic rating and bear less at the same stress; the standard figure stays open', () => {
  // Dynamic: former DIN ISO 281 supplement 5. Static: pressure in one contact grows as E*^(2/3), so the force at a
  // stress falls with its square, here with E 308 GPa and ν 0.26 of silicon nitride (NTN, Ball and Roller Bearings).
  const row = { ...standardRow, count: 9, diameter: 4, pitch: 20 };
  const steel = { E: 208_000, nu: 0.3 };
  const found = hybridRatings(row, 0, { ring: steel, ball: { E: 308_000, nu: 0.26 } });
  const own = (1 - 0.09) / 208_000;
  const ceramic = (1 - 0.26 ** 2) / 308_000;
  expect(found.dynamic).toBe(1);
  expect(found.staticAtSameStress).toBeCloseTo(((own + ceramic) / (2 * own)) ** 2, 6);
  expect(found.staticOfStandard).toBeNull();
});
