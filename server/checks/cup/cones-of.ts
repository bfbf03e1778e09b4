import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { ConeBalls, ConeSide } from '../../analysis/mechanics/cone-side.ts';
import { type ConeMechanics, isConeWorked } from '../../analysis/mechanics/cup-cone.ts';
import { length } from '../../engine/base/figures.ts';
import { setValue } from '../../spec/edit.ts';
import type { Fix } from '../../spec/problem.ts';
import { hasUnreadParts } from '../unread-parts.ts';

/** The cones of a variant as built; null where they cannot be judged. */
export function conesOf(analysis: Analysis, variant: VariantAnalysis): ConeMechanics | null {
  if (hasUnreadParts(analysis)) return null;
  const { cups } = variant.mechanics('built');
  return isConeWorked(cups) ? cups : null;
}

/** A cone whose balls and ball circle are both known. */
export type Filled = ConeSide & { readonly balls: ConeBalls };

/** Cones whose balls can be held against their circle. */
export function filledCones(analysis: Analysis, variant: VariantAnalysis): readonly Filled[] {
  const cones = conesOf(analysis, variant)?.cones ?? [];
  return cones.filter(
    (cone): cone is Filled => cone.balls !== null && cone.balls.diameter < cone.balls.circle,
  );
}

/** Another number of balls, in the notation they are written in. */
export function countFix(analysis: Analysis, { part, balls }: Filled, count: number): Fix {
  const { start, end } = analysis.spec.span(balls.path);
  const text = analysis.spec.text.slice(start, end).replace(/^(["']?)\s*\d+/, `$1${count}`);
  return {
    title: `Change balls of ${part.address} to ${count}: ${length(roomFor(balls, count))} mm left on the circle`,
    changes: setValue(analysis.spec, balls.path, text.replace(/^["']|["']$/g, '')),
    preferred: true,
  };
}

/** What is left of the circle with another number of balls, mm. */
function roomFor(balls: ConeBalls, count: number): number {
  const each = Math.asin(balls.diameter / balls.circle) * balls.circle;
  return balls.gap + (balls.count - count) * each;
}
