import type { VaryingPart } from '../../engine/play/build-clearance.ts';
import type { PairMechanics } from '../mechanics/pair-mechanics.ts';
import { countBuilds, varyingPair } from '../mechanics/pair-statistics.ts';
import { input, step, type TracedValue, type TraceStep } from './trace-step.ts';

/** From the straying of every dimension to the shares of builds that are loaded, loose or right. */
export function traceBuilds(
  pair: PairMechanics,
  how: 'drawn' | 'built',
  mostPlay: number,
): readonly TraceStep[] {
  const varying = varyingPair(pair, how);
  const { shares, builds, shareLoose } = countBuilds(varying, mostPlay);
  const between = pair.loop.bearings.join(' and ');
  const strays = ({ id, sigma }: Pick<VaryingPart, 'id' | 'sigma'>): TracedValue =>
    input(`σ of ${id}`, sigma, 'mm');
  const lengths = varying.lengths.filter(({ sigma }) => sigma > 0);
  const sides = [varying.left, varying.right].map(({ clearance, outer, inner }) =>
    [clearance, ...(outer?.parts ?? []), ...(inner?.parts ?? [])].filter(({ sigma }) => sigma > 0),
  );
  const apart = ['every dimension strays on its own, its tolerance being ±3σ about its middle'];
  const counted = input('builds', builds.playClamped.length, '1');
  const most = input('most play wanted', mostPlay, 'mm');
  return [
    step(
      input(`σ of δ of ${between}`, Math.hypot(...lengths.map(({ sigma }) => sigma)), 'mm'),
      'σδ = √Σσᵢ²',
      null,
      lengths.map(strays),
      apart,
    ),
    ...pair.loop.bearings.map((address, side) =>
      step(
        input(`σ of the clearance of ${address} and of the diameters about it`, hypotOf(sides[side]), 'mm'),
        'in each build G = G0 − loss of each fit that grips, then Ga = √(4·m0·G − G²)',
        'iso-5753-1',
        (sides[side] ?? []).map(strays),
        apart,
      ),
    ),
    step(
      input(`play of ${between} once clamped, half of the builds have more`, shares.median, 'mm'),
      'in each build min(eᵢ + aᵢ) − max(eᵢ − aᵢ), the clamp taken off δ; below none it is missing',
      null,
      [counted, input('σ of the play', shares.sigma, 'mm')],
    ),
    ...builds.contributions
      .slice(0, 4)
      .map(({ id, share }) =>
        step(
          input(`share of the variance of the play from ${id}`, share, '1'),
          'c₁² + c₂², the play in x and (x² − 1)/√2 of the dimension in its own σ',
          null,
          [],
        ),
      ),
    step(input('share of builds loaded', shares.loaded, '1'), 'builds whose play is missing / builds', null, [
      counted,
    ]),
    step(
      input('share of builds with too much play', shares.playHigh, '1'),
      'builds above the limit / builds',
      null,
      [counted, most],
    ),
    step(input('share of builds with a loose outer ring', shareLoose, '1'), 'the worse seat / builds', null, [
      counted,
    ]),
    step(input('share of builds right', shares.yield, '1'), '1 − loaded − too much play', null, [
      input('loaded', shares.loaded, '1'),
      input('too much play', shares.playHigh, '1'),
    ]),
  ];
}

const hypotOf = (parts: readonly { readonly sigma: number }[] | undefined): number =>
  Math.hypot(...(parts ?? []).map(({ sigma }) => sigma));
