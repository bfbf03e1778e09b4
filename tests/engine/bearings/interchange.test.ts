import { expect, test } from 'vitest';
import { type DecodedBearing, decodeBearing } from '../../../server/engine/bearings/decode-bearing.ts';
import { alternatives, spellings } from '../../../server/engine/bearings/interchange.ts';
import { nearSizes } from '../../../server/engine/bearings/near-sizes.ts';

function bearing(code: string): DecodedBearing {
  const read = decodeBearing(code);
  if (!('bearing' in read)) throw new Error(code);
  return read.bearing;
}

const codes = ['6803-2RS', '6902-ZZ', '608', '6001-2RS C3', '71903C', 'S6804-2RS', '6803-2RS V', '6200'];

test.each(codes)(
  'everything that fits instead of %s reads back to its size and differs in one thing',
  (code) => {
    const own = bearing(code);
    const others = alternatives(own);
    expect(others.length).toBeGreaterThan(3);
    for (const other of others) {
      const read = bearing(other.code);
      expect([read.bore, read.outside, read.width]).toEqual([own.bore, own.outside, own.width]);
      expect(other.price.length).toBeGreaterThan(0);
      const facts = (of: DecodedBearing) => ({
        closure: `${of.closure} ${of.rubs}`,
        clearance: of.clearance.group,
        full: of.fullComplement,
        material: of.material,
        kind: of.kind,
      });
      const [a, b] = [facts(own), facts(read)];
      const differing = (Object.keys(a) as (keyof typeof a)[]).filter((key) => a[key] !== b[key]);
      // Another kind has no clearance group of its own, and comes open.
      if (other.exchange === 'other kind') expect(differing).toContain('kind');
      else expect(differing).toHaveLength(1);
    }
  },
);

test('one bearing has the short and the long name of its series (ISO 15, 18 and 19)', () => {
  expect(spellings(bearing('6803-2RS'))).toContain('61803');
  expect(spellings(bearing('61902'))).toContain('6902');
});

/*
 * Boundary dimensions from ISO 15: series 18, 28, 38 of bore 17 are 26 outside and 5, 6, 7 wide; series 19 of bore 15
 * is 28 × 7. 15267 and 17287 are trade sizes of 15 × 26 × 7 and 17 × 28 × 7 (common practice).
 */
test('near sizes differ in one dimension by little, and say which', () => {
  expect(nearSizes(bearing('6803')).map(({ differs, by, outside }) => [differs, by, outside])).toEqual(
    expect.arrayContaining([
      ['width', 1, 26],
      ['width', 2, 26],
    ]),
  );
  const near = nearSizes(bearing('6902'));
  expect(near).toContainEqual(
    expect.objectContaining({ bore: 15, outside: 26, width: 7, differs: 'outside', by: -2 }),
  );
  for (const { by } of near) expect(Math.abs(by)).toBeLessThanOrEqual(2.1);
});
