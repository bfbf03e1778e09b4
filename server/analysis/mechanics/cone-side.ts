import type { Assembly } from '../../assembly/assemble.ts';
import type { LinePart } from '../../assembly/line.ts';
import { angularBearing } from '../../engine/contact/axial-load.ts';
import { gapBetweenBalls, mostBalls, usualBalls } from '../../engine/play/cup-and-cone.ts';
import { angularSide, type PairSide } from '../../engine/play/pair-side.ts';
import type { BallSet, CupValues, Named, Side } from '../../spec/model.ts';
import type { SpecPath } from '../../spec/place.ts';

/** Loose balls on their circle. Lengths in mm. */
export interface ConeBalls extends BallSet {
  readonly circle: number;
  /** Room left once all balls are pushed together; negative does not fit. */
  readonly gap: number;
  readonly most: number;
  /** One fewer than the most. */
  readonly usual: number;
  readonly path: SpecPath;
}

/** A cone with its cup; what is not written is null. */
export interface ConeSide {
  readonly side: Side;
  readonly part: LinePart;
  readonly cup: Named<CupValues> | null;
  readonly balls: ConeBalls | null;
  /** rad */
  readonly angle: number;
  readonly pair: PairSide | null;
  readonly missing: string | null;
  readonly assumed: readonly string[];
}

/** Contact angle where a cup writes none: the usual one of cup and cone, degrees; common practice. */
const usualAngle = 45;
/**
 * Track radius ÷ ball diameter where no `groove` is written. Nobody publishes it for loose balls; turned and
 * ground tracks are opener than those of a cartridge bearing (0.52), so this is an estimate.
 */
const usualConformity = 0.55;

/** The cone of one side as one side of a pair: inner races pushed together are carried, pulled apart they are not. */
export function coneSide(part: LinePart, side: Side, assembly: Assembly): ConeSide {
  const { balls: written, groove } = part.part.values;
  const cup = assembly.hub.shell?.cups.find(({ name }) => name === side) ?? null;
  const circle = cup?.values['ball-circle']?.value.nominal ?? null;
  const degrees = cup?.values['contact-angle']?.value ?? null;
  const angle = ((degrees ?? usualAngle) * Math.PI) / 180;
  const balls =
    written && circle !== null ? { ...ofCircle(written.value, circle), path: written.path } : null;
  const conformity = groove?.value ?? { inner: usualConformity, outer: usualConformity };
  const assumed = [
    ...(degrees === null ? [`contact angle of ${part.address} taken as ${usualAngle}°`] : []),
    ...(groove
      ? []
      : [`tracks of ${part.address} and its cup taken as ${usualConformity} of the ball: an estimate`]),
  ];
  const fits = balls !== null && balls.diameter < balls.circle && 0 < angle && angle < Math.PI / 2;
  const bearing = fits
    ? angularBearing(
        {
          count: balls.count,
          diameter: balls.diameter,
          pitch: balls.circle,
          innerConformity: conformity.inner,
          outerConformity: conformity.outer,
        },
        angle,
      )
    : null;
  const missing = written
    ? circle === null
      ? `ball-circle of the ${side} cup`
      : bearing?.valid
        ? null
        : `balls and a cup that fit each other at ${part.address}`
    : `balls of ${part.address}`;
  const pair = bearing?.valid ? angularSide(bearing, angle, 'inward', Number.POSITIVE_INFINITY) : null;
  return { side, part, cup, balls, angle, pair, missing, assumed };
}

function ofCircle({ count, diameter }: BallSet, circle: number) {
  return {
    count,
    diameter,
    circle,
    gap: gapBetweenBalls({ count, diameter, circle }),
    most: mostBalls(diameter, circle),
    usual: usualBalls(diameter, circle),
  };
}
