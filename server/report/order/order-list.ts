import type { Snapshot } from '../../workspace/workspace.ts';
import { type Piece, piecesOf, type Unlisted } from './order-pieces.ts';
import { type Shelf, shelfOf } from './order-shelf.ts';
import { wheelPieces } from './wheel-pieces.ts';
import { whyNotWhole } from './why-not-whole.ts';

/** Where pieces go. */
export interface OrderUse {
  readonly file: string;
  readonly hub: string;
  readonly variant: string | null;
  readonly count: number;
}

/** One thing to have: pieces that are alike in everything that matters. */
export interface OrderLine {
  readonly kind: Piece['kind'];
  /** Size by which things can stand for each other: `17 × 26 × 5`, `0.1`, `26`. */
  readonly size: string;
  /** One spelling of the code, or the house's own where it stands for a size; null where nothing but the size is known. */
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
  /** Files whose parts are not all in the list, with the reason. */
  readonly unread: readonly Unread[];
  /** Hubs that do not have the variant asked for and are counted as written. */
  readonly withoutVariant: readonly string[];
}

/** A file that could not be read, or not whole. */
export interface Unread {
  readonly path: string;
  readonly message: string;
}

/** What an order is for. */
export interface OrderOptions {
  readonly variant: string | null;
  /** How many of each hub are built. */
  readonly sets: number;
}

/**
 * Bearings, shims, retaining rings and loose balls over many hubs, spokes and nipples of wheels, grouped by size, the shelf taken
 * off. A hub whose
 * text holds back some of its parts is counted as far as it was read, and named.
 */
export function orderList(
  hubs: readonly { readonly path: string; readonly snapshot: Snapshot }[],
  { variant: wanted, sets }: OrderOptions,
): OrderList {
  const needs = new Map<string, Need>();
  const unknown: { file: string; part: string; why: string }[] = [];
  const withoutVariant: string[] = [];
  const unread: Unread[] = [];
  for (const { path, snapshot } of hubs) {
    const { variants } = snapshot.analysis;
    if (snapshot.document.kind === 'wheel') {
      const name = snapshot.document.wheel?.values.wheel?.value ?? path;
      for (const piece of wheelPieces(snapshot)) {
        if ('why' in piece) unknown.push({ file: path, ...piece });
        else add(needs, piece, { file: path, hub: name, variant: null, count: piece.count * sets });
      }
      continue;
    }
    const why = whyNotWhole(snapshot);
    if (why !== null) unread.push({ path, message: `${path}: ${why}` });
    const chosen = variants.find(({ name }) => name === wanted) ?? variants[0];
    if (!chosen) continue;
    if (wanted !== null && chosen.name !== wanted) withoutVariant.push(path);
    const use = {
      file: path,
      hub: chosen.assembly.hub.values.hub?.value ?? path,
      variant: chosen.name,
    };
    for (const piece of piecesOf(chosen)) {
      if ('why' in piece) unknown.push({ file: path, ...piece } satisfies { file: string } & Unlisted);
      else add(needs, piece, { ...use, count: piece.count * sets });
    }
  }
  const shelf = shelfOf(hubs.map(({ snapshot }) => snapshot.analysis));
  const lines = [...needs.values()].map((need) => lineOf(need, shelf));
  return { lines: lines.toSorted(bySize), unknown, unread, withoutVariant };
}

interface Need extends Omit<Piece, 'written'> {
  readonly written: Set<string>;
  readonly uses: OrderUse[];
}

function add(needs: Map<string, Need>, piece: Piece, use: OrderUse): void {
  const key = [piece.kind, piece.size, piece.code, piece.matters].join('|');
  const known = needs.get(key) ?? { ...piece, written: new Set<string>(), uses: [] };
  if (piece.written !== null) known.written.add(piece.written);
  const same = known.uses.findIndex(({ file, variant }) => file === use.file && variant === use.variant);
  const before = known.uses[same];
  if (before) known.uses[same] = { ...before, count: before.count + use.count };
  else known.uses.push(use);
  needs.set(key, known);
}

function lineOf(need: Need, shelf: Shelf): OrderLine {
  const count = need.uses.reduce((sum, use) => sum + use.count, 0);
  const alike = shelf.bearings.filter(({ size }) => need.kind === 'bearing' && size === need.size);
  const isOwn = (item: Shelf['bearings'][number]): boolean =>
    need.code !== null && item.code === need.code && item.matters === need.matters;
  const inStock = alike.filter(isOwn).reduce((sum, item) => sum + item.count, 0);
  const stock = need.kind === 'bearing' && shelf.bearings.length > 0 ? inStock : null;
  const shim = need.kind === 'shim' && shelf.shims.has(need.thickness ?? Number.NaN);
  return {
    kind: need.kind,
    size: need.size,
    code: need.code,
    written: [...need.written],
    matters: [need.matters, ...(shim ? ['this thickness is on the shelf, not counted'] : [])]
      .filter((text) => text !== '')
      .join('; '),
    count,
    stock,
    order: Math.max(0, count - (stock ?? 0)),
    sameSize: alike
      .filter((item) => !isOwn(item) && 0 < item.count)
      .map(({ written, count: there }) => ({ code: written, count: there })),
    uses: need.uses,
  };
}

const kinds = ['bearing', 'shim', 'retaining-ring', 'ball', 'spoke', 'nipple'] as const;

function bySize(a: OrderLine, b: OrderLine): number {
  const numbers = (line: OrderLine): number[] => line.size.match(/[\d.]+/g)?.map(Number) ?? [];
  const [one, other] = [numbers(a), numbers(b)];
  const first = kinds.indexOf(a.kind) - kinds.indexOf(b.kind);
  if (first !== 0) return first;
  for (const [i, value] of one.entries()) if (value !== other[i]) return value - (other[i] ?? 0);
  return (a.code ?? '') < (b.code ?? '') ? -1 : 1;
}
