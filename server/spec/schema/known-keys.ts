import { besideKinds } from '../beside-model.ts';
import { stackKinds } from '../model.ts';
import { allKeys } from './catalogue.ts';

let words: ReadonlySet<string> | null = null;

/** Whether a word is a key of some section, a kind of part, or a side. */
export function isKnownKey(word: string): boolean {
  words ??= new Set([...allKeys(), ...stackKinds, ...besideKinds, 'left', 'right']);
  return words.has(word);
}
