import type { Span } from './place.ts';

/** A change of text: the span is replaced by `text`. Spans of one fix never overlap. */
export interface TextChange {
  readonly span: Span;
  readonly text: string;
}

/** A change that mends a finding, with the result it will give in its title. */
export interface Fix {
  readonly title: string;
  readonly changes: readonly TextChange[];
  /** The one to take without thinking: at most one for each finding. */
  readonly preferred?: boolean;
  /** The changes hold one `$0`: where the cursor goes; `$` is otherwise written `\$`. */
  readonly snippet?: boolean;
}

/** Codes of what reading alone can find. Each is also a check with its page in `checks/text/`. */
export type ProblemCode =
  | 'yaml-syntax'
  | 'tab-indentation'
  | 'conflict-markers'
  | 'more-than-one-document'
  | 'empty-file'
  | 'anchor-not-read'
  | 'duplicate-key'
  | 'unknown-key'
  | 'key-out-of-place'
  | 'missing-key'
  | 'value-not-understood'
  | 'dimension-not-understood'
  | 'decimal-comma'
  | 'wrong-unit'
  | 'unknown-kind'
  | 'duplicate-name'
  | 'allow-without-reason'
  | 'file-too-large';

/** Something reading could not take as written. Never thrown: reading goes on around it. */
export interface Problem {
  readonly code: ProblemCode;
  readonly message: string;
  readonly span: Span;
  readonly related: readonly { readonly span: Span; readonly message: string }[];
  readonly data: Readonly<Record<string, unknown>>;
  readonly fixes: readonly Fix[];
}
