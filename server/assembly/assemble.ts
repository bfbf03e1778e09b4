import type { StackPart } from '../spec/model.ts';
import type { SpecPath } from '../spec/place.ts';
import type { Workshop } from '../spec/workshop-model.ts';
import { readStackBearing, type StackBearing } from './bearings.ts';
import { besideGaps } from './beside-gaps.ts';
import { endCapGaps } from './end-cap-gaps.ts';
import { axleEndGap, freehubGap } from './gap-loops.ts';
import { type FilledHousing, fillHousing } from './housings.ts';
import { type LinePart, placeLine } from './line.ts';
import type { GapLoop, PairLoop, SeatLoop, WidthLoop } from './loop.ts';
import { pairLoops } from './pair-loops.ts';
import { retainingRingLoops, seatLoops } from './seat-loops.ts';
import type { SettlingRules } from './settle.ts';
import type { ResolvedHub } from './variants.ts';
import { widthLoop } from './width-loop.ts';

/** Something that could not be worked out, and what it would take. */
export interface Unchecked {
  readonly what: string;
  readonly missing: string;
  readonly path: SpecPath;
}

/** One variant put together: where every part sits, what it touches, and the loops that close on it. */
export interface Assembly {
  readonly hub: ResolvedHub;
  readonly rules: SettlingRules;
  readonly line: readonly LinePart[];
  readonly bearings: readonly StackBearing[];
  readonly shell: FilledHousing | null;
  readonly freehub: FilledHousing | null;
  readonly width: WidthLoop;
  readonly pairs: readonly PairLoop[];
  readonly seats: readonly SeatLoop[];
  readonly gaps: readonly GapLoop[];
}

/** Numbers of the workshop an assembly needs, with the built-in ones filled in. */
export interface AssemblyLimits {
  /** ± mm */
  readonly measuring: number;
  /** ± mm */
  readonly widthTolerance: number;
  /** Least gap of a freehub that writes none, mm. */
  readonly runningGap: number;
}

/** Puts one variant together. What cannot be placed for want of a dimension leaves a loop with its `missing`. */
export function assemble(hub: ResolvedHub, workshop: Workshop | null, limits: AssemblyLimits): Assembly {
  const rules: SettlingRules = {
    untoleranced: hub.values.untoleranced?.value ?? null,
    measuring: limits.measuring,
  };
  const read = new Map<StackPart, StackBearing>();
  for (const part of hub.stack) {
    if (part.kind === 'bearing') read.set(part, readStackBearing(part, rules, workshop));
  }
  const line = placeLine(hub.stack, read, rules, hub.values.width?.value.nominal ?? null);
  const shell = hub.shell ? fillHousing(hub.shell, line, rules) : null;
  const freehub = hub.freehub ? fillHousing(hub.freehub, line, rules) : null;
  const housings = [shell, freehub].filter((housing) => housing !== null);
  const running = freehubGap(shell, freehub, line, rules, limits.runningGap);
  const axleEnd = axleEndGap(hub, line, rules);
  return {
    hub,
    rules,
    line,
    bearings: [...read.values()],
    shell,
    freehub,
    width: widthLoop(hub, line, rules, limits.widthTolerance),
    pairs: housings.flatMap((housing) => pairLoops(housing, line, rules)),
    seats: housings.flatMap((housing) => seatLoops(housing, rules)),
    gaps: [
      ...(running ? [running] : []),
      ...housings.flatMap((housing) => retainingRingLoops(housing, rules)),
      ...housings.flatMap((housing) => endCapGaps(housing, line, rules, limits.runningGap)),
      ...(axleEnd ? [axleEnd] : []),
      ...besideGaps(hub, line, rules),
    ],
  };
}
