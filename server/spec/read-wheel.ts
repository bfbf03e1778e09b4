import type { YAMLMap } from 'yaml';
import type { SpecDocument } from './document.ts';
import type { Section, Side } from './model.ts';
import { parseYaml } from './parse-yaml.ts';
import type { SpecPath } from './place.ts';
import { readNumbers } from './read-numbers.ts';
import { keyEntries } from './schema/catalogue.ts';
import type { SectionId } from './schema/key-info.ts';
import { type Entry, entriesOf, type Reader, readEntries, sectionMap } from './section-reader.ts';
import { specDocument } from './spec-document.ts';
import type {
  BothSides,
  LacingValues,
  MeasuredTensions,
  NippleValues,
  RiderValues,
  RimValues,
  SpokeValues,
  TensionValues,
  TyreValues,
  Wheel,
  WheelValues,
} from './wheel-model.ts';
import { asMap } from './yaml-text.ts';

/** Reads a wheel file. Never throws: what is not understood is absent and reported at its place. */
export function readWheel(text: string): SpecDocument {
  const yaml = parseYaml(text, 'wheel');
  const reader: Reader = { yaml, problems: [...yaml.problems] };
  const root = asMap(yaml.root);
  if (!root) return specDocument('wheel', reader, {});
  const top = opened(reader, root, []);
  const tension = child(reader, top, 'tension', 'wheel:tension');
  const wheel: Wheel = {
    path: [],
    values: readEntries<WheelValues>(reader, top.entries, root, [], 'wheel'),
    rim: sectionOf<RimValues>(reader, child(reader, top, 'rim', 'wheel:rim')),
    lacing: bothSides<LacingValues>(
      reader,
      child(reader, top, 'lacing', 'wheel:lacing'),
      'wheel:lacing-side',
    ),
    spokes: bothSides<SpokeValues>(reader, child(reader, top, 'spokes', 'wheel:spokes'), 'wheel:spoke-side'),
    nipples: sectionOf<NippleValues>(reader, child(reader, top, 'nipples', 'wheel:nipples')),
    tension: sectionOf<TensionValues>(reader, tension),
    measured: measuredTensions(reader, tension),
    tyre: sectionOf<TyreValues>(reader, child(reader, top, 'tyre', 'wheel:tyre')),
    rider: sectionOf<RiderValues>(reader, child(reader, top, 'rider', 'wheel:rider')),
  };
  return specDocument('wheel', reader, { wheel });
}

/** A mapping that is open for reading. */
interface Opened {
  readonly map: YAMLMap<unknown, unknown> | null;
  readonly entries: readonly Entry[];
  readonly path: SpecPath;
  readonly section: SectionId;
}

function opened(
  reader: Reader,
  map: YAMLMap<unknown, unknown> | null,
  path: SpecPath,
  section: SectionId = 'wheel',
): Opened {
  return { map, entries: map ? entriesOf(reader, map, path) : [], path, section };
}

/** The section a key opens; null where the key is not there or holds something else, which is reported. */
function child(reader: Reader, parent: Opened | null, key: string, section: SectionId): Opened | null {
  const entry = parent?.entries.find((item) => item.key === key);
  if (!parent || !entry) return null;
  const path = [...parent.path, key];
  const example = keyEntries(parent.section).get(key)?.info.examples[0] ?? '';
  const { map, ok } = sectionMap(reader, entry, path, `keys of its own, such as ${example}`);
  return ok ? opened(reader, map, path, section) : null;
}

function sectionOf<V>(reader: Reader, at: Opened | null): Section<V> | null {
  if (!at) return null;
  return { path: at.path, values: readEntries<V>(reader, at.entries, at.map, at.path, at.section) };
}

function bothSides<V>(reader: Reader, at: Opened | null, section: SectionId): BothSides<Section<V>> {
  // Read for its unknown keys; the two sides are sections of their own.
  if (at) readEntries(reader, at.entries, at.map, at.path, at.section);
  const of = (side: Side): Section<V> | null => sectionOf<V>(reader, child(reader, at, side, section));
  return { left: of('left'), right: of('right') };
}

function measuredTensions(reader: Reader, tension: Opened | null): MeasuredTensions {
  const at = child(reader, tension, 'measured', 'wheel:measured');
  if (at) readEntries(reader, at.entries, at.map, at.path, at.section);
  const of = (side: Side): MeasuredTensions[Side] => {
    const entry = at?.entries.find(({ key }) => key === side);
    return at && entry ? readNumbers(reader, entry, [...at.path, side], '[980, 1010, 995]', 'N') : null;
  };
  return { left: of('left'), right: of('right') };
}
