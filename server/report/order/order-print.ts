import { textTable } from '../text-table.ts';
import type { OrderList } from './order-list.ts';
import { orderNotes, orderRows } from './order-table.ts';

/** The order for people in a terminal. */
export function orderText(order: OrderList): string {
  const notes = orderNotes(order);
  return [
    ...(order.lines.length > 0 ? textTable(orderRows(order), { right: [4, 5, 6] }) : ['nothing to order']),
    ...(notes.length > 0 ? ['', ...notes] : []),
  ].join('\n');
}

/** The order as Markdown. */
export function orderMarkdown(order: OrderList): string {
  const cell = (text: string): string => text.replace(/[\r\n]+/g, ' ').replace(/[\\`*_[\]<>|#]/g, '\\$&');
  const [head = [], ...rows] = orderRows(order).map((cells) => `| ${cells.map(cell).join(' | ')} |`);
  const width = orderRows(order)[0]?.length ?? 0;
  const notes = orderNotes(order).map((note) => `- ${cell(note)}`);
  const told = notes.length > 0 ? ['', ...notes] : [];
  if (order.lines.length === 0) return `${['# To order', '', 'Nothing to order.', ...told].join('\n')}\n`;
  const rule = `|${' --- |'.repeat(width)}`;
  return `${['# To order', '', head, rule, ...rows, ...told].join('\n')}\n`;
}

/** The order as comma-separated values (RFC 4180); what begins like a formula is kept from being one. */
export function orderCsv(order: OrderList): string {
  const cell = (text: string): string => {
    const tame = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
    return /[",\r\n]/.test(tame) ? `"${tame.replaceAll('"', '""')}"` : tame;
  };
  return orderRows(order)
    .map((cells) => `${cells.map(cell).join(',')}\r\n`)
    .join('');
}
