import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { plain } from '../../engine/base/figures.ts';
import { type DecodedBearing, decodeBearing } from '../../engine/bearings/decode-bearing.ts';
import type { Snapshot } from '../../workspace/workspace.ts';

/** Where pieces go. */
export interface OrderUse {
  readonly file: string;
  readonly hub: string;
  readonly variant: string | null;
  readonly count: number;
}

/** One thing to have: pieces that are alike in everything that matters. */
export interface OrderLine {
  readonly kind: 'bearing' | 'shim' | 'retaining-ring';
  /** Size by which things can stand for each other: `17 × 26 × 5`, `0.1`, `26`. */
  readonly size: string;
  /** One spelling of the code; null where nothing but the size is known. */
  readonly code: string | null;
  /** Codes as the files write them. */
  readonly written: readonly string[];
  /** Suffixes in plain words: what must not be exchanged without thinking. */
  readonly matters: string;
  readonly count: number;
  /** Pieces on the shelf; null where the workshop counts none of this kind. */
  readonly stock: number | null;
  /** What is left to order. */
  readonly order: number;
  /** Others of the same size on the shelf: they fit, and differ in what they are. */
  readonly sameSize: readonly { readonly code: string; readonly count: number }[];
  readonly uses: readonly OrderUse[];
}

export interface OrderList {
  readonly lines: readonly OrderLine[];
  /** Parts whose size or code could not be read, with where they stand. */
  readonly unknown: readonly { readonly file: string; readonly part: string; readonly why: string }[];
  /** Hubs that do not have the variant asked for and are counted as written. */
  readonly withoutVariant: readonly string[];
}

/** What an order is for. */
export interface OrderOptions {
  readonly variant: string | null;
  /** How many of each hub are built. */
  readonly sets: number;
}

/** Bearings, shims and retaining rings over many hubs, grouped by size, the shelf taken off. */
export function orderList(
  hubs: readonly { readonly path: string; readonly snapshot: Snapshot }[],
  { variant: wanted, sets }: OrderOptions,
): OrderList {
  const needs = new Map<string, Need>();
  const unknown: { file: string; part: string; why: string }[] = [];
  const withoutVariant: string[] = [];
  for (const { path, snapshot } of hubs) {
    const { variants } = snapshot.analysis;
    const chosen = variants.find(({ name }) => name === wanted) ?? variants[0];
    if (!chosen) continue;
    if (wanted !== null && chosen.name !== wanted) withoutVariant.push(path);
    const use = {
      file: path,
      hub: chosen.assembly.hub.values.hub?.value ?? path,
      variant: chosen.name,
    };
    for (const need of needsOf(chosen)) {
      if ('why' in need) unknown.push({ file: path, ...need });
      else add(needs, need, { ...use, count: need.count * sets });
    }
  }
  const shelf = shelfOf(hubs.map(({ snapshot }) => snapshot.analysis));
  const lines = [...needs.values()].map((need) => lineOf(need, shelf));
  return { lines: lines.toSorted(bySize), unknown, withoutVariant };
}

interface Piece {
  readonly kind: OrderLine['kind'];
  readonly size: string;
  readonly order: readonly number[];
  readonly code: string | null;
  readonly written: string | null;
  readonly matters: string;
  readonly count: number;
}

interface Need extends Omit<Piece, 'written'> {
  readonly written: Set<string>;
  readonly uses: OrderUse[];
}

function add(needs: Map<string, Need>, piece: Piece, use: OrderUse): void {
  const key = [piece.kind, piece.size, piece.code].join('|');
  const known = needs.get(key) ?? { ...piece, written: new Set<string>(), uses: [] };
  if (piece.written !== null) known.written.add(piece.written);
  const same = known.uses.findIndex(({ file, variant }) => file === use.file && variant === use.variant);
  const before = known.uses[same];
  if (before) known.uses[same] = { ...before, count: before.count + use.count };
  else known.uses.push(use);
  needs.set(key, known);
}

function needsOf({ assembly }: VariantAnalysis): readonly (Piece | { part: string; why: string })[] {
  const bearings = assembly.bearings.map(({ part, bearing, failure, address }) => {
    const written =
      part.values.code?.value ?? part.values['house-code']?.value ?? part.values.size?.value.written ?? null;
    if (bearing) return bearingPiece(bearing, written);
    return { part: address, why: failure ? failure.error : 'neither code nor size is written' };
  });
  const shims = assembly.line
    .filter(({ part }) => part.kind === 'shim')
    .map(({ length, address }): Piece | { part: string; why: string } => {
      if (!length.settled) return { part: address, why: 'its thickness is not written' };
      const thickness = length.settled.drawn.nominal;
      return {
        kind: 'shim',
        size: plain(thickness),
        order: [thickness],
        code: null,
        written: null,
        matters: '',
        count: length.count,
      };
    });
  const rings = [assembly.shell, assembly.freehub].flatMap((housing) =>
    (housing?.seats ?? []).flatMap(
      ({ seat, address }): readonly (Piece | { part: string; why: string })[] => {
        if (!seat.ring) return [];
        const size = seat.ring.values.size?.value.nominal ?? seat.values.bore?.value.nominal;
        if (size === undefined)
          return [{ part: `${address}.retaining-ring`, why: 'its size is not written' }];
        const thickness = seat.ring.values.thickness?.value.nominal;
        const what = thickness === undefined ? '' : `${plain(thickness)} thick`;
        return [
          {
            kind: 'retaining-ring',
            size: `for bore ${plain(size)}`,
            order: [size, thickness ?? 0],
            code: what === '' ? null : what,
            written: null,
            matters: what === '' ? 'thickness not written' : '',
            count: 1,
          },
        ];
      },
    ),
  );
  return [...bearings, ...shims, ...rings];
}

