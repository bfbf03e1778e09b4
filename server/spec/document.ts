import type { Hub } from './model.ts';
import type { Span, SpecPath } from './place.ts';
import type { Problem } from './problem.ts';
import type { Wheel } from './wheel-model.ts';
import type { Workshop } from './workshop-model.ts';

export type SpecKind = 'hub' | 'wheel' | 'workshop';

/** `# allow CODE because reason`, on the line above what it silences. */
export interface Allowance {
  readonly code: string;
  /** Empty when none was given: the allowance then silences nothing. */
  readonly reason: string;
  /** The whole comment. */
  readonly span: Span;
  /** The line it speaks of: from its first character to the end of the line; for an item or section, to its end. */
  readonly target: Span;
}

/** What a path can point at in the text. */
export type SpanPart = 'key' | 'value' | 'whole';

/** One file, read: as much of the model as could be read, and the problems met on the way. */
export interface SpecDocument {
  readonly kind: SpecKind;
  readonly text: string;
  readonly hub: Hub | null;
  readonly wheel: Wheel | null;
  readonly workshop: Workshop | null;
  readonly problems: readonly Problem[];
  readonly allowances: readonly Allowance[];
  /**
   * The text a path points at. `key` falls back to the nearest written ancestor's key, `value` to its key,
   * so that there is always a place to show; never a span over several lines unless `whole` is asked.
   */
  span(path: SpecPath, part?: SpanPart): Span;
  /** Whether a key or item really stands at the path. */
  has(path: SpecPath): boolean;
  /** Deepest path whose key or value contains the offset, and which of the two. */
  pathAt(offset: number): { readonly path: SpecPath; readonly part: 'key' | 'value' } | null;
}
