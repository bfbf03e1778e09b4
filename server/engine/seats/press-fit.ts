import { type PressedTubes, pressTubes } from './press-tubes.ts';
import type { Tube } from './tube.ts';

/** One layer that a ring sits in or on, outward from an outer ring, inward from an inner ring. */
export interface Wall {
  /** Diameter of the face away from the bearing, mm; 0 for a solid axle. */
  readonly to: number;
  readonly E: number;
  readonly nu: number;
}

/** A bearing ring on its seat or journal. */
export interface RingSeat {
  readonly ring: 'outer' | 'inner';
  /** Diameter of the seat: outside diameter of the bearing, or its bore, mm. */
  readonly diameter: number;
  /** Diameter of the raceway, pitch ± ball, mm: the ring counts as a tube from there to the seat. */
  readonly raceway: number;
  /** Modulus of elasticity (MPa) and Poisson's ratio of the ring. */
  readonly material: { readonly E: number; readonly nu: number };
  /** Layers away from the bearing: a sleeve first, then what it sits in; sleeves count as joined to their wall. */
  readonly walls: readonly Wall[];
}

/** What an interference does to a ring and its walls. */
export interface PressFit {
  /** Interference that works, after smoothing, mm; never below zero. */
  readonly interference: number;
  /** Pressure at the seat, MPa. */
  readonly pressure: number;
  /** Radial internal clearance lost, the change of the raceway's diameter, mm. */
  readonly clearanceLoss: number;
  /** Hoop stress of the wall at the seat, tension positive, MPa; of a sleeve where one sits there. */
  readonly wallHoop: number;
  /** Greatest equivalent stress (shape change energy) of each wall in its order, MPa. */
  readonly wallEquivalent: readonly number[];
  /** Hoop stress of the ring where it is pulled or pushed most, MPa. */
  readonly ringHoop: number;
  /** Growth of the farthest wall's free diameter, mm. */
  readonly wallGrowth: number;
  /** False where the diameters do not nest. */
  readonly valid: boolean;
}

/**
 * The fit of a ring for an interference that works (after smoothing), mm: thick cylinders of finite walls and
 * two or more materials. Everything grows in proportion to the interference, so `clearanceLoss / interference`
 * is a constant of the seat.
 */
export function pressFit(seat: RingSeat, interference: number): PressFit {
  const working = Math.max(0, interference);
  const tubes = nest(seat);
  const outward = seat.ring === 'outer';
  const joint = outward ? 0 : tubes.length - 2;
  const pressed = pressTubes(tubes, bonded(tubes.length, joint, working));
  const own = pressed.faces[outward ? 0 : tubes.length - 1];
  const wall = pressed.faces[outward ? 1 : tubes.length - 2];
  const last = pressed.faces[outward ? tubes.length - 1 : 0];
  const layers = outward ? pressed.faces.slice(1) : pressed.faces.slice(0, -1).reverse();
  return {
    interference: working,
    pressure: pressed.pressures[joint] ?? 0,
    clearanceLoss: (outward ? -1 : 1) * ((outward ? own?.inner.growth : own?.outer.growth) ?? 0),
    wallHoop: (outward ? wall?.inner.hoop : wall?.outer.hoop) ?? 0,
    wallEquivalent: layers.map(greatestEquivalent),
    ringHoop: own?.inner.hoop ?? 0,
    wallGrowth: (outward ? last?.outer.growth : last?.inner.growth) ?? 0,
    valid: pressed.valid && seat.walls.length > 0,
  };
}

/** Clearance lost per interference that works, a pure number between 0 and 1. */
export function lossFactor(seat: RingSeat): number {
  return pressFit(seat, 1e-3).clearanceLoss / 1e-3;
}

/** Pressure at the seat per millimetre of interference that works, MPa/mm. */
export function pressureFactor(seat: RingSeat): number {
  return pressFit(seat, 1e-3).pressure / 1e-3;
}

/** Ring and walls as tubes from the inside out. */
function nest({ ring, diameter, raceway, material, walls }: RingSeat): readonly Tube[] {
  const own: Tube =
    ring === 'outer'
      ? { inner: raceway, outer: diameter, ...material }
      : { inner: diameter, outer: raceway, ...material };
  let at = diameter;
  const layers = walls.map(({ to, E, nu }): Tube => {
    const layer = ring === 'outer' ? { inner: at, outer: to, E, nu } : { inner: to, outer: at, E, nu };
    at = to;
    return layer;
  });
  return ring === 'outer' ? [own, ...layers] : [...layers.reverse(), own];
}

function bonded(tubes: number, joint: number, interference: number): number[] {
  return Array.from({ length: Math.max(0, tubes - 1) }, (_, j) => (j === joint ? interference : 0));
}

function greatestEquivalent(faces: PressedTubes['faces'][number]): number {
  return Math.max(equivalent(faces.inner), equivalent(faces.outer));
}

/** Von Mises for two stresses in a plane, MPa. */
function equivalent({ hoop, radial }: { readonly hoop: number; readonly radial: number }): number {
  return Math.sqrt(hoop * hoop - hoop * radial + radial * radial);
}
