import { jsonText } from '../../report/json-text.ts';
import { stackJson } from '../../report/stack/stack-json.ts';
import { stackText } from '../../report/stack/stack-text.ts';
import { messageLines, misused } from '../failures.ts';
import type { Command, Outcome } from '../outcome.ts';
import { readOneHub } from '../read-one-hub.ts';

/** `stack FILE`: the loops of a hub with their tolerances, as drawn and as measured. */
export const stack: Command = {
  name: 'stack',
  usage: 'stack FILE',
  summary:
    'Work out the stack of a hub: width, bearing pairs, seats, gaps, and what each dimension contributes.',
  options: {},
  run: ({ words, json }, cwd): Outcome => {
    const [path, ...more] = words;
    if (path === undefined || more.length > 0)
      return misused('stack wants one hub file', json, { variants: [] });
    const read = readOneHub(path, cwd);
    if ('message' in read) return misused(read.message, json, { file: path, variants: [] });
    const { variants, limits } = read.snapshot.analysis;
    const messages = read.hint === null ? [] : [read.hint];
    const worked = variants.length > 0;
    if (!worked) messages.push(`${path}: no hub could be read`);
    const out = json
      ? jsonText(stackJson(path, variants, limits))
      : worked
        ? stackText(path, variants, limits)
        : '';
    return { exit: worked ? 0 : 1, out, err: messageLines(messages) };
  },
};
