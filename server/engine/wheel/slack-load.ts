import type { SpokeSprings } from './spoke-springs.ts';
import { loadedSpokeShare, sidewaysShare, type WheelGive } from './wheel-stiffness.ts';

/** Loads at the rim at which the spoke they act at goes slack, N. */
export interface SlackLoad {
  /** Towards the axle. */
  readonly radial: number;
  /** From the side, towards the spoke's own flange. */
  readonly lateral: number;
}

/**
 * Loads that take all tension from the spoke they act at (source `ford-wheel`): its tension over the share of the load
 * it loses. Linear up to there.
 */
export function slackLoad(spoke: SpokeSprings, give: WheelGive): SlackLoad {
  const sideways = spoke.side * sidewaysShare(spoke, give);
  return {
    radial: spoke.tension / loadedSpokeShare(spoke, give),
    lateral: 0 < sideways ? spoke.tension / sideways : Number.POSITIVE_INFINITY,
  };
}

/** Tension left in the spoke above the ground, N, under a radial load and a side force to the right; negative: slack. */
export function tensionLeft(
  spoke: SpokeSprings,
  give: WheelGive,
  load: { readonly radial: number; readonly right: number },
): number {
  const lost = load.radial * loadedSpokeShare(spoke, give) + load.right * sidewaysShare(spoke, give);
  return spoke.tension - lost;
}
