import { expect, test } from 'vitest';
import { type DecodedBearing, decodeBearing } from '../../../server/engine/bearings/decode-bearing.ts';
import { alternatives, spellings } from '../../../server/engine/bearings/interchange.ts';
import { nearSizes } from '../../../server/engine/bearings/near-sizes.ts';

function bearing(code: string): DecodedBearing {
  const read = decodeBearing(code);
  if (!('bearing' in read)) throw new Error(code);
  return read.bearing;
}

const codes = [
  '6803-2RS',
  '6902-ZZ',
  '608',
  '6001-2RS C3',
  '71903C',
  'S6804-2RS',
  '6803-2RS V',
  '6200',
  '6902-2RS P5',
  '6902-2RS TN9 C3 P6',
  '6902-RS',
  '6902-2RS C5',
  '63803W6-2RS',
];

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
        closure: `${of.closure} ${of.closedSides} ${of.rubs}`,
        class: of.toleranceClass,
        clearance: of.clearance.group,
        full: of.fullComplement,
        material: of.material,
        kind: of.kind,
        // A full complement has no cage to keep.
        ...(other.exchange === 'full complement' ? {} : { cage: of.cage }),
      });
      const [a, b] = [facts(own), facts(read)];
      const differing = (Object.keys(a) as (keyof typeof a)[]).filter((key) => a[key] !== b[key]);
      // Another kind has no clearance group of its own; what closes it stays.
      if (other.exchange === 'other kind') {
        expect(differing).toContain('kind');
        expect(differing).not.toContain('closure');
      } else expect(differing).toHaveLength(1);
    }
  },
);

test('one bearing has the short and the long name of its series (ISO 15, 18 and 19)', () => {
  expect(spellings(bearing('6803-2RS'))).toEqual(['61803-2RS']);
  expect(spellings(bearing('61902'))).toEqual(['6902']);
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

/* RS closes one side, 2RS both (makers' suffix tables, see the suffix tests). */
test('a bearing closed on one side is offered closed on both', () => {
  expect(alternatives(bearing('6902-RS')).map(({ code }) => code)).toContain('6902-2RS');
});

test('stainless rings stay stainless beside ceramic balls', () => {
  for (const { code } of alternatives(bearing('S6902-2RS HC')).filter((one) => one.exchange !== 'other kind'))
    expect(code).toMatch(/^S6902.* HC$/);
});

/* ISO 5753 knows the groups C2, N, C3, C4 and C5, each looser than the one before. */
test('more clearance ends with C5 and less with C2', () => {
  const exchanges = (code: string) => alternatives(bearing(code)).map(({ exchange }) => exchange);
  expect(exchanges('6902 C5')).not.toContain('more clearance');
  expect(exchanges('6902 C5')).toContain('less clearance');
  expect(exchanges('6902 C2')).not.toContain('less clearance');
  expect(exchanges('6902 C4')).toContain('more clearance');
});
