/** A layer of a nest for the finite elements below; radii in mm. */
export interface Layer {
  readonly from: number;
  readonly to: number;
  readonly E: number;
  readonly nu: number;
}

/**
 * Radial displacement (mm) at the inside of every layer and at the outside of the last, of layers pressed into each
 * other with radial overlaps (mm), by linear finite elements in the radius: a route that knows nothing of Lamé's
 * closed form. Plane stress, u unknown at each node; across a joint the outer layer's face stands `overlap` further
 * out than the inner layer's.
 */
export function radialDisplacements(
  layers: readonly Layer[],
  overlaps: readonly number[],
  elements = 4000,
): number[] {
  const size = layers.length * elements + 1;
  const diagonal = new Float64Array(size);
  const beside = new Float64Array(size);
  const right = new Float64Array(size);
  layers.forEach(({ from, to, E, nu }, layer) => {
    const step = (to - from) / elements;
    for (let k = 0; k < elements; k++) {
      const i = layer * elements + k;
      const r = from + (k + 0.5) * step;
      // Strains from the two nodes at the middle of the element: u' and u/r.
      const [bl, bh] = [-1 / step, 1 / step];
      const n = 0.5 / r;
      const stiff = (E / (1 - nu * nu)) * r * step;
      const ll = stiff * (bl * bl + n * n + 2 * nu * bl * n);
      const hh = stiff * (bh * bh + n * n + 2 * nu * bh * n);
      const lh = stiff * (bl * bh + n * n + nu * (bl * n + bh * n));
      diagonal[i] = (diagonal[i] as number) + ll;
      diagonal[i + 1] = (diagonal[i + 1] as number) + hh;
      beside[i] = (beside[i] as number) + lh;
      // The first node of an outer layer carries the joint's overlap on top of the shared displacement.
      const overlap = k === 0 && layer > 0 ? (overlaps[layer - 1] ?? 0) : 0;
      right[i] = (right[i] as number) - ll * overlap;
      right[i + 1] = (right[i + 1] as number) - lh * overlap;
    }
  });
  return solveTridiagonal(diagonal, beside, right).filter((_, i) => i % elements === 0);
}

function solveTridiagonal(diagonal: Float64Array, beside: Float64Array, right: Float64Array): number[] {
  const size = diagonal.length;
  for (let i = 1; i < size; i++) {
    const factor = (beside[i - 1] as number) / (diagonal[i - 1] as number);
    diagonal[i] = (diagonal[i] as number) - factor * (beside[i - 1] as number);
    right[i] = (right[i] as number) - factor * (right[i - 1] as number);
  }
  const found = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i--) {
    found[i] = ((right[i] as number) - (beside[i] as number) * (found[i + 1] ?? 0)) / (diagonal[i] as number);
  }
  return found;
}
