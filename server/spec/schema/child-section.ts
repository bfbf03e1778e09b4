import { stackKinds } from '../model.ts';
import { keyEntries } from './catalogue.ts';
import type { SectionId } from './key-info.ts';

/** Sections that map names of the user's to sections of one kind. */
const named: Partial<Record<SectionId, SectionId>> = {
  seats: 'seat',
  flanges: 'flange',
  cups: 'cup',
  variants: 'variant',
  'workshop:bearings': 'workshop:bearing',
  'workshop:materials': 'workshop:material',
};

/** The section that a key of a section opens; null where it holds a plain value. */
export function childSection(section: SectionId, key: string): SectionId | null {
  const names = named[section];
  if (names) return names;
  if (section === 'change' || section === 'replace') return addressSection(key);
  return keyEntries(section).get(key)?.info.section ?? null;
}

/** `end-cap.left` is a part, `shell.left` a seat, `axle` the axle. */
function addressSection(address: string): SectionId | null {
  const [head = '', name] = address.split('.');
  const kind = stackKinds.find((k) => k === head);
  if (kind) return `part:${kind}`;
  if (head === 'shell' || head === 'freehub') return name === undefined ? `housing:${head}` : 'seat';
  return head === 'axle' || head === 'clamp' ? head : null;
}

/** The names a section of names usually has. */
export function namesOf(section: SectionId): readonly string[] {
  return section === 'seats' || section === 'flanges' || section === 'cups' ? ['left', 'right'] : [];
}
