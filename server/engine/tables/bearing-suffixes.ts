import type { SourceId } from '../base/sources.ts';

/** What one suffix changes. Fields left out are left as they are. */
export interface SuffixMeaning {
  readonly closure?: 'shield' | 'seal';
  readonly sides?: 1 | 2;
  /** Whether the lip rubs; null when the published word for it leaves that open. */
  readonly rubs?: boolean | null;
  readonly clearance?: string;
  readonly tolerance?: 'Normal' | '6' | '5' | '4' | '2';
  readonly material?: 'stainless' | 'hybrid';
  readonly fullComplement?: true;
  readonly cage?: string;
  readonly angle?: number;
  /** Every meaning makers give, the one taken first; only where they differ. */
  readonly meanings?: readonly string[];
  readonly note?: string;
  readonly source: SourceId;
}

const shield = (sides: 1 | 2, source: SourceId): SuffixMeaning => ({
  closure: 'shield',
  sides,
  rubs: false,
  source,
});
const rubbing = (sides: 1 | 2, source: SourceId): SuffixMeaning => ({
  closure: 'seal',
  sides,
  rubs: true,
  source,
});
const free = (sides: 1 | 2, source: SourceId): SuffixMeaning => ({
  closure: 'seal',
  sides,
  rubs: false,
  source,
});

const light = 'The seal is published as rubbing lightly.';
const lowFriction = 'The seal is published as low-friction; whether its lip touches is not said.';
const fluoro = {
  meanings: ['contact seals of fluoro rubber', 'contact seals of another lip shape'],
} as const;
const polyamide = 'polyamide';
const matched = 'One of a matched pair; pairs are ground to be clamped face to face.';
const preload = "A preload class of a matched pair; its force is the maker's own.";

