import { jsonText } from '../../report/json-text.ts';
import { planAnswers } from '../../report/plan/plan-answers.ts';
import { planJson } from '../../report/plan/plan-json.ts';
import { planText } from '../../report/plan/plan-text.ts';
import { messageLines, misused } from '../failures.ts';
import type { Command, Outcome } from '../outcome.ts';
import { readOneHub } from '../read-one-hub.ts';

/** `plan FILE`: the order to take a hub apart and to put it together, each pressed step with its driver and force. */
export const plan: Command = {
  name: 'plan',
  usage: 'plan FILE',
  summary: 'Say in which order the hub comes apart and goes together, and how each bearing is pressed.',
  options: {},
  run: ({ words, json }, cwd): Outcome => {
    const [path, ...more] = words;
    if (path === undefined || more.length > 0)
      return misused('plan wants one hub file', json, { variants: [] });
    const read = readOneHub(path, cwd);
    if ('message' in read) return misused(read.message, json, { file: path, variants: [] });
    const answers = planAnswers(read.snapshot.analysis, path);
    const messages = read.hint === null ? [] : [read.hint];
    if (answers.length === 0) messages.push(`${path}: no hub could be read`);
    const out = json
      ? jsonText({ file: path, variants: answers.map(({ plan: one }) => planJson(one)) })
      : answers.map(({ hub, plan: one }) => `${planText(path, hub, one)}\n`).join('\n');
    const whole = answers.length > 0 && answers.every(({ plan: one }) => one.locked === null);
    return { exit: whole ? 0 : 1, out, err: messageLines(messages) };
  },
};
