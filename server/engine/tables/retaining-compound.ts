import type { SourceId } from '../base/sources.ts';

/**
 * What a cured retaining compound stands between a ring and its seat in shear, MPa: makers measure with a steel pin
 * and collar after ISO 10123 and allow about half of it on light alloy; new from 10 to 20 there, 5 once it has seen
 * heat and water. From memory, makers differ.
 */
export const compoundStrength: {
  readonly least: number;
  readonly typical: number;
  readonly most: number;
  readonly source: SourceId;
} = { least: 5, typical: 10, most: 20, source: 'from-memory' };
