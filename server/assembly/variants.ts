import type { Housing, Hub, PartChange, Seat, Section, Variant } from '../spec/model.ts';
import type { Placed } from '../spec/place.ts';

/** A part a variant speaks of that the hub as written does not have. */
export interface MissingPart {
  readonly address: Placed<string>;
  readonly doing: 'change' | 'replace' | 'remove' | 'place';
}

/** The hub with one variant's changes carried out; the hub as written is the unnamed first. */
export interface ResolvedHub extends Omit<Hub, 'variants'> {
  readonly name: string | null;
  readonly missing: readonly MissingPart[];
}

/** The hub as written, then each variant in the order of the file. */
export function resolveVariants(hub: Hub): readonly ResolvedHub[] {
  const asWritten: ResolvedHub = { name: null, ...hub, missing: [] };
  return [asWritten, ...hub.variants.map((variant) => resolveVariant(hub, variant))];
}

function resolveVariant(hub: Hub, variant: Variant): ResolvedHub {
  const missing: MissingPart[] = [];
  let stack = [...hub.stack];
  const find = (address: Placed<string>, doing: MissingPart['doing']): number => {
    const index = stack.findIndex((part) => part.address === address.value);
    if (index === -1) missing.push({ address, doing });
    return index;
  };
  const edit = (change: PartChange, doing: 'change' | 'replace') => {
    const index = find(change.address, doing);
    const part = stack[index];
    if (!part) return;
    const values = doing === 'change' ? { ...part.values, ...change.values } : change.values;
    stack[index] = { ...part, values };
  };
  for (const change of variant.change) edit(change, 'change');
  for (const change of variant.replace) edit(change, 'replace');
  for (const address of variant.remove) {
    const index = find(address, 'remove');
    if (index !== -1) stack = stack.filter((_, at) => at !== index);
  }
  for (const { part, after, before } of variant.add) {
    const anchor = after ?? before;
    const found = anchor ? find(anchor, 'place') : -1;
    if (found === -1) stack.push(part);
    else stack.splice(after ? found + 1 : found, 0, part);
  }
  const { width } = variant.values;
  return {
    ...hub,
    name: variant.name,
    path: variant.path,
    values: width ? { ...hub.values, width } : hub.values,
    stack,
    shell: mergeHousing(hub.shell, variant.shell),
    freehub: mergeHousing(hub.freehub, variant.freehub),
    axle: mergeSection(hub.axle, variant.axle),
    clamp: mergeSection(hub.clamp, variant.clamp),
    missing,
  };
}

function mergeSection<V>(base: Section<V> | null, change: Section<V> | null): Section<V> | null {
  if (!base || !change) return change ?? base;
  return { path: base.path, values: { ...base.values, ...change.values } };
}

function mergeHousing(base: Housing | null, change: Housing | null): Housing | null {
  if (!base || !change) return change ?? base;
  return {
    ...base,
    values: { ...base.values, ...change.values },
    seats: mergeNamed(base.seats, change.seats, mergeSeat),
    flanges: mergeNamed(base.flanges, change.flanges, (a, b) => ({
      ...a,
      values: { ...a.values, ...b.values },
    })),
    cups: mergeNamed(base.cups, change.cups, (a, b) => ({ ...a, values: { ...a.values, ...b.values } })),
  };
}

function mergeSeat(base: Seat, change: Seat): Seat {
  const ring = change.ring
    ? { path: base.ring?.path ?? change.ring.path, values: { ...base.ring?.values, ...change.ring.values } }
    : base.ring;
  return { ...base, values: { ...base.values, ...change.values }, ring };
}

function mergeNamed<T extends { readonly name: string }>(
  base: readonly T[],
  change: readonly T[],
  merge: (a: T, b: T) => T,
): readonly T[] {
  const merged = base.map((item) => {
    const changed = change.find((other) => other.name === item.name);
    return changed ? merge(item, changed) : item;
  });
  return [...merged, ...change.filter((item) => !base.some((other) => other.name === item.name))];
}
