import type { SourceId } from '../base/sources.ts';

/** Smallest tensions of a new wheel, N (source `jis-d-9301`, as a test institute summarises it). */
export const smallestTensions = {
  /** Mean of a side by the nominal diameter of the wheel. */
  mean: { over22Inch: 400, upTo22Inch: 300 },
  /** Of the side with the lower tension of a dished wheel. */
  slackSideMean: 300,
  /** No single spoke at or below it. */
  single: 150,
} as const;
/** Where they were read. */
export const smallestTensionsSource: SourceId = 'jis-d-9301';

/** Highest tension a rim usually bears, N, where its maker says nothing. */
export const usualRimLimit = 1200;
/** How sure it is. */
export const usualRimLimitSource: SourceId = 'common-practice';

/** How far single spokes may stray from the mean of their side: shares of it. */
export const tensionSpread = { good: 0.1, acceptable: 0.2 } as const;
/** How sure it is. */
export const tensionSpreadSource: SourceId = 'common-practice';

/** How far the ratio of the sides may stray from balance before a reading is doubted. */
export const ratioBand = 0.1;
/** How sure it is. */
export const ratioBandSource: SourceId = 'common-practice';

/** Share of the buckling tension at which a wheel can visibly no longer be kept true (source `ford-wheel`). */
export const outOfTrueShare = 0.5;
/** Where it was read. */
export const outOfTrueShareSource: SourceId = 'ford-wheel';

/** Share of its spokes' tension that a wheel loses when the tyre is inflated, by the width of the tyre, mm. */
export const tyreLoss = [
  { upTo: 30, lo: 0.05, hi: 0.1 },
  { upTo: Number.POSITIVE_INFINITY, lo: 0.05, hi: 0.3 },
] as const;
/** How sure it is: one published figure of 7 % for a 25 mm tyre at 8 bar, and statements of the trade for wide ones. */
export const tyreLossSource: SourceId = 'common-practice';
