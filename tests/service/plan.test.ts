import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { type Plan, planOf } from '../../server/service/plan.ts';
import type { PressedIn, PressedOut, Step } from '../../server/service/step.ts';
import { analyzeText } from '../support/analyze-text.ts';
import { pressByHand } from '../support/press-by-hand.ts';
import { sanderling } from '../support/sanderling.ts';

const samples = join(import.meta.dirname, '..', '..', 'client', 'samples');
const sample = (name: string): string => readFileSync(join(samples, name), 'utf8');
const workshop = sample('saltmarsh.workshop.yaml');

function planned(text: string, wall?: string): Plan {
  const analysis = analyzeText(text, wall);
  const [variant] = analysis.variants;
  if (!variant) throw new Error('the text is no hub');
  return planOf(variant, analysis);
}

const order = (steps: readonly Step[]): readonly string[] => steps.map(({ kind, part }) => `${kind} ${part}`);
const before = (steps: readonly Step[], first: string, then: string): boolean => {
  const names = order(steps);
  return 0 <= names.indexOf(first) && names.indexOf(first) < names.indexOf(then);
};
const pressedIn = (plan: Plan): readonly PressedIn[] =>
  plan.together.flatMap((step) => (step.kind === 'press-in' ? step.pressed : []));
const pressedOut = (plan: Plan): readonly PressedOut[] =>
  plan.apart.flatMap((step) => (step.kind === 'press-out' ? step.pressed : []));
const inOf = (plan: Plan, bearing: string): PressedIn => {
  const found = pressedIn(plan).find((one) => one.bearing === bearing);
  if (!found) throw new Error(`${bearing} is not pressed in`);
  return found;
};
const outOf = (plan: Plan, bearing: string): PressedOut => {
  const found = pressedOut(plan).find((one) => one.bearing === bearing);
  if (!found) throw new Error(`${bearing} is not pressed out`);
  return found;
};

// The order is common practice: freehub off whole, its retaining ring before its bearing, first bearing and spacer
// before the second bearing.
test('a freehub comes off whole, and its retaining ring comes out before its bearing', () => {
  const { apart, together } = planned(sample('plover-rear.hub.yaml'));
  expect(before(apart, 'slide-off freehub', 'press-out bearing.right')).toBe(true);
  expect(before(apart, 'slide-off freehub', 'take-ring-out freehub.right.retaining-ring')).toBe(true);
  expect(before(apart, 'take-ring-out freehub.right.retaining-ring', 'press-out bearing.outboard')).toBe(
    true,
  );
  expect(before(together, 'press-in bearing.outboard', 'put-ring-in freehub.right.retaining-ring')).toBe(
    true,
  );
  expect(before(together, 'put-ring-in freehub.right.retaining-ring', 'slide-on freehub')).toBe(true);
  expect(apart.find(({ part }) => part === 'freehub')?.moving).toContain('bearing.inboard');
});

test('the spacer goes in after the first bearing and before the second', () => {
  const { together } = planned(sample('dunlin-front.hub.yaml'));
  const names = order(together);
  const [first, second] = names.flatMap((name, index) => (name.startsWith('press-in') ? [index] : []));
  const spacer = names.indexOf('slide-on spacer.centre');
  expect(first).toBeLessThan(spacer);
  expect(spacer).toBeLessThan(second ?? 0);
});

test('an axle with a shoulder takes one bearing along on its way out and goes in before the second one', () => {
  const { apart, together } = planned(sample('knot-front.hub.yaml'));
  const out = apart.find(({ part }) => part === 'axle');
  expect(out?.moving).toEqual(['axle', 'bearing.right']);
  expect(order(together)).toEqual([
    'press-in bearing.left',
    'slide-on axle',
    'press-in bearing.right',
    'slide-on end-cap.left',
    'slide-on end-cap.right',
  ]);
});

// Workshop notes on fitting, for 15 × 28: driver for the outer ring 27.7 outside, relief from 25.4; for the inner
// ring 15.1 to 17.6 (`common practice`).
test('the driver for a 15 × 28 bearing has the diameters workshop notes give', () => {
  const { driver, onWall } = inOf(planned(sample('plover-rear.hub.yaml'), workshop), 'bearing.left');
  expect(driver.outside.nominal).toBeCloseTo(27.7, 9);
  expect(driver.inside.nominal).toBeCloseTo(25.4, 9);
  expect(driver.outside.upper).toBeLessThanOrEqual(0);
  expect(driver.inside.lower).toBeGreaterThanOrEqual(0);
  expect(onWall).toEqual(['ring 28']);
});

