import type { Analysis } from '../../analysis/analyze.ts';
import type { Fix, Problem, ProblemCode } from '../../spec/problem.ts';
import type { Draft } from '../check.ts';

/**
 * What reading found under one code: the finding is the problem, in its place. `more` gives fixes that take the
 * whole document to work out.
 */
export function fromProblems(
  code: ProblemCode,
  more: (analysis: Analysis, problem: Problem) => readonly Fix[] = () => [],
): (analysis: Analysis) => Iterable<Draft> {
  return (analysis) => {
    const { spec } = analysis;
    const found = spec.problems.filter((problem) => problem.code === code);
    return found.map((problem) => ({
      path: spec.pathAt(problem.span.start)?.path ?? [],
      span: problem.span,
      message: problem.message,
      related: problem.related.map(({ span, message }) => ({
        path: spec.pathAt(span.start)?.path ?? [],
        span,
        message,
      })),
      data: problem.data,
      fixes: [...problem.fixes, ...more(analysis, problem)],
    }));
  };
}
