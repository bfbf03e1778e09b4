import type { Analysis } from '../../analysis/analyze.ts';
import { varyingPair } from '../../analysis/mechanics/pair-statistics.ts';
import type { LoopTerm } from '../../assembly/loop.ts';
import { length, micrometres, millimetres, plain, share } from '../../engine/base/figures.ts';
import { type ClampedPair, clampedPair } from '../../engine/play/clamped-pair.ts';
import { PLAN } from '../../engine/play/play-statistics.ts';
import { setValue } from '../../spec/edit.ts';
import type { Dimension, StackPart } from '../../spec/model.ts';
import type { Placed, SpecPath } from '../../spec/place.ts';
import type { Fix, TextChange } from '../../spec/problem.ts';
import { withNominal } from '../../spec/with-nominal.ts';
import { capital } from '../length-fixes.ts';
import { mostRight } from './better-length.ts';
import { compareLengths } from './compare-lengths.ts';
import { isDeepGroove, type LocatedPair, leastTravel } from './located-pair.ts';
import { rightMismatch } from './right-mismatch.ts';

/** The length to write so that a pair has the play wanted once it is clamped. */
export interface PlayChange {
  readonly item: LoopTerm;
  readonly written: Placed<Dimension>;
  readonly from: number;
  readonly to: number;
  /** The pair as it is then, at the means. */
  readonly then: ClampedPair;
  /** Share of builds right then, 0 to 1; null where nothing clamps the pair or another length has most right. */
  readonly share: number | null;
}

/** Shims before spacers, spacers before a shoulder of the axle. */
const order: readonly StackPart['kind'][] = ['shim', 'washer', 'spacer', 'collar'];

/**
 * Lengths between the inner rings that could be rewritten, best first: each as the most builds want it, or where nothing
 * clamps the pair in the middle of the play allowed. Measured parts exist already and are left alone.
 */
export function playChanges(analysis: Analysis, located: LocatedPair): readonly PlayChange[] {
  const { variant, loop, pair, how, clamp } = located;
  const target = rightMismatch(located, analysis.limits.value('play-clamped') / 2);
  if (target === null || loop.located === 'spacer') return [];
  const varying = clamp && isDeepGroove(located) ? varyingPair(pair, how) : null;
  const found = loop.inner.flatMap((item): readonly (PlayChange & { readonly rank: number })[] => {
    const part = variant.assembly.line.find(({ address }) => address === item.address)?.part;
    const written = part?.values.length;
    const rank = part ? order.indexOf(part.kind) : -1;
    if (item.key !== 'length' || !written || rank === -1 || written.value.measured) return [];
    const from = written.value.nominal;
    const middle = from + (target - pair.input.mismatch) / item.count;
    const best = varying && compareLengths([{ located, item, written, varying }], mostRight(analysis), PLAN);
    const tried = [...(best ? [best.to] : []), Number(middle.toFixed(2)), Number(middle.toFixed(3))];
    for (const to of tried) {
      const mismatch = pair.input.mismatch + item.count * (to - from);
      const then = clampedPair({ ...pair.input, mismatch });
      if (to <= 0 || to === from || then.playClampedSigned <= leastTravel) continue;
      return [{ item, written, from, to, then, share: best?.to === to ? best.better.yield : null, rank }];
    }
    return [];
  });
  return found.sort((a, b) => a.rank - b.rank);
}

/** `lengthen spacer.centre by 0.03 to 62.09` */
export function sayPlayChange({ item, from, to }: Pick<PlayChange, 'item' | 'from' | 'to'>): string {
  const digits = Number.isInteger(Math.round(to * 1e6) / 1e4) ? 2 : 3;
  const verb = to < from ? 'shorten' : 'lengthen';
  return `${verb} ${item.address} by ${length(Math.abs(to - from), digits)} to ${length(to, digits)}`;
}

