import { type SourceId, sources } from '../base/sources.ts';
import { angleWithoutLetter, angularRatings } from './angular-contact.ts';
import { ballSet } from './ball-set.ts';
import type { BasicBearing, Ratings } from './basic-number.ts';
import type { DecodedBearing } from './decoded-bearing.ts';
import { internalClearance } from './internal-clearance.ts';
import type { Affixes } from './read-affixes.ts';
import { isPrintedWidth } from './special-numbers.ts';

/** Puts a basic number and its affixes together; lengths in mm, ratings in N. */
export function assembleBearing(
  code: string,
  written: string,
  basic: BasicBearing,
  affixes: Affixes,
): DecodedBearing {
  const notes = [...basic.notes];
  const widths = widthsOf(basic, affixes, notes);
  const angle = contactAngle(basic, affixes, notes);
  const clearance = internalClearance(basic.kind, affixes.clearance, basic.bore);
  if (clearance.note) notes.push(clearance.note);
  const ratings = ratingsOf(basic, angle);
  const balls = affixes.fullComplement ? null : ballSet(basic.standardEquivalent ?? basic.key);
  addRatingNotes(notes, basic, affixes, ratings);
  notes.push(...affixes.notes);
  for (const { suffix, meanings } of affixes.ambiguous) {
    notes.push(`Makers differ on ${suffix}: ${meanings.join(', or ')}; the first is taken.`);
  }
  return {
    code,
    basic: written,
    normalised: normalise(basic, affixes),
    kind: basic.kind,
    bore: basic.bore,
    outside: basic.outside,
    width:
      (affixes.closure === 'open' ? (widths.open ?? widths.closed) : (widths.closed ?? widths.open)) ?? 0,
    widthOpen: widths.open,
    widthClosed: widths.closed,
    disputedWidths: basic.closedInDispute ? [basic.closedInDispute.narrow, basic.closedInDispute.wide] : [],
    chamferMin: basic.chamferMin,
    closure: affixes.closure,
    closedSides: affixes.closedSides,
    rubs: affixes.rubs,
    clearance: clearance.clearance,
    toleranceClass: affixes.toleranceClass,
    material: affixes.material,
    fullComplement: affixes.fullComplement,
    cage: affixes.cage,
    contactAngle: angle,
    dynamicRating: ratings?.dynamic ?? null,
    staticRating: ratings?.static ?? null,
    balls,
    basis: affixes.width === null ? basic.basis : isPrinted(basic, affixes.width) ? 'table' : 'digits',
    standardEquivalent: basic.standardEquivalent,
    ambiguousSuffixes: affixes.ambiguous,
    sources: sourceLines(basic, clearance.source, ratings, balls?.source ?? null),
    notes,
  };
}

function widthsOf(
  basic: BasicBearing,
  affixes: Affixes,
  notes: string[],
): { readonly open: number | null; readonly closed: number | null } {
  if (affixes.width !== null) {
    notes.push(
      isPrinted(basic, affixes.width)
        ? `W${affixes.width} sets the width to ${affixes.width} mm, as one maker prints it.`
        : `W${affixes.width} is read as a width of ${affixes.width} mm; no table lists it, measure the bearing.`,
    );
    return { open: affixes.width, closed: affixes.width };
  }
  const dispute = basic.closedInDispute;
  if (!dispute) {
    if (basic.widthOpen !== null && basic.widthClosed !== null && basic.widthOpen !== basic.widthClosed) {
      notes.push(`The open bearing is ${basic.widthOpen} mm wide, the closed one ${basic.widthClosed} mm.`);
    }
    return { open: basic.widthOpen, closed: basic.widthClosed };
  }
  const sealed67 = affixes.closure === 'seal' && basic.key.startsWith('617');
  const closed = sealed67 ? dispute.narrow : basic.widthClosed;
  notes.push(
    `Some makers make the closed ${basic.key} ${dispute.narrow} mm wide, others ${dispute.wide} mm; ${closed} mm is taken, measure the bearing or write its size.`,
  );
  return { open: basic.widthOpen, closed };
}

