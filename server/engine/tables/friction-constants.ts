import type { SourceId } from '../base/sources.ts';

/** Constants of rolling (r1, r2) and sliding (s1, s2) friction of deep groove bearings, loads in N, sizes in mm. */
export interface FrictionConstants {
  readonly r1: number;
  readonly r2: number;
  readonly s1: number;
  readonly s2: number;
}

/** By series: the first digits of the basic number. */
export const frictionConstants: Readonly<Record<'60' | '62' | '618' | '619' | '160', FrictionConstants>> = {
  '60': { r1: 4.1e-7, r2: 1.7, s1: 3.73e-3, s2: 14.6 },
  '62': { r1: 3.9e-7, r2: 1.7, s1: 3.23e-3, s2: 36.5 },
  '618': { r1: 4.7e-7, r2: 1.7, s1: 6.5e-3, s2: 0.78 },
  '619': { r1: 4.3e-7, r2: 1.7, s1: 4.75e-3, s2: 3.6 },
  '160': { r1: 4.3e-7, r2: 1.7, s1: 4.63e-3, s2: 4.25 },
};

/** Friction of a pair of lips: (factor · ds^power + constant) in N·mm, ds in mm. */
export interface SealConstants {
  /** Outside diameter of the bearing up to which they hold, mm. */
  readonly upTo: number;
  readonly factor: number;
  readonly power: number;
  readonly constant: number;
}

/** Kinds of closure by how their lip touches; the first row whose limit holds the bearing is taken. */
export const sealConstants: Readonly<
  Record<'light contact' | 'gap' | 'full contact' | 'reinforced contact', readonly SealConstants[]>
> = {
  'light contact': [
    { upTo: 25, factor: 0, power: 0, constant: 0 },
    { upTo: 52, factor: 0.0018, power: 2.25, constant: 0 },
  ],
  gap: [{ upTo: 175, factor: 0, power: 0, constant: 0 }],
  'full contact': [{ upTo: 52, factor: 0.028, power: 2.25, constant: 2 }],
  'reinforced contact': [
    { upTo: 62, factor: 0.023, power: 2.25, constant: 2 },
    { upTo: 80, factor: 0.018, power: 2.25, constant: 20 },
  ],
};

/** Where both tables were read. */
export const frictionConstantsSource: SourceId = 'skf-general-ru';
