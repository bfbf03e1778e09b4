import type { SectionPart } from '../assembly/section-shape.ts';

/** A length measured under the section. Places in mm of the hub. */
export interface LengthDimension {
  /** `width`, `length:spacer.centre`, `depth:shell.left`, `between:shell`, `gap:freehub`. */
  readonly id: string;
  readonly address: string;
  readonly from: number;
  readonly to: number;
  /** Radius at which each extension line leaves the part, mm of the hub. */
  readonly radii: readonly [number, number];
  readonly text: string;
}

/** Radius of a part where it has a face, mm. */
export function radiusAt(part: SectionPart, at: number): number {
  const there = part.steps.filter(({ left, right }) => left - 0.01 <= at && at <= right + 0.01);
  return Math.max(...there.map(({ outside }) => outside), 0) / 2;
}

/** Largest radius of a part, its outer ring included, mm. */
export function outsideRadius(part: SectionPart): number {
  return Math.max(...part.steps.map(({ outside }) => outside), part.bearing?.outer.outside ?? 0) / 2;
}
