import {
  abecClasses,
  bearingSuffixes,
  contactLetters,
  designLetters,
  type SuffixMeaning,
} from '../tables/bearing-suffixes.ts';
import type { AmbiguousSuffix, BearingKind, Closure, ToleranceClass } from './decoded-bearing.ts';

/** What stands after the basic number, read. */
export interface Affixes {
  readonly closure: Closure;
  readonly closedSides: 0 | 1 | 2;
  readonly rubs: boolean | null;
  readonly clearance: string;
  readonly toleranceClass: ToleranceClass;
  readonly material: 'steel' | 'stainless' | 'hybrid';
  readonly fullComplement: boolean;
  readonly cage: string | null;
  /** Contact angle, degrees. */
  readonly angle: number | null;
  /** The contact angle letter as written. */
  readonly letter: string | null;
  /** Width in mm that a W with a number sets. */
  readonly width: number | null;
  /** A changed bore or outside after a slash, as written: '13', '5/8'. */
  readonly change: string | null;
  readonly ambiguous: readonly AmbiguousSuffix[];
  readonly notes: readonly string[];
}

interface Draft {
  closure: Closure;
  sides: number;
  rubs: boolean | null;
  clearance: string;
  toleranceClass: ToleranceClass;
  material: 'steel' | 'stainless' | 'hybrid';
  fullComplement: boolean;
  cage: string | null;
  angle: number | null;
  letter: string | null;
  width: number | null;
  change: string | null;
  ambiguous: AmbiguousSuffix[];
  notes: string[];
}

const fraction = /(1\/2|[135]\/8|7\/8|[13]\/4)(?![\dA-Z])/;
const longest = 9;
/** A longer run of letters is no suffix; it also bounds the work of cutting it up. */
const longestRun = 16;

/**
 * Reads the suffixes of a bearing. `written` is the text after the basic number as written (only an `h` for
 * stainless steel needs the case); `prefix` the letters before it. An unknown suffix is kept out with a note.
 */
export function readAffixes(written: string, prefix: readonly string[], kind: BearingKind): Affixes {
  const draft: Draft = {
    closure: 'open',
    sides: 0,
    rubs: false,
    clearance: 'N',
    toleranceClass: 'Normal',
    material: 'steel',
    fullComplement: false,
    cage: null,
    angle: null,
    letter: null,
    width: null,
    change: null,
    ambiguous: [],
    notes: [],
  };
  for (const letters of prefix) readPrefix(letters, draft);
  let text = written.toUpperCase();
  const changed = fraction.exec(text);
  if (changed?.[1]) {
    draft.change = changed[1];
    text = text.replace(changed[0], ' ');
  }
  text = text.replace(/ABEC[ -]?([13579])(?!\d)/, (_, grade: string) => {
    draft.toleranceClass = abecClasses[grade] ?? 'Normal';
    return ' ';
  });
  // One maker writes a small h for stainless steel; a capital H is something else.
  if (/(^|[^A-Za-z])h(?![A-Za-z])/.test(written) && !/[a-gi-z]/.test(written)) {
    draft.material = 'stainless';
    text = text.replace(/(^|[^A-Z])H(?![A-Z])/, '$1 ');
  }
  for (const match of text.matchAll(/[^\s\-_,+/()]+/g)) readRun(match[0], text[match.index - 1], kind, draft);
  settleFullComplement(draft);
  return {
    closure: draft.closure,
    closedSides: draft.sides >= 2 ? 2 : draft.sides === 1 ? 1 : 0,
    rubs: draft.rubs,
    clearance: draft.clearance,
    toleranceClass: draft.toleranceClass,
    material: draft.material,
    fullComplement: draft.fullComplement,
    cage: draft.cage,
    angle: draft.angle,
    letter: draft.letter,
    width: draft.width,
    change: draft.change,
    ambiguous: draft.ambiguous,
    notes: draft.notes,
  };
}

function readRun(run: string, before: string | undefined, kind: BearingKind, draft: Draft): void {
  if (/^\d+(\.\d+)?$/.test(run) && (before === '/' || before === '-')) {
    draft.change ??= run;
    return;
  }
  const parts = run.length <= longestRun ? segment(run, kind) : null;
  if (parts) {
    for (const part of parts) apply(part, kind, draft);
    return;
  }
  readUnknown(run, kind, draft);
}

/** An unknown run may still begin with a contact letter or a closure, or end in a clearance group or a class. */
function readUnknown(run: string, kind: BearingKind, draft: Draft): void {
  const tail = /(C[2-5]|P[2456][2-5]?)$/.exec(run)?.[0];
  let head = tail ? run.slice(0, -tail.length) : run;
  if (kind !== 'deep-groove' && draft.letter === null) {
    const letter = /^(ACD|AC|A5|A|BE|B|CD|C)/.exec(head)?.[0];
    if (letter) {
      apply(letter, kind, draft);
      head = head.slice(letter.length);
    }
  }
  if (tail) {
    const parts = segment(tail, kind) ?? [];
    for (const part of parts) apply(part, kind, draft);
  }
  if (head === '') return;
  if (/^2?(RS|BRS|HRS)[A-Z0-9]*$/.test(head)) {
    close(draft, 'seal', head.startsWith('2') ? 2 : 1, null);
    draft.notes.push(
      `${head} is taken for rubber seals of a maker's own kind; whether they rub is not known.`,
    );
  } else if (/^(ZZ|2Z)[A-Z0-9]*$/.test(head)) {
    close(draft, 'shield', 2, false);
    draft.notes.push(`${head} is taken for shields on both sides of a maker's own kind.`);
  } else {
    draft.notes.push(`${head} is in no list of suffixes that was read; it is left out of account.`);
  }
}

