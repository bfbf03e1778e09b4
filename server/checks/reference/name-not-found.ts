import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { dropoutFaces } from '../../assembly/beside-gaps.ts';
import { setValue } from '../../spec/edit.ts';
import { nearestOf } from '../../spec/nearest.ts';
import type { Placed, Span } from '../../spec/place.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { seatsOf } from '../seat-of.ts';

/** A part names a seat or another part that is not in the file. */
export const nameNotFound: Check = {
  code: 'name-not-found',
  group: 'reference',
  severity: 'error',
  summary: 'A part names a seat or another part that is not in the file.',
  page: {
    why: 'A bearing that names a seat nobody drew stands nowhere: its fit, its depth and the pair it belongs to stay unchecked. A cover measured from a part that is not there has no place. Seats are called by their housing and name, parts by their kind and name.',
    bad: pageHub(['seat: shell.left', 'seat: shell.lefft']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => unknownNames(analysis, variant)),
};

function* unknownNames(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { hub } = variant.assembly;
  const seats = seatsOf(variant);
  const known = seats.map(({ address }) => address);
  const free = seats.filter(({ bearings }) => bearings.length === 0).map(({ address }) => address);
  for (const { values, address } of hub.stack) {
    const { seat } = values;
    if (!seat || known.includes(seat.value)) continue;
    yield draftOf(analysis, seat, {
      who: address,
      kind: 'seat',
      known,
      near: byName(seat.value, known) ?? nearestOf(seat.value, free) ?? nearestOf(seat.value, known),
    });
  }
  const parts = [...hub.stack, ...hub.beside].map(({ address }) => address);
  for (const { values, address } of hub.beside) {
    const others = parts.filter((other) => other !== address);
    const { at, to } = values;
    if (to && ![...others, ...known, ...dropoutFaces].includes(to.value))
      yield draftOf(analysis, to, named(address, to.value, others));
    const from = at?.value.from ?? null;
    if (at && from !== null && !others.includes(from)) {
      yield draftOf(analysis, { value: from, path: at.path }, named(address, from, others));
    }
  }
}

/** `left`, where one housing alone has a seat of that name: `shell.left`. */
function byName(name: string, known: readonly string[]): string | null {
  const [only, ...more] = known.filter((address) => address.endsWith(`.${name}`));
  return only !== undefined && more.length === 0 ? only : null;
}

interface Naming {
  readonly who: string;
  readonly kind: 'seat' | 'part';
  readonly known: readonly string[];
  readonly near: string | null;
}

const named = (who: string, written: string, known: readonly string[]): Naming => ({
  who,
  kind: 'part',
  known,
  near: nearestOf(written, known),
});

function draftOf(
  analysis: Analysis,
  { value, path }: Placed<string>,
  { who, kind, known, near }: Naming,
): Draft {
  const span = wordIn(analysis, path, value);
  const list = `${known.slice(0, 8).join(', ')}${8 < known.length ? ' …' : ''}`;
  const there = known.length === 0 ? `no ${kind}s are written` : `the ${kind}s are ${list}`;
  const todo = near ? `write ${near}` : (absentHousing(analysis, value, kind) ?? there);
  return {
    path,
    ...(span ? { span } : {}),
    message: `${who} names ${kind} ${value}, which is not in this file — ${todo}`,
    data: { written: value, known, suggestion: near },
    fixes: near
      ? [
          {
            title: `Change to ${near}`,
            changes: span ? [{ span, text: near }] : setValue(analysis.spec, path, near),
            preferred: true,
          },
        ]
      : [],
  };
}

/** What to do about the seat of a housing nobody wrote: `write shell with its seats first`. */
function absentHousing({ spec }: Analysis, seat: string, kind: Naming['kind']): string | null {
  const [housing = '', name = ''] = seat.split('.');
  if (kind !== 'seat' || (housing !== 'shell' && housing !== 'freehub') || name === '') return null;
  return spec.has([housing])
    ? `write it under seats of ${housing}, with its bore`
    : `write ${housing} with its seats, or leave seat out`;
}

/** The address within the value that names it. */
function wordIn({ spec }: Analysis, path: Draft['path'], word: string): Span | null {
  const whole = spec.span(path);
  const at = spec.text.slice(whole.start, whole.end).lastIndexOf(word);
  return at === -1 ? null : { start: whole.start + at, end: whole.start + at + word.length };
}
