import { jsonText } from '../../report/json-text.ts';
import { wheelJson } from '../../report/wheel/wheel-json.ts';
import { wheelText } from '../../report/wheel/wheel-text.ts';
import { messageLines, misused } from '../failures.ts';
import type { Command, Outcome } from '../outcome.ts';
import { readOneWheel } from '../read-one-hub.ts';

/** `wheel FILE`: a wheel file with its hub: spoke lengths, tensions, stiffness, and what a meter read. */
export const wheel: Command = {
  name: 'wheel',
  usage: 'wheel FILE',
  summary:
    'Spoke lengths, balance of tensions, stiffness and slack loads of a wheel, and readings of its spokes.',
  options: {},
  run: ({ words, json }, cwd): Outcome => {
    const [path, ...more] = words;
    if (path === undefined || more.length > 0)
      return misused('wheel wants one wheel file', json, { groups: [] });
    const read = readOneWheel(path, cwd);
    if ('message' in read) return misused(read.message, json, { file: path, groups: [] });
    const { analysis, document } = read.snapshot;
    const messages = read.hint === null ? [] : [read.hint];
    const answer = analysis.wheel();
    if (!answer) {
      messages.push(`${path}: no wheel could be read`);
      return { exit: 1, out: json ? jsonText({ file: path, groups: [] }) : '', err: messageLines(messages) };
    }
    const name = document.wheel?.values.wheel?.value ?? path;
    const on = answer.hub?.variant == null ? '' : `, on variant ${answer.hub.variant}`;
    // The path of the hub is the one the file writes, so that the output is the same on every machine.
    const hub = answer.hub && { ...answer.hub, file: document.wheel?.values.hub?.value ?? answer.hub.file };
    const out = json
      ? jsonText({ file: path, ...wheelJson({ ...answer, hub }) })
      : `${wheelText(`${name}${on} — ${path}`, answer)}\n`;
    return { exit: answer.groups.length > 0 ? 0 : 1, out, err: messageLines(messages) };
  },
};
