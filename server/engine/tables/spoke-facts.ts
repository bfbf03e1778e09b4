import type { SourceId } from '../base/sources.ts';

/** Thread of a spoke, mm. */
export interface SpokeThread {
  readonly major: number;
  readonly minor: number;
  readonly pitch: number;
  /** Diameter of the wire it is rolled on. */
  readonly wire: number;
}

/** Cycle threads of spokes, 56 to the inch (source `din-79012`). */
export const spokeThreads: Readonly<Record<'FG 2' | 'FG 2.3' | 'FG 2.6', SpokeThread>> = {
  'FG 2': { major: 2.096, minor: 1.613, pitch: 25.4 / 56, wire: 1.8 },
  'FG 2.3': { major: 2.299, minor: 1.816, pitch: 25.4 / 56, wire: 2.0 },
  'FG 2.6': { major: 2.604, minor: 2.121, pitch: 25.4 / 56, wire: 2.3 },
};

/** Where the threads were read. */
export const spokeThreadsSource: SourceId = 'din-79012';

/** Thick end of a butted spoke, each, mm: a research spoke has 71 mm of thick wire in 276. */
export const buttLength = 35.5;
/** Where it was read. */
export const buttLengthSource: SourceId = 'ford-wheel';

/** Modulus of spoke wire, MPa, where no material with its own is named. Two texts use 210 000; cold-drawn stainless is often measured between 180 000 and 200 000. */
export const spokeModulus = 200_000;
/** How sure the modulus is. */
export const spokeModulusSource: SourceId = 'from-memory';

/** Density of stainless spoke wire, kg/m³. */
export const spokeDensity = 7900;
/** How sure the density is. */
export const spokeDensitySource: SourceId = 'from-memory';

/** What an unwritten size of spoke and nipple is taken to be, mm. */
export const nippleFacts = {
  /** Thread of a spoke. */
  threadLength: 9.5,
  /** Thread inside a nipple of 12 mm or more, from the bottom of the slot down; longer ones have a longer plain entry. */
  nippleThread: 8,
  /** Plain entry and slot of a shorter nipple. */
  plainPart: 4,
  /** From the face that rests on the rim to the bottom of the slot. */
  seatToSlot: 2,
  /** From the bottom of the slot to the top of the head. */
  slotDepth: 1,
  /** Width of the head of a spoke over the diameter of its wire. */
  headOverWire: 1.9,
} as const;
/** How sure they are. */
export const nippleFactsSource: SourceId = 'from-memory';

/** How far the end of a spoke may stand below (−) or above the bottom of the slot, mm, by what the nipple is made of. */
export const endBand: Readonly<Record<'brass' | 'aluminium', { readonly lo: number; readonly hi: number }>> =
  {
    brass: { lo: -2, hi: 1 },
    aluminium: { lo: -1, hi: 1 },
  };
/** How sure the band is. */
export const endBandSource: SourceId = 'from-memory';
