import { standardNormals } from '../base/random.ts';
import { centre, halfTolerance, SIGMAS_PER_HALF_TOLERANCE, type Term } from './loop.ts';
import { normalOutside } from './normal.ts';

export interface Builds {
  /** How many hubs are built, 20 000 unless said. */
  readonly builds?: number;
  /** The same seed builds the same hubs. */
  readonly seed?: number;
}

const BUILDS = 20_000;
const SEED = 1;

/**
 * Share of builds whose loop falls outside `limits` (mm, the limits themselves count as inside), 0 to 1.
 * Each part varies normally about the centre of its tolerance with three standard deviations to a limit,
 * independently of every other part. Where nothing varies the share is 0 or 1.
 */
export function shareOutside(
  terms: readonly Term[],
  limits: readonly [number, number],
  options: Builds = {},
): number {
  const [lo, hi] = limits;
  const { mean, parts } = spread(terms);
  if (parts.length === 0) return lo <= mean && mean <= hi ? 0 : 1;
  const lengths = build(parts, options);
  let outside = 0;
  for (let i = 0; i < lengths.length; i++) {
    const x = mean + (lengths[i] as number);
    if (x < lo || x > hi) outside++;
  }
  return outside / lengths.length;
}

/** The same share in closed form: a sum of independent normal parts is normal. Exact where the draw is a sample. */
export function normalShareOutside(terms: readonly Term[], limits: readonly [number, number]): number {
  const { mean, parts } = spread(terms);
  const sigma = Math.sqrt(parts.reduce((sum, s) => sum + s * s, 0));
  return normalOutside(mean, sigma, limits);
}

/** How the builds of a loop lie between its least and its greatest. */
export interface Histogram {
  /** Left edge of the first bin, mm. */
  readonly from: number;
  /** Width of each bin, mm; 0 where nothing varies. */
  readonly step: number;
  /** Builds in each bin, left to right. */
  readonly counts: readonly number[];
}

/** The builds of a loop counted into `bins` equal bins from the least to the greatest. */
export function histogram(terms: readonly Term[], bins: number, options: Builds = {}): Histogram {
  const { mean, parts } = spread(terms);
  const builds = options.builds ?? BUILDS;
  if (parts.length === 0) return { from: mean, step: 0, counts: [builds] };
  const lengths = build(parts, options);
  let lo = Number.POSITIVE_INFINITY;
  let hi = Number.NEGATIVE_INFINITY;
  for (const x of lengths) {
    if (x < lo) lo = x;
    if (x > hi) hi = x;
  }
  const step = (hi - lo) / bins;
  const counts = new Array<number>(bins).fill(0);
  for (const x of lengths) {
    const bin = step > 0 ? Math.min(bins - 1, Math.floor((x - lo) / step)) : 0;
    counts[bin] = (counts[bin] ?? 0) + 1;
  }
  return { from: mean + lo, step, counts };
}

/** The mean of the loop and the standard deviation of each part that varies, one entry a part, mm. */
function spread(terms: readonly Term[]): { mean: number; parts: number[] } {
  let mean = 0;
  const parts: number[] = [];
  for (const term of terms) {
    mean += term.sign * term.count * centre(term);
    const sigma = halfTolerance(term) / SIGMAS_PER_HALF_TOLERANCE;
    if (sigma > 0 && term.count > 0) parts.push(Math.sqrt(term.count) * sigma);
  }
  return { mean, parts };
}

/**
 * The deviation of each build from the mean, mm. The k-th part that varies always draws column k, so a loop
 * keeps its share while an unrelated part of the text changes.
 */
function build(parts: readonly number[], { builds = BUILDS, seed = SEED }: Builds): Float64Array {
  const lengths = new Float64Array(builds);
  // Two columns at a time halve the passes over the result, which is most of the time this takes.
  for (let k = 0; k < parts.length; k += 2) {
    const [a, b] = [parts[k] as number, parts[k + 1] ?? 0];
    const first = column(k, builds, seed);
    const second = b > 0 ? column(k + 1, builds, seed) : first;
    for (let i = 0; i < builds; i++) {
      lengths[i] = (lengths[i] as number) + a * (first[i] as number) + b * (second[i] as number);
    }
  }
  return lengths;
}

/** Columns drawn so far: a pure function of its key, kept because drawing costs far more than adding. */
const drawn = new Map<string, Float64Array>();
const KEPT_COLUMNS = 64;

function column(k: number, builds: number, seed: number): Float64Array {
  const key = `${builds}/${seed}/${k}`;
  const known = drawn.get(key);
  if (known) return known;
  const fresh = standardNormals(builds, Math.imul(seed, 0x9e3779b1) + k);
  if (drawn.size < KEPT_COLUMNS) drawn.set(key, fresh);
  return fresh;
}
