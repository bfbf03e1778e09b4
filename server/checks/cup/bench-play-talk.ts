import type { Analysis } from '../../analysis/analyze.ts';
import type { Clamp } from '../../analysis/mechanics/clamp-of.ts';
import type { ConeMechanics } from '../../analysis/mechanics/cup-cone.ts';
import { force, length, micrometres } from '../../engine/base/figures.ts';
import { turnOfCone } from '../../engine/play/cup-and-cone.ts';
import { setValue } from '../../spec/edit.ts';
import type { Fix } from '../../spec/problem.ts';
import { withNominal } from '../../spec/with-nominal.ts';
import type { Related } from '../check.ts';
import { round } from '../loop-talk.ts';

/** The play to leave, in whole hundredths that never load the balls, mm. */
export function leaveOf({ leave }: ConeMechanics): number {
  return Math.ceil(leave * 100 - 1e-6) / 100;
}

/** `0.04 mm, 14° of the cone`; the turn only where the pitch is written. */
export function sayTravel(cones: ConeMechanics, travel: number): string {
  const turn = cones.thread ? turnOfCone(Math.abs(travel), cones.thread.pitch) : null;
  const degrees = turn === null ? '' : `, ${Math.round((turn * 180) / Math.PI)}° of the cone`;
  return `${length(Math.abs(travel))} mm${degrees}`;
}

/** Writes the play to leave, in the tolerance that stands there. */
export function leaveFix(analysis: Analysis, cones: ConeMechanics): Fix[] {
  const part = cones.cones.find(({ part }) => part.part.values.set?.path === cones.set?.path)?.part;
  const set = part?.part.values.set;
  if (!part || !set || !('nominal' in set.value)) return [];
  const to = leaveOf(cones);
  const left = to - cones.leave;
  return [
    {
      title: `Change set of ${part.address} to ${length(to)}: ${micrometres(left)} left once clamped`,
      changes: setValue(analysis.spec, set.path, withNominal(set.value, to)),
      preferred: true,
    },
  ];
}

/** What the play rests on. */
export function relatedCones(cones: ConeMechanics, clamp: Clamp): readonly Related[] {
  const said = cones.assumed.length > 0 ? `; ${cones.assumed.join('; ')}` : '';
  return [
    {
      path: clamp.path,
      message: `${force(clamp.force)} shortens the axle between the cones by ${length(cones.leave, 3)} mm${said}`,
    },
  ];
}

/** The numbers for `data`: mm, N, MPa, rad. */
export function coneData(cones: ConeMechanics, clamp: Clamp, limit: number): Record<string, unknown> {
  const { result, set, leave, thread } = cones;
  const shares = cones.shares(limit);
  const off = leaveOf(cones) - (set?.play ?? 0);
  return {
    set: set?.play ?? null,
    leave: round(leave),
    turn: thread ? turnOfCone(off, thread.pitch) : null,
    playClampedSigned: result ? round(result.playClampedSigned) : null,
    ballLoad: result ? round(result.ballLoad) : null,
    contactStress: result ? Math.max(result.left.contactStress, result.right.contactStress) : null,
    clampForce: clamp.force,
    shareLoaded: shares?.loaded ?? null,
    sharePlayHigh: shares?.playHigh ?? null,
    limits: [0, limit],
    assumptions: cones.assumed,
  };
}
