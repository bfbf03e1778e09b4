import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { Section } from '../assembly/section.ts';
import type { SectionPart } from '../assembly/section-shape.ts';
import { plain } from '../engine/base/figures.ts';
import { diameterText } from './dimension-text.ts';
import { fullWidth, marked } from './draw-lengths.ts';
import { type LocatedMark, marksAt, marksOn, stateOf } from './fault-mark.ts';
import { placeInRows } from './rows.ts';
import { type Group, group, line, type Point, type Shape } from './scene.ts';
import type { Sheet } from './sheet.ts';
import { lineHeight } from './text-width.ts';

/** A name with what is said of it, and the point in the section it speaks of (mm of the hub). */
export interface PartLabel {
  readonly address: string;
  readonly lines: readonly string[];
  readonly at: number;
  readonly radius: number;
  /** Dimensions told in the label: a fault on one of them is marked here. */
  readonly dimensions: readonly string[];
}

/** Names for every part; a bearing's also tells its seat where no side of the section measures it. */
export function partLabels(
  variant: VariantAnalysis,
  section: Section,
  measured: ReadonlySet<string>,
): readonly PartLabel[] {
  const lines = new Map(variant.assembly.line.map((part) => [part.address, part] as const));
  const seats = [variant.assembly.shell, variant.assembly.freehub].flatMap((filled) => filled?.seats ?? []);
  return section.parts.map((part): PartLabel => {
    const own = lines.get(part.address);
    const seat = seats.find(
      ({ contact, address }) => contact?.address === part.address && !measured.has(`bore:${address}`),
    );
    const bore = seat?.seat.values.bore;
    const seatLine = bore ? [`seat ${diameterText(bore.value)}`] : [];
    return {
      address: part.address,
      lines: [...nameOf(part), ...detailsOf(part, own, variant), ...seatLine].map(clip),
      ...anchorOf(part, section),
      dimensions: seat && bore ? [`bore:${seat.address}`] : [],
    };
  });
}

/** Names longer than this are cut short in the drawing; their whole stands in the text beside it. */
const longest = 26;

function clip(text: string): string {
  return text.length <= longest ? text : `${text.slice(0, longest - 1)}…`;
}

function nameOf(part: SectionPart): readonly string[] {
  if (part.kind !== 'retaining-ring') return [part.address];
  return ['retaining ring', part.address.replace(/\.retaining-ring$/, '')];
}

function detailsOf(
  part: SectionPart,
  own: VariantAnalysis['assembly']['line'][number] | undefined,
  variant: VariantAnalysis,
): readonly string[] {
  if (part.kind === 'axle') {
    const { diameter, bore } = variant.assembly.hub.axle?.values ?? {};
    return [
      ...(diameter ? [diameterText(diameter.value)] : []),
      ...(bore ? [`bore ${diameterText(bore.value)}`] : []),
    ];
  }
  if (part.kind === 'retaining-ring') return [`${plain(part.right - part.left)} thick`];
  const values = own?.part.values;
  if (!values) return [];
  if (part.kind === 'bearing') {
    const decoded = own?.bearing?.bearing;
    const code = values.code?.value ?? values['house-code']?.value;
    const size = decoded
      ? `${plain(decoded.bore)} × ${plain(decoded.outside)} × ${plain(decoded.width)}`
      : 'size not known';
    return [
      ...(code ? [code] : []),
      size,
      ...(values.journal ? [`on ${diameterText(values.journal.value)}`] : []),
    ];
  }
  const { face, outside, inside, spigot } = values;
  if (part.kind === 'end-cap') {
    return [
      ...(face ? [`face ${diameterText(face.value)}`] : []),
      ...(spigot ? [`spigot ${diameterText(spigot.value)}`] : []),
    ];
  }
  const tube = [outside, inside].flatMap((placed) => (placed ? [diameterText(placed.value)] : []));
  return tube.length === 2 && tube.every((text) => text.length < 9) ? [tube.join(' / ')] : tube;
}

/** Where a leader meets its part: in the wall, away from where other leaders start. */
function anchorOf(part: SectionPart, section: Section): { readonly at: number; readonly radius: number } {
  if (part.bearing) {
    const { outer } = part.bearing;
    return { at: (outer.left + outer.right) / 2, radius: (outer.inside + outer.outside) / 4 };
  }
  const share = part.kind === 'axle' ? 0.62 : part.kind === 'shell' ? 0.36 : 0.5;
  const at = part.left + (part.right - part.left) * share;
  const free = part.kind === 'axle' || part.kind === 'shell' ? clear(at, part, section) : at;
  const step = part.steps.find(({ left, right }) => left <= free && free <= right) ?? part.steps[0];
  return { at: free, radius: step ? (step.inside + step.outside) / 4 : 0 };
}

/** Moves a place off the middles of the stack's parts. */
function clear(at: number, part: SectionPart, section: Section): number {
  const taken = section.parts
    .filter((other) => other !== part && other.kind !== 'axle' && other.kind !== 'shell')
    .map(({ left, right }) => (left + right) / 2);
  for (const off of [0, 3, -3, 6, -6])
    if (taken.every((other) => 1.5 < Math.abs(other - at - off))) return at + off;
  return at;
}

/** Draws the names above the section, nearest row first; `bottom` is the top of the section. */
export function drawLabels(
  labels: readonly PartLabel[],
  sheet: Sheet,
  bottom: number,
  bounds: readonly [number, number],
  marks: readonly LocatedMark[],
): { readonly groups: readonly Group[]; readonly top: number } {
  const own = labels.map((label) => [
    ...new Set([...marksAt(marks, label.address), ...label.dimensions.flatMap((id) => marksOn(marks, id))]),
  ]);
  const widthOf = (label: PartLabel, index: number): number =>
    Math.max(...label.lines.map((text, at) => fullWidth(text, at === 0 ? (own[index] ?? []) : [], at === 0)));
  const rows = placeInRows(
    labels.map((label, index) => ({ want: sheet.x(label.at), width: widthOf(label, index) })),
    bounds,
  );
  const count = Math.max(0, ...rows.map(({ row }) => row + 1));
  // Base of each row: the lower edge of its texts.
  const bases: number[] = [];
  let y = bottom - 9;
  for (let row = 0; row < count; row += 1) {
    bases.push(y);
    const lines = Math.max(...labels.map((label, at) => (rows[at]?.row === row ? label.lines.length : 0)));
    y -= lines * lineHeight + 3;
  }
  const groups = labels.map((label, index) => {
    const { row, centres } = rows[index] ?? { row: 0, centres: [] };
    const start = sheet.point(label.at, label.radius, -1);
    const points: Point[] = [start, { x: start.x, y: bottom - 1 }];
    for (const [at, x] of centres.entries()) {
      points.push({ x, y: bases[at] ?? y });
      if (at < row) points.push({ x, y: (bases[at + 1] ?? y) + 1.5 });
    }
    const x = centres.at(-1) ?? start.x;
    const base = (bases[row] ?? y) - 1.2;
    const texts = label.lines.flatMap((text, at): readonly Shape[] =>
      marked(
        text,
        { x, y: base - (label.lines.length - 1 - at) * lineHeight },
        at === 0 ? (own[index] ?? []) : [],
        at === 0,
      ),
    );
    return group('label', [{ kind: 'dot', centre: start, radius: 0.5 }, line('leader', points), ...texts], {
      address: label.address,
      state: stateOf(own[index] ?? []),
    });
  });
  return { groups, top: y };
}
