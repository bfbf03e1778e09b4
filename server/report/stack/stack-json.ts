import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { Closed, LoopAnalysis } from '../../analysis/close.ts';
import type { ResolvedLimits } from '../../analysis/limits.ts';
import { shareOutsideOneBatch } from '../../analysis/one-batch.ts';
import type { GapLoop, Loop, LoopTerm, PairLoop, SeatLoop, Wanted, WidthLoop } from '../../assembly/loop.ts';
import { asBuilt } from '../../assembly/settle.ts';
import { conesJson } from '../mount/cone-lines.ts';
import { lineJson } from './line-json.ts';
import { bearingsJson, pairMechanicsJson } from './mechanics-json.ts';

/** What `stack --json` prints: a stable shape, documented in the README. The hub as written comes first. */
export function stackJson(file: string, variants: readonly VariantAnalysis[], limits: ResolvedLimits) {
  const mostPlay = limits.value('play-clamped');
  return { file, variants: variants.map((variant) => variantJson(variant, mostPlay)) };
}

function variantJson(variant: VariantAnalysis, mostPlay: number) {
  return {
    name: variant.name,
    width: widthJson(variant.width),
    pairs: variant.pairs.map((pair, index) => pairJson(pair, index, variant, mostPlay)),
    lines: linesJson(variant),
    cones: conesJson(variant.mechanics('built').cups, variant.mechanics('built').clamp, mostPlay),
    gaps: variant.gaps.map(gapJson),
    seats: variant.seats.map(seatJson),
    unchecked: variant.unchecked.map(({ what, missing }) => ({ what, missing })),
    assumed: assumptions(variant),
  };
}

function linesJson(variant: VariantAnalysis) {
  const measured = variant.pairs.some(({ built }) => built !== null);
  const { lines, clamp } = variant.mechanics('drawn');
  const built = variant.mechanics('built').lines;
  return lines.map((line, index) => {
    const now = measured ? built[index] : undefined;
    return {
      ...lineJson(line, clamp !== null),
      ...(now ? { measured: lineJson(now, clamp !== null) } : {}),
    };
  });
}

function widthJson({ loop, drawn, built }: LoopAnalysis<WidthLoop>) {
  const limits = limitsOf(loop.wanted);
  const part = (closed: Closed | null, how: 'drawn' | 'built') => ({
    ...figures(closed),
    limits,
    shareOutside: closed?.shareOutside ?? null,
    shareOutsideOneBatch: shareOutsideOneBatch(loop, how),
    contributions: contributions(loop, closed),
  });
  return { ...part(drawn, 'drawn'), ...(built ? { measured: part(built, 'built') } : {}) };
}

function pairJson(
  { loop, drawn, built }: LoopAnalysis<PairLoop>,
  index: number,
  variant: VariantAnalysis,
  mostPlay: number,
) {
  const part = (closed: Closed | null, how: 'drawn' | 'built') => ({
    inner: sum(loop, loop.inner, how),
    outer: loop.located === 'spacer' ? null : sum(loop, loop.outer, how),
    delta: closed?.nominal ?? null,
    deltaMean: closed?.mean ?? null,
    deltaWorst: closed?.worst ?? null,
    deltaRss: closed?.rss ?? null,
    ...pairMechanicsJson(variant.mechanics(how), index, how, mostPlay),
  });
  return {
    housing: loop.housing,
    ...part(drawn, 'drawn'),
    bearings: bearingsJson(loop, variant.mechanics('drawn')),
    located: loop.located,
    ...(built
      ? { measured: { ...part(built, 'built'), bearings: bearingsJson(loop, variant.mechanics('built')) } }
      : {}),
  };
}

function gapJson({ loop, drawn, built }: LoopAnalysis<GapLoop>) {
  const part = (closed: Closed | null) => ({
    ...figures(closed),
    shareOutside: closed?.shareOutside ?? null,
  });
  const wanted = limitsOf(loop.wanted);
  return {
    between: loop.between,
    role: loop.role,
    ...part(drawn),
    ...(wanted ? { wanted } : {}),
    ...(built ? { measured: part(built) } : {}),
  };
}

function seatJson({ loop, drawn, built }: LoopAnalysis<SeatLoop>) {
  return {
    seat: loop.seat,
    bearings: loop.bearings.map((address) => ({ address })),
    recess: figures(drawn),
    ...(built ? { measured: { recess: figures(built) } } : {}),
  };
}

function figures(closed: Closed | null) {
  const { nominal = null, mean = null, worst = null, rss = null } = closed ?? {};
  return { nominal, mean, worst, rss };
}

/** Both ends of the limits wanted; a least gap has no upper end. */
function limitsOf(wanted: Wanted | null): readonly [number, number] | null {
  return wanted ? [wanted.lo, wanted.hi] : null;
}

function contributions(loop: Loop, closed: Closed | null) {
  return (closed?.contributions ?? []).flatMap(({ id, share }) => {
    const item = loop.terms[Number(id)];
    return item ? [{ address: item.address, share }] : [];
  });
}

/** Nominal sum of one side of a pair, mm; null while a dimension of the loop is missing. */
function sum(loop: PairLoop, terms: readonly LoopTerm[], how: 'drawn' | 'built'): number | null {
  if (loop.missing.length > 0) return null;
  return terms.reduce((total, { sign, count, settled }) => {
    const { nominal } = how === 'drawn' ? settled.drawn : asBuilt(settled);
    return total + sign * count * nominal;
  }, 0);
}

/** What was taken for granted in the loops of a variant, each sentence once. */
export function assumptions(variant: VariantAnalysis): readonly string[] {
  const loops: readonly Loop[] = [variant.width, ...variant.pairs, ...variant.seats, ...variant.gaps].map(
    ({ loop }) => loop,
  );
  const said = loops.flatMap(({ terms, wanted }) => [wanted?.assumed ?? null, ...terms.map(ofPart)]);
  return [...new Set(said.filter((text) => text !== null))];
}

/** `length of spacer.centre: 62 taken as exact: …`: an assumption with the dimension it is about. */
function ofPart({ address, key, settled: { assumed } }: LoopTerm): string | null {
  if (assumed === null || assumed.includes(address)) return assumed;
  // A length of a housing has its key in its address: shell.between-shoulders.
  const part = address.endsWith(`.${key}`) ? address.slice(0, -key.length - 1) : address;
  return `${key === 'at' ? 'place' : key} of ${part}: ${assumed}`;
}
