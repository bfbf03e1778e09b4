import { axialHalfRange } from '../../engine/contact/axial-load.ts';
import { area } from '../../engine/play/clamp-compression.ts';
import type { Clamp } from '../mechanics/clamp-of.ts';
import type { PairMechanics } from '../mechanics/pair-mechanics.ts';
import type { PairSetting } from '../mechanics/pair-setting.ts';
import type { Squeezed } from '../mechanics/squeezed-between.ts';
import { input, step, type TracedValue, type TraceStep } from './trace-step.ts';

/** From δ and the axial clearances to play and load, as the clamp leaves them; all at the means. */
export function tracePair(pair: PairMechanics, clamp: Clamp | null): readonly TraceStep[] {
  const { input: given, result, loop, setting } = pair;
  if (setting?.kind === 'spring') return springSteps(setting, result.ballLoad);
  const between = loop.bearings.join(' and ');
  const half = [given.left, given.right].map(({ bearing }) => axialHalfRange(bearing));
  const ranges: readonly TracedValue[] = loop.bearings.map((address, side) =>
    input(`a of ${address}`, half[side] ?? 0, 'mm'),
  );
  const deltaGiven = input('δ', given.mismatch, 'mm');
  const play = 'min(eᵢ + aᵢ) − max(eᵢ − aᵢ); two equal bearings: 2a − |δ|';
  const flush = [`faces of ${between} taken as flush where no face-offset is written`];
  const steps: TraceStep[] = setting ? [settingStep(pair, setting)] : [];
  if (Number.isFinite(result.playUnclamped)) {
    const unclamped = input(`play of ${between} before clamping`, result.playUnclamped, 'mm');
    steps.push(step(unclamped, play, 'harris-analysis', [...ranges, deltaGiven], flush));
  }
  if (!clamp) return steps;
  const compliance = input('Σ L/(E·A) between the inner rings', given.spacerCompliance, 'mm/N');
  const force = input('clamp force F', given.clampForce, 'N');
  const taken = given.clampForce * given.spacerCompliance;
  const clamped = given.mismatch - taken;
  steps.push(
    step(force, null, null, [], clamp.assumed),
    step(
      input(`the clamp takes from the inner distance of ${between}`, taken, 'mm'),
      'F · Σ L/(E·A)',
      null,
      [force, compliance, ...pair.squeezed.flatMap(ofStretch)],
      pair.assumed.filter((text) => /spacer|collar|shim|washer/.test(text)),
    ),
    step(input('δ once clamped', clamped, 'mm'), 'δc = δ − F · Σ L/(E·A)', null, [
      deltaGiven,
      input('F · Σ L/(E·A)', taken, 'mm'),
    ]),
    step(
      input(`play of ${between} once clamped`, result.playClamped, 'mm'),
      play.replaceAll('δ', 'δc'),
      'harris-analysis',
      [...ranges, input('δc', clamped, 'mm')],
    ),
  );
  return [...steps, ...loadSteps(pair, between, clamped)];
}

/** What an adjuster is set to is where everything behind it begins. */
function settingStep({ loop }: PairMechanics, setting: PairSetting): TraceStep {
  const { address, play, preload, mismatch, assumed } = setting;
  const set =
    play === null
      ? input(`preload by ${address}`, preload ?? 0, 'N')
      : input(`play ${address} is set to`, play, 'mm');
  const delta = input(`δ of ${loop.bearings.join(' and ')} as set on the bench`, mismatch, 'mm');
  return step(
    delta,
    'the place of the adjuster at which the bearings have that play or carry that force',
    null,
    [set],
    assumed,
  );
}

function springSteps({ address, rate, preload, assumed }: PairSetting, load: number): readonly TraceStep[] {
  const pressed = input(`preload by ${address}`, preload ?? 0, 'N');
  return [
    step(
      pressed,
      '(free height − height as assembled) ÷ yield of the spring',
      null,
      [input(`yield of ${address}`, rate ? 1 / rate : 0, 'mm/N')],
      assumed,
    ),
    step(
      input('axial force through each bearing', load, 'N'),
      'no more than what holds the outer rings',
      null,
      [pressed],
    ),
  ];
}

function ofStretch(stretch: Squeezed): readonly TracedValue[] {
  const { address, length, E } = stretch;
  return [
    input(`L of ${address}`, length, 'mm'),
    input(`A of ${address}`, area(stretch), 'mm²'),
    input(`E of ${address}`, E, 'MPa'),
  ];
}

/** What the balls carry where no play is left. */
function loadSteps(pair: PairMechanics, between: string, clamped: number): readonly TraceStep[] {
  const { input: given, result } = pair;
  if (result.ballLoad <= 0) return [];
  const short = result.loadedBy === 'short';
  const load = input(`axial force through each of ${between}`, result.ballLoad, 'N');
  const give = [
    input('|δc|', Math.abs(clamped), 'mm'),
    input('Cp between the inner rings', given.spacerCompliance, 'mm/N'),
    input('Cs of the shell', given.housingCompliance, 'mm/N'),
  ];
  const how =
    result.slid !== 'no'
      ? 'the grip of the seat, µ·p·π·D·B, and τ·π·D·B of a retaining compound: the ring slides at this force'
      : result.spacerReached
        ? 'N from o(N) + N·(Cp + Cs) = |δc|, o both axial displacements under Hertz contact'
        : 'the whole clamp force: the rings never reach the spacer';
  const stress = Math.max(result.left.contactStress, result.right.contactStress);
  return [
    step(load, how, 'harris-analysis', give),
    step(input('force left in the spacer', result.spacerLoad, 'N'), short ? 'F − N' : 'F + N', null, [
      input('F', given.clampForce, 'N'),
      input('N', result.ballLoad, 'N'),
    ]),
    step(
      input('greatest contact stress', stress, 'MPa'),
      'Hertz, elliptic contact of ball and groove, load shared by all balls',
      'timoshenko-goodier',
      [
        input('N', result.ballLoad, 'N'),
        input('balls', pair.left.geometry.count, '1'),
        input('ball diameter', pair.left.geometry.diameter, 'mm'),
        input('contact angle', (result.left.state.angle * 180) / Math.PI, '°'),
      ],
    ),
  ];
}
