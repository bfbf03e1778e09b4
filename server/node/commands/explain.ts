import { explanation, explanationJson, findingCodes } from '../../report/explain.ts';
import { jsonText } from '../../report/json-text.ts';
import { textTable } from '../../report/text-table.ts';
import { misused } from '../failures.ts';
import type { Command, Outcome } from '../outcome.ts';

/** `explain CODE`: the page of a finding; without a code, every finding there is. */
export const explain: Command = {
  name: 'explain',
  usage: 'explain [CODE]',
  summary: 'Say why a finding matters and what to do; without a code, list every finding there is.',
  options: {},
  run: ({ words, json }): Outcome => {
    const [code, ...more] = words;
    if (more.length > 0) return misused('explain wants one code, or none for the list', json);
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
