import { isMap, type YAMLMap } from 'yaml';
import type { SpecDocument } from './document.ts';
import { parseYaml } from './parse-yaml.ts';
import type { SpecPath } from './place.ts';
import { keyEntries } from './schema/catalogue.ts';
import type { SectionId } from './schema/key-info.ts';
import { entriesOf, type Reader, readEntries, sectionMap } from './section-reader.ts';
import { specDocument } from './spec-document.ts';
import type { Wheel } from './workshop-model.ts';
import { asMap } from './yaml-text.ts';

/** Reads a wheel file: its own keys and the hub it names; the sections are read for their problems. Never throws. */
export function readWheel(text: string): SpecDocument {
  const yaml = parseYaml(text, 'wheel');
  const reader: Reader = { yaml, problems: [...yaml.problems] };
  const root = asMap(yaml.root);
  if (!root) return specDocument('wheel', reader, {});
  const values = readDeep<WheelValues>(reader, root, [], 'wheel');
  const sections = [...keyEntries('wheel')].flatMap(([key, { info }]) =>
    info.section && root.has(key) ? [key] : [],
  );
  return specDocument('wheel', reader, { wheel: { path: [], values, sections } });
}

type WheelValues = { wheel: string; hub: string; variant: string; notes: string };

/** A section with all that it opens. */
function readDeep<V>(
  reader: Reader,
  map: YAMLMap<unknown, unknown> | null,
  path: SpecPath,
  section: SectionId,
): Wheel['values'] {
  const entries = map ? entriesOf(reader, map, path) : [];
  const values = readEntries<V>(reader, entries, map, path, section);
  for (const entry of entries) {
    const child = keyEntries(section).get(entry.key)?.info.section;
    if (!child) continue;
    const at = [...path, entry.key];
    const inner = sectionMap(
      reader,
      entry,
      at,
      `keys of its own, such as ${keyEntries(section).get(entry.key)?.info.examples[0] ?? ''}`,
    );
    if (inner.ok && isMap(inner.map)) readDeep<unknown>(reader, inner.map, at, child);
  }
  return values as Wheel['values'];
}
