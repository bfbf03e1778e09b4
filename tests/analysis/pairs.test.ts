import { expect, test } from 'vitest';
import { asWritten } from '../support/analyze-text.ts';

/*
 * Each hub is laid out by hand on a line of face coordinates, and δ is taken from those coordinates: the distance
 * of the outer ring faces that meet the stops, less the distance of the stops. Ring widths 0/−0.12 mm (ISO 492).
 */
interface Layout {
  readonly from?: readonly [string, string];
  readonly spacer?: number;
  readonly shell?: string;
  readonly seats?: readonly [string, string];
  readonly extra?: string;
  readonly leftKeys?: string;
}

function hub({
  spacer = 62.06,
  shell = 'between-shoulders: 62.05 ±0.01',
  seats = ['', ''],
  leftKeys = '',
}: Layout): string {
  return `hub: Dunlin front
position: front
width: 100 ±0.2
shell:
  ${shell}
  seats:
    left: { bore: 26 N7${seats[0]} }
    right: { bore: 26 N7${seats[1]} }
stack:
  - end-cap: left
    length: 14.03 ±0.02
  - bearing: left
    code: 6803-2RS
    seat: shell.left${leftKeys}
  - spacer: centre
    length: ${spacer} ±0.01
  - bearing: right
    code: 6803-2RS
    seat: shell.right
  - end-cap: right
    length: 14.03 ±0.02
`;
}

const pairOf = (text: string) => asWritten(text).pairs[0];

test('shoulders between the bearings: δ is the spacer less their distance, ring widths do not enter', () => {
  const pair = pairOf(hub({}));
  expect(pair?.loop.bearings).toEqual(['bearing.left', 'bearing.right']);
  expect(pair?.drawn?.nominal).toBeCloseTo(0.01, 9);
  expect(pair?.drawn?.mean).toBeCloseTo(0.01, 9);
  expect(pair?.drawn?.worst[0]).toBeCloseTo(-0.01, 9);
  expect(pair?.drawn?.worst[1]).toBeCloseTo(0.03, 9);
});

test('both pressed in from the right: the ring of the left bearing enters with its mean', () => {
  // Left ring on its stop with its left face at 0, right ring with its left face at 5 + 62.06.
  const pair = pairOf(hub({ seats: [', from: right', ''], shell: 'between-shoulders: 67' }));
  expect(pair?.drawn?.nominal).toBeCloseTo(5 + 62.06 - 67, 9);
  expect(pair?.drawn?.mean).toBeCloseTo(4.94 + 62.06 - 67, 9);
});

test('stops outside both bearings: both rings enter', () => {
  const pair = pairOf(hub({ seats: [', from: right', ', from: left'], shell: 'between-shoulders: 72' }));
  expect(pair?.drawn?.mean).toBeCloseTo(4.94 + 62.06 + 4.94 - 72, 9);
});

test('the distance of the shoulders follows from length and depths where it is not written', () => {
  const seats = [', depth: 5.1 ±0.02', ', depth: 5.2 ±0.02'] as const;
  const pair = pairOf(hub({ seats, shell: 'length: 72.35 ±0.03' }));
  expect(pair?.drawn?.nominal).toBeCloseTo(62.06 - (72.35 - 5.1 - 5.2), 9);
  expect(pair?.drawn?.worst[1]).toBeCloseTo(62.07 - (72.32 - 5.12 - 5.22), 9);
});

test('without shoulders, length or depths the pair is unchecked and says what it wants', () => {
  const variant = asWritten(hub({ shell: 'material: aluminium' }));
  expect(variant.pairs[0]?.drawn).toBeNull();
  expect(variant.unchecked.map(({ missing }) => missing)).toContain('between-shoulders of shell');
});

test('the offset of the faces of a bearing enters one to one', () => {
  const pair = pairOf(hub({ leftKeys: '\n    face-offset: 0.03 ±0.02' }));
  expect(pair?.drawn?.mean).toBeCloseTo(0.04, 9);
  expect(pair?.drawn?.worst[1]).toBeCloseTo(0.03 + 0.03 + 0.02, 9);
});

test('an inner ring wider than its outer ring leaves the pair open until it says where it stands out', () => {
  const open = asWritten(hub({ leftKeys: '\n    inner-width: 6' }));
  expect(open.pairs[0]?.drawn).toBeNull();
  expect(open.unchecked.map(({ missing }) => missing)).toContain('face-offset of bearing.left');
  // The ring stands 1 mm out on the inboard face, so the spacer is shorter by that: δ as before.
  const told = pairOf(hub({ spacer: 61.06, leftKeys: '\n    inner-width: 6\n    face-offset: 1' }));
  expect(told?.drawn?.mean).toBeCloseTo(0.01, 9);
});