/** Cuts a run into known suffixes, longest first, or null when that cannot be done without a rest. */
function segment(run: string, kind: BearingKind): readonly string[] | null {
  if (run === '') return [];
  for (let length = Math.min(longest, run.length); length > 0; length--) {
    const head = run.slice(0, length);
    if (!isKnown(head, kind)) continue;
    const rest = segment(run.slice(length), kind);
    if (rest) return [head, ...rest];
  }
  return null;
}

function isKnown(part: string, kind: BearingKind): boolean {
  if (kind === 'angular-contact' && Object.hasOwn(contactLetters, part)) return true;
  if (kind !== 'angular-contact' && designLetters.includes(part)) return true;
  return (
    Object.hasOwn(bearingSuffixes, part) ||
    isWidth(part) ||
    isMiniature(part) ||
    isHalfGroup(part) ||
    isCombined(part)
  );
}

const isWidth = (part: string): boolean => /^W0?\d{1,2}(\.\d{1,2})?$/.test(part);
const isMiniature = (part: string): boolean => /^MC[1-6]$/.test(part);
const isHalfGroup = (part: string): boolean => /^C[2-5N][HLP]$/.test(part);
const isCombined = (part: string): boolean => /^P[2456][2-5]$/.test(part);

function apply(part: string, kind: BearingKind, draft: Draft): void {
  const letter = kind === 'angular-contact' && draft.letter === null ? contactLetters[part] : undefined;
  if (letter) {
    draft.letter = part;
    applyMeaning(part, letter, draft);
  } else if (isWidth(part)) {
    draft.width = Number(part.slice(1));
  } else if (isMiniature(part) || isHalfGroup(part)) {
    draft.clearance = part;
  } else if (isCombined(part)) {
    applyMeaning(part, { tolerance: part[1] as '6', clearance: `C${part[2]}`, source: 'skf-2017' }, draft);
  } else {
    const meaning = bearingSuffixes[part];
    if (meaning) applyMeaning(part, meaning, draft);
    else if (kind === 'double-row-angular-contact' && part === 'B') draft.angle = 25;
  }
}

function applyMeaning(part: string, meaning: SuffixMeaning, draft: Draft): void {
  if (meaning.closure) close(draft, meaning.closure, meaning.sides ?? 2, meaning.rubs ?? null);
  if (meaning.clearance) draft.clearance = meaning.clearance;
  if (meaning.tolerance) draft.toleranceClass = meaning.tolerance;
  if (meaning.material) draft.material = meaning.material;
  if (meaning.fullComplement) draft.fullComplement = true;
  if (meaning.cage) draft.cage = meaning.cage;
  if (meaning.angle !== undefined) draft.angle = meaning.angle;
  if (meaning.meanings) draft.ambiguous.push({ suffix: part, meanings: meaning.meanings });
  if (meaning.note) draft.notes.push(meaning.note);
}

function close(draft: Draft, closure: 'shield' | 'seal', sides: 1 | 2, rubs: boolean | null): void {
  const open = draft.closure === 'open';
  draft.sides = Math.min(2, draft.sides + sides);
  draft.closure = open ? closure : draft.closure === 'seal' ? 'seal' : closure;
  draft.rubs = open ? rubs : draft.rubs === true || rubs === true ? true : rubs === null ? null : draft.rubs;
}

function settleFullComplement(draft: Draft): void {
  // Beside another closure a V cannot be a seal.
  if (draft.closure !== 'open') draft.ambiguous = draft.ambiguous.filter(({ suffix }) => suffix !== 'V');
  if (draft.fullComplement) {
    draft.cage = null;
    draft.notes.push('Without a cage the count of balls and the ratings differ from the printed ones.');
  }
}

function readPrefix(letters: string, draft: Draft): void {
  switch (letters) {
    case 'S':
    case 'SS':
    case 'INOX':
    case 'D/W':
      draft.material = 'stainless';
      break;
    case 'W':
      draft.material = 'stainless';
      draft.ambiguous.push({
        suffix: 'W',
        meanings: ['stainless steel', 'a wide version, in front of an inch code'],
      });
      break;
    case 'HYB':
    case 'HC':
    case 'CB':
    case 'CER':
      draft.material = 'hybrid';
      break;
    case 'F':
    case 'FL':
      draft.notes.push('The outer ring has a flange.');
      break;
  }
}
