import { explanation, explanationJson, findingCodes } from '../../report/explain.ts';
import { jsonText } from '../../report/json-text.ts';
import { textTable } from '../../report/text-table.ts';
import { misused } from '../failures.ts';
import type { Command, Outcome } from '../outcome.ts';
import { explainNumber } from './explain-number.ts';

/**
 * `explain CODE`: the page of a finding; without a code, every finding there is. `explain FILE ADDRESS`: where the
 * numbers at an address come from.
 */
export const explain: Command = {
  name: 'explain',
  usage: 'explain [CODE] | explain FILE ADDRESS',
  summary:
    'Say why a finding matters and what to do; without a code, list every finding. With a file and an address such as spacer.centre: where its numbers come from.',
  options: {
    variant: {
      takes: 'NAME',
      summary: 'the variant whose numbers are traced; without it the hub as written',
    },
    measured: { takes: null, summary: 'trace the numbers with what was measured' },
  },
  run: (given, cwd): Outcome => {
    const { words, json } = given;
    const [code, address, ...more] = words;
    const isFile = code !== undefined && /\.ya?ml$/i.test(code);
    if (more.length > 0 || (address !== undefined && !isFile))
      return misused('explain wants one code, a file and an address, or nothing for the list', json);
    if (isFile) return explainNumber(code, address, given, cwd);
    if (code === undefined) {
      const codes = findingCodes();
      const lines = codes.map(({ code: name, severity, summary }) => [name, severity, summary]);
      return { exit: 0, out: json ? jsonText({ codes }) : `${textTable(lines).join('\n')}\n`, err: '' };
    }
    const page = explanation(code);
    const answer = explanationJson(code);
    if (page !== null) return { exit: 0, out: json ? jsonText(answer) : page, err: '' };
    const near = 'didYouMean' in answer ? answer.didYouMean : [];
    const message = `${code} is the code of no finding${near.length > 0 ? `; nearest is ${near.join(', ')}` : ''}`;
    return misused(message, json, answer);
  },
};
