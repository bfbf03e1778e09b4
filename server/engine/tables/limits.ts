import type { SourceId } from '../base/sources.ts';

/** A limit that a check holds a number against, with the value that holds when the workshop sets none. */
export interface DefaultLimit {
  readonly value: number;
  /** `1` for a share or a factor. */
  readonly unit: 'mm' | '1' | 'MPa' | '°C' | 'K' | 'N';
  /** What it means, as part of a sentence. */
  readonly meaning: string;
  readonly source: SourceId;
}

/** Every built-in limit. The names are the keys under `limits:` in a workshop file; a name is never reused. */
export const defaultLimits = {
  // Statistics
  'share-outside': {
    value: 0.0027,
    unit: '1',
    meaning: 'share of builds that may fall outside the limits: what a normal spread leaves beyond ±3σ',
    source: 'common-practice',
  },
  'yield-gain': {
    value: 0.05,
    unit: '1',
    meaning: 'how many more of all builds must come right before another length is proposed',
    source: 'common-practice',
  },
  measuring: {
    value: 0.02,
    unit: 'mm',
    meaning: 'uncertainty ± of a reading without its own: a calliper with a 0.01 or 0.02 mm scale',
    source: 'common-practice',
  },
  'measuring-micrometer': {
    value: 0.002,
    unit: 'mm',
    meaning: 'uncertainty ± of a reading by micrometer',
    source: 'common-practice',
  },

  // Stack
  'width-tolerance': {
    value: 0.1,
    unit: 'mm',
    meaning: 'tolerance ± of the clamped width where the spec gives none',
    source: 'common-practice',
  },
  'mirror-difference': {
    value: 0.005,
    unit: 'mm',
    meaning: 'how much two parts of one name left and right may differ and still count as the same part',
    source: 'common-practice',
  },
  'running-gap': {
    value: 0.3,
    unit: 'mm',
    meaning: 'smallest gap between a part that turns and one that stands still',
    source: 'common-practice',
  },
  'axle-reserve': {
    value: 0.2,
    unit: 'mm',
    meaning: 'smallest gap left at the end of an axle when its end cap clamps the stack',
    source: 'common-practice',
  },

  // Seats
  'seat-depth': {
    value: 0.05,
    unit: 'mm',
    meaning: 'how far an outer ring may stand proud of its seat before it counts as not carried',
    source: 'common-practice',
  },
  'seat-recess': {
    value: 1.5,
    unit: 'mm',
    meaning: 'how far a bearing may lie below the face of its housing with nothing written beside it',
    source: 'common-practice',
  },
  'seat-interference': {
    value: 0,
    unit: 'mm',
    meaning: 'smallest interference on average of an outer ring that turns with the wheel',
    source: 'common-practice',
  },
  'seat-interference-per-diameter': {
    value: 0.001,
    unit: '1',
    meaning: 'largest interference as a share of the diameter',
    source: 'ntn-2203e',
  },
  'compound-gap': {
    value: 0.15,
    unit: 'mm',
    meaning: 'widest room on the diameter that a retaining compound fills and still centres the ring',
    source: 'from-memory',
  },
  'ring-stress': {
    value: 127,
    unit: 'MPa',
    meaning: 'largest hoop stress that a press fit may put into a bearing ring',
    source: 'ntn-2203e',
  },
  'shell-wall': {
    value: 2,
    unit: 'mm',
    meaning: 'thinnest shell wall round a pressed bearing',
    source: 'common-practice',
  },
  'shell-yield': {
    value: 0.67,
    unit: '1',
    meaning: 'largest stress in the shell wall as a share of its yield',
    source: 'common-practice',
  },
  'journal-clearance': {
    value: 0.05,
    unit: 'mm',
    meaning: 'largest clearance on average between an inner ring and its journal',
    source: 'common-practice',
  },
  'spacer-clearance': {
    value: 0.3,
    unit: 'mm',
    meaning: 'largest diametral room of a spacer on its axle that still keeps it centred',
    source: 'common-practice',
  },
  'seal-gap': {
    value: 0.2,
    unit: 'mm',
    meaning: 'smallest radial room between the face of an end cap and the outer ring or its seal',
    source: 'common-practice',
  },

  // Play and load
  'play-clamped': {
    value: 0.05,
    unit: 'mm',
    meaning: 'largest axial play once clamped',
    source: 'common-practice',
  },
  'contact-stress': {
    value: 4200,
    unit: 'MPa',
    meaning: 'ball contact stress at which a groove keeps a dent of a ten-thousandth of the ball diameter',
    source: 'iso-76',
  },
  'angular-preload': {
    value: 0.05,
    unit: '1',
    meaning: 'largest preload of an angular-contact pair as a share of its static rating',
    source: 'from-memory',
  },
  'sleeve-yield': {
    value: 0.67,
    unit: '1',
    meaning: 'largest stress in a clamped spacer or axle as a share of its yield',
    source: 'common-practice',
  },
  'fitting-temperature': {
    value: 80,
    unit: '°C',
    meaning: 'warmest that a sealed bearing or a bonded shell may get',
    source: 'common-practice',
  },

  // Wheel
  'thread-engagement': {
    value: 4,
    unit: 'mm',
    meaning: 'shortest length of spoke thread inside its nipple',
    source: 'common-practice',
  },
} as const satisfies Record<string, DefaultLimit>;

/** The key of a limit, in code and in a workshop file. */
export type LimitName = keyof typeof defaultLimits;
