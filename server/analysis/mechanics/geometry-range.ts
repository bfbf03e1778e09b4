import { type BallGeometry, grooveCentreDistance } from '../../engine/contact/ball-geometry.ts';
import { axialClearance } from '../../engine/play/axial-clearance.ts';
import { type ClearanceTaker, mountedClearance } from '../../engine/seats/mounted-clearance.ts';
import { lossFactor } from '../../engine/seats/press-fit.ts';
import { angleAtClearance, angularContact, clearanceAtAngle } from './angular-contact.ts';
import type { MountedBearing, RingFit } from './mounted-bearing.ts';

/** The two ends of what an estimate of balls and grooves leaves open. */
export interface GeometryRange {
  /** Axial clearance at the mean mounted clearance, mm; null for a bearing that carries one way. */
  readonly axial: { readonly lo: number; readonly hi: number } | null;
  /** The bearing with its grooves as close as they come, and as open. */
  readonly close: MountedBearing;
  readonly open: MountedBearing;
}

/** What the inside of a bearing may turn out to be; null where its balls and grooves are known or its clearance is not. */
export function geometryRange(bearing: MountedBearing): GeometryRange | null {
  const { inner, mounted, axial } = bearing;
  if (!isEstimated(bearing) || !mounted) return null;
  const [close, open] = [withGeometry(bearing, inner.close), withGeometry(bearing, inner.open)];
  const ends = [close.axial, axial, open.axial].flatMap((value) => value ?? []);
  return {
    axial: ends.length < 3 ? null : { lo: Math.min(...ends), hi: Math.max(...ends) },
    close,
    open,
  };
}

/** Whether balls or grooves of a bearing are estimated from its section. */
export function isEstimated({ inner: { ballBasis, grooveBasis } }: MountedBearing): boolean {
  return ballBasis === 'estimate' || grooveBasis === 'estimate';
}

/** The same bearing in the same fits with other balls and grooves: its raceways, and so what the fits take, move too. */
function withGeometry(bearing: MountedBearing, geometry: BallGeometry): MountedBearing {
  const { stack, free: before, outerFit, innerFit } = bearing;
  const angle = angularContact(stack)?.angle ?? null;
  const clearance = angle === null ? 0 : clearanceAtAngle(geometry, angle);
  const free = angle === null ? before : { lo: clearance, hi: clearance };
  const mounted = free
    ? mountedClearance({
        clearance: free,
        outer: takerAt(outerFit, geometry.pitch + geometry.diameter),
        inner: takerAt(innerFit, geometry.pitch - geometry.diameter),
        thermalLoss: bearing.thermalLoss,
      }).clearance
    : null;
  return {
    ...bearing,
    geometry,
    free,
    mounted,
    axial:
      mounted && bearing.axial !== null
        ? axialClearance(grooveCentreDistance(geometry), mounted.mean).axial
        : null,
    contactAngle:
      mounted && angle !== null
        ? { nominal: angle, mounted: angleAtClearance(geometry, mounted.mean) }
        : bearing.contactAngle,
  };
}

function takerAt(fit: RingFit | null, raceway: number): ClearanceTaker | null {
  return fit && { ...fit.taker, lossFactor: lossFactor({ ...fit.seat, raceway }) };
}
