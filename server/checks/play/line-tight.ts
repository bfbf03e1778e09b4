import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { force, micrometres, millimetres, plain } from '../../engine/base/figures.ts';
import type { Fix } from '../../spec/problem.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { emptySeats } from '../empty-seats.ts';
import { rewriteFix } from '../rewrite.ts';
import { hasUnreadParts } from '../unread-parts.ts';
import { type LineLength, type LineLengths, lineLengths } from './line-lengths.ts';
import { tightLines } from './tight-lines.ts';

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
  const { clamp } = variant.mechanics('built');
  for (const { line, pairs: own } of tightLines(variant)) {
    const { playClampedSigned: play, stops, bearings, housing } = line;
    const best = lineLengths(analysis, variant, { line, pairs: own });
    const under = clamp ? ` clamped with ${force(clamp.force)}` : '';
    const most = Math.max(...bearings.map(({ force: load }) => Math.abs(load)));
    const carried = 0 < most ? `, and the balls carry up to ${force(most)}` : '';
    const change = best
      ? best.lengths.map(sayLength).join(' and ')
      : 'bring the spacers nearer to the distances of the stops';
    yield {
      path: best?.lengths[0].written.path ?? own[0]?.loop.terms[0]?.path ?? [],
      message: `the ${bearings.length} bearings of the ${housing} have no play together${under}: ${micrometres(-play)} are missing between ${[stops.left, stops.right].toSorted().join(' and ')}, though each pair has some${carried} — ${change}`,
      related: own.map(({ loop, result }) => ({
        path: loop.inner.find(({ key }) => key === 'length')?.path ?? loop.terms[0]?.path ?? [],
        message: `${loop.bearings.join(' and ')} alone: ${micrometres(result.playClampedSigned)} of play`,
      })),
      data: { playClampedSigned: play, ballLoad: most, bearings: bearings.map(({ address }) => address) },
      fixes: best ? [fixOf(analysis, best, bearings.length)] : [],
    };
  }
}

function sayLength({ item, written, to }: LineLength): string {
  const { nominal } = written.value;
  const way = to < nominal ? 'shorten' : 'lengthen';
  return `${way} ${item.address} by ${millimetres(Math.abs(to - nominal))} to ${millimetres(to)}`;
}

/** All lengths at once: each alone would leave the others to be found next. */
function fixOf(analysis: Analysis, { lengths, play }: LineLengths, count: number): Fix {
  const named = lengths.map(({ item, to }) => `${item.address} to ${plain(to)}`).join(' and ');
  const single = lengths.map(({ item, written, to }) =>
    rewriteFix(analysis, written, to, { name: item.address, result: '' }),
  );
  return {
    title: `Change ${named}: ${micrometres(play)} of play of all ${count} together`,
    changes: single.flatMap(({ changes }) => changes),
    preferred: true,
  };
}
