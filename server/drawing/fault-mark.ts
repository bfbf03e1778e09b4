import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { Section } from '../assembly/section.ts';
import type { State } from './scene.ts';

type Path = readonly (string | number)[];

/** A finding to mark in the drawing, as plain data. Its number is its place in the list, from 1. */
export interface FaultMark {
  readonly severity: 'error' | 'warning' | 'information' | 'hint';
  readonly message: string;
  /** Path of the value to change. */
  readonly path: Path;
  readonly code?: string;
}

/** Where a fault shows: parts and dimensions by the names the drawing gives them. */
export interface LocatedMark {
  readonly number: number;
  readonly mark: FaultMark;
  readonly addresses: ReadonlySet<string>;
  /** `width`, `length:spacer.centre`, `depth:shell.left`, `between:shell`, `gap:shell`, `bore:shell.left`. */
  readonly dimensions: ReadonlySet<string>;
}

/** More faults than this cannot be told apart on a sheet. */
const mostMarks = 100;

/** Finds the parts and dimensions each finding speaks of. */
export function locateMarks(
  marks: readonly FaultMark[],
  variant: VariantAnalysis,
  section: Section,
): readonly LocatedMark[] {
  const known = new Set([
    ...section.parts.map((part) => part.address),
    ...variant.assembly.line.map((part) => part.address),
  ]);
  return marks.slice(0, mostMarks).map((mark, index) => {
    const addresses = new Set<string>();
    const dimensions = new Set<string>();
    const { path, code = '' } = mark;
    for (const { part, address } of variant.assembly.line) {
      const own = Object.entries(part.values).find(([, placed]) => isWithin(path, placed.path));
      if (!own && !isWithin(path, part.path)) continue;
      addresses.add(address);
      const key = own?.[0] ?? path.at(-1);
      if (key === 'length' || key === 'width') dimensions.add(`length:${address}`);
    }
    for (const filled of [variant.assembly.shell, variant.assembly.freehub]) {
      if (!filled || !isWithin(path, filled.housing.path)) continue;
      const seat = filled.seats.find((one) => isWithin(path, one.seat.path));
      const key = path.at(-1);
      const { name } = filled.housing;
      addresses.add(
        seat?.seat.ring && isWithin(path, seat.seat.ring.path) ? `${seat.address}.retaining-ring` : name,
      );
      if (seat && key === 'depth') dimensions.add(`depth:${seat.address}`);
      else if (seat) dimensions.add(`bore:${seat.address}`);
      if (key === 'between-shoulders') dimensions.add(`between:${name}`);
      if (key === 'gap') dimensions.add('gap:freehub');
    }
    const { axle, beside } = variant.assembly.hub;
    if (axle && isWithin(path, axle.path)) addresses.add('axle');
    for (const item of beside) if (isWithin(path, item.path)) addresses.add(item.address);
    const { wanted } = variant.width.loop;
    if (code.startsWith('width') || (wanted && isWithin(path, wanted.path))) {
      dimensions.add('width');
      dimensions.add('wanted');
    }
    if (code.startsWith('freehub-')) dimensions.add('gap:freehub');
    if (code === 'end-cap-bottoms') dimensions.add('gap:axle');
    return {
      number: index + 1,
      mark,
      addresses: new Set([...addresses].filter((one) => known.has(one))),
      dimensions,
    };
  });
}

/** How the worst of some marks is drawn. */
export function stateOf(marks: readonly LocatedMark[]): State {
  const severities = marks.map(({ mark }) => mark.severity);
  if (severities.includes('error')) return 'fault';
  if (severities.includes('warning')) return 'warning';
  return 0 < severities.length ? 'note' : null;
}

/** The marks at a part or at a dimension. */
export const marksAt = (marks: readonly LocatedMark[], address: string): readonly LocatedMark[] =>
  marks.filter(({ addresses }) => addresses.has(address));
export const marksOn = (marks: readonly LocatedMark[], dimension: string): readonly LocatedMark[] =>
  marks.filter(({ dimensions }) => dimensions.has(dimension));

function isWithin(path: Path, outer: Path): boolean {
  return outer.length <= path.length && outer.every((key, at) => key === path[at]);
}
