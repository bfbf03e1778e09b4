import { expect, test } from 'vitest';
import type { SpecPath } from '../../server/spec/place.ts';
import { readHub } from '../../server/spec/read-hub.ts';
import { dunlin } from './sample.ts';

const document = readHub(dunlin);
const hub = document.hub;
const at = (path: SpecPath, part?: 'key' | 'value' | 'whole') => {
  const { start, end } = document.span(path, part);
  return dunlin.slice(start, end);
};

test('a sound hub reads without a problem', () => {
  expect(document.problems).toEqual([]);
  expect(hub?.values.hub).toEqual({ value: 'Dunlin front', path: ['hub'] });
  expect(hub?.values.position?.value).toBe('front');
  expect(hub?.values.width?.value).toMatchObject({ nominal: 100, tolerance: { lower: -0.1, upper: 0.1 } });
  expect(hub?.values.untoleranced?.value).toBe('m');
  expect(hub?.values.temperature?.value).toMatchObject({ lo: -10, hi: 45 });
  expect(hub?.values.notes?.value).toContain('# not a comment');
});

test('the stack keeps its order, each part with its address and path', () => {
  expect(hub?.stack.map((part) => part.address)).toEqual([
    'end-cap.left',
    'bearing.left',
    'spacer.centre',
    'bearing.right',
    'end-cap.right',
  ]);
  expect(hub?.stack[2]?.path).toEqual(['stack', 2]);
  expect(hub?.stack[2]?.values.length).toMatchObject({
    path: ['stack', 2, 'length'],
    value: { nominal: 62.06, measured: { value: 62.05 } },
  });
  expect(hub?.stack[1]?.values.code?.value).toBe('6803-2RS');
});

test('seats, rings, flanges and what stands beside are read in any style', () => {
  expect(hub?.shell?.seats.map((seat) => seat.address)).toEqual(['shell.left', 'shell.right']);
  expect(hub?.shell?.seats[0]?.values.bore?.value.tolerance).toEqual({
    kind: 'class',
    letters: 'N',
    grade: 7,
  });
  expect(hub?.shell?.seats[1]?.ring?.values.side?.value).toBe('open');
  expect(hub?.shell?.flanges[0]).toMatchObject({ name: 'left', values: { holes: { value: 16 } } });
  expect(hub?.beside[0]).toMatchObject({
    address: 'seal.left',
    values: { at: { value: { from: 'bearing.left' } } },
  });
});

test('a clamp is a force alone or has keys', () => {
  expect(hub?.clamp).toMatchObject({
    path: ['clamp'],
    values: { force: { value: { value: 5000 }, path: ['clamp'] } },
  });
  const quick = hub?.variants[1];
  expect(quick?.clamp?.values.torque?.value.value).toBe(12000);
  expect(quick?.clamp?.values.friction?.value).toBe(0.15);
});

test('a variant changes parts, sections and single seats by their address', () => {
  const thru = hub?.variants[0];
  expect(thru?.name).toBe('thru-15');
  expect(thru?.change.map((change) => change.address.value)).toEqual(['end-cap.left', 'end-cap.right']);
  expect(thru?.replace[0]?.values.length?.value.nominal).toBe(62.06);
  expect(thru?.add[0]).toMatchObject({
    part: { address: 'shim.left' },
    after: { value: 'end-cap.left' },
    before: null,
  });
  expect(thru?.remove.map((placed) => placed.value)).toEqual(['spacer.centre']);
  expect(thru?.axle?.values.bore?.value.nominal).toBe(15.1);
  expect(thru?.shell?.seats[0]).toMatchObject({
    address: 'shell.left',
    values: { bore: { value: { nominal: 26 } } },
  });
  expect(thru?.shell?.values.material?.value).toBe('titanium');
});

test('a path leads to its key, its value or all of it', () => {
  expect(at(['stack', 0, 'length'])).toBe('14.03 ±0.02');
  expect(at(['stack', 0, 'length'], 'key')).toBe('length');
  expect(at(['stack', 0])).toBe('end-cap: left');
  expect(at(['stack', 0], 'whole')).toMatch(/^end-cap: left[\s\S]*face: 19\.4$/);
  expect(at(['shell', 'seats', 'left'])).toBe('{ bore: 26 N7, depth: 5 +0.05/0, stop: shoulder }');
  expect(at(['shell', 'seats', 'right'])).toBe('right');
  expect(at(['stack'], 'value')).toBe('stack');
  expect(at(['variants', 'thru-15', 'add', 0, 'after'])).toBe('end-cap.left');
  expect(at(['notes'])).not.toContain('\n');
});

test('a path that is not there falls back to the nearest thing that is', () => {
  expect(at(['stack', 0, 'bore'])).toBe('end-cap: left');
  expect(at(['shell', 'seats', 'left', 'fillet'])).toBe('left');
  expect(at(['freehub', 'gap'])).toContain('hub: Dunlin front');
  expect(document.has(['stack', 0, 'length'])).toBe(true);
  expect(document.has(['stack', 0, 'bore'])).toBe(false);
  expect(document.has(['stack', 9])).toBe(false);
});

test('an offset leads to the deepest path it stands in', () => {
  const find = (words: string, shift = 1) => document.pathAt(dunlin.indexOf(words) + shift);
  expect(find('62.06 ±0.01 m')).toEqual({ path: ['stack', 2, 'length'], part: 'value' });
  expect(find('between-shoulders')).toEqual({ path: ['shell', 'between-shoulders'], part: 'key' });
  expect(find('M7')).toEqual({
    path: ['variants', 'thru-15', 'change', 'shell.left', 'bore'],
    part: 'value',
  });
  expect(find('after: end')).toEqual({ path: ['variants', 'thru-15', 'add', 0, 'after'], part: 'key' });
  expect(document.pathAt(1)).toBeNull();
});

test('every value knows the path it came from, and the path leads to what was written', () => {
  const values: { path: SpecPath; value: unknown }[] = [];
  const collect = (thing: unknown): void => {
    if (typeof thing !== 'object' || thing === null) return;
    if ('path' in thing && 'value' in thing) values.push(thing as { path: SpecPath; value: unknown });
    for (const inner of Object.values(thing)) collect(inner);
  };
  collect(hub);
  expect(values.length).toBeGreaterThan(50);
  for (const { path, value } of values) {
    expect(document.has(path), path.join('.')).toBe(true);
    const written = (value as { written?: string }).written;
    if (written !== undefined) expect(at(path)).toBe(written);
  }
});
