import type { Group, Point, Shape } from '../scene.ts';

/** One view of a drawing with its own origin at the top left, mm. */
export interface Block {
  readonly width: number;
  readonly height: number;
  readonly groups: readonly Group[];
}

/** A block with its top left corner at a place. */
export function blockAt(block: Block, left: number, top: number): readonly Group[] {
  const by = ({ x, y }: Point): Point => ({ x: x + left, y: y + top });
  return block.groups.map((one) => ({ ...one, shapes: one.shapes.map((shape) => moved(shape, by)) }));
}

function moved(shape: Shape, by: (point: Point) => Point): Shape {
  switch (shape.kind) {
    case 'line':
      return { ...shape, points: shape.points.map(by) };
    case 'hatch':
      return {
        ...shape,
        area: shape.area.map(by),
        lines: shape.lines.map(([from, to]) => [by(from), by(to)] as const),
      };
    case 'face':
    case 'solid':
      return { ...shape, area: shape.area.map(by) };
    case 'circle':
    case 'dot':
    case 'badge':
      return { ...shape, centre: by(shape.centre) };
    case 'arrow':
      return { ...shape, tip: by(shape.tip) };
    case 'text':
      return { ...shape, at: by(shape.at) };
  }
}
