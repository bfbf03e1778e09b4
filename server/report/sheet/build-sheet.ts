import type { WheelAnalysis } from '../../analysis/wheel/analyze-wheel.ts';
import { plain } from '../../engine/base/figures.ts';
import type { Snapshot } from '../../workspace/workspace.ts';
import { sayTension } from '../wheel/say-tension.ts';
import { spokeCells } from '../wheel/spoke-cells.ts';
import { wheelDrawing, wheelTitle } from '../wheel/wheel-drawing.ts';
import { buildPractice } from './build-practice.ts';
import { lacingSteps } from './lacing-steps.ts';

/** Rows with a name in front. */
export interface SheetTable {
  readonly titles: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** What whoever builds the wheel needs at the stand, ready to be set on paper. */
export interface BuildSheet {
  readonly title: string;
  readonly facts: readonly (readonly [string, string])[];
  readonly cautions: readonly string[];
  /** The wheel as it prints in black; null where too little is known. */
  readonly drawing: string | null;
  readonly parts: SheetTable;
  readonly lengths: SheetTable;
  readonly findings: readonly string[];
  readonly lacing: readonly string[];
  readonly tension: readonly string[];
  readonly truing: SheetTable;
  readonly work: readonly string[];
  /** Spokes of each side, to write a reading at each. */
  readonly readings: readonly {
    readonly side: string;
    readonly count: number;
    readonly read: readonly number[];
  }[];
  readonly measure: readonly string[];
  readonly assumed: readonly string[];
}

/** Width of the drawing on the sheet, mm. */
const drawingWidth = 188;

/** Gathers the sheet of one wheel; null for a file that is none. What is not known is asked for, never made up. */
export function buildSheet(snapshot: Snapshot): BuildSheet | null {
  const wheel = snapshot.analysis.wheel();
  const written = snapshot.document.wheel;
  if (!wheel || !written) return null;
  const drawn = wheelDrawing(snapshot, { standalone: false, width: drawingWidth, brief: true });
  const interlaced = (side: 'left' | 'right'): boolean =>
    written.lacing[side]?.values.interlaced?.value ?? true;
  const { hub, rim } = wheel;
  const variant = hub?.variant ? `, ${hub.variant}` : '';
  const tyre = written.tyre?.values;
  return {
    title: wheelTitle(snapshot),
    facts: [
      ['Hub', hub ? `${hub.name}${variant}` : 'not read'],
      ['Position', hub?.position ?? 'not written'],
      ['Holes', rim ? String(rim.holes) : 'not written'],
      ...(tyre?.width ? [['Tyre', `${tyre.width.value.written} mm`] as const] : []),
    ],
    cautions: buildPractice.cautions,
    drawing: drawn?.svg ?? null,
    parts: partsOf(snapshot, wheel),
    lengths: lengthsOf(wheel),
    findings: findingsOf(snapshot),
    lacing: lacingSteps(wheel, { left: interlaced('left'), right: interlaced('right') }),
    tension: tensionOf(wheel),
    truing: { titles: ['What', 'Within', 'From'], rows: buildPractice.truing },
    work: buildPractice.work,
    readings: wheel.sides.map(({ side, count }) => ({
      side,
      count,
      read: wheel.measured?.sides[side]?.readings ?? [],
    })),
    measure: wheel.unchecked.map(({ what, missing }) => `${missing} (for ${what})`),
    assumed: [...new Set([...wheel.assumed, ...(drawn?.assumed ?? [])])],
  };
}

function partsOf({ document }: Snapshot, wheel: WheelAnalysis): SheetTable {
  const values = document.wheel?.rim?.values;
  const nipples = document.wheel?.nipples?.values;
  const total = wheel.sides.reduce((sum, { count }) => sum + count, 0);
  const spokes = new Map<string, { count: number; cells: readonly string[] }>();
  for (const group of wheel.groups) {
    const profile = wheel.sides.find(({ side }) => side === group.side)?.profile.written ?? '';
    const length = group.fit ? `${plain(group.fit.length.chosen)} mm` : 'length not known';
    const key = `${profile} ${length}`;
    const count = (spokes.get(key)?.count ?? 0) + group.count;
    spokes.set(key, { count, cells: ['spoke', `${profile}, ${length}`] });
  }
  const nipple = [
    ...(nipples?.material ? [nipples.material.value] : []),
    nipples?.length ? `${nipples.length.value.written} mm` : 'length not written',
  ].join(', ');
  const rim = [
    values?.erd ? `effective diameter ${values.erd.value.written} mm` : 'effective diameter not written',
    ...(values?.['erd-to'] ? [`to the ${values['erd-to'].value.replace('-', ' ')}`] : []),
  ].join(' ');
  const drilling = values?.drilling?.value ?? 'even';
  return {
    titles: ['Count', 'Part', 'What'],
    rows: [
      ['1', 'hub', wheel.hub?.name ?? 'not read'],
      ['1', 'rim', drilling === 'even' ? rim : `${rim}, drilled ${drilling}`],
      ...[...spokes.values()].map(({ count, cells }) => [String(count), ...cells]),
      ...(total > 0 ? [[String(total), 'nipple', nipple]] : []),
      ...(nipples?.washer && total > 0
        ? [[String(total), 'washer', `${nipples.washer.value.written} mm`]]
        : []),
    ],
  };
}

function lengthsOf({ groups }: WheelAnalysis): SheetTable {
  return {
    titles: ['Spokes', 'Count', 'At tension', 'Length', 'End in the slot', 'Engaged'],
    rows: groups.map(spokeCells),
  };
}

function tensionOf({ tension }: WheelAnalysis): readonly string[] {
  if (!tension) return [];
  const { set, ratio } = tension;
  const share = set.spread === null ? null : set.spread / set.value;
  const line = (side: 'left' | 'right'): string => {
    const { value, most, mostFrom, least, withTyre } = tension.sides[side];
    const spread = share === null ? '' : ` ±${sayTension(Math.round(share * value))}`;
    const tyre = withTyre
      ? `; ${sayTension(withTyre.lo)} to ${sayTension(withTyre.hi)} once the tyre is inflated`
      : '';
    return `${side}: mean ${sayTension(value)}${spread}, no spoke above ${sayTension(most)} (${mostFrom}), mean not under ${sayTension(least)}${tyre}`;
  };
  return [
    line('left'),
    line('right'),
    `left over right ${ratio.toFixed(2)}, from the places of the flanges and the holes of the rim`,
    ...(set.written ? [] : ['no tension is written in the file: these are usual figures']),
  ];
}

function findingsOf({ findings }: Snapshot): readonly string[] {
  return [
    ...findings.findings
      .filter(({ severity }) => severity === 'error' || severity === 'warning')
      .map(({ code, severity, message }) => `${severity} ${code}: ${message}`),
    ...findings.allowed.map(
      ({ finding, reason }) => `allowed ${finding.code}: ${finding.message} — because ${reason}`,
    ),
  ];
}
