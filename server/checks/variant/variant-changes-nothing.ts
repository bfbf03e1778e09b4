import type { Analysis } from '../../analysis/analyze.ts';
import type { ResolvedHub } from '../../assembly/variants.ts';
import { removeKey } from '../../spec/edit.ts';
import type { Check } from '../check.ts';
import { pageHub } from '../page-hub.ts';

/** A variant comes out as the hub as written. */
export const variantChangesNothing: Check = {
  code: 'variant-changes-nothing',
  group: 'variant',
  severity: 'hint',
  summary: 'A variant comes out the same as the hub as written.',
  page: {
    why: 'Someone who orders this variant gets the hub as written, which is hardly what its name promises. Usually a change was forgotten, or repeats a value that the hub already has. The hub as written is itself the first variant and needs no name.',
    bad: `${pageHub()}variants:\n  thru-15:\n    change:\n      end-cap.left: { face: 19.4 }\n`,
    good: `${pageHub()}variants:\n  thru-15:\n    change:\n      end-cap.left: { bore: 15.1 }\n`,
    sources: ['common practice'],
  },
  *run(analysis) {
    const [written, ...variants] = analysis.variants.map(({ assembly }) => assembly.hub);
    if (!written) return;
    const same = substance(written);
    for (const variant of variants) {
      // A part that is not there, or a value that was not understood, is why nothing changed, and is said there.
      if (variant.missing.length > 0 || hasProblems(analysis, variant) || substance(variant) !== same)
        continue;
      yield {
        path: variant.path,
        part: 'key',
        message: `${variant.name} comes out the same as the hub as written — change a part in it, or remove it`,
        data: { variant: variant.name },
        fixes: [
          {
            title: `Remove ${variant.name}`,
            changes: removeKey(analysis.spec, variants.length === 1 ? ['variants'] : variant.path),
          },
        ],
      };
    }
  },
};

/** Everything that makes a hub what it is, without the places it was read from and the way it was written. */
function substance({ values, stack, beside, shell, freehub, axle, clamp }: ResolvedHub): string {
  const unlike = new Set(['path', 'written']);
  return JSON.stringify(
    { width: values.width, stack, beside, shell, freehub, axle, clamp },
    (key, value: unknown) => {
      if (unlike.has(key)) return undefined;
      return isRecord(value)
        ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
        : value;
    },
  );
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function hasProblems({ spec }: Analysis, variant: ResolvedHub): boolean {
  const { start, end } = spec.span(variant.path, 'whole');
  return spec.problems.some((problem) => start <= problem.span.start && problem.span.start <= end);
}
