import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { LinePart } from '../../assembly/line.ts';
import type { Settled } from '../../assembly/settle.ts';
import { plain } from '../../engine/base/figures.ts';

/** A part of the hub as somebody looks for it on the bench. */
export interface PartRow {
  readonly address: string;
  readonly part: string;
  /** Code of a bearing, or what else tells it. */
  readonly what: string;
  readonly size: string;
  /** Room for what is fitted instead, or how many are on the shelf. */
  readonly note: string;
}

/** Parts of the clamped line from left to right, then the retaining rings. */
export function partRows(variant: VariantAnalysis, { workshop }: Analysis): readonly PartRow[] {
  const { line, shell, freehub } = variant.assembly;
  const seats = [shell, freehub].flatMap((housing) => housing?.seats ?? []);
  const rings = seats.flatMap(({ seat, address }): readonly PartRow[] => {
    if (!seat.ring) return [];
    const { size, thickness } = seat.ring.values;
    return [
      {
        address: `${address}.retaining-ring`,
        part: `retaining ring of ${address}`,
        what: size ? `for a bore of ${plain(size.value.nominal)}` : 'size not written: measure its bore',
        size: thickness ? thickness.value.written : '',
        note: 'new if bent',
      },
    ];
  });
  const stock = workshop?.stock.bearings ?? {};
  return [...line.map((part) => rowOf(part, stock)), ...rings];
}

function rowOf(
  { address, part, bearing, length: item }: LinePart,
  stock: Readonly<Record<string, { readonly value: number }>>,
): PartRow {
  const { values } = part;
  if (part.kind === 'bearing') {
    const decoded = bearing?.bearing;
    const code = values.code?.value ?? values['house-code']?.value ?? decoded?.code ?? 'not known';
    const shelf = stock[code] ?? stock[decoded?.normalised ?? ''];
    return {
      address,
      part: address,
      what: code,
      size: decoded ? [decoded.bore, decoded.outside, decoded.width].map(plain).join(' × ') : 'measure it',
      note: shelf ? `${shelf.value} in stock` : '',
    };
  }
  const times = item.settled && item.count !== 1 ? `${item.count} × ` : '';
  return {
    address,
    part: address,
    what: [
      values.balls ? `${values.balls.value.count} balls ⌀${plain(values.balls.value.diameter)}` : '',
      values.material?.value ?? '',
    ]
      .filter((text) => text !== '')
      .join(', '),
    size: item.settled ? `${times}${written(item.settled)}` : 'length not written: measure it',
    note: noteOf(item.settled),
  };
}

/** A reading beside what was drawn; of a part that was only read the size is the reading already. */
function noteOf(settled: Settled | undefined | null): string {
  if (!settled?.built) return '';
  return settled.built === settled.drawn ? 'as measured' : `measured ${plain(settled.built.nominal)}`;
}

function written({ drawn: { nominal, lower, upper } }: Settled): string {
  if (lower === 0 && upper === 0) return plain(nominal);
  if (Math.abs(lower + upper) < 1e-9) return `${plain(nominal)} ±${plain(upper)}`;
  const sign = (value: number): string =>
    value === 0 ? '0' : `${value < 0 ? '−' : '+'}${plain(Math.abs(value))}`;
  return `${plain(nominal)} ${sign(upper)}/${sign(lower)}`;
}
