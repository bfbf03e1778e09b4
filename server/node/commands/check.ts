import { checkedFile } from '../../report/findings/checked-file.ts';
import { findingsJson } from '../../report/findings/findings-json.ts';
import { findingsText } from '../../report/findings/findings-text.ts';
import { jsonText } from '../../report/json-text.ts';
import { messageLines, misused } from '../failures.ts';
import { readNamed } from '../files.ts';
import type { Command, Outcome } from '../outcome.ts';

const grades = ['error', 'warning', 'information', 'hint'] as const;

/** `check PATHS…`: the findings of spec files and of the folders below. */
export const check: Command = {
  name: 'check',
  usage: 'check PATHS… [--format text|json] [--fail-on SEVERITY]',
  summary: 'Check spec files, and those in folders, and say what was found.',
  options: {
    format: { takes: 'FORMAT', choices: ['text', 'json'], summary: 'text for people (default), or json' },
    'fail-on': {
      takes: 'SEVERITY',
      choices: [...grades, 'never'],
      summary:
        'least severity that ends with exit code 1: error (default), warning, information, hint, never',
    },
  },
  run: ({ words, options, json }, cwd): Outcome => {
    if (words.length === 0) return misused('check wants at least one file or folder', json, { files: [] });
    const { workspace, files, unread } = readNamed(words, cwd);
    const checked = files.flatMap(({ path, file }) => {
      const snapshot = workspace.snapshot(file);
      return snapshot ? [checkedFile(path, snapshot)] : [];
    });
    const broken = checked.flatMap(({ path, findings }) =>
      findings.broken.map(
        ({ code, error }) => `${path}: the check ${code} could not run, a fault of this program: ${error}`,
      ),
    );
    const messages = [...unread.map(({ message }) => message), ...broken];
    if (files.length === 0 && unread.length === 0) messages.push(`no spec files in ${words.join(', ')}`);
    const out = json
      ? jsonText({ ...findingsJson(checked), ...(unread.length > 0 ? { unread } : {}) })
      : checked.length > 0
        ? findingsText(checked)
        : '';
    const err = messageLines(messages);
    if (messages.length > 0) return { exit: 2, out, err };
    const least = grades.findIndex((grade) => grade === (options.get('fail-on') ?? 'error'));
    const failed = checked.some(({ findings }) =>
      findings.findings.some(({ severity }) => grades.indexOf(severity) <= least),
    );
    return { exit: failed ? 1 : 0, out, err };
  },
};
