import { jsonText } from '../report/json-text.ts';
import { textTable } from '../report/text-table.ts';
import { nearestOf } from '../spec/nearest.ts';
import { bearing } from './commands/bearing.ts';
import { check } from './commands/check.ts';
import { draw } from './commands/draw.ts';
import { explain } from './commands/explain.ts';
import { fit } from './commands/fit.ts';
import { identify } from './commands/identify.ts';
import { interchange } from './commands/interchange.ts';
import { life } from './commands/life.ts';
import { mount } from './commands/mount.ts';
import { newHub } from './commands/new.ts';
import { order } from './commands/order.ts';
import { plan } from './commands/plan.ts';
import { sheet } from './commands/sheet.ts';
import { solve } from './commands/solve.ts';
import { stack } from './commands/stack.ts';
import { wheel } from './commands/wheel.ts';
import { misused } from './failures.ts';
import type { Command, Outcome } from './outcome.ts';
import { readArguments } from './read-arguments.ts';

const commands: readonly Command[] = [
  check,
  stack,
  mount,
  life,
  wheel,
  plan,
  sheet,
  solve,
  order,
  newHub,
  bearing,
  identify,
  interchange,
  fit,
  draw,
  explain,
];

/** Carries out one command line. Nothing is written to the outputs here, nothing thrown on what a user gives. */
export function commandLine(given: readonly string[], cwd: string, version: string): Outcome {
  const json = asksForJson(given);
  try {
    const outcome = dispatch(given, cwd, version);
    // Help and other plain text, asked for together with --json, is still one document.
    return json && !outcome.out.startsWith('{')
      ? { ...outcome, out: jsonText({ text: outcome.out }) }
      : outcome;
  } catch (error) {
    return misused(
      `a fault of this program, not of the file: ${error instanceof Error ? error.stack : String(error)}`,
      json,
    );
  }
}

/** Whether `--json` stands there, even where the rest cannot be followed. */
function asksForJson(given: readonly string[]): boolean {
  return given.some(
    (word, at) =>
      word === '--json' || word === '--format=json' || (word === 'json' && given[at - 1] === '--format'),
  );
}

function dispatch(given: readonly string[], cwd: string, version: string): Outcome {
  const json = asksForJson(given);
  const [first, ...rest] = given;
  if (first === undefined) return { exit: 2, out: '', err: overview() };
  if (first === '--version' || first === '-v') return { exit: 0, out: `${version}\n`, err: '' };
  if (first === '--help' || first === '-h' || first === 'help') {
    const [name] = rest;
    const about = commands.find((command) => command.name === name);
    return { exit: 0, out: about ? page(about) : overview(), err: '' };
  }
  const command = commands.find(({ name }) => name === first);
  if (!command) {
    const near = nearestOf(
      first,
      commands.map(({ name }) => name),
    );
    const what = first.startsWith('-') ? 'option' : 'command';
    return misused(
      `there is no ${what} ${first}${near === null ? '' : `; nearest is ${near}`}. See hubwright --help`,
      json,
    );
  }
  if (rest.includes('--help') || rest.includes('-h')) return { exit: 0, out: page(command), err: '' };
  const read = readArguments(command, rest);
  return 'misuse' in read
    ? misused(`${read.misuse}. See hubwright ${command.name} --help`, json)
    : command.run(read, cwd);
}

function overview(): string {
  const lines = commands.map(({ usage, summary }) => `  hubwright ${usage}\n      ${summary}`);
  return `${[
    'hubwright: checks bicycle hub specs (NAME.hub.yaml) and answers questions about bearings and fits.',
    '',
    ...lines,
    '',
    'Every command takes --json: standard output is then one JSON document.',
    'Exit code: 0 clean, 1 something was found (see check --fail-on), 2 the command line cannot be followed.',
    'No findings means that nothing was found. It never means safe or fit to ride.',
  ].join('\n')}\n`;
}

function page({ usage, summary, options }: Command): string {
  const lines = Object.entries(options).map(([name, { takes, short, summary: text }]) => [
    `${short === undefined ? '' : `-${short}, `}--${name}${takes === null ? '' : ` ${takes}`}`,
    text,
  ]);
  const table = textTable([...lines, ['--json', 'print one JSON document']], { indent: 2 });
  return `${[`hubwright ${usage}`, summary, '', ...table].join('\n')}\n`;
}
