/** How the holes of a rim are spaced. `2:1`: evenly, every third hole for the side with fewer spokes. */
export type Drilling = 'even' | 'paired' | '2:1';

/** What decides the angle between a hub hole and its rim hole. */
export interface HolePattern {
  /** Spokes of this side. */
  readonly spokes: number;
  /** Holes of the rim. */
  readonly rimHoles: number;
  readonly drilling: Drilling;
  /** Distance of the two holes of a pair in the rim along the chord, mm; not read where holes are not paired. */
  readonly rimPair: number;
  /** Radius of the circle of rim holes, mm. */
  readonly rimRadius: number;
  /** Distance of the two holes of a pair in the flange along the chord, mm; null where they stand evenly. */
  readonly hubPair: number | null;
  /** Radius of the hole circle of the flange, mm. */
  readonly hubRadius: number;
  readonly crosses: number;
  /** Whether a spoke goes to the rim hole that widens or the one that narrows its angle. */
  readonly phase: 'wider' | 'narrower';
}

/** Angles between hub hole and rim hole, rad: of the spokes that lead and of those that trail. */
export interface LacingAngles {
  readonly leading: number;
  readonly trailing: number;
  /** Whether the phase changes the angles, so that it must be known. */
  readonly phaseMatters: boolean;
  /** How far flanges half a hole apart lie from the pairs of a paired rim, rad; 0 for other rims. */
  readonly pairShift: number;
}

/**
 * Angle of X crossings: number the holes of a flange and lean the even ones X rim holes forward, the odd ones X back,
 * and each meets X spokes of the other kind; so ψ = X·360°/n where holes are even. Of a 2:1 rim the two holes between
 * holes of the other side stand 90°/N nearer each other than even ones; paired flange holes likewise. On a paired rim
 * each side's holes are even, but the sides stand nearer each other than those of flanges half a hole apart: leading
 * and trailing spokes then differ.
 */
export function lacingAngles(pattern: HolePattern): LacingAngles {
  const { spokes: n, rimHoles: N, crosses: X } = pattern;
  const pitch = (2 * Math.PI) / n;
  const rim = pattern.drilling === '2:1' && N < 2 * n ? Math.PI / 2 / N : 0;
  const hub =
    pattern.hubPair === null ? 0 : pitch / 2 - Math.asin(ratio(pattern.hubPair, 2 * pattern.hubRadius));
  // Pairs of the flange face pairs of the rim. An even number of crossings joins first holes to first holes.
  const apart = Math.abs(X % 2 === 0 ? rim - hub : rim + hub);
  const shift =
    pattern.drilling === 'paired'
      ? Math.PI / N - Math.asin(ratio(pattern.rimPair, 2 * pattern.rimRadius))
      : 0;
  const even = X === 0 ? apart : X * pitch + (pattern.phase === 'wider' ? apart : -apart);
  return {
    leading: Math.abs(even + shift),
    trailing: Math.abs(even - shift),
    phaseMatters: 0 < X && 1e-9 < apart,
    pairShift: shift,
  };
}

function ratio(part: number, whole: number): number {
  return Math.min(1, part / whole);
}
