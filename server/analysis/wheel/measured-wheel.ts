import { ratioBand, tensionSpread } from '../../engine/tables/wheel-limits.ts';
import {
  ownTensionPerTurn,
  type StrayTension,
  strayTensions,
  type TensionStatistics,
  tensionStatistics,
} from '../../engine/wheel/measured-tensions.ts';
import type { Side } from '../../spec/model.ts';
import type { SpecPath } from '../../spec/place.ts';
import type { Wheel } from '../../spec/wheel-model.ts';
import { threadPitch } from './group-length.ts';
import { lacks, type Notes } from './notes.ts';
import { springsOf, type WheelSide } from './wheel-spokes.ts';
import type { WheelStrength } from './wheel-strength.ts';
import type { WheelTension } from './wheel-tension.ts';

/** Readings of one side. */
export interface MeasuredSide extends TensionStatistics {
  readonly path: SpecPath;
  readonly readings: readonly number[];
  /** Spokes of this side. */
  readonly spokes: number;
  /** Spokes further from the mean than a good wheel allows, the furthest first; `turns` null without the rim's stiffness. */
  readonly outliers: readonly (Omit<StrayTension, 'turns'> & { readonly turns: number | null })[];
}

/** Readings of both sides against the balance. */
export interface MeasuredWheel {
  readonly sides: Readonly<Record<Side, MeasuredSide | null>>;
  /** Mean left over mean right; null where one side was not read. */
  readonly ratio: number | null;
  /** What the balance asks for. */
  readonly balance: number;
  /** How far the ratio is from the balance, as a share of it. */
  readonly off: number | null;
  /** Whether that is more than readings leave in doubt. */
  readonly doubtful: boolean;
}

/** Works out what a meter read; null where nothing was read. */
export function measuredWheel(
  wheel: Wheel,
  sides: readonly WheelSide[],
  tension: WheelTension,
  strength: WheelStrength | null,
  notes: Notes,
): MeasuredWheel | null {
  const of = (name: Side): MeasuredSide | null => {
    const placed = wheel.measured[name];
    const side = sides.find((one) => one.side === name);
    const statistics = placed ? tensionStatistics(placed.value) : null;
    if (!placed || !side || !statistics) return null;
    const readings = placed.value;
    if (readings.length !== side.count)
      lacks(
        notes,
        `spread of the ${name} side`,
        `${side.count} readings, one a spoke; ${readings.length} are written`,
        placed.path,
      );
    const [group] = side.groups;
    const perTurn =
      strength && group
        ? ownTensionPerTurn(
            springsOf(group, statistics.mean),
            strength.stiffness.give,
            threadPitch(wheel, side),
          )
        : null;
    const outliers = strayTensions(readings, tensionSpread.good, perTurn ?? 1).map((one) => ({
      ...one,
      turns: perTurn === null ? null : one.turns,
    }));
    return { ...statistics, path: placed.path, readings, spokes: side.count, outliers };
  };
  const both = { left: of('left'), right: of('right') };
  if (!both.left && !both.right) return null;
  const ratio = both.left && both.right ? both.left.mean / both.right.mean : null;
  const off = ratio === null ? null : ratio / tension.ratio - 1;
  return {
    sides: both,
    ratio,
    balance: tension.ratio,
    off,
    doubtful: off !== null && ratioBand < Math.abs(off),
  };
}
