import type { YAMLError } from 'yaml';

/** What the parser's error codes mean to whoever writes the file; `word` is the text at the place. */
export function yamlMessage(error: Pick<YAMLError, 'code' | 'message'>, word: string): string {
  const at = word === '' ? 'this' : word;
  switch (error.code) {
    case 'ALIAS_PROPS':
    case 'BAD_ALIAS':
    case 'MULTIPLE_ANCHORS':
      return `${at}: anchors and references (& and *) are not read; write the value out`;
    case 'MULTIPLE_TAGS':
    case 'TAG_RESOLVE_FAILED':
      return `${at}: types (!) are not read; write the value alone`;
    case 'BAD_COLLECTION_TYPE':
      return `${at} promises another kind of value than follows; write the value alone`;
    case 'BAD_DIRECTIVE':
      return `${at}: lines that begin with % are not read; remove this one`;
    case 'BAD_DQ_ESCAPE':
      return `${at} is no character that \\ can write inside double quotes; use single quotes, or write \\\\`;
    case 'BAD_INDENT':
      return `${at} does not line up with the keys above it; keys of one section begin at the same column`;
    case 'BAD_PROP_ORDER':
      return `${at} stands before a mark that should come first; write the value alone`;
    case 'BAD_SCALAR_START':
      return `a value cannot begin with ${at.slice(0, 1)}; put it in quotes`;
    case 'BLOCK_AS_IMPLICIT_KEY':
      return `a second colon stands in this line; put the value in quotes, or begin the key on a line of its own`;
    case 'BLOCK_IN_FLOW':
      return `${at} begins a list or text over several lines inside braces; write it outside of them`;
    case 'DUPLICATE_KEY':
      return `${at} stands twice here; remove or rename one`;
    case 'IMPOSSIBLE':
      return `${at} cannot be read here; write the line anew`;
    case 'KEY_OVER_1024_CHARS':
      return 'this key is longer than 1024 characters; is a colon or a line break missing?';
    case 'MISSING_CHAR':
      return missingChar(error.message, at);
    case 'MULTILINE_IMPLICIT_KEY':
      return `${at} has no colon; a key is followed by a colon, a space and its value`;
    case 'MULTIPLE_DOCS':
      return 'a second document begins here; one file holds one, and only the first is read';
    case 'NON_STRING_KEY':
      return `${at} is no word; a key is a word`;
    case 'RESOURCE_EXHAUSTION':
      return 'the text is nested too deeply to be read';
    case 'TAB_AS_INDENT':
      return 'this line is indented with tabs; spaces are wanted before a key';
    case 'UNEXPECTED_TOKEN':
      return unexpected(error.message, at);
    default:
      return `${at} cannot be read here`;
  }
}

function missingChar(message: string, at: string): string {
  if (message.includes('quote')) return 'this quote is not closed; close it on the same line';
  if (message.includes('followed by map values'))
    return `${at} has no value yet; a colon, a space and a value are wanted after it`;
  if (message.includes('- indicator'))
    return `${at} does not line up with the item above it; keys of an item begin under its first key`;
  if (/[}\]]/.test(message)) return `the bracket opened here is not closed`;
  if (message.includes(',')) return `a comma is wanted before ${at}`;
  if (message.includes('space') || message.includes('separated')) return `a space is wanted before ${at}`;
  return `a character is missing before ${at}`;
}

function unexpected(message: string, at: string): string {
  if (/flow-(?:map|seq)-end/.test(message))
    return `${at.slice(0, 1)} closes a bracket that was not opened; remove it`;
  if (message.includes('at node end'))
    return `${at} stands behind a value that has ended; remove it, or put the whole value in quotes`;
  if (message.includes(',')) return `the comma at ${at} separates nothing; remove it`;
  return `${at} is not expected here; remove it, or put the value in quotes`;
}
