import { expect, test } from 'vitest';
import { isWorked } from '../../server/analysis/mechanics/pair-mechanics.ts';
import { asWritten } from '../support/analyze-text.ts';

/*
 * Two bearings 17 × 26 × 5 in a shell, each ring face with a coordinate along the axle. Outer rings stand against
 * their stops; inner rings stand against the spacer. δ is what the right inner ring's offset from its outer ring is
 * more to the right than the left one's. Ring widths 0/−0.12 mm (ISO 492), so 4.94 on average.
 */
interface Layout {
  /** Distance of the two stops. */
  readonly stops: number;
  readonly spacer: number;
  /** Where the stop of each bearing stands. */
  readonly left: 'inboard' | 'outboard';
  readonly right: 'inboard' | 'outboard';
  /** How far each inner ring stands out inboard, and how wide it is where that differs. */
  readonly offsets?: readonly [number, number];
  readonly innerWidth?: number;
}

const width = 4.94;

/** δ from the faces: each bearing as the places of its outer and of its inner ring's inboard face. */
function byCoordinates({ stops, spacer, left, right, offsets = [0, 0] }: Layout): number {
  const outerLeft = left === 'inboard' ? 0 : width;
  const outerRight = right === 'inboard' ? stops : stops - width;
  // Inner rings centred on their grooves would stand out by the offsets; the spacer holds them `spacer` apart.
  const wantedApart = outerRight - offsets[1] - (outerLeft + offsets[0]);
  return spacer - wantedApart;
}

function written({ stops, spacer, left, right, offsets = [0, 0], innerWidth }: Layout): string {
  const seat = (side: 'left' | 'right', stop: Layout['left']): string =>
    stop === 'inboard' ? '' : `, from: ${side === 'left' ? 'right' : 'left'}`;
  const keys = (offset: number): string =>
    `\n    face-offset: ${offset}${innerWidth === undefined ? '' : `\n    inner-width: ${innerWidth}`}`;
  return `hub: Turnstone front
position: front
width: 100
shell:
  between-shoulders: ${stops}
  seats:
    left: { bore: 26${seat('left', left)} }
    right: { bore: 26${seat('right', right)} }
stack:
  - bearing: left
    code: 6803
    seat: shell.left${keys(offsets[0])}
  - spacer: centre
    length: ${spacer}
  - bearing: right
    code: 6803
    seat: shell.right${keys(offsets[1])}
`;
}

test('δ follows from the coordinates of the faces, whichever side of the rings the stops are on', () => {
  for (const left of ['inboard', 'outboard'] as const) {
    for (const right of ['inboard', 'outboard'] as const) {
      const stops = 60 + (left === 'outboard' ? 5 : 0) + (right === 'outboard' ? 5 : 0);
      for (const offsets of [
        [0, 0],
        [0.03, 0],
        [0, -0.02],
        [0.04, 0.01],
      ] as const) {
        const layout: Layout = { stops, spacer: 60.02, left, right, offsets };
        const [pair] = asWritten(written(layout)).pairs;
        expect(pair?.drawn?.mean).toBeCloseTo(byCoordinates(layout), 9);
      }
    }
  }
});

test('an inner ring wider than its outer ring counts by its offset alone, since the outer ring meets the stop', () => {
  for (const side of ['inboard', 'outboard'] as const) {
    const stops = side === 'outboard' ? 70 : 60;
    const layout: Layout = {
      stops,
      spacer: 58.02,
      left: side,
      right: side,
      offsets: [1, 1],
      innerWidth: 7,
    };
    const [pair] = asWritten(written(layout)).pairs;
    expect(pair?.drawn?.mean).toBeCloseTo(byCoordinates(layout), 9);
  }
});

