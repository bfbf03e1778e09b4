import type { Limits, Settled } from '../assembly/settle.ts';
import { asBuilt, meanOf, sizeRange } from '../assembly/settle.ts';
import { length, micrometres } from '../engine/base/figures.ts';
import { toleranceZone } from '../engine/fits/tolerance-zone.ts';

/** Interference of two mating diameters, mm; negative is clearance. */
export interface Interference {
  readonly least: number;
  readonly mean: number;
  readonly most: number;
}

/** A hole on an inner part, both as built where they were measured. */
export function interference(hole: Settled, inner: Settled): Interference {
  const [h, s]: readonly [Limits, Limits] = [asBuilt(hole), asBuilt(inner)];
  const [holeLo, holeHi] = sizeRange(h);
  const [innerLo, innerHi] = sizeRange(s);
  return { least: innerLo - holeHi, mean: meanOf(s) - meanOf(h), most: innerHi - holeLo };
}

/** Interference of a ring in a bore of `size` mm with a class such as `N7`; null where the class has no limits there. */
export function interferenceInClass(size: number, name: string, ring: Settled): Interference | null {
  const [, letters = '', grade = ''] = /^([A-Z]+)(\d+)$/.exec(name) ?? [];
  const zone = toleranceZone(size, { letters, grade: Number(grade), kind: 'hole' });
  if ('error' in zone) return null;
  return interference({ drawn: { nominal: size, ...zone }, built: null, path: [], assumed: null }, ring);
}

/** `13 µm of interference on average (−2 to 28)` */
export function sayInterference({ least, mean, most }: Interference): string {
  const word = mean < 0 ? 'clearance' : 'interference';
  const [lo, hi] = mean < 0 ? [-most, -least] : [least, most];
  return `${micrometres(Math.abs(mean))} of ${word} on average (${length(lo * 1000, 0)} to ${length(hi * 1000, 0)})`;
}
