import { jsonText } from '../../report/json-text.ts';
import { orderList } from '../../report/order/order-list.ts';
import { orderCsv, orderMarkdown, orderText } from '../../report/order/order-print.ts';
import { orderNotes } from '../../report/order/order-table.ts';
import { messageLines, misused } from '../failures.ts';
import { readNamed } from '../files.ts';
import type { Command, Outcome } from '../outcome.ts';

/** `order PATHS…`: what to have on the bench for many hubs, the shelf taken off. */
export const order: Command = {
  name: 'order',
  usage: 'order PATHS… [--format text|csv|markdown|json] [--variant NAME] [--sets 10]',
  summary:
    'List the bearings, shims, retaining rings and loose balls of many hubs by size, and spokes and nipples of wheels, what is on the shelf taken off.',
  options: {
    format: {
      takes: 'FORMAT',
      choices: ['text', 'csv', 'markdown', 'json'],
      summary: 'text for people (default), csv, markdown or json',
    },
    variant: { takes: 'NAME', summary: 'the variant to build; without it each hub as written' },
    sets: { takes: 'N', summary: 'how many of each hub; 1 without it' },
  },
  run: ({ words, options, json }, cwd): Outcome => {
    if (words.length === 0)
      return misused('order wants at least one hub or wheel file or folder', json, { lines: [] });
    const written = options.get('sets') ?? '1';
    const sets = /^[1-9]\d{0,4}$/.test(written) ? Number(written) : null;
    if (sets === null)
      return misused(
        `--sets ${written} is not understood; wanted is a whole number from 1, as in --sets 10`,
        json,
        {
          lines: [],
        },
      );
    const { workspace, files, unread } = readNamed(words, cwd);
    const hubs = files.flatMap(({ path, file }) => {
      const snapshot = workspace.snapshot(file);
      return snapshot && snapshot.document.kind !== 'workshop' ? [{ path, snapshot }] : [];
    });
    const found = orderList(hubs, { variant: options.get('variant') ?? null, sets });
    const list = { ...found, unread: [...unread, ...found.unread] };
    const none =
      hubs.length === 0 && unread.length === 0 ? [`no hub or wheel files in ${words.join(', ')}`] : [];
    const format = json ? 'json' : (options.get('format') ?? 'text');
    const out =
      format === 'json'
        ? jsonText({ sets, ...list })
        : format === 'csv'
          ? orderCsv(list)
          : format === 'markdown'
            ? orderMarkdown(list)
            : `${orderText(list)}\n`;
    // A table for a machine has no room for what is missing: it is said beside it. What people read says it itself.
    const beside =
      format === 'csv'
        ? orderNotes(list)
        : (format === 'text' ? unread : list.unread).map((one) => one.message);
    const short = list.unread.length + list.unknown.length > 0;
    return {
      exit: unread.length > 0 || none.length > 0 ? 2 : short ? 1 : 0,
      out,
      err: messageLines([...beside, ...none]),
    };
  },
};