/** Both outer rings stopped by retaining rings in the mouths of their seats; the shell is 80 long. */
const inMouth = (ring: string, depth = ''): string => `hub: Sanderling front
position: front
width: 100
clamp: 5 kN
axle: { diameter: 17, bore: 12 }
shell:
  material: aluminium 6061
  outside: 36
  length: 80 ±0.02
  seats:
    left: { bore: 26 N7, stop: ring${depth}, retaining-ring: { ${ring} } }
    right: { bore: 26 N7, stop: ring${depth}, retaining-ring: { ${ring} } }
stack:
  - bearing: left
    code: 6803
    seat: shell.left
  - spacer: centre
    length: 65.66
    outside: 19.6
  - bearing: right
    code: 6803
    seat: shell.right
`;

test('a ring in the mouth of a seat stops the open side of the outer ring', () => {
  const text = inMouth('side: open, thickness: 1.2, groove-from-face: 1');
  const [pair] = asWritten(text).pairs;
  // End faces at 0 and 80, rings from 1 to 2.2 and from 77.8 to 79, outer rings from 2.2 to 7.14 and 72.86 to 77.8.
  expect(pair?.drawn?.mean).toBeCloseTo(65.66 - (72.86 - 7.14), 9);
  // The depth of the stop may be written in place of the groove.
  const [deep] = asWritten(inMouth('side: open', ', depth: 2.2')).pairs;
  expect(deep?.drawn?.mean).toBeCloseTo(pair?.drawn?.mean ?? Number.NaN, 9);
});

test('rings in the mouths hold the outer rings apart, not together', () => {
  const ring = 'side: open, thickness: 1.2, groove-from-face: 1';
  const worked = (text: string) => {
    const [pair] = asWritten(text).mechanics().pairs;
    if (!pair || !isWorked(pair)) throw new Error('not worked');
    return pair;
  };
  // A long spacer presses the outer rings on their retaining rings: nothing slides.
  const long = worked(inMouth(ring).replace('65.66', '65.95'));
  expect(long.result.loadedBy).toBe('long');
  expect(long.result.slid).toBe('no');
  expect(long.result.ballLoad).toBeGreaterThan(long.left.grip);
  // A short one pulls them inward, where only their grip holds them.
  const short = worked(inMouth(ring).replace('65.66', '65.3'));
  expect(short.result.loadedBy).toBe('short');
  expect(short.result.slid).toBe('either');
  expect(short.result.ballLoad).toBeCloseTo(Math.min(short.left.grip, short.right.grip), 9);
});

test('of a bearing between two, the offset counts towards its stop and the other way round on its other side', () => {
  const text = `hub: Dunlin rear
position: rear
width: 130
shell:
  length: 100
  seats:
    left:   { bore: 26, depth: 10 }
    middle: { bore: 26, depth: 35, from: right }
    right:  { bore: 26, depth: 10 }
stack:
  - bearing: left
    code: 6803
    seat: shell.left
  - spacer: a
    length: 55
  - bearing: middle
    code: 6803
    seat: shell.middle
    face-offset: 0.05
  - spacer: b
    length: 20.06
  - bearing: right
    code: 6803
    seat: shell.right
`;
  const [first, second] = asWritten(text).pairs;
  // Middle outer ring from 65 to 69.94, its inner ring 0.05 further left: from 64.95 to 69.89. The left inner ring
  // ends at 10 and the right one begins at 90 when flush.
  expect(first?.drawn?.mean).toBeCloseTo(55 - (64.95 - 10), 9);
  expect(second?.drawn?.mean).toBeCloseTo(20.06 - (90 - 69.89), 9);
});

test('two bearings in one seat that touch at their outer rings have the offset of both between them', () => {
  const text = `hub: Knot front
position: front
width: 100
shell:
  length: 60
  seats:
    left: { bore: 26, depth: 20 }
stack:
  - bearing: outer
    code: 6803
    seat: shell.left
    face-offset: -0.02
  - spacer: thin
    length: 0.1
  - bearing: inner
    code: 6803
    seat: shell.left
    face-offset: 0.03
`;
  expect(asWritten(text).pairs[0]?.drawn?.mean).toBeCloseTo(0.1 - 0.02 + 0.03, 9);
});
