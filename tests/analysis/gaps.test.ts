import { expect, test } from 'vitest';
import { asWritten } from '../support/analyze-text.ts';

/*
 * A rear hub laid out by hand from the left dropout face, nominal then mean. 6902: 15 × 28 × 7 (ISO 15), ring
 * widths 0/−0.12 mm (ISO 492).
 *
 *   end cap 0…14 │ ring 14…21 │ spacer …71 │ ring 71…78 │ spacer …78.8 │ ring 78.8…85.8 │ spacer …105.8 │ ring …112.8
 *   right shell shoulder at 71, seat 7.2 deep: shell ends at 78.2
 *   left freehub shoulder at 85.8, seat 7.1 deep: freehub begins at 78.7
 */
const plover = `hub: Plover rear
position: rear
width: 142 ±0.5
shell:
  between-shoulders: 50 ±0.01
  seats:
    left: { bore: 28 N7, depth: 7.2 ±0.02 }
    right: { bore: 28 N7, depth: 7.2 ±0.02 }
freehub:
  gap: 0.4 ±0.25
  between-shoulders: 20 ±0.01
  seats:
    left: { bore: 28 N7, depth: 7.1 ±0.02 }
    right: { bore: 28 N7, depth: 8.5 ±0.02, retaining-ring: { side: open, thickness: 1.2, groove-width: 1.3, groove-from-face: 0.2 ±0.05 } }
axle: { diameter: 15 h6, length: 120 ±0.1 }
stack:
  - end-cap: left
    length: 14 ±0.02
    socket: 4 ±0.05
  - bearing: left
    code: 6902-2RS
    seat: shell.left
  - spacer: centre
    length: 50 ±0.01
  - bearing: right
    code: 6902-2RS
    seat: shell.right
  - spacer: freehub
    length: 0.8 ±0.02
  - bearing: inboard
    code: 6902-2RS
    seat: freehub.left
  - spacer: inner
    length: 20 ±0.01
  - bearing: outboard
    code: 6902-2RS
    seat: freehub.right
  - end-cap: right
    length: 29.2 ±0.02
    socket: 18 ±0.05
beside:
  - rotor-face: left
    at: 10 ±0.1
  - driver-face: right
    at: 20 from bearing.outboard
  - cover: right
    at: 1.5 from end-cap.right
    to: bearing.outboard
`;
const gap = (role: string, index = 0) =>
  asWritten(plover).gaps.filter(({ loop }) => loop.role === role)[index];

test('the freehub clears the shell by what the inner rings keep less both seat depths', () => {
  const running = gap('running');
  expect(running?.loop.between).toEqual(['shell', 'freehub']);
  expect(running?.drawn?.nominal).toBeCloseTo(78.7 - 78.2, 9);
  expect(running?.drawn?.mean).toBeCloseTo(0.5 - 2 * 0.06, 9);
  expect(running?.drawn?.worst[1]).toBeCloseTo(0.5 + 0.02 * 3, 9);
  expect(running?.loop.wanted?.lo).toBeCloseTo(0.15, 9);
  expect(running?.loop.wanted?.hi).toBeCloseTo(0.65, 9);
});

test('a retaining ring has the room that depth, ring and bearing leave', () => {
  // End face at 0: ring 0.2…1.4, bearing 1.5…8.5.
  const ring = gap('retaining-ring');
  expect(ring?.loop.between).toEqual(['freehub.right.retaining-ring', 'bearing.outboard']);
  expect(ring?.drawn?.nominal).toBeCloseTo(8.5 - 7 - 0.2 - 1.2, 9);
  expect(ring?.drawn?.mean).toBeCloseTo(0.1 + 0.06, 9);
});

test('the axle has the room between the bottoms of the two sockets', () => {
  // Sockets from 14 − 4 = 10 to 112.8 + 18 = 130.8.
  const end = gap('axle-end');
  expect(end?.drawn?.nominal).toBeCloseTo(120.8 - 120, 9);
  expect(end?.drawn?.mean).toBeCloseTo(0.8 - 4 * 0.06, 9);
});

test('parts beside the stack keep their gaps to the faces they run against', () => {
  // The cover at 112.8 + 1.5, the bearing it runs against ends at 112.8: nothing but its own place enters.
  expect(gap('beside', 2)?.loop.between).toEqual(['cover.right', 'bearing.outboard']);
  expect(gap('beside', 2)?.drawn?.nominal).toBeCloseTo(1.5, 9);
  expect(gap('beside', 2)?.drawn?.worst[0]).toBeCloseTo(1.5, 9);
});

