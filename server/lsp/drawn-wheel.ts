import { bench } from '../analysis/mechanics/conditions.ts';
import { positionsOf } from '../features/positions.ts';
import type { SectionAnswer, Stretch } from '../protocol/requests.ts';
import { wheelDrawing, wheelTitle } from '../report/wheel/wheel-drawing.ts';
import { wheelTables } from '../report/wheel/wheel-tables.ts';
import type { SpecPath } from '../spec/place.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { brokenBy } from './broken-by.ts';

/** Between a drawing as narrow as it can be and A4 across, mm. */
const widths = { least: 110, most: 281 };

/** Where the parts of a drawn wheel stand in the text: the first of these paths that is there. */
const written: Readonly<Record<string, readonly SpecPath[]>> = {
  rim: [['rim']],
  hub: [['hub']],
  'spokes.left': [['spokes', 'left'], ['lacing', 'left'], ['spokes']],
  'spokes.right': [['spokes', 'right'], ['lacing', 'right'], ['spokes']],
  'measured.left': [['tension', 'measured', 'left'], ['tension']],
  'measured.right': [['tension', 'measured', 'right'], ['tension']],
};

/** The wheel of a file with its tables, findings and what could not be worked out; null for a file that is no wheel. */
export function drawnWheel(snapshot: Snapshot, width: number | null): SectionAnswer | null {
  const { document, analysis, findings } = snapshot;
  if (document.kind !== 'wheel') return null;
  const positions = positionsOf(document);
  const range = (path: SpecPath): Stretch => positions.range(document.span(path));
  const faults = findings.findings.filter(({ group }) => group !== 'text');
  const all = [...faults, ...findings.findings.filter(({ group }) => group === 'text')];
  const wheel = analysis.wheel();
  const room = Math.min(Math.max(width ?? widths.most, widths.least), widths.most);
  const drawn = wheelDrawing(snapshot, { standalone: false, width: room });
  const places = Object.entries(written).flatMap(([address, paths]) => {
    const path = paths.find((one) => document.has(one));
    return path ? [[address, positions.range(document.span(path, 'key'))] as const] : [];
  });
  const none = { titles: [], rows: [] };
  return {
    title: wheelTitle(snapshot),
    variant: null,
    variants: [null],
    broken: brokenBy(all),
    svg: drawn?.svg ?? null,
    description: drawn?.description ?? '',
    assumed: [...(wheel?.assumed ?? []), ...(drawn?.assumed ?? [])],
    loops: [],
    conditions: { ...bench, writtenClamp: null },
    pairs: none,
    bearings: none,
    tables: (wheel ? wheelTables(wheel) : []).map(({ title, titles, rows }) => ({
      title,
      titles,
      rows: rows.map(({ cells, gravity, path }) => ({ cells, gravity, range: range(path) })),
    })),
    findings: all.map(({ code, severity, message, span }) => ({
      code,
      gravity: severity,
      message,
      range: positions.range(span),
    })),
    unchecked: (wheel?.unchecked ?? []).map(({ what, missing, path }) => ({
      what,
      missing,
      range: range(path),
    })),
    places: Object.fromEntries(places),
  };
}
