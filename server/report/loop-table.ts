import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { Closed, LoopAnalysis } from '../analysis/close.ts';
import { type ResolvedLimits, resolveLimits } from '../analysis/limits.ts';
import type { GapLoop, Loop, PairLoop, SeatLoop, Wanted } from '../assembly/loop.ts';
import { length, millimetres, range, share, signed } from '../engine/base/figures.ts';
import type { SpecPath } from '../spec/place.ts';

/** How bad the result of a loop is; null where it holds. */
export type Gravity = 'error' | 'warning' | 'information' | 'hint';

/** One closed loop as a line of a table, in the words and figures a person reads, mm. */
export interface LoopRow {
  readonly kind: 'width' | 'pair' | 'seat' | 'gap';
  readonly what: string;
  readonly nominal: string;
  readonly mean: string;
  readonly worst: string;
  readonly rss: string;
  /** Limits wanted; empty where none are written. */
  readonly wanted: string;
  /** Share of builds outside the limits; empty where none are wanted. */
  readonly outside: string;
  /** Mean with the measured values; empty where nothing was measured. */
  readonly measured: string;
  readonly verdict: string;
  readonly gravity: Gravity | null;
  /** The value to look at first: the limits wanted, else the first term. */
  readonly path: SpecPath;
}

/** The loops of one variant, the clamped width first. A loop that lacks a dimension has no row: it is unchecked. */
export function loopTable(
  variant: VariantAnalysis,
  limits: ResolvedLimits = resolveLimits(null),
): readonly LoopRow[] {
  const allowed = limits.value('share-outside');
  return [
    ...row('width', 'clamped width', variant.width, (closed, wanted) => against(closed, wanted, allowed)),
    ...variant.pairs.flatMap((pair) =>
      row('pair', pairName(pair.loop), pair, (closed) => pairVerdict(closed, pair.loop)),
    ),
    ...variant.seats.flatMap((seat) =>
      row('seat', seatName(seat.loop), seat, (closed) => seatVerdict(closed, limits)),
    ),
    ...variant.gaps.flatMap((gap) =>
      row('gap', gapName(gap.loop), gap, (closed, wanted) => gapVerdict(closed, wanted, allowed)),
    ),
  ];
}

interface Verdict {
  readonly said: string;
  readonly gravity: Gravity | null;
}

function row<L extends Loop>(
  kind: LoopRow['kind'],
  what: string,
  { loop, drawn, built }: LoopAnalysis<L>,
  judge: (closed: Closed, wanted: Wanted | null) => Verdict,
): readonly LoopRow[] {
  if (!drawn) return [];
  const figure = (value: number): string => (kind === 'pair' ? signed(value) : length(value));
  const span = ([lo, hi]: readonly [number, number]): string => `${figure(lo)} to ${figure(hi)}`;
  const result = built ?? drawn;
  const { said, gravity } = judge(result, loop.wanted);
  return [
    {
      kind,
      what,
      nominal: figure(drawn.nominal),
      mean: figure(drawn.mean),
      worst: span(drawn.worst),
      rss: span(drawn.rss),
      wanted: loop.wanted ? sayLimits(loop.wanted) : '',
      outside: result.shareOutside === null ? '' : share(result.shareOutside),
      measured: built ? figure(built.mean) : '',
      verdict: said,
      gravity,
      path: loop.wanted?.path ?? loop.terms[0]?.path ?? [],
    },
  ];
}

/** `99.80 to 100.20`, or `0.30 or more`. */
function sayLimits({ lo, hi }: Wanted): string {
  return Number.isFinite(hi) ? `${length(lo)} to ${length(hi)}` : `${length(lo)} or more`;
}

/** Above the limits in the mean, in too many builds, or only in the worst corner. */
function against(closed: Closed, wanted: Wanted | null, allowed: number): Verdict {
  if (!wanted) return { said: 'no width is written to compare with', gravity: null };
  const slack = 1e-6;
  const { mean, worst, shareOutside } = closed;
  if (mean < wanted.lo - slack)
    return { said: `${millimetres(wanted.lo - mean)} under the lower limit`, gravity: 'error' };
  if (wanted.hi + slack < mean)
    return { said: `${millimetres(mean - wanted.hi)} over the upper limit`, gravity: 'error' };
  if (allowed < (shareOutside ?? 0))
    return { said: `${share(shareOutside ?? 0)} of builds outside`, gravity: 'warning' };
  if (worst[0] < wanted.lo - slack || wanted.hi + slack < worst[1]) {
    return { said: 'only the worst case is outside', gravity: 'information' };
  }
  return { said: 'within its limits, the worst case too', gravity: null };
}

function pairVerdict({ mean }: Closed, loop: PairLoop): Verdict {
  if (loop.located === 'spacer') return { said: 'the spacer alone sets the distance', gravity: null };
  const by = millimetres(Math.abs(mean));
  if (Math.abs(mean) < 0.005) return { said: 'inner and outer distance agree', gravity: null };
  return { said: `inner distance ${by} ${mean < 0 ? 'shorter' : 'longer'} than outer`, gravity: null };
}

function seatVerdict({ mean }: Closed, limits: ResolvedLimits): Verdict {
  if (0 <= mean) return { said: `the ring stands ${millimetres(mean)} inside`, gravity: null };
  const proud = limits.value('seat-depth') < -mean;
  return { said: `the ring stands ${millimetres(-mean)} proud`, gravity: proud ? 'warning' : null };
}

function gapVerdict(closed: Closed, wanted: Wanted | null, allowed: number): Verdict {
  if (closed.mean <= 0) return { said: 'closed: the two touch', gravity: 'error' };
  if (wanted) return against(closed, wanted, allowed);
  const [least] = closed.worst;
  return {
    said: least < 0 ? 'closed in the worst case' : `open by ${openBy(least, closed.worst[1])}`,
    gravity: null,
  };
}

/** A gap of parts without tolerances has one width. */
const openBy = (least: number, most: number): string =>
  most - least < 0.005 ? millimetres(most) : range(least, most);

function pairName({ bearings: [left, right] }: PairLoop): string {
  return `${left} to ${right}, inner − outer`;
}

function seatName({ seat }: SeatLoop): string {
  return `recess in ${seat}`;
}

function gapName({ between: [one, other] }: GapLoop): string {
  return `gap ${one} to ${other}`;
}