test('a part beside the stack is measured from another part beside it', () => {
  // The cover begins at 112.8 + 1.5, the seal 0.6 behind it; the bearing ends at 112.8.
  const seal = '  - seal: right\n    at: 0.6 ±0.1 from cover.right\n    to: bearing.outboard\n';
  const last = asWritten(plover + seal).gaps.at(-1);
  expect(last?.loop.between).toEqual(['seal.right', 'bearing.outboard']);
  expect(last?.drawn?.nominal).toBeCloseTo(2.1, 9);
  expect(last?.drawn?.worst[0]).toBeCloseTo(2, 9);
});

test('two parts beside the stack that are measured from each other are unchecked', () => {
  const circle =
    '  - seal: a\n    at: 1 from seal.b\n    to: bearing.outboard\n  - seal: b\n    at: 1 from seal.a\n    to: bearing.outboard\n';
  const variant = asWritten(plover + circle);
  expect(variant.gaps.slice(-2).map(({ drawn }) => drawn)).toEqual([null, null]);
  expect(variant.unchecked.map(({ what }) => what)).toContain('gap between seal.a and bearing.outboard');
});

test('a gap to a seat is listed as unchecked: a seat has no face on the clamped line', () => {
  const variant = asWritten(
    plover.replace('    to: bearing.outboard', '    to: freehub.right\n    gap: 0.3'),
  );
  expect(variant.unchecked.map(({ what }) => what)).toContain('gap between cover.right and freehub.right');
});

test('a rotor face and a driver face are measured to the dropout faces', () => {
  expect(gap('beside', 0)?.loop.between).toEqual(['rotor-face.left', 'dropout.left']);
  expect(gap('beside', 0)?.drawn?.worst[0]).toBeCloseTo(9.9, 9);
  // The stack ends at 112.8 + 29.2 = 142; the face lies at 105.8 + 20.
  expect(gap('beside', 1)?.loop.between).toEqual(['driver-face.right', 'dropout.right']);
  expect(gap('beside', 1)?.drawn?.nominal).toBeCloseTo(16.2, 9);
});

test('seats say how deep their rings stand', () => {
  const means = asWritten(plover).seats.map(({ loop, drawn }) => [loop.seat, drawn?.mean.toFixed(2)]);
  expect(means).toEqual([
    ['shell.left', '0.26'],
    ['shell.right', '0.26'],
    ['freehub.left', '0.16'],
    ['freehub.right', '1.56'],
  ]);
});

test('a freehub without a wanted gap is held to the usual least one and says so', () => {
  const { wanted } =
    asWritten(plover.replace('  gap: 0.4 ±0.25\n', '')).gaps.find(({ loop }) => loop.role === 'running')
      ?.loop ?? {};
  expect(wanted?.assumed).toContain('freehub.gap is not written');
  expect(wanted?.hi).toBe(Number.POSITIVE_INFINITY);
});

test('the wide part of an end cap clears the shell by its nose and the ring, less the depth', () => {
  const wide = plover.replace(
    '    socket: 4 ±0.05',
    '    socket: 4 ±0.05\n    outside: 32\n    nose: 1 ±0.05',
  );
  const found = asWritten(wide).gaps.find(({ loop }) => loop.role === 'end-cap');
  expect(found?.loop.between).toEqual(['end-cap.left', 'shell']);
  expect(found?.drawn?.nominal).toBeCloseTo(1 + 7 - 7.2, 9);
  expect(found?.drawn?.mean).toBeCloseTo(1 + 6.94 - 7.2, 9);
});

test('a shim between end cap and bearing moves the cap away from the shell', () => {
  const wide = plover
    .replace('    socket: 4 ±0.05', '    socket: 4 ±0.05\n    outside: 32\n    nose: 1 ±0.05')
    .replace('  - bearing: left', '  - shim: left\n    length: 0.1 ±0.01\n    count: 2\n  - bearing: left');
  const found = asWritten(wide).gaps.find(({ loop }) => loop.role === 'end-cap');
  expect(found?.drawn?.nominal).toBeCloseTo(1 + 0.2 + 7 - 7.2, 9);
});

test('a wide end cap without a written nose leaves its gap unchecked', () => {
  const wide = plover.replace('    socket: 4 ±0.05', '    socket: 4 ±0.05\n    outside: 32');
  expect(asWritten(wide).unchecked.map(({ missing }) => missing)).toContain('nose of end-cap.left');
});
