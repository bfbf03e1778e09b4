import { plain } from '../../engine/base/figures.ts';
import { identifyAnswer, type WrittenReading } from '../../report/identify/identify-answer.ts';
import { identifyText } from '../../report/identify/identify-text.ts';
import { jsonText } from '../../report/json-text.ts';
import { misused } from '../failures.ts';
import type { Command, Outcome } from '../outcome.ts';

/** `identify BORE OUTSIDE WIDTH`: the bearings that three readings may belong to. */
export const identify: Command = {
  name: 'identify',
  usage: 'identify BORE OUTSIDE WIDTH [--uncertainty MM]',
  summary: 'Name the bearings a measured bore, outside and width (mm) may be, and the near ones it is not.',
  options: {
    uncertainty: {
      takes: 'MM',
      summary: 'how far a reading may be off, ± mm; callipers on a worn bearing: 0.05 (default)',
    },
  },
  run: ({ words, options, json }): Outcome => {
    const text = words.join(' ');
    const lengths = text.split(/\s*[x×*]\s*|\s+/i).map(toReading);
    const [bore, outside, width] = lengths;
    if (lengths.length !== 3 || !bore || !outside || !width) {
      const asGiven = text === '' ? 'nothing' : text;
      const comma = /\d,\d/.test(text) ? '; a decimal point is wanted, as in 15.02' : '';
      return misused(
        `identify wants three lengths in mm, such as 15 28 7 or 15x28x7; given was ${asGiven}${comma}`,
        json,
      );
    }
    if (outside.value <= bore.value) {
      return misused(
        `identify wants bore, outside, width in this order; an outside of ${plain(outside.value)} mm is not larger than a bore of ${plain(bore.value)} mm`,
        json,
      );
    }
    const written = options.get('uncertainty');
    const uncertainty = written === undefined ? null : Number(written);
    if (uncertainty !== null && !(0 <= uncertainty && uncertainty <= 1)) {
      return misused(`--uncertainty wants a length from 0 to 1 mm, such as 0.02; given was ${written}`, json);
    }
    const answer = identifyAnswer({ bore, outside, width }, uncertainty);
    const exit = answer.candidates.length > 0 ? 0 : 1;
    return { exit, out: json ? jsonText(answer) : identifyText(answer), err: '' };
  },
};

/** A positive decimal number with its digits, or null. */
function toReading(text: string): WrittenReading | null {
  const bare = text.replace(/mm$/i, '').replace(/^[Øø⌀]/, '');
  const match = /^\d+(?:\.(\d+))?$/.exec(bare);
  const value = match ? Number(bare) : 0;
  return 0 < value && value < 1000 ? { value, decimals: match?.[1]?.length ?? 0 } : null;
}
