import { isSeq } from 'yaml';
import type { BesidePart } from './beside-model.ts';
import type { SpecDocument } from './document.ts';
import { duplicateNames } from './duplicate-names.ts';
import { lineOf, newlineOf } from './lines.ts';
import { makeProblem } from './make-problem.ts';
import type { DutyValues, Hub, HubValues, StackPart } from './model.ts';
import { parseYaml } from './parse-yaml.ts';
import { readBeside } from './read-beside.ts';
import { readAxle, readClamp } from './read-clamp.ts';
import { readHousing } from './read-housing.ts';
import { readPart } from './read-part.ts';
import { listOf, readVariants } from './read-variant.ts';
import {
  type Entry,
  entriesOf,
  type Reader,
  readEntries,
  readSection,
  sectionMap,
} from './section-reader.ts';
import { specDocument } from './spec-document.ts';
import { asMap, isBroken, isEmpty } from './yaml-text.ts';

/** Reads a hub file: what could be read, and the problems met. Never throws. */
export function readHub(text: string): SpecDocument {
  const yaml = parseYaml(text, 'hub');
  const reader: Reader = { yaml, problems: [...yaml.problems] };
  const root = asMap(yaml.root);
  const hub = root ? hubOf(reader, entriesOf(reader, root, []), root) : null;
  return specDocument('hub', reader, { hub });
}

function hubOf(reader: Reader, entries: readonly Entry[], root: NonNullable<ReturnType<typeof asMap>>): Hub {
  const values = readEntries<HubValues>(reader, entries, root, [], 'hub');
  const at = (key: string): Entry | null => entries.find((entry) => entry.key === key) ?? null;
  const part = <T>(key: string, read: (entry: Entry) => T | null): T | null => {
    const entry = at(key);
    return entry ? read(entry) : null;
  };
  const stack = part('stack', (entry) => readStack(reader, entry)) ?? [];
  const beside = part('beside', (entry) => readAllBeside(reader, entry)) ?? [];
  duplicateNames(reader, [...stack, ...beside]);
  return {
    path: [],
    values,
    stack,
    beside,
    shell: part('shell', (entry) => readHousing(reader, entry, 'shell', ['shell'])),
    freehub: part('freehub', (entry) => readHousing(reader, entry, 'freehub', ['freehub'])),
    axle: part('axle', (entry) => readAxle(reader, entry, ['axle'])),
    clamp: part('clamp', (entry) => readClamp(reader, entry, ['clamp'])),
    duty: part('duty', (entry) => {
      const { map, ok } = sectionMap(
        reader,
        entry,
        ['duty'],
        'keys of its own, such as { use: gravel, rider: 95 kg }',
      );
      return ok ? { path: ['duty'], values: readSection<DutyValues>(reader, map, ['duty'], 'duty') } : null;
    }),
    variants: part('variants', (entry) => readVariants(reader, entry, ['variants'])) ?? [],
  };
}

function readStack(reader: Reader, entry: Entry): StackPart[] {
  if (!isSeq(entry.value)) listOf(reader, entry, ['stack'], '- end-cap: left');
  const items = isSeq(entry.value) ? entry.value.items : [];
  if (items.every(isEmpty) && (isSeq(entry.value) || isEmpty(entry.value))) noParts(reader, entry);
  return items.flatMap((node, i) => readPart(reader, node, ['stack', i]) ?? []);
}

/** A stack of nothing is as good as none. */
function noParts(reader: Reader, entry: Entry): void {
  if (isBroken(reader.yaml, entry.keySpan)) return;
  const { text } = reader.yaml;
  const at = lineOf(text, entry.keySpan.end).end;
  const changes = [{ span: { start: at, end: at }, text: `${newlineOf(text)}  - end-cap: $0` }];
  const fixes = [{ title: 'Begin with an end cap', changes, snippet: true, preferred: true }];
  const message = 'stack has no parts yet; it begins with the left end cap, as in - end-cap: left';
  const data = { key: 'stack', path: ['stack'], empty: true };
  reader.problems.push(
    makeProblem('missing-key', message, entry.keySpan, { data, fixes: isEmpty(entry.value) ? fixes : [] }),
  );
}

function readAllBeside(reader: Reader, entry: Entry): BesidePart[] {
  const items = listOf(reader, entry, ['beside'], '- seal: left');
  return items.flatMap((node, i) => readBeside(reader, node, ['beside', i]) ?? []);
}
