import { smallestTensions, tyreLoss, usualRimLimit } from '../../engine/tables/wheel-limits.ts';
import { balanced, type TensionBalance } from '../../engine/wheel/tension-balance.ts';
import type { Side } from '../../spec/model.ts';
import type { Wheel } from '../../spec/wheel-model.ts';
import { assumes, type Notes } from './notes.ts';
import type { SpokeGroup, WheelSide } from './wheel-spokes.ts';

/** Tension of one side against what limits it, N. */
export interface SideTension {
  readonly value: number;
  /** Highest allowed, and by what. */
  readonly most: number;
  readonly mostFrom: 'the rim' | 'the spoke' | 'the hub' | 'common practice';
  /** Lowest mean for a new wheel. */
  readonly least: number;
  /** With the tyre inflated; null where no tyre is written. */
  readonly withTyre: { readonly lo: number; readonly hi: number } | null;
}

/** What a spoke may have at most, N, and by what. */
interface Limit {
  readonly value: number;
  readonly from: SideTension['mostFrom'];
}

/** Tensions of both sides in balance. */
export interface WheelTension extends TensionBalance {
  /** The side with the higher tension; right for a wheel alike on both sides. */
  readonly taut: Side;
  /** The side and value that were set, and whether they were written. */
  readonly set: {
    readonly side: Side;
    readonly value: number;
    readonly spread: number | null;
    readonly written: boolean;
  };
  readonly sides: Readonly<Record<Side, SideTension>>;
}

/** What the taut side is taken to have where no tension is written, N: common practice, below most rims' limits. */
const usualTension = 1000;
/** Bead seats up to it count as 22 inch and less, mm. */
const smallBeadSeat = 457;

/** Balances the two sides from the tension that is written, or from a usual one, said so. */
export function wheelTension(wheel: Wheel, left: WheelSide, right: WheelSide, notes: Notes): WheelTension {
  const groups = { left: left.groups.map(asPull), right: right.groups.map(asPull) };
  const one = balanced(groups.left, groups.right, { side: 'right', tension: 1 });
  const taut: Side = 1 + 1e-9 < one.ratio ? 'left' : 'right';
  const written = wheel.tension?.values;
  const side = written?.side?.value ?? taut;
  const limit = { left: most(wheel, left), right: most(wheel, right) };
  const value = written?.value?.value.value ?? Math.min(usualTension, limit[side].value);
  if (!written?.value)
    assumes(notes, `tension taken as ${value} N on the ${side} side: tension.value is not written`);
  else if (!written.side)
    assumes(notes, `tension taken as that of the ${side} side, which has more: tension.side is not written`);
  const balance = balanced(groups.left, groups.right, { side, tension: value });
  if (limit[taut].from === 'common practice')
    assumes(notes, `rim taken to bear ${usualRimLimit} N a spoke: tension-limit is not written`);
  const sideTension = (of: Side): SideTension => ({
    value: balance[of],
    most: limit[of].value,
    mostFrom: limit[of].from,
    least: least(wheel, of === taut || Math.abs(one.ratio - 1) < 0.05),
    withTyre: withTyre(wheel, balance[of]),
  });
  return {
    ...balance,
    taut,
    set: { side, value, spread: written?.value?.value.spread ?? null, written: written?.value !== undefined },
    sides: { left: sideTension('left'), right: sideTension('right') },
  };
}

const asPull = ({ count, pull }: SpokeGroup) => ({ count, direction: pull });

/** The lowest of the limits that are written; a rim without one is taken as a usual one. */
function most(wheel: Wheel, { side, flange }: WheelSide): Limit {
  const rim = wheel.rim?.values['tension-limit']?.value.value;
  const spoke = wheel.spokes[side]?.values['tension-limit']?.value.value;
  const hub = flange.flange.values['tension-limit']?.value.value;
  const limits: readonly Limit[] = [
    rim === undefined ? { value: usualRimLimit, from: 'common practice' } : { value: rim, from: 'the rim' },
    ...(spoke === undefined ? [] : [{ value: spoke, from: 'the spoke' } as const]),
    ...(hub === undefined ? [] : [{ value: hub, from: 'the hub' } as const]),
  ];
  return limits.reduce((least, one) => (one.value < least.value ? one : least));
}

/** Of a dished wheel the slack side may have less. */
function least(wheel: Wheel, full: boolean): number {
  const beadSeat = wheel.rim?.values['bead-seat']?.value.nominal ?? Number.POSITIVE_INFINITY;
  const { mean, slackSideMean } = smallestTensions;
  return beadSeat <= smallBeadSeat ? mean.upTo22Inch : full ? mean.over22Inch : slackSideMean;
}

function withTyre(wheel: Wheel, tension: number): SideTension['withTyre'] {
  if (!wheel.tyre) return null;
  const width = wheel.tyre.values.width?.value.nominal ?? 0;
  const loss = tyreLoss.find(({ upTo }) => width <= upTo) ?? tyreLoss[1];
  return { lo: tension * (1 - loss.hi), hi: tension * (1 - loss.lo) };
}