/** Suffixes of single and double row ball bearings, by spelling, as makers' lists give them. */
export const bearingSuffixes: Readonly<Record<string, SuffixMeaning>> = {
  Z: shield(1, 'skf-2017'),
  ZZ: shield(2, 'nsk-e1102e'),
  '2Z': shield(2, 'skf-2017'),
  ZS: shield(1, 'nsk-e1102e'),
  ZZS: shield(2, 'nsk-e1102e'),
  ZZ1: shield(2, 'nsk-e1102e'),
  ZZX: shield(2, 'koyo-203e'),
  '2ZS': shield(2, 'skf-2017'),
  HH: shield(2, 'nmb-ball'),
  RS: rubbing(1, 'nke-2018'),
  '2RS': rubbing(2, 'nke-2018'),
  RS1: rubbing(1, 'skf-2017'),
  '2RS1': rubbing(2, 'skf-2017'),
  RS2: { ...rubbing(1, 'skf-2017'), ...fluoro },
  '2RS2': { ...rubbing(2, 'skf-2017'), ...fluoro },
  RSH: rubbing(1, 'skf-2017'),
  '2RSH': rubbing(2, 'skf-2017'),
  RSL: { closure: 'seal', sides: 1, rubs: null, note: lowFriction, source: 'skf-2017' },
  '2RSL': { closure: 'seal', sides: 2, rubs: null, note: lowFriction, source: 'skf-2017' },
  RZ: free(1, 'skf-2017'),
  '2RZ': free(2, 'skf-2017'),
  RSR: rubbing(1, 'schaeffler-hr1'),
  '2RSR': rubbing(2, 'schaeffler-hr1'),
  LFS: free(1, 'nke-2018'),
  '2LFS': free(2, 'nke-2018'),
  LB: free(1, 'ntn-2203e'),
  LLB: free(2, 'ntn-2203e'),
  LU: rubbing(1, 'ntn-2203e'),
  LLU: rubbing(2, 'ntn-2203e'),
  LH: { ...rubbing(1, 'ntn-2203e'), note: light },
  LLH: { ...rubbing(2, 'ntn-2203e'), note: light },
  LLF: free(2, 'ntn-2203e'),
  VV: free(2, 'nsk-e1102e'),
  DD: rubbing(2, 'nsk-e1102e'),
  DU: rubbing(1, 'nsk-e1102e'),
  DDU: rubbing(2, 'nsk-e1102e'),
  D: {
    ...rubbing(1, 'nsk-e1102e'),
    rubs: null,
    meanings: ['contact seal on one side', 'oil hole in the outer ring'],
  },
  RU: free(1, 'koyo-203e'),
  '2RU': free(2, 'koyo-203e'),
  RD: { ...rubbing(1, 'koyo-203e'), note: light },
  '2RD': { ...rubbing(2, 'koyo-203e'), note: light },
  RK: rubbing(1, 'koyo-203e'),
  '2RK': rubbing(2, 'koyo-203e'),
  NSL: rubbing(1, 'from-memory'),
  '2NSL': rubbing(2, 'from-memory'),
  NSE: rubbing(1, 'from-memory'),
  '2NSE': rubbing(2, 'from-memory'),
  NK: free(1, 'from-memory'),
  '2NK': free(2, 'from-memory'),
  NKE: free(1, 'from-memory'),
  '2NKE': free(2, 'from-memory'),
  TS: { ...rubbing(1, 'zen-2012'), note: light },
  '2TS': { ...rubbing(2, 'zen-2012'), note: light },
  TZ: { closure: 'shield', sides: 1, rubs: true, note: light, source: 'zen-2012' },
  '2TZ': { closure: 'shield', sides: 2, rubs: true, note: light, source: 'zen-2012' },

  C1: { clearance: 'C1', source: 'nsk-e1102e' },
  C2: { clearance: 'C2', source: 'iso-5753-1' },
  CN: { clearance: 'N', source: 'iso-5753-1' },
  C0: { clearance: 'N', source: 'common-practice' },
  C3: { clearance: 'C3', source: 'iso-5753-1' },
  C4: { clearance: 'C4', source: 'iso-5753-1' },
  C5: { clearance: 'C5', source: 'iso-5753-1' },
  CM: { clearance: 'CM', source: 'nsk-e1102e' },

  P0: { tolerance: 'Normal', source: 'iso-492' },
  PN: { tolerance: 'Normal', source: 'iso-492' },
  P6: { tolerance: '6', source: 'iso-492' },
  P5: { tolerance: '5', source: 'iso-492' },
  P4: { tolerance: '4', source: 'iso-492' },
  P4A: {
    tolerance: '4',
    note: "P4A is a maker's class near class 4; the limits are those of class 4.",
    source: 'from-memory',
  },
  P2: { tolerance: '2', source: 'iso-492' },

  HC5: { material: 'hybrid', source: 'skf-2017' },
  HC: { material: 'hybrid', source: 'common-practice' },
  CB: { material: 'hybrid', source: 'common-practice' },
  CER: { material: 'hybrid', source: 'common-practice' },
  HYB: { material: 'hybrid', source: 'zen-2012' },
  HYBRID: { material: 'hybrid', source: 'common-practice' },
  CERAMIC: { material: 'hybrid', source: 'common-practice' },
  SS: { material: 'stainless', source: 'common-practice' },
  INOX: { material: 'stainless', source: 'common-practice' },
  STAINLESS: { material: 'stainless', source: 'common-practice' },

  V: {
    fullComplement: true,
    meanings: ['full complement, no cage', 'non-contact seal on one side'],
    source: 'nke-2018',
  },
  MAX: {
    fullComplement: true,
    meanings: [
      'full complement, no cage (cycle trade)',
      'more balls through filling slots, with a cage, not for high axial load',
    ],
    source: 'common-practice',
  },

  TN9: { cage: polyamide, source: 'skf-2017' },
  TN: { cage: polyamide, source: 'skf-2017' },
  TNH: { cage: 'polymer', source: 'from-memory' },
  T2: { cage: polyamide, source: 'ntn-2203e' },
  TVH: { cage: polyamide, source: 'nke-2018' },
  TVP: { cage: polyamide, source: 'nke-2018' },
  T: { cage: polyamide, source: 'nsk-e1102e' },
  J: { cage: 'pressed steel', source: 'ntn-2203e' },
  W: {
    cage: 'pressed steel',
    meanings: ['pressed steel cage', 'stainless steel or a width, where it stands in front or has a number'],
    source: 'nsk-e1102e',
  },
  M: { cage: 'machined brass', source: 'skf-2017' },

  N: { note: 'The outer ring has a groove for a snap ring.', source: 'skf-2017' },
  NR: { note: 'The outer ring has a groove with a snap ring in it.', source: 'skf-2017' },
  R: {
    note: "Written R, the outer ring has a flange or the design is a maker's own.",
    meanings: ['flanged outer ring', "a maker's own design of the same size"],
    source: 'skf-2017',
  },
  K: { note: 'The bore is tapered 1:12; fits of a straight bore do not hold.', source: 'nsk-e1102e' },
  X: {
    note: 'An X can stand for a size outside the ISO series: measure the bearing.',
    meanings: ['boundary dimensions off the ISO series', 'a bore of a half millimetre in very small sizes'],
    source: 'skf-2017',
  },
  DB: { note: matched, source: 'nsk-e1102e' },
  DF: { note: matched, source: 'nsk-e1102e' },
  DT: { note: matched, source: 'nsk-e1102e' },
  GA: { note: preload, source: 'skf-2017' },
  GB: { note: preload, source: 'skf-2017' },
  GC: { note: preload, source: 'skf-2017' },
  GL: { note: preload, source: 'ntn-2203e' },
  GN: { note: preload, source: 'ntn-2203e' },
  GM: { note: preload, source: 'ntn-2203e' },
  GH: { note: preload, source: 'ntn-2203e' },
  EL: { note: preload, source: 'nsk-e1102e' },
};

/** Letters that follow a deep groove number and only name a maker's design of the same size. */
export const designLetters: readonly string[] = ['A', 'AA', 'B', 'E'];

const makersDiffer = (angle: number, other: string): Pick<SuffixMeaning, 'angle' | 'meanings'> => ({
  angle,
  meanings: [`contact angle ${angle}°`, other],
});

/** Contact angle letters of single row angular contact bearings, degrees. */
export const contactLetters: Readonly<Record<string, SuffixMeaning>> = {
  C: { angle: 15, source: 'nsk-e1102e' },
  CD: { angle: 15, source: 'from-memory' },
  CE: { angle: 15, source: 'from-memory' },
  AC: { angle: 25, source: 'from-memory' },
  ACD: { angle: 25, source: 'from-memory' },
  ACE: { angle: 25, source: 'from-memory' },
  A5: { angle: 25, source: 'nsk-e1102e' },
  E: { angle: 25, source: 'from-memory' },
  A: { ...makersDiffer(30, 'contact angle 25° with some makers'), source: 'nsk-e1102e' },
  B: { angle: 40, source: 'nsk-e1102e' },
  BE: { angle: 40, source: 'from-memory' },
  BEP: { angle: 40, cage: polyamide, source: 'from-memory' },
  BEM: { angle: 40, cage: 'machined brass', source: 'from-memory' },
};

/** Classes of the American standard with their ISO 492 class, by number after ABEC. */
export const abecClasses: Readonly<Record<string, 'Normal' | '6' | '5' | '4' | '2'>> = {
  '1': 'Normal',
  '3': '6',
  '5': '5',
  '7': '4',
  '9': '2',
};
