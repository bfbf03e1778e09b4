import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { FilledHousing } from '../../assembly/housings.ts';
import { insertKey } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';

/** Seats are written, but a bearing does not say which one it stands in. */
export const bearingWithoutSeat: Check = {
  code: 'bearing-without-seat',
  group: 'stack',
  severity: 'warning',
  summary: 'A bearing does not say which seat it stands in.',
  page: {
    why: 'A seat decides whether the outer ring is held, how deep it stands and how far apart two bearings are kept. While a bearing names none, its fit, its depth and the pair it belongs to stay unchecked.',
    bad: pageHub(['    seat: shell.left\n', '']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => withoutSeat(analysis, variant)),
};

function* withoutSeat(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { shell, freehub, bearings } = variant.assembly;
  const free = [shell, freehub].flatMap((housing) => emptySeats(housing));
  if (free.length === 0) return;
  for (const { part, address } of bearings) {
    // A seat that is written and not understood has its own finding.
    if (part.values.seat || analysis.spec.has([...part.path, 'seat'])) continue;
    const ranked = [...free].sort((a, b) => likeness(b, part.name) - likeness(a, part.name));
    yield {
      path: [...part.path, part.kind],
      message: `${address} names no seat; ${ranked.join(' and ')} ${ranked.length === 1 ? 'is' : 'are'} empty — add seat: ${ranked[0]}`,
      related: ranked.map((seat) => ({
        path: seat.split('.').toSpliced(1, 0, 'seats'),
        part: 'key',
        message: `${seat} is empty`,
      })),
      data: { bearing: address, empty: ranked },
      fixes: ranked.map((seat, index) => ({
        title: `Add seat: ${seat} to ${address}`,
        changes: insertKey(analysis.spec, part.path, 'seat', seat),
        preferred: index === 0,
      })),
    };
  }
}

function emptySeats(housing: FilledHousing | null): readonly string[] {
  return (housing?.seats ?? []).filter((seat) => seat.bearings.length === 0).map((seat) => seat.address);
}

function likeness(seat: string, name: string): number {
  const [housing = '', place = ''] = seat.split('.');
  return (place === name ? 2 : name.includes(place) ? 1 : 0) + (name.includes(housing) ? 2 : 0);
}
