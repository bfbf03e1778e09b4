import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver-types';
import type { SpecDocument } from '../spec/document.ts';
import type { Housing, Hub, StackPart, Variant } from '../spec/model.ts';
import type { SpecPath } from '../spec/place.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { positionsOf } from './positions.ts';

/** The parts, seats and variants of a file as a tree. */
export function documentSymbols({ document, analysis }: Snapshot): DocumentSymbol[] {
  const { hub, wheel, workshop } = document;
  const draw = drawer(document);
  if (hub) return hubSymbols(hub, draw, sizesOf(analysis.variants[0]?.assembly.bearings ?? []));
  if (wheel) {
    const sections = ['rim', 'lacing', 'spokes', 'nipples', 'tension', 'tyre', 'rider'];
    return sections
      .filter((section) => document.has([section]))
      .map((section) => draw(section, '', SymbolKind.Object, [section]));
  }
  if (workshop) {
    const codes = Object.entries(workshop.bearings).map(([name, placed]) =>
      draw(name, placed.value.code ?? placed.value.size?.written ?? '', SymbolKind.Constant, placed.path),
    );
    const limits = Object.entries(workshop.limits).map(([name, placed]) =>
      draw(name, String(placed.value), SymbolKind.Number, placed.path),
    );
    return [
      ...group(draw, 'limits', ['limits'], limits, document),
      ...group(draw, 'bearings', ['bearings'], codes, document),
    ];
  }
  return [];
}

type Draw = (
  name: string,
  detail: string,
  kind: SymbolKind,
  path: SpecPath,
  children?: DocumentSymbol[],
) => DocumentSymbol;

function drawer(document: SpecDocument): Draw {
  const { range } = positionsOf(document);
  return (name, detail, kind, path, children = []) => {
    const whole = document.span(path, 'whole');
    const key = document.span(path, 'key');
    // The name must lie inside the whole, also where a path fell back to an ancestor.
    const inside = whole.start <= key.start && key.end <= whole.end;
    return {
      name: name || '(no name)',
      detail,
      kind,
      range: range(inside ? whole : key),
      selectionRange: range(key),
      children,
    };
  };
}

function hubSymbols(hub: Hub, draw: Draw, sizes: ReadonlyMap<string, string>): DocumentSymbol[] {
  const stack = hub.stack.map((part) => partSymbol(part, draw, sizes));
  const beside = hub.beside.map((part) =>
    draw(part.address, part.values.at?.value.distance.written ?? '', SymbolKind.Field, part.path),
  );
  const variants = hub.variants.map((variant) => variantSymbol(variant, draw));
  const housings = [hub.shell, hub.freehub].filter((housing) => housing !== null);
  const name = hub.values.hub?.value ?? 'hub';
  const { position, width } = hub.values;
  const detail = [position?.value, width?.value.written].filter(Boolean).join(', ');
  const symbols = [
    ...housings.map((housing) => housingSymbol(housing, draw)),
    ...(hub.axle
      ? [draw('axle', hub.axle.values.diameter?.value.written ?? '', SymbolKind.Object, hub.axle.path)]
      : []),
    ...(stack.length > 0 ? [draw('stack', `${stack.length} parts`, SymbolKind.Array, ['stack'], stack)] : []),
    ...(beside.length > 0 ? [draw('beside', '', SymbolKind.Array, ['beside'], beside)] : []),
    ...(variants.length > 0 ? [draw('variants', '', SymbolKind.Namespace, ['variants'], variants)] : []),
  ];
  return hub.values.hub
    ? [draw(name, detail, SymbolKind.Property, hub.values.hub.path), ...symbols]
    : symbols;
}

function partSymbol(part: StackPart, draw: Draw, sizes: ReadonlyMap<string, string>): DocumentSymbol {
  const detail =
    part.kind === 'bearing'
      ? [part.values.code?.value, sizes.get(part.address)].filter(Boolean).join('  ')
      : (part.values.length?.value.written ?? '');
  return draw(part.address, detail, SymbolKind.Field, part.path);
}

/** Bore × outside × width by address. */
function sizesOf(
  bearings: Snapshot['analysis']['variants'][number]['assembly']['bearings'],
): ReadonlyMap<string, string> {
  return new Map(
    bearings.flatMap(({ address, bearing }) =>
      bearing ? [[address, `${bearing.bore} × ${bearing.outside} × ${bearing.width}`] as const] : [],
    ),
  );
}

function housingSymbol(housing: Housing, draw: Draw): DocumentSymbol {
  const seats = housing.seats.map((seat) =>
    draw(seat.address, seat.values.bore?.value.written ?? '', SymbolKind.Field, seat.path),
  );
  const flanges = housing.flanges.map((flange) =>
    draw(`flange ${flange.name}`, flange.values.circle?.value.written ?? '', SymbolKind.Field, flange.path),
  );
  const detail = housing.values['between-shoulders']?.value.written ?? '';
  return draw(housing.name, detail, SymbolKind.Object, housing.path, [...seats, ...flanges]);
}

function variantSymbol(variant: Variant, draw: Draw): DocumentSymbol {
  return draw(variant.name, variant.values.width?.value.written ?? '', SymbolKind.Namespace, variant.path);
}

function group(
  draw: Draw,
  name: string,
  path: SpecPath,
  children: DocumentSymbol[],
  document: SpecDocument,
): DocumentSymbol[] {
  return document.has(path) ? [draw(name, '', SymbolKind.Namespace, path, children)] : [];
}
