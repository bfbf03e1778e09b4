import { isSeq } from 'yaml';
import type { SpecDocument } from './document.ts';
import { makeProblem } from './make-problem.ts';
import { parseYaml } from './parse-yaml.ts';
import type { Fields, Placed } from './place.ts';
import { readNames } from './read-names.ts';
import { readStock } from './read-stock.ts';
import { listOf } from './read-variant.ts';
import {
  type Entry,
  entriesOf,
  type Reader,
  readEntries,
  readSection,
  sectionMap,
  valueProblem,
} from './section-reader.ts';
import { readNumber } from './small-values.ts';
import { specDocument } from './spec-document.ts';
import type { HouseBearing, MaterialValues, Workshop } from './workshop-model.ts';
import { asMap, nodeSpan } from './yaml-text.ts';

/** Factors of the units a limit may carry to those of the table of limits. */
const limitUnits: Readonly<Record<string, number>> = {
  '': 1,
  mm: 1,
  µm: 1e-3,
  μm: 1e-3,
  MPa: 1,
  GPa: 1000,
  N: 1,
  kN: 1000,
  '°C': 1,
  K: 1,
  '%': 0.01,
};

/** Reads a workshop file. Never throws. */
export function readWorkshop(text: string): SpecDocument {
  const yaml = parseYaml(text, 'workshop');
  const reader: Reader = { yaml, problems: [...yaml.problems] };
  const root = asMap(yaml.root);
  if (!root) return specDocument('workshop', reader, {});
  const entries = entriesOf(reader, root, []);
  const values = readEntries<{ measuring: number }>(reader, entries, root, [], 'workshop');
  const at = (key: string): Entry | null => entries.find((entry) => entry.key === key) ?? null;
  const workshop: Workshop = {
    limits: readLimits(reader, at('limits')),
    measuring: values.measuring ?? null,
    bearings: readBearings(reader, at('bearings')),
    materials: readMaterials(reader, at('materials')),
    stock: readStock(reader, at('stock')),
    drivers: readDrivers(reader, at('drivers')),
    defaults: readDefaults(reader, at('defaults')),
  };
  return specDocument('workshop', reader, { workshop });
}

function readLimits(reader: Reader, entry: Entry | null): Readonly<Record<string, Placed<number>>> {
  return readNames(reader, entry, ['limits'], 'limits by name, such as running-gap: 0.3', (item, path) => {
    const match = /^\s*(.*?\d)\s*([^\d\s.,]*)\s*$/.exec(item.written ?? '');
    const unit = match?.[2] ?? '';
    const factor = Object.hasOwn(limitUnits, unit) ? limitUnits[unit] : undefined;
    if (match && factor === undefined) {
      const message = `${unit} is no unit of a limit; the number alone is wanted, or one of mm, µm, MPa, N, °C, K, %`;
      reader.problems.push(
        valueProblem(
          reader,
          item,
          { code: 'wrong-unit', message, at: [0, item.written?.length ?? 0] },
          { path },
        ),
      );
      return null;
    }
    const reading = readNumber(match?.[1] ?? item.written ?? '', 'a limit', -1e6, 1e9, '0.3');
    if ('value' in reading) return { value: reading.value * (factor ?? 1), path };
    reader.problems.push(valueProblem(reader, item, reading.problem, { path }));
    return null;
  });
}

function readBearings(reader: Reader, entry: Entry | null): Workshop['bearings'] {
  return readNames(
    reader,
    entry,
    ['bearings'],
    'codes of the house, such as DB-17: { code: 6803-2RS C3 }',
    (item, path) => {
      if (item.written !== null) return { value: { code: item.written.trim(), size: null }, path };
      const { map, ok } = sectionMap(reader, item, path, 'a code or a size, such as { size: 17x26x5 }');
      if (!ok) return null;
      const values = readSection<{ code: string; size: NonNullable<HouseBearing['size']> }>(
        reader,
        map,
        path,
        'workshop:bearing',
      );
      return { value: { code: values.code?.value ?? null, size: values.size?.value ?? null }, path };
    },
  );
}

function readMaterials(reader: Reader, entry: Entry | null): Workshop['materials'] {
  return readNames(
    reader,
    entry,
    ['materials'],
    'materials by name, such as forged 7050: { E: 71 GPa }',
    (item, path) => {
      const { map, ok } = sectionMap(
        reader,
        item,
        path,
        'keys of a material, such as { E: 71 GPa, nu: 0.33 }',
      );
      return ok
        ? { path, values: readSection<MaterialValues>(reader, map, path, 'workshop:material') }
        : null;
    },
  );
}

function readDrivers(reader: Reader, entry: Entry | null): Workshop['drivers'] {
  if (!entry) return [];
  const items = isSeq(entry.value)
    ? entry.value.items
    : listOf(reader, entry, ['drivers'], '- { name: D26, outside: 25.8 }');
  return items.flatMap((node, i) => {
    const path = ['drivers', i];
    const map = asMap(node);
    if (map)
      return {
        path,
        values: readSection(reader, map, path, 'workshop:driver'),
      } as Workshop['drivers'][number];
    const span = nodeSpan(reader.yaml, node);
    if (span && span.start < span.end) {
      const message = 'a driver is written with its keys, as in - { name: D26, outside: 25.8, inside: 18 }';
      reader.problems.push(makeProblem('value-not-understood', message, span, { data: { path } }));
    }
    return [];
  });
}

function readDefaults(reader: Reader, entry: Entry | null): Workshop['defaults'] {
  const map = entry
    ? sectionMap(reader, entry, ['defaults'], 'keys of its own, such as { clamp: 5 kN }').map
    : null;
  const values: Fields<Record<string, never>> = map
    ? readSection(reader, map, ['defaults'], 'workshop:defaults')
    : {};
  const { clamp = null, temperature = null, rider = null } = values as Partial<Workshop['defaults']>;
  return { clamp, temperature, rider };
}
