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
    for (const variant of variants) {
      // A part that is not there, or a value that was not understood, is why nothing changed, and is said there.
      if (variant.missing.length > 0 || hasProblems(analysis, variant) || !isSame(written, variant)) continue;
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

/** What makes a hub what it is; a variant that leaves a part alone holds the very same part. */
const substance = ['stack', 'beside', 'shell', 'freehub', 'axle', 'clamp'] as const;

function isSame(written: ResolvedHub, variant: ResolvedHub): boolean {
  return (
    alike(written.values.width, variant.values.width) &&
    substance.every((key) => alike(written[key], variant[key]))
  );
}

/** Compared without the places it was read from and the way it was written. */
function alike(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (!isRecord(a) || !isRecord(b)) return false;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  for (const key of keys) {
    if (key !== 'path' && key !== 'written' && !alike(a[key], b[key])) return false;
  }
  return true;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

function hasProblems({ spec }: Analysis, variant: ResolvedHub): boolean {
  const { start, end } = spec.span(variant.path, 'whole');
  return spec.problems.some((problem) => start <= problem.span.start && problem.span.start <= end);
}
