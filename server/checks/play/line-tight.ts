import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { type LineMechanics, lineMechanics } from '../../analysis/mechanics/line-mechanics.ts';
import { isWorked, type PairMechanics } from '../../analysis/mechanics/pair-mechanics.ts';
import { spacerOf } from '../../analysis/mechanics/spacer-of.ts';
import type { LoopTerm } from '../../assembly/loop.ts';
import { force, micrometres, millimetres } from '../../engine/base/figures.ts';
import type { Dimension } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { emptySeats } from '../empty-seats.ts';
import { rewriteFix } from '../rewrite.ts';
import { hasUnreadParts } from '../unread-parts.ts';
import { leastTravel } from './located-pair.ts';

const three = (second: string): string => `hub: Godwit rear
position: rear
width: 130 ±0.6
clamp: 5 kN
axle: { material: aluminium 7075, diameter: 17 h6, bore: 12.1 }
shell:
  material: aluminium 6061
  outside: 38
  length: 90.2 ±0.01
  seats:
    left: { bore: 26 N7, depth: 5.1 ±0.005, shoulder-bore: 23 }
    # allow seat-too-deep because the middle seat is reached through the right one
    middle: { bore: 26 N7, depth: 30.1 ±0.005, from: right, shoulder-bore: 23 }
    right: { bore: 26 N7, depth: 5.1 ±0.005, shoulder-bore: 23 }
stack:
  - end-cap: left
    length: 19.93 ±0.02
  - bearing: left
    code: 6803-2RS
    seat: shell.left
  - spacer: long
    length: 55.05 ±0.01
    inside: 17.1
    outside: 19.6
    material: steel
  - bearing: middle
    code: 6803-2RS
    seat: shell.middle
  - spacer: short
    length: ${second} ±0.01
    inside: 17.1
    outside: 19.6
    material: steel
  - bearing: right
    code: 6803-2RS
    seat: shell.right
  - end-cap: right
    length: 19.93 ±0.02
`;

/** Three bearings or more whose pairs each have play, and which together have none. */
export const lineTight: Check = {
  code: 'line-tight',
  group: 'play',
  severity: 'warning',
  summary:
    'More than two bearings in one housing have no play together, though each pair of neighbours has some.',
  page: {
    why: 'Each spacer between two bearings may stray as far as their clearance lets it. With three bearings in one housing the strays add up: the outermost two can be driven against each other while every pair by itself still has play. The balls of those two then carry what the lengths are wrong by.',
    bad: three('20.10'),
    good: three('20.06'),
    sources: [
      'play of any number of bearings, min(eᵢ + aᵢ) − max(eᵢ − aᵢ)',
      'ISO 5753, radial internal clearance',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => tight(analysis, variant)),
};

function* tight(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  if (hasUnreadParts(analysis) || emptySeats(variant).length > 0) return;
  const { lines, pairs, clamp } = variant.mechanics('built');
  for (const line of lines) {
    const { playClampedSigned: play, stops, bearings, housing } = line;
    const own = pairs.filter(isWorked).filter(({ loop }) => loop.housing === housing);
    const isEachFree = own.every(({ result }) => -leastTravel <= result.playClampedSigned);
    if (!Number.isFinite(play) || -leastTravel <= play || !isEachFree) continue;
    const best = bestChange(analysis, variant, line, own);
    const under = clamp ? ` clamped with ${force(clamp.force)}` : '';
    const most = Math.max(...bearings.map(({ force: load }) => Math.abs(load)));
    const carried = 0 < most ? `, and the balls carry up to ${force(most)}` : '';
    const change = best
      ? `${best.to < best.written.value.nominal ? 'shorten' : 'lengthen'} ${best.item.address} by ${millimetres(Math.abs(best.to - best.written.value.nominal))} to ${millimetres(best.to)}`
      : 'bring the spacers nearer to the distances of the stops';
    yield {
      path: best?.written.path ?? own[0]?.loop.terms[0]?.path ?? [],
      message: `the ${bearings.length} bearings of the ${housing} have no play together${under}: ${micrometres(-play)} are missing between ${[stops.left, stops.right].toSorted().join(' and ')}, though each pair has some${carried} — ${change}`,
      related: own.map(({ loop, result }) => ({
        path: loop.inner.find(({ key }) => key === 'length')?.path ?? loop.terms[0]?.path ?? [],
        message: `${loop.bearings.join(' and ')} alone: ${micrometres(result.playClampedSigned)} of play`,
      })),
      data: { playClampedSigned: play, ballLoad: most, bearings: bearings.map(({ address }) => address) },
      fixes: best
        ? [
            rewriteFix(analysis, best.written, best.to, {
              name: best.item.address,
              result: `${micrometres(best.play)} of play of all ${bearings.length} together`,
            }),
          ]
        : [],
    };
  }
}

interface Change {
  readonly item: LoopTerm;
  readonly written: Placed<Dimension>;
  readonly to: number;
  readonly play: number;
}

/** Lengths are tried this far to each side, in hundredths of a millimetre. */
const farthest = 30;

/** The spacer and the hundredth that leave the play nearest to the middle of what is wanted; null where none leaves any. */
function bestChange(
  analysis: Analysis,
  variant: VariantAnalysis,
  line: LineMechanics,
  own: readonly PairMechanics[],
): Change | null {
  const { assembly } = variant;
  const housing = line.housing === 'shell' ? assembly.shell : assembly.freehub;
  const most = analysis.limits.value('play-clamped');
  const off = ({ play }: Change): number => Math.abs(play - most / 2);
  let best: Change | null = null;
  for (const item of own.flatMap((pair) => spacerOf(variant, pair) ?? [])) {
    const written = assembly.line.find(({ address }) => address === item.address)?.part.values.length;
    if (!written || written.value.measured || !housing) continue;
    for (let step = -farthest; step <= farthest; step++) {
      const by = step / 100;
      const changed = own.map((pair) => lengthened(pair, item, by));
      const play = lineMechanics(assembly, housing, changed)?.playClampedSigned ?? -1;
      const found = { item, written, to: Math.round((written.value.nominal + by) * 1e4) / 1e4, play };
      if (leastTravel < play && (!best || off(found) < off(best) - 1e-9)) best = found;
    }
  }
  return best;
}

function lengthened(pair: PairMechanics, item: LoopTerm, by: number): PairMechanics {
  const shared = pair.loop.terms.find(({ path }) => path === item.path);
  if (!shared) return pair;
  const mismatch = pair.input.mismatch + shared.sign * shared.count * by;
  return { ...pair, input: { ...pair.input, mismatch } };
}
