import { bearingSuffixes } from '../tables/bearing-suffixes.ts';
import type { DecodedBearing } from './decoded-bearing.ts';

/** The parts a code is put together from, each as it is written. */
export interface Spelled {
  readonly prefix: string;
  readonly base: string;
  readonly closed: string;
  readonly cage: string;
  readonly full: string;
  readonly clearance: string;
  readonly tolerance: string;
  readonly material: string;
}

/** What a bearing is written with: spelled again, it decodes to the same bearing. */
export function spelledBearing(bearing: DecodedBearing): Spelled {
  const { closure, closedSides, rubs, clearance, toleranceClass, material, normalised } = bearing;
  const letters = closure === 'shield' ? (rubs ? 'TZ' : 'Z') : rubs === null ? 'RSL' : rubs ? 'RS' : 'RZ';
  return {
    // Ceramic balls hide what the rings are of: there the code itself says it.
    prefix:
      material === 'stainless' || (material === 'hybrid' && /^\s*S(?=\d|MR)/i.test(bearing.code)) ? 'S' : '',
    base: `${bearing.basic}${changedSize(normalised)}${letterOf(bearing)}`,
    closed: closure === 'open' ? '' : `-${closedSides === 2 ? '2' : ''}${letters}`,
    cage: cageSuffix(bearing.cage),
    full: bearing.fullComplement ? ' V' : '',
    clearance: clearance.group === 'N' ? '' : ` ${clearance.group}`,
    tolerance: toleranceClass === 'Normal' ? '' : ` P${toleranceClass}`,
    material: material === 'hybrid' ? ' HC' : '',
  };
}

/** The code of those parts. */
export const spell = (of: Spelled): string =>
  `${of.prefix}${of.base}${of.closed}${of.cage}${of.full}${of.clearance}${of.tolerance}${of.material}`;

/** A width or a bore that stands in the code beside the basic number. */
function changedSize(normalised: string): string {
  return /\/[\d/]+|W\d+(?:\.\d+)?/.exec(normalised)?.[0] ?? '';
}

/** The letter of a contact angle, as most makers write it. */
function letterOf({ kind, contactAngle }: DecodedBearing): string {
  if (kind !== 'angular-contact') return '';
  return { 15: 'C', 25: 'AC', 30: 'A', 40: 'B' }[contactAngle ?? 0] ?? '';
}

/** The first listed suffix that means a cage and nothing else. */
function cageSuffix(cage: string | null): string {
  if (cage === null) return '';
  const found = Object.entries(bearingSuffixes).find(
    ([, meaning]) => meaning.cage === cage && meaning.angle === undefined && !meaning.meanings,
  );
  return found ? ` ${found[0]}` : '';
}
