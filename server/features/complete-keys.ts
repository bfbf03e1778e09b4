import type { Cursor } from '../spec/cursor.ts';
import { sectionKeys } from '../spec/schema/catalogue.ts';
import { namesOf } from '../spec/schema/child-section.ts';
import type { KeyInfo, ValueType } from '../spec/schema/key-info.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { nextPartSuggestions } from './complete-kinds.ts';
import { literal, type Suggestion } from './completion-item.ts';

/** The keys a section does not have yet, the required ones first; names and addresses where those are keys. */
export function keySuggestions(snapshot: Snapshot, cursor: Cursor): readonly Suggestion[] {
  const { section, present } = cursor;
  if (section === 'change' || section === 'replace') return addressKeys(snapshot, cursor);
  const names = namesOf(section).filter((name) => !present.includes(name));
  if (names.length > 0) return names.map((name) => opening(cursor, name, 'name'));
  const missing = sectionKeys(section).filter(({ key }) => !present.includes(key));
  const added =
    cursor.path.at(-2) === 'add' ? sectionKeys('added').filter(({ key }) => !present.includes(key)) : [];
  const required = missing.filter((info) => info.required);
  const optional = missing.filter((info) => !info.required);
  const keys = (infos: readonly KeyInfo[]): readonly Suggestion[] =>
    infos.map((info) => keySuggestion(cursor, info));
  const [next, ...otherParts] = nextPartSuggestions(snapshot, cursor);
  return [...keys(required), ...(next ? [next] : []), ...keys([...optional, ...added]), ...otherParts].map(
    (suggestion, index) => (index === 0 && required.length > 0 ? { ...suggestion, usual: true } : suggestion),
  );
}

function keySuggestion(cursor: Cursor, info: KeyInfo): Suggestion {
  const detail = [typeWords[info.type] ?? '', info.required ? 'required' : ''].filter(Boolean).join(', ');
  const base = { documentation: info.description, detail };
  if (opensBlock(info)) return { ...opening(cursor, info.key, 'key', info), ...base };
  return { label: info.key, text: `${info.key}: $0`, kind: 'key', more: true, ...base };
}

const opensBlock = ({ type }: KeyInfo): boolean => type === 'section' || type === 'list';

/** A key with a section of its own: on the next line and further in, or in braces inside braces. */
function opening(cursor: Cursor, key: string, kind: 'key' | 'name', info?: KeyInfo): Suggestion {
  const base = { label: key, kind, more: true } as const;
  if (info?.key === 'clamp') return { ...base, text: 'clamp: $0' };
  if (cursor.flow) return { ...base, text: info?.type === 'list' ? `${key}: [$0]` : `${key}: { $0 }` };
  if (kind === 'name') return { ...base, text: `${literal(key)}: { $0 }` };
  const indent = `${cursor.indent}  `;
  if (info?.type === 'list' && info.key !== 'remove') return { ...base, text: `${key}:\n${indent}- $0` };
  if (info?.type === 'list') return { ...base, text: `${key}: [$0]` };
  return { ...base, text: `${key}:\n${indent}$0` };
}

/** In a variant: the parts and sections of the hub as written. */
function addressKeys({ document }: Snapshot, cursor: Cursor): readonly Suggestion[] {
  const { hub } = document;
  if (!hub) return [];
  const housings = [hub.shell, hub.freehub].filter((housing) => housing !== null);
  const addresses = [
    ...hub.stack.map(({ address }) => address),
    ...housings.flatMap((housing) => housing.seats.map(({ address }) => address)),
    ...housings.map(({ name }) => name),
    ...(hub.axle ? ['axle'] : []),
    ...(hub.clamp ? ['clamp'] : []),
  ];
  return addresses
    .filter((address) => !cursor.present.includes(address))
    .map((address) => opening(cursor, address, 'name'));
}

const typeWords: Partial<Record<ValueType, string>> = {
  length: 'length, mm',
  bore: 'diameter of a hole, mm',
  shaft: 'outside diameter, mm',
  offset: 'distance, mm',
  force: 'force, N or kN',
  torque: 'torque, N·m',
  mass: 'mass, kg',
  temperature: 'temperatures, °C',
  count: 'number',
  choice: 'one of a few words',
  code: 'bearing code',
  size: 'bore × outside × width, mm',
  seat: 'address of a seat',
  address: 'address of a part',
  material: 'material',
  section: 'section',
  list: 'list',
  text: 'text',
};
