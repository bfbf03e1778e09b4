import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { FilledSeat } from '../assembly/housings.ts';
import type { Workshop } from '../spec/workshop-model.ts';
import { type Blocking, blockingOf } from './blocking.ts';
import { type Bodies, bodiesOf } from './bodies.ts';
import type { Body } from './body.ts';
import { type Tie, tiesOf } from './ties.ts';

/** What the tools on the wall and the limits of the house say. */
export interface Bench {
  readonly workshop: Workshop | null;
  /** Warmest that a sealed bearing or a bonded shell may get, °C. */
  readonly warmest: number;
}

/** Everything the steps of one variant are worked out from. */
export interface Hubwork extends Bodies {
  readonly variant: VariantAnalysis;
  readonly bench: Bench;
  readonly find: ReadonlyMap<string, Body>;
  readonly blocking: Blocking;
  readonly ties: readonly Tie[];
  /** The seat of each bearing, by the bearing's address. */
  readonly seats: ReadonlyMap<string, FilledSeat>;
}

/** Gathers what the steps are worked out from. */
export function hubworkOf(variant: VariantAnalysis, bench: Bench): Hubwork {
  const cut = bodiesOf(variant);
  const { shell, freehub } = variant.assembly;
  const seats = [shell, freehub].flatMap((housing) => housing?.seats ?? []);
  return {
    ...cut,
    variant,
    bench,
    find: new Map(cut.bodies.map((body) => [body.address, body])),
    blocking: blockingOf(cut.bodies),
    ties: tiesOf(variant, cut.bodies),
    seats: new Map(seats.flatMap((seat) => seat.bearings.map(({ address }) => [address, seat] as const))),
  };
}
