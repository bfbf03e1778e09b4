import { buttLength } from '../tables/spoke-facts.ts';

/** A stretch of wire, mm and mm². */
export interface WireSegment {
  readonly length: number;
  readonly area: number;
}

/** Area of round wire, mm². */
export function roundArea(diameter: number): number {
  return (Math.PI * diameter * diameter) / 4;
}

/** Area of a blade between the two shapes it may have: an ellipse and a rectangle with round ends, mm². */
export function bladeArea(width: number, thickness: number): { readonly lo: number; readonly hi: number } {
  const blunt = width * thickness - (1 - Math.PI / 4) * thickness * thickness;
  return { lo: (Math.PI * width * thickness) / 4, hi: blunt };
}

/** A spoke as it is sold: diameters from head to thread, mm, and the blade where its middle is flat. */
export interface SpokeShape {
  readonly diameters: readonly number[];
  readonly blade: { readonly width: number; readonly thickness: number } | null;
}

/**
 * Stretches of a spoke of a length, mm: one of a plain spoke; of two diameters the first at the head; of three, or
 * with a blade, thick ends of `buttLength` each. A blade has the mean of the two shapes: drawing keeps the area
 * of the wire it comes from, which lies between them.
 */
export function wireSegments(shape: SpokeShape, length: number): readonly WireSegment[] {
  const [first = 2, second = first, third = second] = shape.diameters;
  const end = Math.min(buttLength, length / 3);
  if (shape.blade) {
    const { lo, hi } = bladeArea(shape.blade.width, shape.blade.thickness);
    return [
      { length: end, area: roundArea(first) },
      { length: length - 2 * end, area: (lo + hi) / 2 },
      { length: end, area: roundArea(second) },
    ];
  }
  if (shape.diameters.length < 2) return [{ length, area: roundArea(first) }];
  if (shape.diameters.length === 2) {
    return [
      { length: end, area: roundArea(first) },
      { length: length - end, area: roundArea(second) },
    ];
  }
  return [
    { length: end, area: roundArea(first) },
    { length: length - 2 * end, area: roundArea(second) },
    { length: end, area: roundArea(third) },
  ];
}

/** Stiffness of a spoke times its length, EA of a plain wire that stretches as much, N; E in MPa. */
export function axialStiffness(segments: readonly WireSegment[], E: number): number {
  const length = segments.reduce((sum, one) => sum + one.length, 0);
  return length / segments.reduce((sum, one) => sum + one.length / (E * one.area), 0);
}

/** How far a spoke stretches, ΔL = T·L/(E·A), mm. */
export function stretch(tension: number, length: number, axial: number): number {
  return (tension * length) / axial;
}

/** Mass of a spoke's wire, g; density in kg/m³. */
export function wireMass(segments: readonly WireSegment[], density: number): number {
  return segments.reduce((sum, one) => sum + one.length * one.area, 0) * density * 1e-6;
}

/** Stress where a spoke is thinnest, MPa. */
export function wireStress(tension: number, segments: readonly WireSegment[]): number {
  return tension / Math.min(...segments.map(({ area }) => area));
}

/** Note of a plucked spoke of free length L, f = √(T/m')/(2·L), Hz; a crossed spoke sounds by its free part. */
export function pluckedPitch(tension: number, segments: readonly WireSegment[], density: number): number {
  const length = segments.reduce((sum, one) => sum + one.length, 0) / 1000;
  const perMetre = wireMass(segments, density) / 1000 / length;
  return Math.sqrt(tension / perMetre) / (2 * length);
}
