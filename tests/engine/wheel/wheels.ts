import { spokeDirection, spokeSpan } from '../../../server/engine/wheel/spoke-line.ts';
import type { RimStiffness, SpokeSprings } from '../../../server/engine/wheel/spoke-springs.ts';
import { roundArea } from '../../../server/engine/wheel/spoke-wire.ts';
import { type FrameWheel, lacedFrame } from './frame-model.ts';

/** A wheel told once for both models. N·m², mm, MPa. */
export interface ExampleWheel {
  readonly R: number;
  readonly EI1: number;
  readonly EI2: number;
  readonly GJ: number;
  /** Hole circle; distances of the flanges from the middle. */
  readonly D: number;
  readonly left: number;
  readonly right: number;
  readonly n: number;
  readonly d: number;
  readonly Es: number;
  readonly crosses: number;
  readonly T: number;
}

const radial = { crosses: 0, T: 0, Es: 210_000 };

/** Example wheels of a thesis (Ford 2018), and two with crossed spokes. */
export const examples = {
  vintage: { R: 315, EI1: 150, EI2: 150, GJ: 15, D: 50, left: 25, right: 25, n: 36, d: 1.8, ...radial },
  modern: { R: 300, EI1: 200, EI2: 200, GJ: 80, D: 50, left: 25, right: 25, n: 24, d: 1.8, ...radial },
  offRoad: { R: 280, EI1: 200, EI2: 200, GJ: 12, D: 50, left: 30, right: 30, n: 32, d: 2, ...radial },
  tandem: { R: 300, EI1: 200, EI2: 200, GJ: 80, D: 50, left: 35, right: 35, n: 40, d: 2, ...radial },
  track: { R: 300, EI1: 200, EI2: 200, GJ: 150, D: 50, left: 30, right: 30, n: 32, d: 1.8, ...radial },
  small: { R: 225, EI1: 150, EI2: 150, GJ: 40, D: 50, left: 25, right: 25, n: 32, d: 1.8, ...radial },
  crossed: {
    R: 300,
    EI1: 110,
    EI2: 200,
    GJ: 60,
    D: 45,
    left: 35,
    right: 35,
    n: 32,
    d: 1.8,
    Es: 200_000,
    crosses: 3,
    T: 0,
  },
  dished: {
    R: 300,
    EI1: 110,
    EI2: 200,
    GJ: 60,
    D: 45,
    left: 36,
    right: 18,
    n: 32,
    d: 1.8,
    Es: 200_000,
    crosses: 3,
    T: 0,
  },
} as const satisfies Record<string, ExampleWheel>;

/** Rim section of 100 mm² of aluminium. */
const EA = 6.9e6;

export function ring(
  wheel: ExampleWheel,
  axial: number | null = EA,
): { rim: RimStiffness; spokes: SpokeSprings[] } {
  const { R, EI1, EI2, GJ, D, n, d, Es, crosses, T } = wheel;
  const rim = { radius: R, radial: EI1 * 1e6, lateral: EI2 * 1e6, torsional: GJ * 1e6, axial };
  const spokes = ([-1, 1] as const).map((side): SpokeSprings => {
    const line = {
      hubRadius: D / 2,
      rimRadius: R,
      hubOffset: side < 0 ? wheel.left : wheel.right,
      rimOffset: 0,
      angle: (crosses * 4 * Math.PI) / n,
    };
    return {
      count: n / 2,
      side,
      direction: spokeDirection(line),
      span: spokeSpan(line),
      axial: Es * roundArea(d),
      tension: T,
    };
  });
  return { rim, spokes };
}

export function frame(wheel: ExampleWheel, beams = 2): FrameWheel {
  return lacedFrame({
    radius: wheel.R,
    EI1: wheel.EI1 * 1e6,
    EI2: wheel.EI2 * 1e6,
    GJ: wheel.GJ * 1e6,
    EA,
    holes: wheel.n,
    crosses: wheel.crosses,
    hubRadius: wheel.D / 2,
    left: wheel.left,
    right: wheel.right,
    spokeEA: wheel.Es * roundArea(wheel.d),
    // Without any tension radial spokes hold no rim that turns.
    tension: Math.max(1, wheel.T),
    beams,
  });
}

/** 24 holes, every third left and radial, the pairs between them right and crossed twice, wide phase: ψ = 48.75°. */
export function twoToOne(tension: { readonly left: number; readonly right: number }): {
  rim: RimStiffness;
  spokes: readonly SpokeSprings[];
  frame: FrameWheel;
} {
  const wire = 200_000 * roundArea(1.8);
  const psi = (48.75 * Math.PI) / 180;
  const rim = { radius: 297, radial: 150e6, lateral: 250e6, torsional: 80e6, axial: EA };
  const springs = (side: -1 | 1, count: number, hubRadius: number, hubOffset: number, angle: number) => {
    const line = { hubRadius, rimRadius: rim.radius, hubOffset, rimOffset: 0, angle };
    return {
      count,
      side,
      direction: spokeDirection(line),
      span: spokeSpan(line),
      axial: wire,
      tension: side < 0 ? tension.left : tension.right,
    };
  };
  const built = Array.from({ length: 24 }, (_, hole) => {
    const at = (2 * Math.PI * hole) / 24;
    if (hole % 3 === 2)
      return { hole, hub: { angle: at, radius: 20, z: -38 }, EA: wire, tension: tension.left };
    const lean = hole % 3 === 0 ? -psi : psi;
    return { hole, hub: { angle: at + lean, radius: 25, z: 17 }, EA: wire, tension: tension.right };
  });
  return {
    rim,
    spokes: [springs(-1, 8, 20, 38, 0), springs(1, 16, 25, 17, psi)],
    frame: {
      radius: rim.radius,
      EI1: rim.radial,
      EI2: rim.lateral,
      GJ: rim.torsional,
      EA,
      spokes: built,
      beams: 3,
    },
  };
}
