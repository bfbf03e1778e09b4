import { join } from 'node:path';
import { expect, test } from 'vitest';
import { section } from '../../server/assembly/section.ts';
import { hubOf, hubsIn } from '../support/hub-drawings.ts';

const hubs = hubsIn(join(import.meta.dirname, '../drawing/hubs'));
const cutOf = (name: string) => {
  const hub = hubs.find((one) => one.name === name);
  if (!hub) throw new Error(`no hub ${name}`);
  return section(hub.variant.assembly, hub.asWritten.assembly);
};
const partOf = (name: string, address: string) => {
  const part = cutOf(name).parts.find((one) => one.address === address);
  if (!part) throw new Error(`no part ${address}`);
  return part;
};

// 6803 is 17 × 26 × 5 and 6902 is 15 × 28 × 7 in ISO 15, dimension series 18 and 19.
test('a bearing has the rings its code says', () => {
  const { bearing } = partOf('front-sleeve', 'bearing.left');
  expect(bearing?.inner).toMatchObject({ inside: 17, left: 14.03 });
  expect(bearing?.inner.right).toBeCloseTo(19.03, 9);
  expect(bearing?.outer.outside).toBe(26);
  expect(partOf('rear-freehub', 'bearing.freehub-outer').bearing?.outer).toMatchObject({ outside: 28 });
});

test('every part is a ring: inside smaller than outside, steps that join without a gap', () => {
  for (const { variant, asWritten } of hubs) {
    for (const part of section(variant.assembly, asWritten.assembly).parts) {
      for (const [at, step] of part.steps.entries()) {
        expect(step.inside, part.address).toBeLessThan(step.outside);
        const next = part.steps[at + 1];
        if (next) expect(next.left, part.address).toBeCloseTo(step.right, 9);
      }
    }
  }
});

test('the parts of the stack stand face to face', () => {
  for (const { name, variant } of hubs) {
    if (name === 'cup-and-cone') continue;
    const cut = section(variant.assembly);
    const stack = variant.assembly.line.map(({ address }) =>
      cut.parts.find((part) => part.address === address),
    );
    expect(stack[0]?.left).toBe(0);
    for (const [at, part] of stack.entries()) {
      if (at > 0) expect(part?.left).toBeCloseTo(stack[at - 1]?.right ?? Number.NaN, 9);
    }
    expect(stack.at(-1)?.right).toBeCloseTo(cut.length, 9);
  }
});

// 62.06 between the inner rings, 62.05 between the shoulders: the pair is 0.01 too far apart, half of it on each side.
test('the seats of a shell are bored to their depth and stand the written distance apart', () => {
  const shell = partOf('front-sleeve', 'shell');
  const bored = shell.steps.filter(({ inside }) => inside === 26);
  const first = bored[0];
  const last = bored.at(-1);
  const leftShoulder = shell.steps.findLast((step) => step.inside === 26 && step.right < 50)?.right ?? 0;
  const rightShoulder = shell.steps.find((step) => step.inside === 26 && 50 < step.left)?.left ?? 0;
  expect(rightShoulder - leftShoulder).toBeCloseTo(62.05, 6);
  expect(leftShoulder - (first?.left ?? 0)).toBeCloseTo(5.5, 6);
  expect((last?.right ?? 0) - rightShoulder).toBeCloseTo(5.5, 6);
  expect(leftShoulder - 19.03).toBeCloseTo(0.005, 6);
});

test('a flange stands its distance from the middle of the hub, cut through a spoke hole', () => {
  const shell = partOf('front-sleeve', 'shell');
  expect(shell.spokeHoles).toHaveLength(2);
  expect(shell.spokeHoles[0]).toMatchObject({ circle: 38, hole: 2.6, thickness: 3.2 });
  expect(shell.spokeHoles[0]?.at).toBeCloseTo(50 - 32, 9);
  expect(shell.spokeHoles[1]?.at).toBeCloseTo(50 + 32, 9);
});

// The left cap grows by 17.5 and the shell moves with it: 34.6 − 17.1.
test('in a variant the flanges stay with the shell, not with the middle', () => {
  const written = partOf('family', 'shell').spokeHoles[0]?.at ?? 0;
  const offset = partOf('family-offset', 'shell').spokeHoles[0]?.at ?? 0;
  expect(offset - written).toBeCloseTo(17.5, 9);
});

// DIN 472, ring for a bore of 28: groove 29.4, ring 1.2 thick.
test('a retaining ring lies in the groove its standard wants, on the wall away from the bearing', () => {
  const ring = partOf('rear-freehub', 'freehub.outer.retaining-ring');
  const freehub = partOf('rear-freehub', 'freehub');
  const groove = freehub.steps.find(({ inside }) => inside === 29.4);
  expect(ring.right - ring.left).toBeCloseTo(1.2, 9);
  expect((groove?.right ?? 0) - (groove?.left ?? 0)).toBeCloseTo(1.3, 6);
  expect(groove?.right).toBeCloseTo(ring.right, 6);
  expect(freehub.right - ring.right).toBeCloseTo(1, 6);
  expect(ring.left).toBeGreaterThanOrEqual(
    partOf('rear-freehub', 'bearing.freehub-outer').bearing?.outer.right ?? 1e9,
  );
});

test('a collar is part of the axle, which is as thick as the collar there', () => {
  const collar = partOf('front-collar', 'collar.centre');
  expect(collar.ofAxle).toBe(true);
  const axle = partOf('front-collar', 'axle');
  expect(axle.steps.find(({ left }) => Math.abs(left - collar.left) < 1e-9)).toMatchObject({
    outside: 21,
    inside: 12.1,
  });
  expect(axle.right - axle.left).toBeCloseTo(96, 9);
});

test('a cap takes the end of the axle in its socket', () => {
  const cap = partOf('front-sleeve', 'end-cap.left');
  const socket = cap.steps.filter(({ inside }) => inside === 17);
  expect(socket[0]?.left).toBeCloseTo(14.03 - 8, 9);
  expect(socket.at(-1)?.right).toBeCloseTo(14.03, 9);
  expect(cap.steps.at(-1)?.outside).toBe(19.4);
  expect(cap.steps[0]).toMatchObject({ inside: 12.1, outside: 21 });
});

test('two missing lengths get usual ones, and both are said', () => {
  const { variant } = hubOf(
    'hub: A\nposition: front\nwidth: 100\nstack:\n  - end-cap: left\n    face: 20\n  - bearing: a\n    code: 6803\n  - spacer: s\n    inside: 17\n',
  );
  const { assumed, parts } = section(variant.assembly);
  expect(parts.filter(({ broken }) => broken).map(({ address }) => address)).toEqual([
    'end-cap.left',
    'spacer.s',
  ]);
  expect(assumed.filter((text) => text.includes('its length is not written'))).toHaveLength(2);
});

test('a stack with nothing in it has no parts and no fault', () => {
  const { variant } = hubOf('hub: A\nposition: front\nwidth: 100\nstack: []\n');
  expect(section(variant.assembly).parts).toEqual([]);
});
