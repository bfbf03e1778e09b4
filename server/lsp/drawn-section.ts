import type { VariantAnalysis } from '../analysis/analyze.ts';
import { bench, type Conditions } from '../analysis/mechanics/conditions.ts';
import type { Finding } from '../checks/check.ts';
import { drawSection } from '../drawing/draw-section.ts';
import { type Positions, positionsOf } from '../features/positions.ts';
import type { SectionAnswer, SectionTable, Stretch } from '../protocol/requests.ts';
import { loopTable } from '../report/loop-table.ts';
import { fitTable, type MechanicsTable, playTable } from '../report/mechanics-table.ts';
import type { SpecPath } from '../spec/place.ts';
import { nameOf } from '../workspace/location.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { brokenBy } from './broken-by.ts';
import { under } from './conditions.ts';
import { drawnWheel } from './drawn-wheel.ts';

/** Parts beyond which a stack is a slip of the keyboard and not a hub. */
const mostParts = 200;

/** Between a drawing as narrow as it can be and A4 across, mm. */
const widths = { least: 110, most: 281 };

/**
 * The section of one variant with its loops, findings and what could not be checked; null for a file that is
 * neither hub nor wheel. `width` is that of the drawing, mm; `conditions` are those of play and load.
 */
export function drawnSection(
  snapshot: Snapshot,
  wanted: string | null,
  width: number | null = null,
  conditions: Conditions = bench,
): SectionAnswer | null {
  const { document, analysis, file } = snapshot;
  const { variants } = analysis;
  const [written] = variants;
  const asked = variants.find(({ name }) => name === wanted) ?? written;
  const shown = asked && under(asked, conditions);
  if (document.kind !== 'hub') return drawnWheel(snapshot, width);
  const positions = positionsOf(document);
  const range = (path: SpecPath): Stretch => positions.range(document.span(path));
  const title = document.hub?.values.hub?.value || nameOf(file);
  const here = snapshot.findings.findings.filter((finding) => concerns(finding, shown));
  // What is wrong with the hub comes before what is wrong with the text; only the former is drawn.
  const faults = here.filter(({ group }) => group !== 'text');
  const findings = [...faults, ...here.filter(({ group }) => group === 'text')];
  const common = {
    title,
    variant: shown?.name ?? null,
    variants: variants.map(({ name }) => name),
    broken: brokenBy(findings),
    findings: findings.map(({ code, severity, message, span }) => ({
      code,
      gravity: severity,
      message,
      range: positions.range(span),
    })),
  };
  const parts = shown?.assembly.line.length ?? 0;
  if (!shown || parts === 0 || mostParts < parts) {
    const none = { titles: [], rows: [] };
    const tables = {
      loops: [],
      pairs: none,
      bearings: none,
      tables: [],
      conditions: { ...conditions, writtenClamp: null },
    };
    return { ...common, ...tables, svg: null, description: '', assumed: [], unchecked: [], places: {} };
  }
  const { svg, description, missing } = drawSection(
    shown,
    // The drawing numbers its marks as the list of findings is numbered.
    faults.map(({ path, severity, message, code }) => ({ path, severity, message, code })),
    {
      standalone: false,
      width: Math.min(Math.max(width ?? widths.most, widths.least), widths.most),
      ...(written && written !== asked ? { asWritten: written } : {}),
    },
  );
  return {
    ...common,
    svg,
    description,
    assumed: missing,
    loops: loopTable(shown, analysis.limits).map(({ kind: _, path, ...row }) => ({
      ...row,
      range: range(path),
    })),
    conditions: { ...conditions, writtenClamp: asked.mechanics('built').clamp?.force ?? null },
    pairs: placed(playTable(shown, analysis.limits), range),
    bearings: placed(fitTable(shown), range),
    tables: [],
    unchecked: shown.unchecked.map(({ what, missing: lacks, path }) => ({
      what,
      missing: lacks,
      range: range(path),
    })),
    places: placesOf(shown, snapshot, positions),
  };
}

function placed({ titles, rows }: MechanicsTable, range: (path: SpecPath) => Stretch): SectionTable {
  return {
    titles,
    rows: rows.map(({ cells, gravity, path }) => ({ cells, gravity, range: range(path) })),
  };
}

/** A finding of other variants only is none of this one's. */
function concerns({ variants }: Finding, shown: VariantAnalysis | undefined): boolean {
  return variants.length === 0 || shown === undefined || variants.includes(shown.name);
}

/** Where everything that has an address stands in the text. */
function placesOf(
  { assembly }: VariantAnalysis,
  { document }: Snapshot,
  { range }: Positions,
): Readonly<Record<string, Stretch>> {
  const { hub, line, shell, freehub } = assembly;
  const places: Record<string, Stretch> = {};
  const add = (address: string, path: SpecPath): void => {
    places[address] = range(document.span(path, 'key'));
  };
  for (const { address, part } of line) add(address, part.path);
  for (const { address, path } of hub.beside) add(address, path);
  for (const housing of [shell, freehub]) {
    if (housing) add(housing.housing.name, housing.housing.path);
    for (const { address, seat } of housing?.seats ?? []) add(address, seat.path);
  }
  if (hub.axle) add('axle', hub.axle.path);
  return places;
}
