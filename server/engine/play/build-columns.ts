import { standardNormals } from '../base/random.ts';

/** Columns drawn so far: a pure function of its key, kept because drawing costs far more than adding. */
const drawn = new Map<string, Float64Array>();
const KEPT_COLUMNS = 64;

/** Standard normals of the k-th varying dimension: the same dimension varies alike whatever else changes. */
export function buildColumn(k: number, builds: number, seed: number): Float64Array {
  const key = `${builds}/${seed}/${k}`;
  const known = drawn.get(key);
  if (known) return known;
  const fresh = standardNormals(builds, Math.imul(seed, 0x85ebca6b) + k);
  if (drawn.size < KEPT_COLUMNS) drawn.set(key, fresh);
  return fresh;
}