function bearingPiece(bearing: DecodedBearing, written: string | null): Piece {
  return {
    kind: 'bearing',
    size: sizeOf(bearing),
    order: [bearing.bore, bearing.outside, bearing.width],
    code: bearing.basis === 'size' ? null : bearing.normalised,
    written,
    matters: mattersOf(bearing),
    count: 1,
  };
}

const sizeOf = ({ bore, outside, width }: DecodedBearing): string =>
  [bore, outside, width].map(plain).join(' × ');

/** What the suffixes say, as far as a supplier must keep to it. */
function mattersOf(bearing: DecodedBearing): string {
  const {
    closure,
    closedSides,
    rubs,
    clearance,
    material,
    fullComplement,
    toleranceClass,
    kind,
    contactAngle,
  } = bearing;
  if (bearing.basis === 'size') return 'seals and clearance not written';
  const closed =
    closure === 'open'
      ? 'open'
      : `${rubs === true ? 'rubbing ' : rubs === false ? 'non-rubbing ' : ''}${closure}${closedSides === 2 ? 's' : ' on one side'}`;
  return [
    closed,
    ...(kind === 'deep-groove' ? [`clearance ${clearance.group}`] : []),
    ...(contactAngle === null ? [] : [`contact angle ${contactAngle}°`]),
    ...(material === 'steel' || material === 'unknown' ? [] : [material]),
    ...(fullComplement ? ['full complement'] : []),
    ...(toleranceClass === 'Normal' ? [] : [`class ${toleranceClass}`]),
  ].join(', ');
}

interface Shelf {
  readonly bearings: readonly { readonly code: string; readonly size: string; readonly count: number }[];
  /** Thicknesses, which are not counted. */
  readonly shims: ReadonlySet<string>;
}

/** What is on the shelf: hubs of one workshop share it, so that each file's stock counts once. */
function shelfOf(analyses: readonly Analysis[]): Shelf {
  const shops = new Map<unknown, NonNullable<Analysis['workshop']>>();
  for (const { workshop, surroundings } of analyses) {
    if (workshop) shops.set(surroundings.workshops[0]?.file ?? workshop, workshop);
  }
  const bearings = [...shops.values()].flatMap(({ stock, bearings: house }) =>
    Object.entries(stock.bearings).map(([code, { value }]) => {
      const meant = house[code]?.value.code ?? code;
      const decoded = decodeBearing(meant);
      return 'bearing' in decoded
        ? { code: decoded.bearing.normalised, size: sizeOf(decoded.bearing), count: value }
        : { code: meant, size: '', count: value };
    }),
  );
  const shims = new Set([...shops.values()].flatMap(({ stock }) => (stock.shims?.value ?? []).map(plain)));
  return { bearings, shims };
}

function lineOf(need: Need, shelf: Shelf): OrderLine {
  const count = need.uses.reduce((sum, use) => sum + use.count, 0);
  const alike = shelf.bearings.filter(({ size }) => need.kind === 'bearing' && size === need.size);
  const own = alike.filter(({ code }) => need.code !== null && code === need.code);
  const inStock = own.reduce((sum, item) => sum + item.count, 0);
  const shim = need.kind === 'shim' && shelf.shims.has(need.size);
  const stock = need.kind === 'bearing' && shelf.bearings.length > 0 ? inStock : null;
  return {
    kind: need.kind,
    size: need.size,
    code: need.code,
    written: [...need.written],
    matters: shim ? 'this thickness is on the shelf, not counted' : need.matters,
    count,
    stock,
    order: Math.max(0, count - (stock ?? 0)),
    sameSize: alike
      .filter(({ code }) => code !== need.code)
      .map(({ code, count: there }) => ({ code, count: there })),
    uses: need.uses,
  };
}

const kinds = ['bearing', 'shim', 'retaining-ring'] as const;

function bySize(a: OrderLine, b: OrderLine): number {
  const numbers = (line: OrderLine): number[] => line.size.match(/[\d.]+/g)?.map(Number) ?? [];
  const [one, other] = [numbers(a), numbers(b)];
  const first = kinds.indexOf(a.kind) - kinds.indexOf(b.kind);
  if (first !== 0) return first;
  for (const [i, value] of one.entries()) if (value !== other[i]) return value - (other[i] ?? 0);
  return (a.code ?? '') < (b.code ?? '') ? -1 : 1;
}
