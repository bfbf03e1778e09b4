import { bearingAnswer } from '../../report/bearing/bearing-answer.ts';
import { bearingJson } from '../../report/bearing/bearing-json.ts';
import { bearingText } from '../../report/bearing/bearing-text.ts';
import { jsonText } from '../../report/json-text.ts';
import { misused } from '../failures.ts';
import { workshopAround } from '../files.ts';
import type { Command, Outcome } from '../outcome.ts';

/** `bearing CODE`: what a designation says. */
export const bearing: Command = {
  name: 'bearing',
  usage: 'bearing CODE',
  summary: 'Decode a bearing code: size, seals, clearance, tolerances, ratings, each with its source.',
  options: {},
  run: ({ words, json }, cwd): Outcome => {
    const code = words.join(' ').trim();
    if (code === '') return misused('bearing wants a code, such as 6902-2RS', json);
    const answer = bearingAnswer(code, workshopAround(cwd));
    const found = 'bearing' in answer;
    if (json) return { exit: found ? 0 : 1, out: jsonText(bearingJson(code, answer)), err: '' };
    const text = bearingText(code, answer);
    return found ? { exit: 0, out: text, err: '' } : { exit: 1, out: '', err: text };
  },
};
