import type { Analysis } from '../../analysis/analyze.ts';
import { plain, share } from '../../engine/base/figures.ts';
import type { WantedShare } from '../../engine/play/best-yield.ts';
import { PLAN } from '../../engine/play/play-statistics.ts';
import { widestSpacer, withTolerance } from '../../engine/play/widest-spacer.ts';
import type { SpecPath } from '../../spec/place.ts';
import type { Fix } from '../../spec/problem.ts';
import { withNominal } from '../../spec/with-nominal.ts';
import { spacerUses } from './better-length.ts';
import { compareLengths, type SpacerUse } from './compare-lengths.ts';
import { playEdit } from './play-fixes.ts';

type Uses = readonly [SpacerUse, ...SpacerUse[]];

/** A rewrite that gains less than this share of the builds is not worth offering. */
const leastGain = 0.002;
/** A spacer ground to a few micrometres: the narrowest tolerance offered, mm. */
const ground = 0.005;

/**
 * What could be written for the spacer at a path so that more builds have the play wanted: another length, and another
 * tolerance with the length that goes with it. Each title says what it gives and what there is now.
 */
export function spacerRewrites(analysis: Analysis, path: SpecPath): readonly Fix[] {
  const at = JSON.stringify(path);
  const uses = spacerUses(analysis).find(([{ written }]) => JSON.stringify(written.path) === at);
  if (!uses) return [];
  const { limits } = analysis;
  const wanted = { mostPlay: limits.value('play-clamped'), share: 1 - limits.value('share-outside') };
  const [{ written, item }] = uses;
  const { lower, upper, nominal } = item.settled.drawn;
  const half = (upper - lower) / 2;
  const { to, now, better } = compareLengths(uses, wanted, PLAN);
  const length =
    0 < to && to !== nominal && now.yield + leastGain <= better.yield
      ? [rewrite(analysis, uses, to, withNominal(written.value, to), better.yield, now.yield)]
      : [];
  // A class or a size in inches has a notation of its own, which a ± would spoil.
  if (written.value.tolerance.kind === 'class' || written.value.unit === 'in') return length;
  const tolerance = otherTolerance(uses, wanted, half, better.yield);
  if (tolerance === null) return length;
  const changed = uses.map((use) => ({
    ...use,
    varying: withTolerance(use.varying, use.item.address, tolerance, use.item.count),
  })) as unknown as Uses;
  const found = compareLengths(changed, wanted, PLAN);
  const gains = better.yield + leastGain <= found.better.yield;
  const enough = wanted.share <= found.better.yield;
  if (found.to <= 0 || (tolerance < half ? !gains : !enough)) return length;
  // The middle of a one-sided tolerance becomes the nominal of the new one.
  const middle = Number((found.to + (lower + upper) / 2).toFixed(3));
  const text = `${plain(middle)} ±${plain(tolerance)}`;
  return [...length, rewrite(analysis, uses, middle, text, found.better.yield, now.yield)];
}

/** The widest usual tolerance where it is wider and enough, or is closer and reaches; else a ground one; null for none. */
function otherTolerance(uses: Uses, wanted: WantedShare, half: number, reached: number): number | null {
  // One use is enough where the others differ in their clamp, which only moves the length.
  const widest = uses
    .slice(0, 1)
    .map(({ varying, item }) => widestSpacer(varying, item.address, wanted, item.count));
  const least = Math.min(...widest.map((tolerance) => tolerance ?? 0));
  if (wanted.share <= reached) return half < least ? least : null;
  if (ground <= least && least < half) return least;
  return ground < half ? ground : null;
}

function rewrite(
  analysis: Analysis,
  [{ located, item, written }]: Uses,
  to: number,
  text: string,
  then: number,
  now: number,
): Fix {
  const change = { item, written, from: written.value.nominal, to };
  const { said, changes } = playEdit(analysis, located, change, text);
  const title = `Write ${text} for ${item.address}${said}: ${share(then)} of builds come right, now ${share(now)}`;
  return { title, changes };
}
