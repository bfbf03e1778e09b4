import type { Span } from './place.ts';
import type { Fix, Problem, ProblemCode } from './problem.ts';

/** A problem with what is left out filled in. */
export function makeProblem(
  code: ProblemCode,
  message: string,
  span: Span,
  more: {
    readonly related?: Problem['related'];
    readonly data?: Problem['data'];
    readonly fixes?: readonly Fix[];
  } = {},
): Problem {
  return { code, message, span, related: more.related ?? [], data: more.data ?? {}, fixes: more.fixes ?? [] };
}

/** A fix of one change, to be taken without thinking. */
export function replaceFix(title: string, span: Span, text: string): Fix {
  return { title, changes: [{ span, text }], preferred: true };
}
