import type { BallGeometry } from '../contact/ball-geometry.ts';

/** Where a figure of the inner geometry comes from, best first. */
export type GeometryBasis = 'user' | 'published' | 'estimate';

/** What is known of the inside of a bearing. */
export interface KnownGeometry {
  /** Bore and outside diameter, mm. */
  readonly bore: number;
  readonly outside: number;
  /** Balls that the user counted and measured, diameter in mm. */
  readonly ownBalls?: { readonly count: number; readonly diameter: number } | null;
  /** Balls from a published row. */
  readonly publishedBalls?: { readonly count: number; readonly diameter: number } | null;
  /** Groove radius over ball diameter that the user gave, inner and outer. */
  readonly ownGroove?: { readonly inner: number; readonly outer: number } | null;
  /** Published K = Ga / √Gr of the bearing, mm^½. */
  readonly publishedFactor?: number | null;
  /** Ball circle where it is not midway between bore and outside, mm. */
  readonly pitch?: number | null;
}

/** Inner geometry with what it may turn out to be. */
export interface InnerGeometry {
  readonly geometry: BallGeometry;
  readonly ballBasis: GeometryBasis;
  readonly grooveBasis: GeometryBasis;
  /** The same with the grooves as close as they come, small balls where balls are estimated: least axial clearance. */
  readonly close: BallGeometry;
  /** The same with the grooves as open as they come, large balls where balls are estimated: most axial clearance. */
  readonly open: BallGeometry;
}

/** Ball diameter over section (D − d) of bearings of 8 to 20 mm bore with published balls: 0.24 to 0.32. */
const SECTION_SHARE = { close: 0.24, middle: 0.28, open: 0.32 };
/** Share of the ball circle that balls fill: mostly 0.54 to 0.61 on the same bearings, less in very thin ones. */
const FILLED_SHARE = 0.58;
/** fi + fe − 1 of deep grooves: 0.030 to 0.045 on fifteen published rows, up to 0.05 in the rating standards. */
const OPENNESS = { close: 0.03, middle: 0.04, open: 0.05 };

/**
 * The inside of a deep groove or angular-contact bearing: what the user knows first, published rows second, an
 * estimate from the section last, with its spread. Ball circle (d + D)/2 unless known. Ranges of the estimates
 * from the balls and clearance factors that sources `nmb-ball` and `nsk-e1102e` print.
 */
export function innerGeometry(known: KnownGeometry): InnerGeometry {
  const pitch = known.pitch ?? (known.bore + known.outside) / 2;
  const given = known.ownBalls ?? known.publishedBalls ?? null;
  const ballBasis = basis(known.ownBalls, known.publishedBalls);
  const grooveBasis = basis(known.ownGroove, known.publishedFactor);
  const section = known.outside - known.bore;
  const grooved = (which: keyof typeof OPENNESS): BallGeometry => {
    const diameter = given?.diameter ?? SECTION_SHARE[which] * section;
    const count = given?.count ?? estimatedCount(diameter, pitch);
    return { count, diameter, pitch, ...groove(known, diameter, which) };
  };
  return {
    geometry: grooved('middle'),
    ballBasis,
    grooveBasis,
    close: grooved('close'),
    open: grooved('open'),
  };
}

function basis(own: unknown, published: unknown): GeometryBasis {
  if (own !== undefined && own !== null) return 'user';
  return published !== undefined && published !== null ? 'published' : 'estimate';
}

function groove(
  { ownGroove, publishedFactor }: KnownGeometry,
  diameter: number,
  which: keyof typeof OPENNESS,
): { innerConformity: number; outerConformity: number } {
  if (ownGroove) return { innerConformity: ownGroove.inner, outerConformity: ownGroove.outer };
  // A factor K fixes m0 = (K/2)², whatever the ball.
  const openness = publishedFactor ? (publishedFactor / 2) ** 2 / diameter : OPENNESS[which];
  return { innerConformity: (1 + openness) / 2, outerConformity: (1 + openness) / 2 };
}

/** Balls that fill the usual share of the circle with a cage between them. */
function estimatedCount(diameter: number, pitch: number): number {
  return Math.max(3, Math.round((FILLED_SHARE * Math.PI) / Math.asin(Math.min(1, diameter / pitch))));
}
