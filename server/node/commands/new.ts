import { existsSync, writeSync } from 'node:fs';
import { resolve } from 'node:path';
import { jsonText } from '../../report/json-text.ts';
import { leftOpen } from '../../report/new-hub/left-open.ts';
import { measuredHub, type Turn } from '../../report/new-hub/measured-hub.ts';
import { askLine } from '../ask-line.ts';
import { messageLines, misused } from '../failures.ts';
import type { Command, Outcome } from '../outcome.ts';
import { readOneHub } from '../read-one-hub.ts';
import { writeFile } from '../write-file.ts';

/** `new FILE`: asks what was measured on a hub and writes its file. */
export const newHub: Command = {
  name: 'new',
  usage: 'new NAME.hub.yaml',
  summary: 'Ask, answer by answer, what was measured on a hub, and write its file.',
  options: {},
  run: ({ words, json }, cwd): Outcome => {
    const [path, ...more] = words;
    if (path === undefined || more.length > 0)
      return misused('new wants the name of the file to write, such as dunlin-front.hub.yaml', json);
    if (!/\.hub\.ya?ml$/i.test(path))
      return misused(`${path} is no hub file by its name; they are called NAME.hub.yaml`, json);
    const file = resolve(cwd, path);
    if (existsSync(file))
      return misused(`${path} is there already, and nothing was asked: give another name`, json);
    const turn = converse();
    if (turn === null)
      return {
        exit: 1,
        out: '',
        err: messageLines(['the answers ended before the last question: nothing was written']),
      };
    const failure = writeFile(file, turn.text);
    // What was answered is not lost where the file cannot be written.
    if (failure !== null)
      return {
        exit: 2,
        out: turn.text,
        err: messageLines([`${path} cannot be written: ${failure}; this is what it would hold`]),
      };
    const read = readOneHub(path, cwd);
    const open = 'snapshot' in read ? leftOpen(read.snapshot) : { unchecked: [], findings: 0 };
    const out = json
      ? jsonText({ file: path, name: turn.name, doubts: turn.doubts, ...open, text: turn.text })
      : `${[...turn.doubts, ...open.unchecked, closing(path, open.findings)].join('\n')}\n`;
    return { exit: 0, out, err: '' };
  },
};

function closing(path: string, findings: number): string {
  if (findings === 0)
    return `written to ${path}; its checks find nothing. What is not written was not checked.`;
  const count = findings === 1 ? 'one fault' : `${findings} faults`;
  return `written to ${path}; its checks find ${count}: hubwright check ${path}`;
}

/** Asks until the file is whole; null where the answers end before. Questions go to the terminal, not into the result. */
function converse(): Extract<Turn, { kind: 'file' }> | null {
  const answers: string[] = [];
  say('An empty answer, ? or "don\'t know" is "not known"; < takes the last answer back.\n');
  for (;;) {
    const turn = measuredHub(answers);
    if (turn.kind === 'file') return turn;
    const { text, hint, problem } = turn.question;
    say(`${problem === null ? '' : `  ${problem}\n`}${text} (${hint}): `);
    const answer = askLine();
    if (answer === null) {
      say('\n');
      return null;
    }
    answers.push(answer);
  }
}

const say = (text: string): void => void writeSync(2, text);
