/** Two thick tubes pressed together, solved as a boundary value problem: nothing of the project's own seats is used. */

interface HandTube {
  readonly inner: number;
  readonly outer: number;
  readonly E: number;
  readonly nu: number;
}

/**
 * Displacement u = A·r + B/r and radial stress E/(1−ν²)·[(1+ν)·A − (1−ν)·B/r²] in each tube (Lamé; Timoshenko and
 * Goodier, Theory of Elasticity, plane stress). Four conditions fix the four constants: free faces inside and
 * outside, equal stress at the joint, and displacements that differ by half the diametral interference.
 */
export function pressByHand(
  within: HandTube,
  around: HandTube,
  interference: number,
): { readonly pressure: number; readonly innermostShrinks: number; readonly outermostGrows: number } {
  const stress = ({ E, nu }: HandTube, r: number): readonly [number, number] => [
    (E / (1 - nu * nu)) * (1 + nu),
    (-(E / (1 - nu * nu)) * (1 - nu)) / (r * r),
  ];
  const [a, joint, b] = [within.inner / 2, within.outer / 2, around.outer / 2];
  const s1 = stress(within, a);
  const s2 = stress(around, b);
  const j1 = stress(within, joint);
  const j2 = stress(around, joint);
  const rows = [
    [s1[0], s1[1], 0, 0, 0],
    [0, 0, s2[0], s2[1], 0],
    [j1[0], j1[1], -j2[0], -j2[1], 0],
    [-joint, -1 / joint, joint, 1 / joint, interference / 2],
  ];
  const [A1 = 0, B1 = 0, A2 = 0, B2 = 0] = eliminate(rows);
  return {
    pressure: -(j1[0] * A1 + j1[1] * B1),
    innermostShrinks: -2 * (A1 * a + B1 / a),
    outermostGrows: 2 * (A2 * b + B2 / b),
  };
}

/** Gauss with pivots; each row ends with its right side. */
function eliminate(given: readonly (readonly number[])[]): readonly number[] {
  const rows = given.map((row) => [...row]);
  const n = rows.length;
  for (let k = 0; k < n; k++) {
    const size = (i: number): number => Math.abs(rows[i]?.[k] ?? 0);
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (size(i) > size(pivot)) pivot = i;
    [rows[k], rows[pivot]] = [rows[pivot] as number[], rows[k] as number[]];
    const own = rows[k] as number[];
    for (const [i, row] of rows.entries()) {
      if (i === k) continue;
      const times = (row[k] as number) / (own[k] as number);
      for (let j = k; j <= n; j++) row[j] = (row[j] as number) - times * (own[j] as number);
    }
  }
  return rows.map((row, k) => (row[n] as number) / (row[k] as number));
}
