import type {
  CupValues,
  FlangeValues,
  Housing,
  HousingName,
  HousingValues,
  Named,
  RetainingRingValues,
  Seat,
  SeatSleeveValues,
  SeatValues,
} from './model.ts';
import type { SpecPath } from './place.ts';
import type { SectionId } from './schema/key-info.ts';
import {
  type Entry,
  entriesOf,
  type Reader,
  readEntries,
  readSection,
  sectionMap,
} from './section-reader.ts';

/** `shell` or `freehub`; `partial` in a variant, where only what changes is written. */
export function readHousing(
  reader: Reader,
  entry: Entry,
  name: HousingName,
  path: SpecPath,
  partial = false,
): Housing | null {
  const { map, ok } = sectionMap(reader, entry, path, 'keys of its own, such as between-shoulders and seats');
  if (!ok) return null;
  const entries = map ? entriesOf(reader, map, path) : [];
  const section: SectionId = `housing:${name}`;
  const values = readEntries<HousingValues>(reader, entries, map, path, section, { partial });
  const at = (key: string) => entries.find((e) => e.key === key);
  const seats = at('seats');
  const flanges = name === 'shell' ? at('flanges') : undefined;
  const cups = name === 'shell' ? at('cups') : undefined;
  return {
    name,
    path,
    values,
    seats: seats ? readSeats(reader, seats, name, [...path, 'seats'], partial) : [],
    flanges: flanges ? readNamed<FlangeValues>(reader, flanges, 'flange', [...path, 'flanges'], partial) : [],
    cups: cups ? readNamed<CupValues>(reader, cups, 'cup', [...path, 'cups'], partial) : [],
  };
}

function readSeats(
  reader: Reader,
  entry: Entry,
  housing: HousingName,
  path: SpecPath,
  partial: boolean,
): Seat[] {
  const { map } = sectionMap(reader, entry, path, 'seats by name, such as left: { bore: 26 N7 }');
  if (!map) return [];
  const seats: Seat[] = [];
  for (const item of entriesOf(reader, map, path)) {
    const seat = readSeat(reader, item, housing, item.key, [...path, item.key], partial);
    if (seat) seats.push(seat);
  }
  return seats;
}

export function readSeat(
  reader: Reader,
  entry: Entry,
  housing: HousingName,
  name: string,
  path: SpecPath,
  partial: boolean,
): Seat | null {
  const { map, ok } = sectionMap(reader, entry, path, 'keys of a seat, such as { bore: 26 N7 }');
  if (!ok) return null;
  const entries = map ? entriesOf(reader, map, path) : [];
  const values = readEntries<SeatValues>(reader, entries, map, path, 'seat', {
    partial,
    head: entry.keySpan,
  });
  const ring = entries.find((e) => e.key === 'retaining-ring');
  const sleeve = entries.find((e) => e.key === 'sleeve');
  return {
    name,
    address: `${housing}.${name}`,
    path,
    values,
    ring: ring ? readRing(reader, ring, [...path, 'retaining-ring']) : null,
    sleeve: sleeve ? readSleeve(reader, sleeve, [...path, 'sleeve']) : null,
  };
}

function readRing(reader: Reader, entry: Entry, path: SpecPath): Seat['ring'] {
  const { map, ok } = sectionMap(
    reader,
    entry,
    path,
    'keys of a ring, such as { side: open, thickness: 1.2 }',
  );
  return ok ? { path, values: readSection<RetainingRingValues>(reader, map, path, 'retaining-ring') } : null;
}

function readSleeve(reader: Reader, entry: Entry, path: SpecPath): NonNullable<Seat['sleeve']> | null {
  const { map, ok } = sectionMap(
    reader,
    entry,
    path,
    'keys of a sleeve, such as { outside: 30, material: steel }',
  );
  return ok ? { path, values: readSection<SeatSleeveValues>(reader, map, path, 'seat-sleeve') } : null;
}

function readNamed<V>(
  reader: Reader,
  entry: Entry,
  section: 'flange' | 'cup',
  path: SpecPath,
  partial: boolean,
): Named<V>[] {
  const example = section === 'flange' ? 'left: { holes: 16, circle: 38 }' : 'left: { ball-circle: 24 }';
  const { map } = sectionMap(reader, entry, path, `${section}s by name, such as ${example}`);
  if (!map) return [];
  const named: Named<V>[] = [];
  for (const item of entriesOf(reader, map, path)) {
    const at = [...path, item.key];
    const inner = sectionMap(reader, item, at, `keys of a ${section}`);
    if (!inner.ok) continue;
    named.push({
      name: item.key,
      path: at,
      values: readSection<V>(reader, inner.map, at, section, { partial }),
    });
  }
  return named;
}
