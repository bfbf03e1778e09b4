import { nearestOf } from '../spec/nearest.ts';
import type { Command, CommandOption, Given, Misuse } from './outcome.ts';

/** Reads the arguments after the command's name: `--option value`, `--option=value`, `-o value`, and words. */
export function readArguments(command: Command, given: readonly string[]): Given | Misuse {
  const words: string[] = [];
  const options = new Map<string, string>();
  let json = false;
  for (let at = 0; at < given.length; at++) {
    const argument = given[at] ?? '';
    if (argument === '--') {
      words.push(...given.slice(at + 1));
      break;
    }
    if (!argument.startsWith('-') || argument === '-') {
      words.push(argument);
      continue;
    }
    const [written = '', inline] = splitOnce(argument, '=');
    if (written === '--json') {
      json = true;
      continue;
    }
    const found = findOption(command, written);
    if (!found) return unknownOption(command, written);
    const [name, option] = found;
    if (option.takes === null) {
      options.set(name, '');
      continue;
    }
    const value = inline ?? given[++at];
    if (value === undefined || value === '')
      return { misuse: `${written} wants a value: ${written} ${option.takes}` };
    if (option.choices && !option.choices.includes(value)) {
      return { misuse: `${written} takes ${option.choices.join(', ')}; ${value} is none of them` };
    }
    options.set(name, value);
  }
  return { words, options, json: json || options.get('format') === 'json' };
}

function findOption(command: Command, written: string): readonly [string, CommandOption] | undefined {
  return Object.entries(command.options).find(
    ([name, { short }]) => written === `--${name}` || (short !== undefined && written === `-${short}`),
  );
}

function unknownOption(command: Command, written: string): Misuse {
  const known = [...Object.keys(command.options), 'json', 'help'].map((name) => `--${name}`);
  const near = nearestOf(written, known);
  return {
    misuse: `${command.name} knows no option ${written}${near === null ? '' : `; nearest is ${near}`}`,
  };
}

function splitOnce(text: string, by: string): readonly [string, string | undefined] {
  const at = text.indexOf(by);
  return at === -1 ? [text, undefined] : [text.slice(0, at), text.slice(at + 1)];
}
