import type { SpecDocument } from '../spec/document.ts';
import type { Hub, Variant } from '../spec/model.ts';
import type { Placed, Span, SpecPath } from '../spec/place.ts';
import type { Snapshot } from '../workspace/workspace.ts';

/** A place where something has its name: where it is given, or where it is spoken of. */
export interface Occurrence {
  /** File and kind and name of what is named: `…/dunlin-front.hub.yaml#part:spacer.centre`. */
  readonly id: string;
  readonly role: 'definition' | 'use';
  readonly file: string;
  /** The name alone: of `shell.left` the `left`. */
  readonly span: Span;
}

/** Every name of a file that can be followed: parts, seats and variants of a hub, the hub and its variant of a wheel, house codes. */
export function occurrencesIn(snapshot: Snapshot): readonly Occurrence[] {
  const known = kept.get(snapshot);
  if (known) return known;
  const { document } = snapshot;
  const found = [
    ...(document.hub ? inHub(snapshot, document.hub) : []),
    ...(document.wheel ? inWheel(snapshot) : []),
    ...(document.workshop
      ? Object.entries(document.workshop.bearings).map(([code, { path }]) =>
          at(snapshot, `bearing:${code}`, 'definition', document.span(path, 'key')),
        )
      : []),
  ];
  kept.set(snapshot, found);
  return found;
}

const kept = new WeakMap<Snapshot, readonly Occurrence[]>();

/** What stands at an offset; null where nothing with a name does. */
export function occurrenceAt(snapshot: Snapshot, offset: number): Occurrence | null {
  const found = occurrencesIn(snapshot).filter(({ span }) => span.start <= offset && offset <= span.end);
  return found.toSorted((a, b) => a.span.end - a.span.start - (b.span.end - b.span.start))[0] ?? null;
}

function at(
  { file }: Snapshot,
  name: string,
  role: Occurrence['role'],
  span: Span,
  of: string = file,
): Occurrence {
  return { id: `${of}#${name}`, role, file, span };
}

function inHub(snapshot: Snapshot, hub: Hub): readonly Occurrence[] {
  const { document, analysis } = snapshot;
  const added = hub.variants.flatMap(({ add }) => add.map(({ part }) => part));
  const parts = [...hub.stack, ...added].map(({ address, path, kind }) =>
    at(snapshot, `part:${address}`, 'definition', document.span([...path, kind])),
  );
  const beside = hub.beside.map(({ address, path, kind }) =>
    at(snapshot, `part:${address}`, 'definition', document.span([...path, kind])),
  );
  const seats = [hub.shell, hub.freehub].flatMap((housing) =>
    (housing?.seats ?? []).map(({ address, path }) =>
      at(snapshot, `seat:${address}`, 'definition', document.span(path, 'key')),
    ),
  );
  const inSeats = [...hub.stack, ...added].flatMap(({ values }) => named(snapshot, 'seat', values.seat));
  const spoken = hub.beside.flatMap(({ values }) => [
    ...named(snapshot, 'part', values.to),
    ...(values.at?.value.from ? within(snapshot, values.at.value.from, values.at.path) : []),
  ]);
  const house = hub.stack.flatMap(({ values }) =>
    [values.code, values['house-code']].flatMap((code) => houseCode(snapshot, analysis, code)),
  );
  return [
    ...parts,
    ...beside,
    ...seats,
    ...inSeats,
    ...spoken,
    ...house,
    ...hub.variants.flatMap((variant) => inVariant(snapshot, variant)),
  ];
}

function inVariant(
  snapshot: Snapshot,
  { name, path, change, replace, add, remove }: Variant,
): readonly Occurrence[] {
  const { document } = snapshot;
  const changed = [...change, ...replace].flatMap(({ address }) => {
    const span = nameSpan(document, document.span(address.path, 'key'));
    return [at(snapshot, `${kindOf(address.value)}:${address.value}`, 'use', span)];
  });
  return [
    at(snapshot, `variant:${name}`, 'definition', document.span(path, 'key')),
    ...changed,
    ...remove.flatMap((address) => named(snapshot, 'part', address)),
    ...add.flatMap(({ after, before }) =>
      [after, before].flatMap((one) => named(snapshot, 'part', one ?? undefined)),
    ),
  ];
}

function inWheel(snapshot: Snapshot): readonly Occurrence[] {
  const { document, analysis } = snapshot;
  const [reference] = analysis.surroundings.references;
  if (reference?.state.kind !== 'found') return [];
  const { file } = reference.state;
  const variant = document.wheel?.values.variant;
  return [
    at(snapshot, 'file', 'use', document.span(reference.path), file),
    ...(variant ? [at(snapshot, `variant:${variant.value}`, 'use', document.span(variant.path), file)] : []),
  ];
}

function houseCode(
  snapshot: Snapshot,
  { surroundings }: Snapshot['analysis'],
  code: Placed<string> | undefined,
): readonly Occurrence[] {
  if (!code) return [];
  const shop = surroundings.workshops.find(({ document }) => document.workshop?.bearings[code.value]);
  return shop
    ? [at(snapshot, `bearing:${code.value}`, 'use', snapshot.document.span(code.path), shop.file)]
    : [];
}

/** An address as a value: `shell.left`, `spacer.centre`. */
function named(
  snapshot: Snapshot,
  kind: 'part' | 'seat',
  address: Placed<string> | undefined,
): readonly Occurrence[] {
  if (!address) return [];
  const { document } = snapshot;
  return [at(snapshot, `${kind}:${address.value}`, 'use', nameSpan(document, document.span(address.path)))];
}

/** An address somewhere in a value: `2.5 from bearing.left`. */
function within(snapshot: Snapshot, address: string, path: SpecPath): readonly Occurrence[] {
  const { document } = snapshot;
  const span = document.span(path);
  const begins = document.text.slice(span.start, span.end).lastIndexOf(address);
  if (begins < 0) return [];
  const start = span.start + begins;
  return [at(snapshot, `part:${address}`, 'use', nameSpan(document, { start, end: start + address.length }))];
}

/** Of an address the part behind its dot. */
function nameSpan({ text }: SpecDocument, { start, end }: Span): Span {
  const dot = text.slice(start, end).indexOf('.');
  const quote = /["']$/.test(text.slice(start, end)) ? 1 : 0;
  return dot < 0 ? { start, end } : { start: start + dot + 1, end: end - quote };
}

const kindOf = (address: string): 'seat' | 'part' => (/^(shell|freehub)\./.test(address) ? 'seat' : 'part');
