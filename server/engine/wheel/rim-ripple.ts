import { type RimStiffness, type SpokeBed, type SpokeSprings, spokeBed } from './spoke-springs.ts';

/** How far the ripple moves the rim towards the axle at the spokes of a side, mm per mm of the rim's own move. */
export interface Ripple {
  /** Per mm to the right. */
  readonly right: number;
  /** Per mm towards the axle. */
  readonly radial: number;
}

/** A bed of spokes with the ripple of the rim taken into it. */
export interface RippledBed extends SpokeBed {
  readonly ripple: (side: -1 | 1) => Ripple;
}

const still: Ripple = { right: 0, radial: 0 };

/**
 * The bed of the spokes on a rim that gives way between them. A rim moved sideways is let go by the spokes of one side
 * and pulled in by those of the other: it takes up a radial ripple, of N/2 waves where the sides alternate, of N/3 where
 * every third spoke is of the other side. With the ripple a, a spoke shortens by c1·u + c2·(v + a·φ), φ its place in the
 * wave; taking a out of the energy leaves a softer bed. Other patterns are left as they are.
 */
export function rippledBed(rim: RimStiffness, spokes: readonly SpokeSprings[]): RippledBed {
  const bed = spokeBed(spokes, rim.radius);
  const pattern = patternOf(spokes);
  if (!pattern) return { ...bed, ripple: () => still };
  const { radius: R, radial: EI } = rim;
  const { waves: m, place } = pattern;
  let own = (EI * (m * m - 1) ** 2) / (2 * R ** 4);
  let sideways = 0;
  let inwards = 0;
  for (const { count, side, direction, span, axial } of spokes) {
    const { lateral: c1, radial: c2 } = direction;
    const wire = (count * axial) / (2 * Math.PI * R * span);
    const phi = place(side);
    own += wire * c2 * c2 * phi * phi;
    sideways += wire * side * c1 * c2 * phi;
    inwards += wire * c2 * c2 * phi;
  }
  return {
    ...bed,
    lateral: bed.lateral - sideways ** 2 / own,
    radial: bed.radial - inwards ** 2 / own,
    lateralRadial: bed.lateralRadial - (sideways * inwards) / own,
    ripple: (side) => ({ right: (-place(side) * sideways) / own, radial: (-place(side) * inwards) / own }),
  };
}

/** Waves of the ripple and the place of each side's spokes in it; null where the spokes stand in no such order. */
function patternOf(
  spokes: readonly SpokeSprings[],
): { readonly waves: number; readonly place: (side: -1 | 1) => number } | null {
  const of = (side: -1 | 1): number =>
    spokes.reduce((sum, one) => sum + (one.side === side ? one.count : 0), 0);
  const left = of(-1);
  const right = of(1);
  const waves = Math.min(left, right);
  if (waves < 2) return null;
  if (left === right) return { waves, place: (side) => side };
  if (Math.max(left, right) !== 2 * waves) return null;
  const few = left < right ? -1 : 1;
  return { waves, place: (side) => (side === few ? 1 : -0.5) };
}
