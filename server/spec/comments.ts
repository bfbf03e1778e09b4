import { Lexer } from 'yaml';
import type { Span } from './place.ts';

/** Every comment of a text, from its `#` to the end of its line; a `#` inside a value is none. */
export function commentsIn(text: string): Span[] {
  const comments: Span[] = [];
  let offset = 0;
  let scalar = false;
  for (const lexeme of new Lexer().lex(text)) {
    // Marks the lexer puts between lexemes; they stand for no text.
    if (lexeme === '\x02' || lexeme === '\x18' || lexeme === '\x1f') {
      scalar = lexeme === '\x1f';
      continue;
    }
    const at = text.startsWith(lexeme, offset) ? offset : text.indexOf(lexeme, offset);
    if (at < 0) continue;
    if (!scalar && lexeme.startsWith('#')) comments.push({ start: at, end: at + lexeme.trimEnd().length });
    offset = at + lexeme.length;
    scalar = false;
  }
  return comments;
}
