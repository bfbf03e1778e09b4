import { plain } from '../engine/base/figures.ts';
import { bearingsFitting } from '../engine/bearings/identify-bearing.ts';
import type { Cursor } from '../spec/cursor.ts';
import type { StackPart } from '../spec/model.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { literal, type Suggestion } from './completion-item.ts';
import { samePath } from './section-at.ts';

/** Codes are many: this many of those that fit, and of those that begin as typed. */
const atMost = 60;

type Fitting = ReturnType<typeof bearingsFitting>[number];

/** Bearing codes: those already in the file and of the house, those that fit the seat and the axle, then others. */
export function codeSuggestions(snapshot: Snapshot, cursor: Cursor): readonly Suggestion[] {
  const typed = cursor.typed.trim().toUpperCase();
  const fitting = fittingHere(snapshot, cursor);
  const fits = new Set(fitting.map(({ code }) => code));
  const begun =
    typed === '' ? [] : bearingsFitting({}).filter(({ code }) => code.startsWith(typed.split('-')[0] ?? ''));
  const codes = [...fitting, ...begun.filter(({ code }) => !fits.has(code))].slice(0, atMost);
  const own = [...inFile(snapshot, cursor), ...house(snapshot)];
  const known = new Set(own.map(({ label }) => label));
  const sealed = codes.map((bearing) =>
    codeSuggestion(`${bearing.code}-2RS`, bearing, fits.has(bearing.code)),
  );
  const open = codes.map((bearing) => codeSuggestion(bearing.code, bearing, fits.has(bearing.code)));
  return [...own, ...[...sealed, ...open].filter(({ label }) => !known.has(label))];
}

function codeSuggestion(code: string, { bore, outside, width }: Fitting, fits: boolean): Suggestion {
  const size = `${plain(bore)} × ${plain(outside)} × ${plain(width)} mm`;
  return { label: code, text: code, kind: 'code', detail: fits ? size : `${size}, another size than here` };
}

/** `17x26x5` for the bearings that fit. */
export function sizeSuggestions(snapshot: Snapshot, cursor: Cursor): readonly Suggestion[] {
  const seen = new Set<string>();
  return fittingHere(snapshot, cursor).flatMap(({ code, bore, outside, width }): readonly Suggestion[] => {
    const label = `${plain(bore)}x${plain(outside)}x${plain(width)}`;
    if (seen.has(label)) return [];
    seen.add(label);
    return [{ label, text: label, kind: 'code', detail: `as ${code}` }];
  });
}

/** What the seat, the journal and the axle leave room for; the common ones where nothing is known. */
function fittingHere(snapshot: Snapshot, cursor: Cursor): readonly Fitting[] {
  const { document, analysis } = snapshot;
  const part = document.hub?.stack.find(({ path }) => samePath(path, cursor.path));
  const assembly = analysis.variants[0]?.assembly;
  const seats = [assembly?.shell, assembly?.freehub].flatMap((housing) => housing?.seats ?? []);
  const seat = seats.find(({ address }) => address === part?.values.seat?.value)?.seat.values.bore?.value;
  const journal = part?.values.journal?.value ?? document.hub?.axle?.values.diameter?.value;
  const query = {
    ...(journal ? { bore: journal.nominal } : {}),
    ...(seat ? { outside: seat.nominal } : {}),
  };
  // A drawn diameter may lie a few hundredths off the nominal of the ring.
  return bearingsFitting(query, 0.06).slice(0, atMost);
}

function inFile({ document, analysis }: Snapshot, cursor: Cursor): readonly Suggestion[] {
  const sizes = new Map(
    analysis.variants[0]?.assembly.bearings.flatMap(({ address, bearing }) =>
      bearing ? [[address, bearing] as const] : [],
    ),
  );
  const others = (document.hub?.stack ?? []).filter(
    (part: StackPart) => part.values.code && sizes.has(part.address) && !samePath(part.path, cursor.path),
  );
  const byCode = new Map(others.map((part) => [part.values.code?.value ?? '', part]));
  return [...byCode].map(([code, part]) => {
    const bearing = sizes.get(part.address);
    const size = bearing
      ? `${plain(bearing.bore)} × ${plain(bearing.outside)} × ${plain(bearing.width)} mm, `
      : '';
    return { label: code, text: literal(code), kind: 'code', detail: `${size}as ${part.address}` };
  });
}

function house({ analysis }: Snapshot): readonly Suggestion[] {
  const { bearings = {}, stock } = analysis.workshop ?? {};
  const coded = Object.entries(bearings).map(
    ([name, { value }]): Suggestion => ({
      label: name,
      text: literal(name),
      kind: 'code',
      detail: `house code: ${value.code ?? value.size?.written ?? ''}`,
    }),
  );
  const stocked = Object.entries(stock?.bearings ?? {}).map(
    ([name, { value }]): Suggestion => ({
      label: name,
      text: literal(name),
      kind: 'code',
      detail: `${value} in stock`,
    }),
  );
  return [...coded, ...stocked];
}
