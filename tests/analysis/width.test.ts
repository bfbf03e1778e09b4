import { expect, test } from 'vitest';
import { analyzeText, asWritten } from '../support/analyze-text.ts';

/*
 * Sums are worked by hand. Ring widths: 0/−0.12 mm for bores over 2.5 to 30 mm, class Normal
 * (ISO 492; maker's catalogue table 8.2 and GOST 520-2011 agree).
 */
const dunlin = `hub: Dunlin front
position: front
width: 100 ±0.1
stack:
  - end-cap: left
    length: 14.03 ±0.02
  - bearing: left
    code: 6803-2RS
  - spacer: centre
    length: 62.06 ±0.01
  - bearing: right
    code: 6803-2RS
  - end-cap: right
    length: 14.03 ±0.02
`;

test('the mean of a stack lies under its nominal by half the ring width tolerances', () => {
  const { drawn } = asWritten(dunlin).width;
  expect(drawn?.nominal).toBeCloseTo(14.03 + 5 + 62.06 + 5 + 14.03, 9);
  expect(drawn?.mean).toBeCloseTo(100.12 - 2 * 0.06, 9);
});

test('the worst case is the corner of all limits and the root-sum-square lies inside it', () => {
  const { drawn } = asWritten(dunlin).width;
  expect(drawn?.worst[0]).toBeCloseTo(100.12 - 0.02 - 0.12 - 0.01 - 0.12 - 0.02, 9);
  expect(drawn?.worst[1]).toBeCloseTo(100.12 + 0.02 + 0.01 + 0.02, 9);
  const rss = Math.sqrt(0.02 ** 2 + 0.06 ** 2 + 0.01 ** 2 + 0.06 ** 2 + 0.02 ** 2);
  expect(drawn?.rss[0]).toBeCloseTo(100 - rss, 9);
  expect(drawn?.rss[1]).toBeCloseTo(100 + rss, 9);
});

test('each dimension has its share of the variance and the shares come to one', () => {
  const shares = asWritten(dunlin).width.drawn?.contributions.map(({ share }) => share) ?? [];
  expect(shares[1]).toBeCloseTo(0.06 ** 2 / 0.09 ** 2, 9);
  expect(shares[2]).toBeCloseTo(0.01 ** 2 / 0.09 ** 2, 9);
  expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
});

test('the share outside agrees with the normal tail at the limits', () => {
  // ±0.1 on σ = 0.03 is ±3.333 σ; both tails of the normal distribution beyond it are 0.000858
  // (Abramowitz and Stegun, table 26.1, by interpolation). 20 000 builds tell it to ±0.0002.
  expect(asWritten(dunlin).width.drawn?.shareOutside).toBeGreaterThan(0.0002);
  expect(asWritten(dunlin).width.drawn?.shareOutside).toBeLessThan(0.0016);
});

test('the same text always gives the same share', () => {
  expect(asWritten(dunlin).width.drawn?.shareOutside).toBe(asWritten(dunlin).width.drawn?.shareOutside);
});

test('a measured part replaces the drawn one as built, and leaves the drawing alone', () => {
  const measured = dunlin.replace('62.06 ±0.01', '62.06 ±0.01 measured 62.10 ±0.005');
  const { drawn, built } = asWritten(measured).width;
  expect(drawn?.mean).toBeCloseTo(100, 9);
  expect(built?.mean).toBeCloseTo(100.04, 9);
  const rss = Math.sqrt(2 * 0.02 ** 2 + 2 * 0.06 ** 2 + 0.005 ** 2);
  expect((built?.rss[1] ?? 0) - (built?.mean ?? 0)).toBeCloseTo(rss, 9);
});

test('nothing measured gives no result as built', () => {
  expect(asWritten(dunlin).width.built).toBeNull();
});

test('a measured ring width takes the place of ISO 492', () => {
  const measured = dunlin.replace('6803-2RS', '6803-2RS\n    width: measured 4.98 ±0.01');
  const { drawn, built } = asWritten(measured).width;
  expect(drawn?.nominal).toBeCloseTo(100.12, 9);
  expect(built?.mean).toBeCloseTo(14.03 + 4.98 + 62.06 + 4.94 + 14.03, 9);
});

