import { describe, expect, test } from 'vitest';
import { bucklingTension } from '../../../server/engine/wheel/buckling.ts';
import { ownTensionPerTurn } from '../../../server/engine/wheel/measured-tensions.ts';
import { slackLoad, tensionLeft } from '../../../server/engine/wheel/slack-load.ts';
import {
  loadedSpokeShare,
  sidewaysShare,
  wheelStiffness,
} from '../../../server/engine/wheel/wheel-stiffness.ts';
import { bucklingFactor, frameAnswer, tightened } from './frame-model.ts';
import { type ExampleWheel, examples, frame, ring, twoToOne } from './wheels.ts';

/** Both models of one wheel. */
function both(wheel: ExampleWheel) {
  const { rim, spokes } = ring(wheel);
  const stiffness = wheelStiffness(rim, spokes);
  if (!stiffness) throw new Error('the wheel has buckled');
  return { rim, spokes, stiffness, model: frameAnswer(frame(wheel)) };
}

// The frame model itself against figures of another frame model (the reference of this project's formulas).
test.each([
  ['vintage', 0, 81.26, 4493],
  ['vintage', 800, 57.98, 4430],
  ['offRoad', 0, 171.7, 6185],
  ['tandem', 0, 246, 6502],
  ['dished', 0, 92.4, 3533],
] as const)('the frame of the %s wheel at %i N agrees with another frame', (name, T, lateral, radial) => {
  const model = frameAnswer(frame({ ...examples[name], T }));
  expect(Math.abs(model.lateral / lateral - 1)).toBeLessThan(0.01);
  expect(Math.abs(model.radial / radial - 1)).toBeLessThan(0.01);
});

test('the frame of a thesis wheel sheds 44, 24 and 3 % of a load, within what its unknown sizes leave (Ford 2018)', () => {
  const { radialShares } = frameAnswer(frame(examples.vintage));
  expect(Math.abs((radialShares[0] ?? 0) - 0.44)).toBeLessThan(0.05);
  expect(Math.abs((radialShares[1] ?? 0) - 0.24)).toBeLessThan(0.05);
  expect(Math.abs((radialShares[2] ?? 0) - 0.03)).toBeLessThan(0.05);
});

test('the loaded spoke of 36 thin spokes takes 0.396 of the load (Brandt, as quoted; hub and crossings assumed)', () => {
  const thin = { R: 310, EI1: 78.68, EI2: 157.36, GJ: 26, D: 45, left: 35, right: 35, d: 1.6, Es: 200_000 };
  const { radialShares } = frameAnswer(frame({ ...thin, n: 36, crosses: 3, T: 0 }));
  expect(Math.abs((radialShares[0] ?? 0) - 0.396)).toBeLessThan(0.025);
});

describe.each(Object.entries(examples))('the %s wheel by waves and by its frame', (_, wheel) => {
  const { spokes, rim, stiffness, model } = both(wheel);
  const over = (a: number, b: number) => a / b - 1;

  test('sideways the waves lie within the stated two parts in a hundred above the frame', () => {
    const more = over(stiffness.lateral, model.lateral);
    expect(more).toBeGreaterThan(-0.005);
    expect(more).toBeLessThan(0.02);
  });

  test('radially they agree within four parts in a hundred', () => {
    expect(Math.abs(over(stiffness.radial, model.radial))).toBeLessThan(0.04);
  });

  test('round the axle they agree within two parts in a hundred', () => {
    // Radial spokes hold only by their tension.
    const turned = wheel.crosses === 0 ? both({ ...wheel, T: 800 }) : { stiffness, model };
    expect(Math.abs(over(turned.stiffness.tangential, turned.model.tangential))).toBeLessThan(0.02);
  });

  test('the spoke at the load loses the same share, under weight and from the side', () => {
    const [left] = spokes;
    if (!left) throw new Error('no spokes');
    expect(Math.abs(loadedSpokeShare(left, stiffness.give) - (model.radialShares[0] ?? 0))).toBeLessThan(
      0.03,
    );
    const sideways = model.lateralShares[0] ?? 0;
    expect(Math.abs(over(sidewaysShare(left, stiffness.give), sideways))).toBeLessThan(0.02);
  });

  test('a turn of one nipple adds the same tension within a tenth', () => {
    const [left] = spokes;
    if (!left) throw new Error('no spokes');
    const pitch = 25.4 / 56;
    const turn = tightened(frame(wheel), 0, pitch);
    expect(Math.abs(over(ownTensionPerTurn(left, stiffness.give, pitch), turn))).toBeLessThan(0.1);
  });

  test('it folds at the same tension within two parts in a hundred', () => {
    const factor = bucklingFactor(frame({ ...wheel, T: 1000 }));
    const found = bucklingTension(rim, spokes)?.tension ?? 0;
    const more = over(found, factor * 1000);
    expect(Math.abs(more)).toBeLessThan(0.02);
  });
});

// Cross-checked with the frame model of the reference.
test.each([
  ['vintage', 1525, 3, 50],
  ['offRoad', 2605, 3, 110],
  ['track', 3252, 2, 130],
] as const)('the %s wheel folds near %i N in %i waves', (name, tension, mode, within) => {
  const { rim, spokes } = ring(examples[name]);
  const answer = bucklingTension(rim, spokes);
  expect(Math.abs((answer?.tension ?? 0) - tension)).toBeLessThan(within);
  expect(answer?.mode).toBe(mode);
});

test('without a ripple of its rim, crossed spokes hold 275 N/mm round the axle; with it 178.7 (frame of the reference)', () => {
  const stiff = ring({ ...examples.crossed, EI1: 1e6 });
  expect(Math.abs((wheelStiffness(stiff.rim, stiff.spokes)?.tangential ?? 0) - 275)).toBeLessThan(2);
  const real = ring(examples.crossed);
  expect(Math.abs((wheelStiffness(real.rim, real.spokes)?.tangential ?? 0) - 178.7)).toBeLessThan(3);
});

test('at the slack load nothing is left, and a side force counts by its direction', () => {
  const { rim, spokes } = ring({ ...examples.dished, T: 600 });
  const give = wheelStiffness(rim, spokes)?.give;
  if (!give) throw new Error('the wheel has buckled');
  for (const spoke of spokes) {
    const load = slackLoad(spoke, give);
    expect(tensionLeft(spoke, give, { radial: load.radial, right: 0 })).toBeCloseTo(0, 6);
    expect(tensionLeft(spoke, give, { radial: 0, right: spoke.side * load.lateral })).toBeCloseTo(0, 6);
    expect(tensionLeft(spoke, give, { radial: 0, right: -spoke.side * 50 })).toBeGreaterThan(spoke.tension);
  }
});

test('a 2:1 wheel, one side radial and one crossed, agrees with its frame within the stated band', () => {
  const { rim, spokes, frame: built } = twoToOne({ left: 888, right: 1000 });
  const stiffness = wheelStiffness(rim, spokes);
  const model = frameAnswer(built);
  if (!stiffness) throw new Error('the wheel has buckled');
  expect(stiffness.lateral / model.lateral - 1).toBeGreaterThan(-0.02);
  expect(stiffness.lateral / model.lateral - 1).toBeLessThan(0.08);
  const factor = bucklingFactor(built);
  const more = (bucklingTension(rim, spokes)?.factor ?? 0) / factor - 1;
  expect(more).toBeGreaterThan(-0.02);
  expect(more).toBeLessThan(0.08);
});
