import type { AxleValues, ClampValues, Section } from './model.ts';
import type { SpecPath } from './place.ts';
import { keyEntries } from './schema/catalogue.ts';
import { type Entry, type Reader, readSection, readValue, sectionMap } from './section-reader.ts';

/** `clamp: 5 kN`, or its keys. */
export function readClamp(reader: Reader, entry: Entry, path: SpecPath): Section<ClampValues> | null {
  if (entry.written !== null) {
    const schema = keyEntries('clamp').get('force');
    const force = schema ? readValue<ClampValues['force']>(reader, entry, schema, path) : null;
    return force ? { path, values: { force } } : null;
  }
  const { map, ok } = sectionMap(
    reader,
    entry,
    path,
    'a force such as 5 kN, or keys such as { torque: 12 N·m, thread: M12x1.5 }',
  );
  return ok ? { path, values: readSection<ClampValues>(reader, map, path, 'clamp') } : null;
}

export function readAxle(reader: Reader, entry: Entry, path: SpecPath): Section<AxleValues> | null {
  const { map, ok } = sectionMap(
    reader,
    entry,
    path,
    'keys of its own, such as { diameter: 17 h6, material: aluminium 7075 }',
  );
  return ok ? { path, values: readSection<AxleValues>(reader, map, path, 'axle') } : null;
}
