import { standardNormals } from '../base/random.ts';

/** Columns drawn so far: a pure function of its key, kept because drawing costs far more than adding. */
const drawn = new Map<string, Float64Array>();
const KEPT_COLUMNS = 64;

/**
 * Standard normals of the k-th varying dimension: the same dimension varies alike whatever else changes. Fewer builds
 * are the first of many, so a quick look and a thorough one see the same hubs.
 */
export function buildColumn(k: number, builds: number, seed: number): Float64Array {
  const key = `${seed}/${k}`;
  const known = drawn.get(key);
  if (known && builds <= known.length) return known.subarray(0, builds);
  const fresh = standardNormals(builds, Math.imul(seed, 0x85ebca6b) + k);
  if (known || drawn.size < KEPT_COLUMNS) drawn.set(key, fresh);
  return fresh;
}