/** The length to change, where changing it brings the clamped width nearer too: what the width says of it waits. */
export function doubtedLengths(
  { variant }: LocatedPair,
  change: Pick<PlayChange, 'item' | 'written' | 'from' | 'to'> | undefined,
): readonly SpecPath[] {
  const { loop, drawn, built } = variant.width;
  const closed = built ?? drawn;
  const shared = change && loop.terms.find(({ path }) => path === change.item.path);
  if (!change || !shared || !closed || !loop.wanted) return [];
  const off = closed.mean - (loop.wanted.lo + loop.wanted.hi) / 2;
  return (change.to - change.from) * off < 0 ? [change.written.path] : [];
}

/** A quick fix for each length. Where the clamped width would leave its limits, both end caps give what the spacer takes. */
export function playFixes(
  analysis: Analysis,
  located: LocatedPair,
  changes: readonly PlayChange[],
): readonly Fix[] {
  return changes.map((change, index): Fix => {
    const { said, changes: edits, sound } = playEdit(analysis, located, change);
    return {
      title: `${capital(sayPlayChange(change))}${said}: ${sayThen(located, change)}`,
      changes: edits,
      preferred: index === 0 && sound,
    };
  });
}

/**
 * The edit that writes a length anew, its tolerance too where `text` gives one, and what both end caps give for it.
 * Not sound where the width would leave its limits and no cap can give anything.
 */
export function playEdit(
  analysis: Analysis,
  located: LocatedPair,
  change: Pick<PlayChange, 'item' | 'written' | 'from' | 'to'>,
  text = withNominal(change.written.value, change.to),
): { readonly said: string; readonly changes: readonly TextChange[]; readonly sound: boolean } {
  const caps = capsInstead(analysis, located, change);
  return {
    said: caps === 'unneeded' || caps === null ? '' : `, ${caps.said}`,
    changes: [
      ...setValue(analysis.spec, change.written.path, text),
      ...(caps === 'unneeded' ? [] : (caps?.changes ?? [])),
    ],
    sound: caps !== null,
  };
}

function sayThen({ clamp }: LocatedPair, { then, share: right }: PlayChange): string {
  const play = `${micrometres(then.playClampedSigned)} of play ${clamp ? 'once clamped' : 'on the bench'}`;
  return right === null ? play : `${play}, ${share(right)} of builds right`;
}

/** What both end caps must give; null where they cannot. */
function capsInstead(
  analysis: Analysis,
  { variant }: LocatedPair,
  { item, from, to }: Pick<PlayChange, 'item' | 'from' | 'to'>,
): 'unneeded' | { readonly said: string; readonly changes: readonly TextChange[] } | null {
  const { loop, drawn, built } = variant.width;
  const closed = built ?? drawn;
  const shared = loop.terms.find(({ path }) => path === item.path);
  if (!closed || !loop.wanted || !shared) return 'unneeded';
  const shift = shared.count * (to - from);
  const { lo, hi } = loop.wanted;
  const wasInside = lo <= closed.rss[0] && closed.rss[1] <= hi;
  if (!wasInside || (lo <= closed.rss[0] + shift && closed.rss[1] + shift <= hi)) return 'unneeded';
  const caps = variant.assembly.line.filter(({ part }) => part.kind === 'end-cap');
  const lengths = caps.flatMap(({ part }) => part.values.length ?? []);
  const [one, other] = lengths;
  if (!one || !other || lengths.length !== 2 || one.value.measured || other.value.measured) return null;
  const half = Number((shift / 2).toFixed(3));
  return {
    said: `${half < 0 ? 'lengthen' : 'shorten'} both end caps by ${plain(Math.abs(half))} so that the width stays ${millimetres(closed.mean)}`,
    changes: [one, other].flatMap((cap) =>
      setValue(
        analysis.spec,
        cap.path,
        withNominal(cap.value, Number((cap.value.nominal - half).toFixed(4))),
      ),
    ),
  };
}
