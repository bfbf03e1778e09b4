import type { SpokeDirection } from './spoke-line.ts';

/** Spokes of one side that run alike. */
export interface BalanceGroup {
  readonly count: number;
  readonly direction: SpokeDirection;
}

/** What the pulls of the two sides must share. */
export interface TensionBalance {
  /** Tension left over tension right. */
  readonly ratio: number;
  readonly left: number;
  readonly right: number;
  /** Hoop force in the rim, N. */
  readonly rimCompression: number;
}

/** Tension left over right at which the rim stands still sideways: Σ n·T·c1 of both sides are equal. */
export function balanceRatio(left: readonly BalanceGroup[], right: readonly BalanceGroup[]): number {
  return sideways(right) / sideways(left);
}

/** Both tensions from the one that is set, N. Tensions are means of a side; spokes of a side pull alike. */
export function balanced(
  left: readonly BalanceGroup[],
  right: readonly BalanceGroup[],
  set: { readonly side: 'left' | 'right'; readonly tension: number },
): TensionBalance {
  const ratio = balanceRatio(left, right);
  const tensions =
    set.side === 'right'
      ? { left: set.tension * ratio, right: set.tension }
      : { left: set.tension, right: set.tension / ratio };
  return { ratio, ...tensions, rimCompression: hoopForce(left, right, tensions) };
}

/** Hoop force of the rim, C = Σ T·c2/(2π), N: Σ n·T·c2 is the pull towards the axle summed round the rim. */
export function hoopForce(
  left: readonly BalanceGroup[],
  right: readonly BalanceGroup[],
  tensions: { readonly left: number; readonly right: number },
): number {
  return (tensions.left * inwards(left) + tensions.right * inwards(right)) / (2 * Math.PI);
}

/** How much the radius of the rim shrinks under its hoop force, v = C·R/(E·A), mm. */
export function rimShrinkage(hoop: number, radius: number, axial: number): number {
  return (hoop * radius) / axial;
}

/** Tension a spoke gains or loses under a torque at the hub (N·mm) that all share, N. */
export function torqueTension(groups: readonly BalanceGroup[], radius: number, torque: number): number {
  const arm = groups.reduce((sum, { count, direction }) => sum + count * Math.abs(direction.tangential), 0);
  return torque / (arm * radius);
}

function sideways(groups: readonly BalanceGroup[]): number {
  return groups.reduce((sum, { count, direction }) => sum + count * direction.lateral, 0);
}

function inwards(groups: readonly BalanceGroup[]): number {
  return groups.reduce((sum, { count, direction }) => sum + count * direction.radial, 0);
}
