import type { SpokeSprings } from './spoke-springs.ts';
import { loadedSpokeShare, type WheelStiffness } from './wheel-stiffness.ts';

/** Loads at the rim at which the first spoke of a kind goes slack, N. */
export interface SlackLoad {
  /** Radial, at the foot of the spoke. */
  readonly radial: number;
  /** From the side, away from the spoke's own flange being the other sign: towards its own flange. */
  readonly lateral: number;
}

/**
 * Loads that take all tension from the spoke they act at (source `ford-wheel`): radial K·T/((EA/L)·c2), lateral
 * K·T/((EA/L)·c1), the rim moving towards the spoke's own flange. Linear up to there.
 */
export function slackLoad(spoke: SpokeSprings, stiffness: WheelStiffness): SlackLoad {
  const sideways = lateralShare(spoke, stiffness.lateral);
  return {
    radial: spoke.tension / loadedSpokeShare(spoke, stiffness.radial),
    lateral: 1e-9 < sideways ? spoke.tension / sideways : Number.POSITIVE_INFINITY,
  };
}

/** Tension left in the spoke above the ground, N, under a radial load and a side force towards its own flange; negative: slack. */
export function tensionLeft(
  spoke: SpokeSprings,
  stiffness: WheelStiffness,
  load: { readonly radial: number; readonly lateral: number },
): number {
  return (
    spoke.tension -
    load.radial * loadedSpokeShare(spoke, stiffness.radial) -
    load.lateral * lateralShare(spoke, stiffness.lateral)
  );
}

/** Share of a side force that the spoke at the load loses, (EA/L)·c1/K; 1 or more is no fault: few spokes share it. */
function lateralShare(spoke: SpokeSprings, lateral: number): number {
  return ((spoke.axial / spoke.span) * spoke.direction.lateral) / lateral;
}