test('a driver that enters no bore, a solid disc and a thin edge are no drivers', () => {
  const wall = (outside: number, inside: string): string =>
    `workshop: W\ndrivers:\n  - { name: one, outside: ${outside}${inside} }\n`;
  const fits = (text: string) => inOf(planned(sample('plover-rear.hub.yaml'), text), 'bearing.left').onWall;
  expect(fits(wall(27.7, ', inside: 25.4'))).toEqual(['one']);
  expect(fits(wall(28.2, ', inside: 25.4'))).toEqual([]);
  expect(fits(wall(27.7, ''))).toEqual([]);
  expect(fits(wall(27.7, ', inside: 27.2'))).toEqual([]);
  expect(fits(wall(27.7, ', inside: 20'))).toEqual([]);
});

test('an inner ring tight on its axle is pressed on the inner ring, both where both are tight', () => {
  const tight = sanderling().replace('17 h6', '17 m6');
  expect(pressedIn(planned(tight)).some(({ ring }) => ring === 'both')).toBe(true);
  const loose = sanderling({ bore: '26 F8' }).replace('17 h6', '17 m6');
  expect(pressedIn(planned(loose)).map(({ ring }) => ring)).toEqual(['inner', 'inner']);
  expect(inOf(planned(sanderling()), 'bearing.left').ring).toBe('outer');
});

test('a ring that only the spacer stops goes in last, on both rings, with the far inner ring backed', () => {
  const text = sanderling().replace('right: { bore: 26 N7', 'right: { stop: spacer, bore: 26 N7');
  const plan = planned(text);
  expect(pressedIn(plan).map(({ bearing }) => bearing)).toEqual(['bearing.left', 'bearing.right']);
  const last = inOf(plan, 'bearing.right');
  expect(last).toMatchObject({
    ring: 'both',
    why: 'stopped-by-spacer',
    stop: 'spacer',
    touches: 'spacer.centre',
  });
  expect(last.support).toContainEqual(expect.objectContaining({ under: 'inner-ring', part: 'bearing.left' }));
});

// Mean interference of 26 N7 (−7/−28 µm, ISO 286-2) on a ring of 0/−9 µm (ISO 492): 17.5 − 4.5 = 13 µm, smoothed by
// d/(d + 3) for a turned bore. Friction 0.12.
test('the force is that of two tubes solved by their boundary conditions', () => {
  const { force } = inOf(planned(sanderling()), 'bearing.left');
  const works = (made: number): number => (made * 26) / 29;
  const steel = { E: 208000, nu: 0.3 };
  const pressed = (made: number): number =>
    pressByHand(
      { inner: 21.5 + 2.778, outer: 26, ...steel },
      { inner: 26, outer: 34, E: 68900, nu: 0.33 },
      works(made),
    ).pressure *
    Math.PI *
    26 *
    5;
  expect(force?.typical).toBeCloseTo(0.12 * pressed(0.013), 0);
  expect(force?.most).toBeCloseTo(0.18 * pressed(0.028), 0);
  expect(force?.least).toBe(0);
});

test('a sleeve pushed aside bares the ring by its own room and by half its room in the bore', () => {
  // Inside 17.1 over a bore of 17: 0.05. Outside 19.5 in a bore of 20.1: 0.30 to the side.
  const text = sanderling().replace('through: 22.5', 'through: 20.1');
  const reach = pressedOut(planned(text))[0]?.reach;
  expect(reach?.by === 'none' || reach?.by === 'drift' ? reach.bare : null).toBeCloseTo(0.35, 6);
  // Half a millimetre more room, and a drift gets past the chamfer of 0.3 (ISO 15, 6803).
  const wider = pressedOut(planned(sanderling().replace('through: 22.5', 'through: 20.7')))[0];
  expect(wider?.reach).toMatchObject({ by: 'drift', aside: 'spacer.centre' });
  expect(wider?.reach.by === 'drift' ? wider.reach.bare : 0).toBeCloseTo(0.65, 6);
  expect(wider?.scrap).toBe(true);
});

test('a bearing without a shoulder behind it is pushed on its outer ring and may be used again', () => {
  const text = sanderling()
    .replace('through: 22.5', 'through: 26')
    .replace('left: { bore: 26 N7', 'left: { stop: spacer, bore: 26 N7')
    .replace('right: { bore: 26 N7', 'right: { stop: spacer, bore: 26 N7');
  const last = pressedOut(planned(text)).at(-1);
  expect(last?.reach.by).toBe('outer-ring');
  expect(last?.scrap).toBe(false);
});