test('an adjuster between two bearings leaves their distance to the hand that sets it', () => {
  const text = hub({}).replace('spacer: centre', 'adjuster: centre\n    travel: 1');
  const variant = asWritten(text);
  expect(variant.pairs[0]?.drawn).toBeNull();
  expect(variant.unchecked.map(({ missing }) => missing)).toContain('set of adjuster.centre');
});

test('a seat that only the spacer locates leaves no difference', () => {
  const pair = pairOf(hub({ seats: ['', ', stop: spacer'] }));
  expect(pair?.loop.located).toBe('spacer');
  expect(pair?.drawn?.nominal).toBe(0);
  expect(pair?.drawn?.worst).toEqual([0, 0]);
});

test('a third bearing between two located ones brings its ring width in', () => {
  const text = hub({}).replace(
    '  - spacer: centre\n    length: 62.06 ±0.01\n',
    '  - spacer: one\n    length: 28 ±0.01\n  - bearing: middle\n    code: 6803\n  - spacer: two\n    length: 29.06 ±0.01\n',
  );
  expect(pairOf(text)?.drawn?.mean).toBeCloseTo(28 + 4.94 + 29.06 - 62.05, 9);
});

/** Three 6803 in one housing 100 long; δ by hand from the faces along the housing, its left end at 0. */
const three = (middle: string) => `hub: Dunlin rear
position: rear
width: 130 ±0.2
shell:
  length: 100 ±0.05
  between-shoulders: 80 ±0.02
  seats:
    left:   { bore: 26 N7, depth: 10 ±0.02 }
    middle: { bore: 26 N7, ${middle} }
    right:  { bore: 26 N7, depth: 10 ±0.02 }
stack:
  - bearing: left
    code: 6803
    seat: shell.left
  - spacer: a
    length: 50 ±0.01
  - bearing: middle
    code: 6803
    seat: shell.middle
  - spacer: b
    length: 25.06 ±0.01
  - bearing: right
    code: 6803
    seat: shell.right
`;

test('a middle bearing that only the spacer locates leaves the pair of the outer two', () => {
  const pairs = asWritten(three('stop: spacer, from: right')).pairs;
  expect(pairs.map(({ loop }) => [...loop.bearings, loop.located])).toEqual([
    ['bearing.left', 'bearing.middle', 'spacer'],
    ['bearing.left', 'bearing.right', 'shoulders'],
    ['bearing.middle', 'bearing.right', 'spacer'],
  ]);
  expect(pairs[1]?.drawn?.nominal).toBeCloseTo(50 + 5 + 25.06 - 80, 9);
  expect(pairs[1]?.drawn?.mean).toBeCloseTo(50 + 4.94 + 25.06 - 80, 9);
});

test('with three stops each pair takes its distance from the depths, not twice the one between the shoulders', () => {
  // Stops at 10 (facing left), 100 − 35 = 65 (facing right) and 100 − 10 = 90 (facing right).
  const pairs = asWritten(three('depth: 35 ±0.02, from: right')).pairs;
  expect(pairs.map(({ loop }) => loop.located)).toEqual(['shoulders', 'shoulders']);
  expect(pairs[0]?.drawn?.nominal).toBeCloseTo(50 - (65 - 10), 9);
  expect(pairs[1]?.drawn?.mean).toBeCloseTo(4.94 + 25.06 - (90 - 65), 9);
  // The length of the housing does not enter between two stops that are dimensioned from one end.
  expect(pairs[1]?.loop.terms.map(({ key }) => key)).toEqual(['code', 'length', 'depth', 'depth']);
});

test('with three stops and a depth that is missing the pair says which', () => {
  const variant = asWritten(three('from: right'));
  expect(variant.pairs.map(({ drawn }) => drawn)).toEqual([null, null]);
  expect(variant.unchecked.map(({ missing }) => missing)).toContain('depth of shell.middle');
});

test('two bearings in one seat touch, and the inner of them is the one that meets the shoulder', () => {
  const text = hub({}).replace(
    '  - bearing: left\n',
    '  - bearing: outer\n    code: 6803-2RS\n    seat: shell.left\n  - bearing: left\n',
  );
  const pairs = asWritten(text).pairs;
  expect(pairs.map(({ loop }) => [...loop.bearings, loop.located])).toEqual([
    ['bearing.left', 'bearing.right', 'shoulders'],
    ['bearing.outer', 'bearing.left', 'side-by-side'],
  ]);
  expect(pairs[1]?.drawn?.nominal).toBe(0);
});

test('a hub and its mirror image have the same play', () => {
  const plain = hub({ seats: [', from: right', ''], shell: 'between-shoulders: 67' });
  const mirrored = hub({ seats: ['', ', from: left'], shell: 'between-shoulders: 67' });
  expect(pairOf(mirrored)?.drawn?.mean).toBeCloseTo(pairOf(plain)?.drawn?.mean ?? Number.NaN, 9);
});
