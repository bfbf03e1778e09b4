import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { trace, tracedAddresses } from '../../server/analysis/trace/trace.ts';
import { asWritten } from '../support/analyze-text.ts';
import { pressByHand } from '../support/press-by-hand.ts';
import { sanderling } from '../support/sanderling.ts';

const variant = asWritten(sanderling({ clamp: '5 kN' }));
const steps = (address: string) => trace(variant, address, 'drawn') ?? [];
const step = (address: string, name: RegExp) => steps(address).find((link) => name.test(link.name));
const fed = (address: string, name: RegExp, input: string) =>
  step(address, name)?.inputs.find((value) => value.name === input)?.value ?? Number.NaN;

test('every address that is offered has a chain, and no other one has', () => {
  const known = tracedAddresses(variant);
  expect(known).toEqual(
    expect.arrayContaining([
      'width',
      'clamp',
      'axle',
      'bearing.left',
      'shell.right',
      'spacer.centre',
      'shell.between-shoulders',
    ]),
  );
  for (const address of known) expect(steps(address).length, address).toBeGreaterThan(0);
  expect(trace(variant, 'spacer.nowhere', 'drawn')).toBeNull();
});

test('each formula gives its own result from the values that stand under it', () => {
  const smoothing = /after smoothing/;
  const d = fed('shell.left', smoothing, 'd');
  expect(step('shell.left', smoothing)?.value).toBeCloseTo(
    (fed('shell.left', smoothing, 'Δ') * d) / (d + 3),
    12,
  );
  const pressure = step('shell.left', /pressure/);
  const value = (name: string) => pressure?.inputs.find((item) => item.name === name)?.value ?? Number.NaN;
  const [dr, dw] = [value('raceway dr'), value('outside of the wall dw')];
  const give =
    ((d * d + dr * dr) / (d * d - dr * dr) - value('ν of the ring')) / value('E of the ring') +
    ((dw * dw + d * d) / (dw * dw - d * d) + value('ν of the wall')) / value('E of the wall');
  expect(pressure?.value).toBeCloseTo(value('Δe') / (d * give), 8);
  // And both by the boundary value problem of two tubes.
  const pressed = pressByHand(
    { inner: 24.278, outer: 26, E: 208_000, nu: 0.3 },
    { inner: 26, outer: 34, E: 68_900, nu: 0.33 },
    value('Δe'),
  );
  expect(pressure?.value).toBeCloseTo(pressed.pressure, 6);
  const loss = step('shell.left', /clearance it takes/);
  expect(loss?.value).toBeCloseTo((2 * pressed.pressure * dr * d * d) / (208_000 * (d * d - dr * dr)), 9);
});

test('a dimension of the stack leads on to play and load, the link before feeding the next', () => {
  const names = steps('spacer.centre').map(({ name }) => name.replace(/ of bearing.*/, ''));
  expect(names).toEqual([
    'clamped width',
    'inner less outer distance',
    'axial clearance',
    'axial clearance',
    'play',
    'clamp force F',
    'the clamp takes from the inner distance',
    'δ once clamped',
    'play',
    'axial force through each',
    'force left in the spacer',
    'greatest contact stress',
  ]);
  const taken = step('spacer.centre', /the clamp takes/);
  const of = (name: string) => taken?.inputs.find((item) => item.name === name)?.value ?? Number.NaN;
  expect(of('A of spacer.centre')).toBeCloseTo((Math.PI / 4) * (19.5 ** 2 - 17.1 ** 2), 9);
  expect(taken?.value).toBeCloseTo((5000 * 62.06) / (71_700 * of('A of spacer.centre')), 9);
  expect(step('spacer.centre', /force left/)?.value).toBeCloseTo(
    5000 - (step('spacer.centre', /axial force/)?.value ?? 0),
    9,
  );
});

test('play is what its inputs make it', () => {
  const play = step('spacer.centre', /before clamping/);
  const half = fed('spacer.centre', /before clamping/, 'a of bearing.left');
  expect(play?.value).toBeCloseTo(2 * half - Math.abs(fed('spacer.centre', /before clamping/, 'δ')), 12);
  expect(step('spacer.centre', /^axial clearance/)?.value).toBeCloseTo(2 * half, 9);
});

test('where no play is known the chain ends before it', () => {
  const bare = asWritten(sanderling());
  expect(trace(bare, 'clamp', 'drawn')).toBeNull();
  const last = trace(bare, 'spacer.centre', 'drawn')?.at(-1)?.name;
  expect(last).toContain('before clamping');
});

test('an empty stack has no numbers to explain', () => {
  const empty = asWritten('hub: Sanderling\nposition: front\nwidth: 100\nstack: []\n');
  expect(tracedAddresses(empty)).toEqual([]);
  expect(trace(empty, 'width', 'drawn')).toBeNull();
});

test('the builds of a pair lead from the straying of its dimensions to the shares', () => {
  // A tolerance is ±3σ: the spacer ±0.01 and the shoulders ±0.02.
  expect(step('builds.shell', /^σ of δ/)?.value).toBeCloseTo(Math.hypot(0.01, 0.02) / 3, 12);
  // Clearance 3 to 18 µm over 6σ (ISO 5753-1, group N, bores over 10 to 18 mm).
  const own = fed(
    'builds.shell',
    /clearance of bearing\.left and/,
    'σ of internal clearance of bearing.left',
  );
  expect(own).toBeCloseTo(0.015 / 6, 12);
  const right = step('builds.shell', /^share of builds right/);
  const [loaded, high] = right?.inputs.map(({ value }) => value) ?? [];
  expect(right?.value).toBeCloseTo(1 - (loaded ?? 0) - (high ?? 0), 12);
  const wider = trace(variant, 'builds.shell', 'drawn', 0.2)?.find(({ name }) => /too much/.test(name));
  expect(wider?.value).toBe(0);
  expect(trace(asWritten(sanderling()), 'builds.shell', 'drawn')).toBeNull();
});

test('a seat leads on to its recess, and a gap has a chain of its own', () => {
  // 5.1 deep, a ring 5 wide and on average 0.06 short of it (ISO 492, class Normal).
  expect(step('shell.left', /^recess/)?.value).toBeCloseTo(5.1 - 4.94, 9);
  const plover = asWritten(
    readFileSync(join(import.meta.dirname, '../../client/samples/plover-rear.hub.yaml'), 'utf8'),
  );
  expect(tracedAddresses(plover)).toContain('gap.shell.freehub');
  const [gap] = trace(plover, 'gap.shell.freehub', 'drawn') ?? [];
  // Two rings 7 wide less 0.06, the spacer of 1.2 between them, less the depths of the two seats they stand in.
  expect(gap?.value).toBeCloseTo(2 * 6.94 + 1.2 - 7.1 - 7.3, 9);
  expect(gap?.inputs.map(({ name }) => name.slice(0, 1))).toEqual(['+', '+', '+', '−', '−']);
});
