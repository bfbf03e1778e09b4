import type { Analysis } from '../../analysis/analyze.ts';
import type { ProblemCode } from '../../spec/problem.ts';
import type { Draft } from '../check.ts';

/** What reading found under one code: the finding is the problem, in its place. */
export function fromProblems(code: ProblemCode): (analysis: Analysis) => Iterable<Draft> {
  return ({ spec }) =>
    spec.problems
      .filter((problem) => problem.code === code)
      .map(({ span, message, related, data, fixes }) => ({
        path: spec.pathAt(span.start)?.path ?? [],
        span,
        message,
        related: related.map((place) => ({
          path: spec.pathAt(place.span.start)?.path ?? [],
          span: place.span,
          message: place.message,
        })),
        data,
        fixes,
      }));
}
