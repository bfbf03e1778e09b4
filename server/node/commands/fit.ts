import { bearingOrSize } from '../../report/bearing/bearing-answer.ts';
import { bearingJson } from '../../report/bearing/bearing-json.ts';
import { bearingText } from '../../report/bearing/bearing-text.ts';
import { fitAnswer } from '../../report/fit/fit-answer.ts';
import { fitJson } from '../../report/fit/fit-json.ts';
import { fitText } from '../../report/fit/fit-text.ts';
import { jsonText } from '../../report/json-text.ts';
import { messageLines, misused } from '../failures.ts';
import { workshopAround } from '../files.ts';
import type { Command, Outcome } from '../outcome.ts';

/** `fit "26 N7" CODE`: a seat or journal against the ring it holds. */
export const fit: Command = {
  name: 'fit',
  usage: 'fit "26 N7" CODE',
  summary:
    'Hold a seat (26 N7) or an axle (17 h6) against the ring of a bearing: clearance or interference in µm.',
  options: {},
  run: ({ words, json }, cwd): Outcome => {
    const [diameter = '', code] = parted(words);
    if (diameter === '' || code === '') {
      return misused('fit wants a diameter in quotes and a bearing code: fit "26 N7" 6803-2RS', json);
    }
    const found = bearingOrSize(code, workshopAround(cwd));
    if ('failure' in found) {
      if (json) return { exit: 1, out: jsonText(bearingJson(code, found)), err: '' };
      return { exit: 1, out: '', err: bearingText(code, found) };
    }
    const answer = fitAnswer(diameter, found.bearing);
    const failed = 'error' in answer || !answer.sameSize;
    const err = 'error' in answer ? messageLines([answer.error]) : '';
    const text = json
      ? jsonText(fitJson(code, found.bearing, answer))
      : 'error' in answer
        ? ''
        : fitText(found.bearing, answer);
    return { exit: failed ? 1 : 0, out: text, err };
  },
};

/** The diameter and the code; a fit class that lost its quotes (`26 N7 6803`) belongs to the number before it. */
function parted([first = '', second = '', ...rest]: readonly string[]): readonly [string, string] {
  const isClass = /^[A-Za-z]{1,2}\d{1,2}$/.test(second) && /^[^\w]?[\d.]+$/.test(first);
  // R8 alone is an inch bearing as well as a class.
  if (isClass && (0 < rest.length || !/^r/i.test(second)))
    return [`${first} ${second}`, rest.join(' ').trim()];
  return [first, [second, ...rest].join(' ').trim()];
}
