import type { SectionPart } from '../assembly/section-shape.ts';
import type { Hatching } from './hatch.ts';
import { bearing } from './parts/bearing.ts';
import { breakLines } from './parts/break-lines.ts';
import { cone } from './parts/cone.ts';
import { splines } from './parts/splines.ts';
import { spokeHoles } from './parts/spoke-holes.ts';
import { isThin, thinRing } from './parts/thin-ring.ts';
import { tube } from './parts/tube.ts';
import { waveWasher } from './parts/wave-washer.ts';
import { line, type Shape } from './scene.ts';
import type { Sheet } from './sheet.ts';

/** One part of the section; `all` are the parts that may stand before its far edges. */
export function drawPart(part: SectionPart, all: readonly SectionPart[], sheet: Sheet): readonly Shape[] {
  return [...body(part, all, sheet), ...(part.kind === 'bearing' ? [] : breakLines(part, sheet))];
}

function body(part: SectionPart, all: readonly SectionPart[], sheet: Sheet): readonly Shape[] {
  if (part.kind === 'bearing') return bearing(part, sheet);
  if (part.kind === 'cone') return cone(part, sheet, hatchingOf(part, all));
  if (part.kind === 'wave-washer') return waveWasher(part, sheet);
  if (isThin(part, sheet)) return thinRing(part, sheet);
  // A collar is drawn with the axle it is turned from; its own faces only answer the pointer.
  if (part.ofAxle) return tube(part, sheet, hatchingOf(part, all)).filter(({ kind }) => kind === 'face');
  return [
    ...tube(part, sheet, hatchingOf(part, all)),
    ...spokeHoles(part, sheet),
    ...splines(part, sheet),
    ...farEdges(part, all, sheet),
  ];
}

/** Parts that touch differ in direction or distance of their hatching. */
function hatchingOf(part: SectionPart, all: readonly SectionPart[]): Hatching {
  switch (part.kind) {
    case 'shell':
      return { rising: true, spacing: 3 };
    case 'freehub':
      return { rising: false, spacing: 3 };
    case 'axle':
      return { rising: false, spacing: 2.6 };
    case 'seal':
    case 'cover':
    case 'rotor-face':
    case 'driver-face':
    case 'retaining-ring':
      return { rising: false, spacing: 1 };
    default: {
      const before = all.findLast(
        (other) => other.right === part.left && other.kind !== 'bearing' && other !== part,
      );
      const touching = before && all.indexOf(before) < all.indexOf(part) && before.address.includes('.');
      return touching && hatchingOf(before, all).rising
        ? { rising: false, spacing: 1.8 }
        : { rising: true, spacing: 2.2 };
    }
  }
}

/** Edges behind the cut, seen through the bore, where no other part stands before them. */
function farEdges(part: SectionPart, all: readonly SectionPart[], sheet: Sheet): readonly Shape[] {
  const { steps } = part;
  const places = [part.steps[0]?.left, ...steps.map(({ right }) => right)];
  return places.flatMap((at, index): readonly Shape[] => {
    if (at === undefined) return [];
    const [before, after] = [steps[index - 1], steps[index]];
    if (before && after && before.inside === after.inside) return [];
    const radius = Math.max(before?.inside ?? 0, after?.inside ?? 0) / 2;
    if (radius === 0) return [];
    const hidden = all.some(
      (other) =>
        other !== part &&
        other.steps.some(
          (step) => step.left < at + 0.01 && at - 0.01 < step.right && step.inside / 2 < radius - 0.01,
        ),
    );
    return hidden ? [] : [line('outline', [sheet.point(at, radius, -1), sheet.point(at, radius, 1)])];
  });
}