test('depth below the face and the open stretch before the land follow from the written seat', () => {
  const text = sanderling().replaceAll('depth: 5.1', 'depth: 9, land: 4');
  const { below, path, relief } = inOf(planned(text), 'bearing.left');
  expect(below).toBeCloseTo(4, 1);
  expect(path.map(({ fit }) => fit)).toEqual(['loose', 'tight']);
  expect(path[0]?.to).toBeCloseTo(5, 1);
  expect(relief).toBeNull();
});

test('a bore that goes wide between two seats from one side is announced before it happens', () => {
  const rear = sample('plover-rear.hub.yaml')
    .replace(
      'left:  { bore: 28 N7, depth: 7.3 ±0.02',
      'left:  { from: right, bore: 28 N7, depth: 36.5 ±0.02, land: 7',
    )
    .replace('depth: 9.5 ±0.02', 'depth: 9.5 ±0.02\n      land: 7')
    .replace('between-shoulders: 20 ±0.02\n', '');
  // The outer seat is bored to its fit from 2.5 to 9.5 mm, the inner one from 29.5 to 36.5 mm.
  const { path, relief } = inOf(planned(rear), 'bearing.inboard');
  expect(path.map(({ fit }) => fit)).toEqual(['loose', 'tight', 'loose', 'tight']);
  expect(relief?.from).toBeCloseTo(9.5, 6);
  expect(relief?.to).toBeCloseTo(29.5, 6);
  expect(outOf(planned(rear), 'bearing.inboard').relief).toEqual(relief);
});

test('loose balls are caught when a cone leaves its cup', () => {
  const { apart } = planned(
    readFileSync(join(import.meta.dirname, '..', 'drawing', 'hubs', 'cup-and-cone.hub.yaml'), 'utf8'),
  );
  const balls = apart.flatMap((step) => step.balls);
  expect(balls.map(({ part }) => part).sort()).toEqual(['cone.left', 'cone.right']);
  expect(balls.map(({ count }) => count)).toEqual([9, 9]);
});

// Workshop notes on cup-and-cone hubs: the drive side is locked first, all adjusting is done on the other side
// (`common practice`).
test('the drive side of a cup-and-cone hub stays locked on its axle', () => {
  const { apart, together } = planned(
    readFileSync(join(import.meta.dirname, '..', 'drawing', 'hubs', 'cup-and-cone.hub.yaml'), 'utf8'),
  );
  const axle = apart.find(({ part }) => part === 'axle');
  expect(axle?.moving).toEqual(expect.arrayContaining(['axle', 'cone.right', 'locknut.right']));
  expect(axle?.towards).toBe('right');
  expect(before(together, 'screw-on locknut.right', 'slide-on axle')).toBe(true);
  expect(before(together, 'slide-on axle', 'screw-on cone.left')).toBe(true);
  // On the bench each part comes off by the nearer end.
  expect(apart.find(({ part }) => part === 'locknut.right')?.towards).toBe('right');
});

test('a retaining ring at the blind end comes out after its bearing and holds nothing by then', () => {
  const text = sanderling().replace(
    'left: { bore: 26 N7, depth: 5.1',
    'left: { bore: 26 N7, stop: ring, retaining-ring: { side: blind, thickness: 1.2, groove-width: 1.3, size: 26 }, depth: 5.1',
  );
  const { apart } = planned(text);
  expect(before(apart, 'press-out bearing.left', 'take-ring-out shell.left.retaining-ring')).toBe(true);
  const out = apart.find(({ kind }) => kind === 'take-ring-out');
  expect(out?.kind === 'take-ring-out' ? out.holds : null).toEqual([]);
});

test('two parts of one name, half a hub and a thousand shims are no trouble', () => {
  const twice = sanderling().replace('bearing: right', 'bearing: left');
  expect(planned(twice).apart.length).toBeGreaterThan(0);
  expect(planned('hub: Half\nposition: front\nwidth: 100\nstack:\n  - bearing: left\n').locked).toBeNull();
  const shims = '  - { shim: a, length: 0.1, inside: 17.1, outside: 19 }\n'.repeat(1000);
  const many = planned(sanderling().replace('stack:\n', `stack:\n${shims}`));
  expect(many.apart).toEqual([]);
  expect(many.assumed.join()).toContain('60 at most');
});

test('a plan is worked out once for a variant', () => {
  const analysis = analyzeText(sanderling());
  const [variant] = analysis.variants;
  if (!variant) throw new Error('the text is no hub');
  expect(planOf(variant, analysis)).toBe(planOf(variant, analysis));
});