test('a reading without its own uncertainty takes the one of the workshop', () => {
  const measured = dunlin.replace('62.06 ±0.01', 'measured 62.06');
  const spread = (workshop?: string) => {
    const { built } = asWritten(measured, workshop).width;
    return (built?.worst[1] ?? 0) - (built?.mean ?? 0) - 0.02 * 2 - 0.06 * 2;
  };
  expect(spread()).toBeCloseTo(0.02, 9);
  expect(spread('measuring: 0.005\n')).toBeCloseTo(0.005, 9);
});

test('the general tolerance holds where it is set', () => {
  // ISO 2768-1, linear, class m: over 30 to 120 mm ±0.3.
  const general = dunlin
    .replace('62.06 ±0.01', '62.06')
    .replace('position:', 'untoleranced: ISO 2768-m\nposition:');
  const { drawn } = asWritten(general).width;
  expect(drawn?.worst[1]).toBeCloseTo(100.12 + 0.02 + 0.3 + 0.02, 9);
});

test('shims count as often as they stand in the stack, and independently', () => {
  const shimmed = dunlin.replace(
    '  - bearing: left',
    '  - shim: left\n    length: 0.1 ±0.01\n    count: 4\n  - bearing: left',
  );
  const { drawn } = asWritten(shimmed).width;
  expect(drawn?.nominal).toBeCloseTo(100.52, 9);
  expect(drawn?.worst[1]).toBeCloseTo(100.52 + 0.02 + 0.01 + 0.02 + 4 * 0.01, 9);
  const rss = Math.sqrt(0.09 ** 2 + 4 * 0.01 ** 2);
  expect((drawn?.rss[1] ?? 0) - (drawn?.mean ?? 0)).toBeCloseTo(rss, 9);
});

test('an extended inner ring lengthens the clamped line only', () => {
  const extended = dunlin.replace('6803-2RS', '6803-2RS\n    inner-width: 7');
  expect(asWritten(extended).width.drawn?.nominal).toBeCloseTo(102.12, 9);
});

test('a missing length leaves the width unchecked and says which one', () => {
  const broken = asWritten(dunlin.replace('    length: 62.06 ±0.01\n', ''));
  expect(broken.width.drawn).toBeNull();
  expect(broken.unchecked).toContainEqual({
    what: 'clamped width',
    missing: 'length of spacer.centre',
    path: ['stack', 2],
  });
});

test('a width without a tolerance is held to the limit of the workshop and says so', () => {
  const { wanted } = asWritten(dunlin.replace('width: 100 ±0.1', 'width: 100')).width.loop;
  expect([wanted?.lo, wanted?.hi]).toEqual([99.9, 100.1]);
  expect(wanted?.assumed).toBe('width 100 taken as ±0.1: no tolerance is written');
});

test('each variant is worked out from its own changes', () => {
  const family = `${dunlin}variants:
  wide:
    width: 110 ±0.1
    change:
      end-cap.left: { length: 19.03 ±0.02 }
      end-cap.right: { length: 19.03 ±0.02 }
  shimmed:
    add: [{ shim: left, length: 0.1, after: end-cap.left }]
  bare:
    remove: [end-cap.left, end-cap.right]
  sleeved:
    replace:
      spacer.centre: { length: 60 }
`;
  const means = analyzeText(family).variants.map(({ name, width }) => [name, width.drawn?.mean.toFixed(2)]);
  expect(means).toEqual([
    [null, '100.00'],
    ['wide', '110.00'],
    ['shimmed', '100.10'],
    ['bare', '71.94'],
    ['sleeved', '97.94'],
  ]);
});

test('where a size overrules the code, the clearance group stays and its limits are those of the bore', () => {
  const sized = dunlin.replace('6803-2RS', '6803-2RS C3\n    size: 25x37x7');
  // ISO 5753-1, group C3, bore over 24 to 30 mm: 13 to 28 µm.
  expect(asWritten(sized).assembly.bearings[0]?.bearing?.clearance).toEqual({
    group: 'C3',
    minUm: 13,
    maxUm: 28,
  });
});
