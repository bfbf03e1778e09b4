/** A drawing as plain data: places in mm on the sheet, x to the right, y down. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** What a line is for; its width, dashes and colour follow from that (ISO 128-2). */
export type LineRole =
  /** Visible edges: continuous, wide. */
  | 'outline'
  /** Seals, root lines, breaks: continuous, narrow. */
  | 'thin'
  /** Axes: long-dashed dotted, narrow. */
  | 'centre'
  /** Edges that no dimension gives: dashed, narrow. */
  | 'assumed'
  /** Edges behind others: dashed, narrow. */
  | 'hidden'
  /** Dimension and extension lines: continuous, narrow. */
  | 'dimension'
  | 'leader';

export type Anchor = 'start' | 'middle' | 'end';

export interface Text {
  readonly kind: 'text';
  readonly text: string;
  /** Where the anchor stands on the base line. */
  readonly at: Point;
  readonly anchor: Anchor;
  /** Font size, mm; capitals are 0.73 of it high. */
  readonly size: number;
  /** Reads upwards, for dimensions seen from the right. */
  readonly upright: boolean;
  readonly strong: boolean;
}

export type Shape =
  | {
      readonly kind: 'line';
      readonly role: LineRole;
      readonly points: readonly Point[];
      readonly closed: boolean;
    }
  /** A cut face: a closed outline without its last point repeated, and the lines that fill it. */
  | {
      readonly kind: 'hatch';
      readonly area: readonly Point[];
      readonly lines: readonly (readonly [Point, Point])[];
    }
  /** A face that answers the pointer, not drawn. */
  | { readonly kind: 'face'; readonly area: readonly Point[] }
  /** A section too thin to hatch: filled. */
  | { readonly kind: 'solid'; readonly area: readonly Point[] }
  | { readonly kind: 'circle'; readonly role: LineRole; readonly centre: Point; readonly radius: number }
  | { readonly kind: 'dot'; readonly centre: Point; readonly radius: number }
  /** An arrowhead; `towards` is the direction it points in. */
  | { readonly kind: 'arrow'; readonly tip: Point; readonly towards: 'left' | 'right' | 'up' | 'down' }
  /** The number of a fault in the list. */
  | { readonly kind: 'badge'; readonly centre: Point; readonly number: number }
  | Text;

export type State = 'fault' | 'warning' | 'note' | null;

/** A dimension as a reader measures it: between its two extension lines. */
export interface DimensionFrame {
  readonly from: Point;
  readonly to: Point;
  /** The two extension lines, from the part outwards. */
  readonly extensions: readonly [readonly [Point, Point], readonly [Point, Point]];
}

/** Shapes that belong together. */
export interface Group {
  readonly kind: 'part' | 'axis' | 'dimension' | 'label' | 'detail' | 'note';
  /** Address of the part, or of the loop. */
  readonly address: string | null;
  /** What a screen reader says; parts have one. */
  readonly label: string | null;
  readonly state: State;
  readonly shapes: readonly Shape[];
  readonly dimension: DimensionFrame | null;
}

export interface Scene {
  /** Left, top, width and height of the sheet shown, mm. */
  readonly view: readonly [number, number, number, number];
  readonly groups: readonly Group[];
}

/** A group with the fields most groups leave empty. */
export function group(kind: Group['kind'], shapes: readonly Shape[], more: Partial<Group> = {}): Group {
  return { kind, address: null, label: null, state: null, dimension: null, ...more, shapes };
}

export function line(role: LineRole, points: readonly Point[], closed = false): Shape {
  return { kind: 'line', role, points, closed };
}
