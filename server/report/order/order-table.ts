import type { OrderLine, OrderList } from './order-list.ts';

/** Titles and rows of an order, the same for every way of printing it. */
export function orderRows({ lines }: OrderList): readonly (readonly string[])[] {
  return [titles, ...lines.map(row)];
}

const titles = ['what', 'size, mm', 'code', 'mind', 'needed', 'on the shelf', 'to order', 'for'];

const names: Readonly<Record<OrderLine['kind'], string>> = {
  bearing: 'bearing',
  shim: 'shim',
  'retaining-ring': 'retaining ring',
  ball: 'ball',
  spoke: 'spoke',
  nipple: 'nipple',
};

function row(line: OrderLine): readonly string[] {
  const other = line.sameSize.map(({ code, count }) => `${count} × ${code}`).join(', ');
  return [
    names[line.kind],
    line.size,
    line.code ?? '',
    [line.matters, ...(other === '' ? [] : [`same size on the shelf: ${other}`])]
      .filter((text) => text !== '')
      .join('; '),
    String(line.count),
    line.stock === null ? '' : String(line.stock),
    String(line.order),
    line.uses
      .map(({ hub, variant, count }) => `${hub}${variant === null ? '' : ` ${variant}`} ${count}`)
      .join(', '),
  ];
}

/** What a list cannot say in its rows. */
export function orderNotes({ unknown, unread, withoutVariant }: OrderList): readonly string[] {
  return [
    ...unread.map(({ message }) => `not all read: ${message}`),
    ...unknown.map(({ file, part, why }) => `not in the list: ${part} of ${file}: ${why}`),
    ...withoutVariant.map((file) => `${file} has no variant of that name and is counted as written`),
  ];
}
