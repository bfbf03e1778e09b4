import type { SpecPath } from '../spec/place.ts';
import type { KeyInfo } from '../spec/schema/key-info.ts';
import { isKind, kindWords } from './kind-words.ts';
import { code, paragraphs } from './markdown.ts';

/** What a key means, what it takes, and how it is written. */
export function keyWords(info: KeyInfo): string {
  const { key, description, required, choices, examples } = info;
  const takes = choices ? `One of ${choices.map(code).join(', ')}.` : null;
  const written = !choices && examples.length > 0 ? `Written ${examples.map(code).join(' or ')}.` : null;
  return paragraphs(`**${key}**${required ? ' (required)' : ''}`, description, takes, written);
}

/** What a kind of part is: for `end-cap: left`. */
export function kindHover(path: SpecPath): string | null {
  const kind = path.at(-1);
  if (typeof kind !== 'string' || !isKind(kind) || typeof path.at(-2) !== 'number') return null;
  return paragraphs(`**${kind}**`, kindWords[kind], `Its name makes its address, ${code(`${kind}.NAME`)}.`);
}
