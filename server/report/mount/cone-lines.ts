import type { Clamp } from '../../analysis/mechanics/clamp-of.ts';
import {
  ballsInBrief,
  clampedInBrief,
  leaveInBrief,
  settingsInBrief,
} from '../../analysis/mechanics/cones-in-brief.ts';
import { type coneMechanics, isConeWorked } from '../../analysis/mechanics/cup-cone.ts';
import { millimetres } from '../../engine/base/figures.ts';
import { turnOfCone } from '../../engine/play/cup-and-cone.ts';
import { textTable } from '../text-table.ts';

type Cups = ReturnType<typeof coneMechanics>;

/** A hub set by cones for people; empty without cones. */
export function coneLines(cups: Cups, clamp: Clamp | null, mostPlay: number): readonly string[] {
  if (cups === null) return [];
  if (!isConeWorked(cups)) return ['', `  Cones not worked out — missing: ${cups.missing}`];
  const many = settingsInBrief(cups, mostPlay);
  const rows = [
    ...cups.cones.flatMap((side) => {
      const balls = ballsInBrief(side);
      return balls === null ? [] : [[`balls of ${side.part.address}`, balls]];
    }),
    ['play for the clamp', clamp ? leaveInBrief(cups) : 'needs clamp: a force or a torque'],
    ...(cups.set ? [['set on the bench to', millimetres(cups.set.play, 3)]] : []),
    ...(cups.result ? [['in the frame', clampedInBrief(cups, clamp) ?? 'needs clamp']] : []),
    ...(many === null ? [] : [['of many settings', many]]),
    ...cups.missing.map((missing) => ['not worked out, missing', missing]),
  ];
  return [
    '',
    `  ${cups.races.join(' and ')}, set by hand`,
    ...textTable(rows, { indent: 4 }),
    ...cups.assumed.map((text) => `    assumed: ${text}`),
  ];
}

/** The same for `--json`: mm, N, MPa, degrees; null without cones. */
export function conesJson(cups: Cups, clamp: Clamp | null, mostPlay: number) {
  if (cups === null) return null;
  if (!isConeWorked(cups)) return { missing: [cups.missing] };
  const { races, cones, set, leave, thread, axleForce, missing, assumed } = cups;
  const result = clamp ? cups.result : null;
  const shares = cups.shares(mostPlay);
  const turn = thread ? (turnOfCone(leave, thread.pitch) * 180) / Math.PI : null;
  return {
    races,
    cones: cones.map(({ part, balls, angle }) => ({
      address: part.address,
      balls: balls && {
        count: balls.count,
        diameter: balls.diameter,
        circle: balls.circle,
        gap: balls.gap,
        most: balls.most,
      },
      contactAngle: (angle * 180) / Math.PI,
    })),
    leave: clamp ? leave : null,
    turn: clamp ? turn : null,
    set: set?.play ?? null,
    axleForce: clamp ? axleForce : null,
    playClamped: result?.playClamped ?? null,
    ballLoad: result?.ballLoad ?? null,
    contactStress: result ? Math.max(result.left.contactStress, result.right.contactStress) : null,
    dentShare: result ? Math.max(result.left.dentShare, result.right.dentShare) : null,
    shareLoaded: shares?.loaded ?? null,
    sharePlayHigh: shares?.playHigh ?? null,
    missing,
    assumptions: assumed,
  };
}
