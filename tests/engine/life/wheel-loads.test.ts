import { expect, test } from 'vitest';
import { chainPull, hubReaction, rotorForce } from '../../../server/engine/life/wheel-loads.ts';
import { expectPrinted, numbers, workedExample } from '../../support/worked-examples.ts';

const still = { vertical: 0, lateral: 0, forward: 0, tyreRadius: 340, plane: 0, span: 100, others: [] };

test('a force between two supports falls on them as in the catalogue example', () => {
  const example = workedExample('load-02');
  const { F = 0, a = 0, b = 0 } = numbers(example);
  const found = hubReaction({ ...still, span: a + b, vertical: F, plane: a });
  expectPrinted(example, { FI: found.left.radial, FII: found.right.radial });
});

test('the tooth force of a wheel is the pull of a chain on its circle', () => {
  const example = workedExample('load-01');
  const { H = 0, Dp = 0, n = 0, alpha = 0 } = numbers(example);
  const torque = (H * 1e6 * 60) / (2 * Math.PI * n);
  const Kt = chainPull(torque, Dp) / 1000;
  const Ks = Kt * Math.tan((alpha * Math.PI) / 180);
  expectPrinted(example, { Kt, Ks, Kr: Math.hypot(Kt, Ks) });
});

test('a force outside both bearings lifts the far one', () => {
  // NTN, Ball and Roller Bearings, bearing loads: FA = (a + b)/b · FI, FB = −a/b · FI; a 20, b 80.
  const others = [{ at: -20, forward: 1000, up: 0 }];
  const found = hubReaction({ ...still, span: 80, others });
  expect(found.left.forward).toBeCloseTo(1250, 10);
  expect(found.right.forward).toBeCloseTo(-250, 10);
});

test('a side force at the tyre tips the wheel on its bearings and keeps the balance of forces and moments', () => {
  const load = { ...still, vertical: 400, lateral: 100, plane: 30, span: 60 };
  const { left, right, axial } = hubReaction(load);
  expect(left.up + right.up).toBeCloseTo(400, 10);
  // Moments about the left bearing in the upright plane: R·span = V·plane + T·r.
  expect(right.up * 60).toBeCloseTo(400 * 30 + 100 * 340, 8);
  expect(axial).toBe(100);
});

test('a mirrored wheel loads mirrored bearings', () => {
  const there = hubReaction({ ...still, vertical: 400, lateral: 80, plane: 25, span: 60 });
  const back = hubReaction({ ...still, vertical: 400, lateral: -80, plane: 35, span: 60 });
  expect(back.left.radial).toBeCloseTo(there.right.radial, 10);
  expect(back.right.radial).toBeCloseTo(there.left.radial, 10);
});

test('the pads push as much harder as the rotor is smaller than the wheel', () => {
  expect(rotorForce(300, 340, 80)).toBeCloseTo(1275, 10);
});
