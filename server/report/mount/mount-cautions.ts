import type { ResolvedLimits } from '../../analysis/limits.ts';
import { force, length, micrometres, stress } from '../../engine/base/figures.ts';
import type { BearingMount, MountAnswer } from './mount-answer.ts';
import type { PairMount } from './pair-mount.ts';

/** What to know before trusting or following a mounting, each a sentence. */
export function mountCautions(
  { bearings, pairs, service }: Omit<MountAnswer, 'cautions'>,
  limits: ResolvedLimits,
): readonly string[] {
  const cold = service.flatMap(({ temperature, bearings: then }) =>
    then.flatMap(({ address, mounted, interference }) => [
      ...(mounted !== null && mounted <= 0
        ? [
            `at ${length(temperature, 0)} °C ${address} has no clearance left: ${micrometres(mounted)} on average`,
          ]
        : []),
      ...(interference !== null && interference <= 0 && isPressHeld(bearings, address)
        ? [
            `at ${length(temperature, 0)} °C the seat of ${address} has let go: its outer ring is free to turn`,
          ]
        : []),
    ]),
  );
  return [...bearings.flatMap((bearing) => ofBearing(bearing, limits)), ...pairs.flatMap(ofPair), ...cold];
}

/** Whether its press alone holds an outer ring on the bench. */
function isPressHeld(bearings: readonly BearingMount[], address: string): boolean {
  const found = bearings.find((bearing) => bearing.address === address);
  return !found?.compound && 0 < (found?.outer?.interference.mean ?? 0);
}

function ofBearing(
  { address, mounted, outer, inner, thermalLoss, compound }: BearingMount,
  limits: ResolvedLimits,
): string[] {
  const said: string[] = [];
  if (mounted && mounted.mean <= 0) {
    said.push(
      `${0.0005 < thermalLoss ? 'the fits and the warmer inside' : 'the fits'} use up the clearance of ${address}: ${micrometres(mounted.mean)} on average, so it is loaded before any clamp`,
    );
  }
  if (outer && outer.interference.mean <= 0)
    said.push(
      compound
        ? `the outer ring of ${address} is loose in its seat on average: its retaining compound alone holds and centres it`
        : `the outer ring of ${address} is loose in its seat on average: it turns with the wheel and wears it`,
    );
  const most = limits.value('shell-yield');
  if (outer?.wallYield && most * outer.wallYield < outer.wallHoop) {
    said.push(
      `the wall round ${address} bears ${stress(outer.wallHoop)}, above ${most} of its yield ${stress(outer.wallYield)}`,
    );
  }
  const ringLimit = limits.value('ring-stress');
  for (const fit of [outer, inner]) {
    if (fit && ringLimit < Math.abs(fit.ringHoop))
      said.push(
        `the ${fit.ring} ring of ${address} bears ${stress(Math.abs(fit.ringHoop))}, above ${stress(ringLimit)}`,
      );
  }
  return said;
}

function ofPair({ bearings, dentShare, slid, ballLoad, loadedBy, grip }: PairMount): string[] {
  const between = bearings.join(' and ');
  const said: string[] = [];
  if (ballLoad !== null && 0 < ballLoad) {
    const way = loadedBy === 'short' ? 'pressed together' : 'pressed apart';
    said.push(`${between} are loaded with ${force(ballLoad)} when clamped: their inner rings are ${way}`);
  }
  if (dentShare !== null && 1 <= dentShare)
    said.push(`the balls of ${between} dent their grooves for good: the force is no longer valid`);
  if (slid === 'either')
    said.push(
      `an outer ring slides at ${force(grip)}; with equal grips which of ${between} moves cannot be told`,
    );
  if (slid === 'left' || slid === 'right')
    said.push(
      `the outer ring of ${slid === 'left' ? bearings[0] : bearings[1]} slides in its seat at ${force(grip)}`,
    );
  return said;
}
