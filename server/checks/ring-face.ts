import type { StackBearing } from '../assembly/bearings.ts';
import type { LinePart } from '../assembly/line.ts';
import { length } from '../engine/base/figures.ts';

/** How far out a part that bears on a bearing's inner ring may reach, where it reaches too far. */
export interface RingFace {
  readonly touches: 'outer ring' | 'seal';
  /** Largest diameter that stays on the inner ring, mm, to a tenth. */
  readonly most: number;
  readonly estimated: boolean;
  /** `ends at 19.7 mm (estimated from the section)` */
  readonly said: string;
}

/** Bearings directly left and right of a part of the line. */
export function neighbours(line: readonly LinePart[], part: LinePart): readonly StackBearing[] {
  const at = line.indexOf(part);
  return [line[at - 1], line[at + 1]].flatMap((other) => other?.bearing ?? []);
}

/**
 * What a face of this diameter touches beside the inner ring; null while it stays clear. An estimated shoulder
 * leaves a quarter of the way to the outer ring in doubt: makers' shoulders differ by that much.
 */
export function ringFace(bearing: StackBearing, diameter: number, sealGap: number): RingFace | null {
  const { innerOutside, outerInside } = bearing;
  if (!innerOutside || outerInside === null || !bearing.bearing) return null;
  const doubt = innerOutside.estimated ? (outerInside - innerOutside.value) / 4 : 0;
  const base = {
    most: Math.floor(innerOutside.value * 10) / 10,
    estimated: innerOutside.estimated,
    said: `ends at ${length(innerOutside.value, 1)} mm${innerOutside.estimated ? ' (estimated from the section)' : ''}`,
  };
  if (outerInside - 2 * sealGap < diameter) return { ...base, touches: 'outer ring' };
  if (bearing.bearing.closure !== 'open' && innerOutside.value + doubt < diameter)
    return { ...base, touches: 'seal' };
  return null;
}