function isPrinted(basic: BasicBearing, width: number): boolean {
  return isPrintedWidth(basic.bore, basic.outside, width);
}

function contactAngle(basic: BasicBearing, affixes: Affixes, notes: string[]): number | null {
  if (basic.kind === 'deep-groove') return null;
  if (affixes.angle !== null) return affixes.angle;
  if (basic.kind === 'angular-contact') {
    notes.push(
      `No contact angle letter: some makers leave it out for ${angleWithoutLetter}°, which is taken.`,
    );
    return angleWithoutLetter;
  }
  notes.push('The code does not say the contact angle; makers use 25° and 30° in double row bearings.');
  return null;
}

function ratingsOf(basic: BasicBearing, angle: number | null): Ratings | null {
  if (basic.kind !== 'angular-contact') return basic.ratings;
  return angle === null ? null : angularRatings(basic.key, angle);
}

function addRatingNotes(
  notes: string[],
  basic: BasicBearing,
  affixes: Affixes,
  ratings: Ratings | null,
): void {
  if (!ratings) return;
  const range = ratings.dynamicRange;
  if (range && kilonewtons(range[0]) !== kilonewtons(range[1])) {
    notes.push(
      `Makers print dynamic ratings from ${kilonewtons(range[0])} to ${kilonewtons(range[1])} kN for this size.`,
    );
  }
  if (basic.basis === 'digits') {
    notes.push(
      `Chamfer and ratings are those of ${basic.standardEquivalent}, the standard bearing of this size.`,
    );
  }
  if (affixes.material === 'stainless')
    notes.push('The ratings are those of the steel version; stainless ones carry less.');
  if (affixes.material === 'hybrid') {
    notes.push(
      'The ratings are those of steel balls; ceramic ones leave the dynamic rating as it is and lower the static one.',
    );
  }
}

function normalise(basic: BasicBearing, affixes: Affixes): string {
  const closed = affixes.closure !== 'open';
  const wide = basic.closedInDispute?.wide === basic.widthClosed && !basic.key.startsWith('617');
  const parts = [affixes.material === 'stainless' ? 'S' : '', closed && wide ? basic.trade : basic.key];
  if (affixes.width !== null) parts.push(`W${affixes.width}`);
  if (basic.kind === 'angular-contact' && affixes.letter) parts.push(affixes.letter);
  if (basic.kind === 'double-row-angular-contact' && affixes.angle !== null) parts.push('B');
  if (closed) parts.push(`-${affixes.closedSides === 2 ? '2' : ''}${closureLetters(affixes)}`);
  if (affixes.fullComplement) parts.push(' V');
  if (affixes.clearance !== 'N') parts.push(` ${affixes.clearance}`);
  if (affixes.toleranceClass !== 'Normal') parts.push(` P${affixes.toleranceClass}`);
  if (affixes.material === 'hybrid') parts.push(' HC');
  return parts.join('');
}

function closureLetters(affixes: Affixes): string {
  if (affixes.closure === 'shield') return affixes.rubs ? 'TZ' : 'Z';
  return affixes.rubs === true ? 'RS' : affixes.rubs === false ? 'RZ' : 'RSL';
}

function sourceLines(
  basic: BasicBearing,
  clearance: SourceId | null,
  ratings: Ratings | null,
  balls: string | null,
): readonly string[] {
  const lines = [`size: ${sources[basic.source].title}`];
  if (clearance) lines.push(`clearance: ${sources[clearance].title}`);
  if (ratings) lines.push(`ratings: ${sources[ratings.source].title}`);
  if (balls) lines.push(`balls: ${balls}`);
  return lines;
}

function kilonewtons(newtons: number): string {
  return String(Number((newtons / 1000).toPrecision(3)));
}
