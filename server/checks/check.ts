import type { Analysis } from '../analysis/analyze.ts';
import type { SpanPart } from '../spec/document.ts';
import type { Span, SpecPath } from '../spec/place.ts';
import type { Fix } from '../spec/problem.ts';

export type Severity = 'error' | 'warning' | 'information' | 'hint';

export type CheckGroup =
  | 'text'
  | 'bearing'
  | 'stack'
  | 'seat'
  | 'journal'
  | 'clearance'
  | 'play'
  | 'end-cap'
  | 'freehub'
  | 'cup'
  | 'service'
  | 'variant'
  | 'reference'
  | 'flange'
  | 'wheel';

/** A place that contributed to a finding. */
export interface Related {
  readonly path: SpecPath;
  readonly part?: SpanPart;
  readonly message: string;
  /** Exact characters, where a path does not say it finely enough. */
  readonly span?: Span;
}

/** What a check yields: one for each root cause and variant. */
export interface Draft {
  /** The value to change. */
  readonly path: SpecPath;
  readonly part?: SpanPart;
  readonly span?: Span;
  /** One line: computed value, wanted value, difference, what to do. */
  readonly message: string;
  /** Where it differs from the check's own. */
  readonly severity?: Severity;
  /** Every contribution, in the order of the sum. */
  readonly related?: readonly Related[];
  /** The numbers behind it, mm unless the key says otherwise. */
  readonly data?: Readonly<Record<string, unknown>>;
  /** Best first. Only changes that leave the file clean of this finding. */
  readonly fixes?: readonly Fix[];
  /** Values that may be wrong: what other checks find on the strength of them waits until this is settled. */
  readonly doubts?: readonly SpecPath[];
  /** Variant it was found in; null for the hub as written, absent when it is not about a variant. */
  readonly variant?: string | null;
}

/** A page to read: why it matters and what to do, with a bad and a good example. */
export interface Page {
  /** What goes wrong on the bike or at the bench. */
  readonly why: string;
  /** A few lines of spec that show the fault, and the same lines mended. */
  readonly bad: string;
  readonly good: string;
  /** Standards, handbooks, or `common practice`. */
  readonly sources: readonly string[];
}

/** A check is one object in one file: its code is the name of the file, of its fixtures and of its page. */
export interface Check {
  /** The fault in a few words, kebab-case; never reused, never renamed. */
  readonly code: string;
  readonly group: CheckGroup;
  /** The usual severity. */
  readonly severity: Severity;
  /** What is wrong, in a sentence without numbers. */
  readonly summary: string;
  readonly page: Page;
  readonly run: (analysis: Analysis) => Iterable<Draft>;
}

/** What everybody reads: a draft with its code, its place in characters, and the variants it holds for. */
export interface Finding {
  readonly code: string;
  readonly group: CheckGroup;
  readonly severity: Severity;
  readonly message: string;
  readonly path: SpecPath;
  readonly span: Span;
  readonly related: readonly { readonly path: SpecPath; readonly span: Span; readonly message: string }[];
  readonly data: Readonly<Record<string, unknown>>;
  readonly fixes: readonly Fix[];
  readonly doubts: readonly SpecPath[];
  /** Names of the variants it holds for (null: the hub as written); empty when it is not about variants. */
  readonly variants: readonly (string | null)[];
}
