import { jsonText } from '../report/json-text.ts';
import type { Outcome } from './outcome.ts';

/** The outcome of a command line that cannot be followed. With `--json` the output is still one document. */
export function misused(
  message: string,
  json: boolean,
  more: Readonly<Record<string, unknown>> = {},
): Outcome {
  const out = json ? jsonText({ ...more, error: message }) : '';
  return { exit: 2, out, err: `hubwright: ${message}\n` };
}

/** Messages as lines for standard error; empty for none. */
export function messageLines(messages: readonly string[]): string {
  return messages.map((message) => `hubwright: ${message}\n`).join('');
}
