import type { AxialBearing, AxialState } from './axial-load.ts';
import type { RingSide } from './curvature.ts';
import { pressContact } from './point-contact.ts';

/** How near the contact ellipse comes to the edge of a groove. */
export interface EdgeReach {
  /** Angle from the groove bottom to the far end of the ellipse, rad. */
  readonly ellipseEnd: number;
  /** Angle from the groove bottom to the edge of the groove, rad. */
  readonly grooveEdge: number;
  /** Whether the ellipse runs over the edge: stress is then higher than Hertz says. */
  readonly over: boolean;
}

/**
 * Where the contact ellipse ends against the edge of the groove. `shoulder` is the diameter of the ring beside
 * the groove, mm: the outside diameter of an inner ring, the inside diameter of an outer ring. The groove bottom
 * is taken at pitch ∓ ball; a broken edge is not counted, so the true edge lies a little nearer.
 */
export function edgeReach(
  bearing: AxialBearing,
  state: AxialState,
  side: RingSide,
  shoulder: number,
): EdgeReach {
  const { geometry, contact } = bearing;
  const conformity = side === 'inner' ? geometry.innerConformity : geometry.outerConformity;
  const radius = conformity * geometry.diameter;
  const bottom = geometry.pitch + (side === 'inner' ? -geometry.diameter : geometry.diameter);
  const depth = side === 'inner' ? (shoulder - bottom) / 2 : (bottom - shoulder) / 2;
  const grooveEdge = Math.acos(Math.min(1, Math.max(-1, 1 - depth / radius)));
  const ellipse = pressContact(contact[side], state.ballForce);
  const ellipseEnd = state.angle + Math.asin(Math.min(1, ellipse.semiMajor / radius));
  return { ellipseEnd, grooveEdge, over: ellipseEnd > grooveEdge };
}
