import type { FaultMark, LocatedMark } from '../fault-mark.ts';
import type { Point, Shape } from '../scene.ts';

/** Parts of a drawn wheel by the names the drawing gives them. */
export type WheelAddress = 'rim' | 'hub' | 'spokes.left' | 'spokes.right' | 'tension';

/** Finds the part of the wheel that each finding speaks of, by the place of what is to be changed. */
export function wheelMarks(marks: readonly FaultMark[]): readonly LocatedMark[] {
  return marks.map((mark, at) => ({
    number: at + 1,
    mark,
    addresses: new Set<string>(addressesOf(mark.path)),
    dimensions: new Set<string>(),
  }));
}

function addressesOf([section, key]: FaultMark['path']): readonly WheelAddress[] {
  if (section === 'rim') return ['rim'];
  if (section === 'hub' || section === 'variant') return ['hub'];
  if (section === 'tension') return ['tension'];
  if (section !== 'spokes' && section !== 'lacing') return [];
  if (key === 'left') return ['spokes.left'];
  return key === 'right' ? ['spokes.right'] : ['spokes.left', 'spokes.right'];
}

/** Their numbers in a row. */
export function badges(marks: readonly LocatedMark[], from: Point): readonly Shape[] {
  return marks.map(({ number }, at) => ({
    kind: 'badge',
    centre: { x: from.x + at * 5, y: from.y },
    number,
  }));
}
