import { bearingAnswer } from '../../report/bearing/bearing-answer.ts';
import { bearingJson } from '../../report/bearing/bearing-json.ts';
import { bearingText } from '../../report/bearing/bearing-text.ts';
import { interchangeAnswer } from '../../report/interchange/interchange-answer.ts';
import { interchangeText } from '../../report/interchange/interchange-text.ts';
import { jsonText } from '../../report/json-text.ts';
import { misused } from '../failures.ts';
import { workshopAround } from '../files.ts';
import type { Command, Outcome } from '../outcome.ts';
import { readOneHub } from '../read-one-hub.ts';

/** `interchange CODE`: what fits instead of a bearing, and what only looks like it. */
export const interchange: Command = {
  name: 'interchange',
  usage: 'interchange CODE [--in FILE]',
  summary: 'Say what fits instead of a bearing, at what price, and which near sizes only look right.',
  options: {
    in: { takes: 'FILE', summary: 'a hub that holds it: clearance, play, load and life before and after' },
  },
  run: ({ words, options, json }, cwd): Outcome => {
    const code = words.join(' ').trim();
    if (code === '') return misused('interchange wants a code, such as 6902-2RS', json);
    const path = options.get('in');
    const read = path === undefined ? null : readOneHub(path, cwd);
    if (read && 'message' in read) return misused(read.message, json, { code });
    const hub = read ? read.snapshot.analysis : null;
    const answer = bearingAnswer(code, hub?.workshop ?? workshopAround(cwd));
    if (!('bearing' in answer)) {
      const out = json ? jsonText(bearingJson(code, answer)) : '';
      return { exit: 1, out, err: json ? '' : bearingText(code, answer) };
    }
    const found = interchangeAnswer(answer.bearing, hub);
    const lines = found.alternatives.map(({ code: other, exchange, price, inHub, bearing }) => ({
      code: other,
      normalised: bearing.normalised,
      exchange,
      price,
      inHub,
    }));
    const out = json
      ? jsonText({
          code,
          normalised: found.bearing.normalised,
          spellings: found.spellings,
          alternatives: lines,
          near: found.near,
          ...(found.places ? { places: found.places } : {}),
        })
      : `${interchangeText(found)}\n`;
    return { exit: 0, out, err: '' };
  },
};
