import { expect, test } from 'vitest';
import { fit as fitOf } from '../../../server/engine/fits/fit.ts';
import { parseFitClass, toleranceZone } from '../../../server/engine/fits/tolerance-zone.ts';
import { recordsOf } from '../../support/reference-rows.ts';

interface FitExample {
  readonly id: string;
  readonly source: string;
  readonly inputs: Record<'hole_lo_um' | 'hole_hi_um' | 'shaft_lo_um' | 'shaft_hi_um', number>;
  readonly expected: Record<'max_interference_um' | 'min_interference_um', number>;
}

const examples = recordsOf<FitExample>('worked/fits-and-stacks.json').filter(({ id }) =>
  id.startsWith('fit-'),
);

test.each(examples)('the fit of $id is the published one: $source', ({ inputs, expected }) => {
  const result = fitOf(
    { lower: inputs.hole_lo_um / 1000, upper: inputs.hole_hi_um / 1000 },
    { lower: inputs.shaft_lo_um / 1000, upper: inputs.shaft_hi_um / 1000 },
  );
  expect(-result.minClearance * 1000).toBeCloseTo(expected.max_interference_um, 6);
  expect(-result.maxClearance * 1000).toBeCloseTo(expected.min_interference_um, 6);
});

// NSK CAT. No. E1102e table 15.3, outer ring of class Normal in its housing: greatest clearance and greatest
// interference in µm, whole micrometres; ring deviations 0/−9 to 30 mm and 0/−11 to 50 mm (ISO 492).
test.each([
  [28, 'H7', 30, 0],
  [28, 'J7', 21, 9],
  [28, 'JS7', 19, 10],
  [28, 'K7', 15, 15],
  [28, 'M7', 9, 21],
  [28, 'N7', 2, 28],
  [28, 'P7', -5, 35],
  [42, 'M7', 11, 25],
  [42, 'N7', 3, 33],
  [42, 'P7', -6, 42],
])(
  'a bearing of %d mm outside in %s has the clearances of the catalogue',
  (outside, housing, room, tight) => {
    const parsed = parseFitClass(housing);
    const hole = parsed && toleranceZone(outside, parsed);
    if (!hole || 'error' in hole) throw new Error(`no limits for ${outside} ${housing}`);
    const result = fitOf(hole, { lower: outside <= 30 ? -0.009 : -0.011, upper: 0 });
    // The catalogue cuts half micrometres of JS7: 19.5 and 10.5 stand as 19 and 10.
    expect(Math.trunc(result.maxClearance * 1000 + 1e-9 * Math.sign(result.maxClearance))).toBe(room);
    expect(Math.trunc(-result.minClearance * 1000 + 1e-9) + 0).toBe(tight);
  },
);

test('a fit is named by whether there is always, sometimes or never room', () => {
  // ISO 286-1, definitions of clearance, transition and interference fit; 25 H7 with g6, k6 and p6.
  const h7 = { lower: 0, upper: 0.021 };
  expect(fitOf(h7, { lower: -0.02, upper: -0.007 }).kind).toBe('clearance');
  expect(fitOf(h7, { lower: 0.002, upper: 0.015 }).kind).toBe('transition');
  expect(fitOf(h7, { lower: 0.022, upper: 0.035 }).kind).toBe('interference');
  expect(fitOf(h7, { lower: -0.013, upper: 0 }).kind).toBe('clearance');
});
