import type { Span } from './place.ts';

/** A change that only the parser sees. */
interface Mend {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/**
 * The user's text as it is given to the parser. Characters may be replaced one for one, and stretches may be mended;
 * offsets of the parser's text lead back to the user's.
 */
export class MendedText {
  readonly original: string;
  private base: string;
  private readonly mends: Mend[] = [];
  private cached: string | null = null;
  private starts: readonly number[] = [];

  constructor(text: string) {
    this.original = text;
    this.base = text;
  }

  get touched(): boolean {
    return this.base !== this.original || this.mends.length !== 0;
  }

  /** The text for the parser. */
  get text(): string {
    if (this.cached !== null) return this.cached;
    let text = '';
    let from = 0;
    for (const mend of this.mends) {
      text += this.base.slice(from, mend.start) + mend.text;
      from = mend.end;
    }
    this.cached = text + this.base.slice(from);
    return this.cached;
  }

  /** A stretch with the characters replaced so far. */
  seen(span: Span): string {
    return this.base.slice(span.start, span.end);
  }

  /** Replaces characters one for one; the offsets are the user's. */
  overwrite(start: number, text: string): void {
    this.base = this.base.slice(0, start) + text + this.base.slice(start + text.length);
    this.cached = null;
  }

  /** Rewrites the whole text, character for character. */
  translate(rewrite: (text: string) => string): void {
    const text = rewrite(this.base);
    if (text.length !== this.base.length) return;
    this.base = text;
    this.cached = null;
  }

  /** Blanks a stretch, line breaks kept. */
  blank(span: Span): void {
    this.overwrite(span.start, this.base.slice(span.start, span.end).replace(/[^\r\n]/g, ' '));
  }

  /** Puts other text in place of a stretch; false where it was mended before. */
  mend(start: number, end: number, text: string): boolean {
    const index = this.mends.findIndex((mend) => start <= mend.end);
    const next = index < 0 ? undefined : this.mends[index];
    if (next && next.start <= end) return false;
    this.mends.splice(index < 0 ? this.mends.length : index, 0, { start, end, text });
    this.cached = null;
    return true;
  }

  /** From an offset of the parser's text to the user's. */
  at(offset: number): number {
    const starts = this.startsInText();
    // The last mend that begins before the offset.
    let [low, high] = [-1, starts.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((starts[middle] ?? 0) < offset) low = middle;
      else high = middle - 1;
    }
    const mend = this.mends[low];
    const start = starts[low];
    if (!mend || start === undefined) return offset;
    const into = offset - start;
    if (into < mend.text.length) return Math.min(mend.start + into, mend.end);
    return mend.end + into - mend.text.length;
  }

  /** Where each mend begins in the parser's text. */
  private startsInText(): readonly number[] {
    if (this.starts.length === this.mends.length) return this.starts;
    let shift = 0;
    this.starts = this.mends.map((mend) => {
      const start = mend.start + shift;
      shift += mend.text.length - (mend.end - mend.start);
      return start;
    });
    return this.starts;
  }
}
