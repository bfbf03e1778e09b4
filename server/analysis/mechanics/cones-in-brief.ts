import { force, length, micrometres, millimetres, share, stress } from '../../engine/base/figures.ts';
import { turnOfCone } from '../../engine/play/cup-and-cone.ts';
import type { Clamp } from './clamp-of.ts';
import type { ConeSide } from './cone-side.ts';
import type { ConeMechanics } from './cup-cone.ts';

/** `leave 52 µm, 19° of the cone`: the play the clamp takes up, for whoever sets the cones. */
export function leaveInBrief({ leave, thread }: ConeMechanics): string {
  if (thread === null) return `leave ${micrometres(leave)} on the bench`;
  const turn = Math.round((turnOfCone(leave, thread.pitch) * 180) / Math.PI);
  return `leave ${micrometres(leave)} on the bench, ${turn}° of the cone on a pitch of ${length(thread.pitch)} mm`;
}

/** What becomes of the play that is set once the hub is clamped; null where no play is written. */
export function clampedInBrief({ result }: ConeMechanics, clamp: Clamp | null): string | null {
  if (!result || !clamp) return null;
  if (result.ballLoad <= 0) return `clamped ${micrometres(result.playClamped)}`;
  const most = Math.max(result.left.contactStress, result.right.contactStress);
  return `clamped none, ${force(result.ballLoad)} on the balls, contact stress ${stress(most)}`;
}

/** `10 balls of 4.763 mm on 17.4 mm: 6.42 mm left, 11 fit`; null where balls or circle are not written. */
export function ballsInBrief({ balls }: ConeSide): string | null {
  if (!balls) return null;
  const { count, diameter, circle, gap, most } = balls;
  const room = gap < 0 ? `${millimetres(-gap)} too many` : `${millimetres(gap)} left`;
  return `${count} balls of ${length(diameter, 3)} mm on a circle of ${length(circle)} mm: ${room}, ${most} fill it`;
}

/** Shares of many settings; null without a clamp or a written play. */
export function settingsInBrief(cones: ConeMechanics, mostPlay: number): string | null {
  const shares = cones.shares(mostPlay);
  return shares && `${share(shares.loaded)} loaded, ${share(shares.playHigh)} with too much play`;
}
