import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { insertKey } from '../../spec/edit.ts';
import type { StackPart } from '../../spec/model.ts';
import type { Fix } from '../../spec/problem.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { codesThatFit, relatedSurroundings, sayFits, saySize, surroundingsOf } from './fitting.ts';

/** A bearing has neither a code nor a size. */
export const bearingUnsized: Check = {
  code: 'bearing-unsized',
  group: 'bearing',
  severity: 'error',
  summary: 'A bearing has neither a code nor a size.',
  page: {
    why: 'The ring of a bearing is part of the clamped width, and its outside decides the seat. Without a code or a size the stack cannot be closed and nothing can be ordered. A worn or unmarked bearing is measured and written as size: bore, outside and width.',
    bad: pageHub(['    code: 6803-2RS\n', '']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => unsized(analysis, variant)),
};

function* unsized(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  for (const { part, address } of variant.assembly.bearings) {
    const { values } = part;
    if (values.code || values.size || values['house-code']) continue;
    // A key that stands there and was not understood has its own finding.
    if (['code', 'size'].some((key) => analysis.spec.has([...part.path, key]))) continue;
    const around = surroundingsOf(variant, part);
    const codes = closedCodes(codesThatFit(around));
    const [best] = codes;
    yield {
      path: [...part.path, part.kind],
      message: best
        ? `${address} has neither a code nor a size — add code: ${best.code} (${saySize(best)})${sayFits(around, best)}, or measure it`
        : `${address} has neither a code nor a size — add its code, or its size as bore × outside × width`,
      related: relatedSurroundings(around),
      data: { bearing: address, fitting: codes.map(({ code }) => code) },
      fixes: [
        ...codes.map((code, index) => addCode(analysis, part, code, around, index === 0)),
        addEmpty(analysis, part),
      ],
    };
  }
}

type Fitting = ReturnType<typeof codesThatFit>[number];

/** Hub bearings are sealed on both sides unless a seal stands beside them (common practice). */
function closedCodes(codes: readonly Fitting[]): readonly Fitting[] {
  const closed = codes.map((item) => ({
    ...item,
    code: item.code.endsWith('-2RS') ? item.code : `${item.code}-2RS`,
  }));
  return closed
    .filter((item, index) => closed.findIndex(({ code }) => code === item.code) === index)
    .slice(0, 3);
}

function addCode(
  analysis: Analysis,
  part: StackPart,
  fitting: Fitting,
  around: ReturnType<typeof surroundingsOf>,
  preferred: boolean,
): Fix {
  return {
    title: `Add code: ${fitting.code} (${saySize(fitting)})${sayFits(around, fitting)}`,
    changes: insertKey(analysis.spec, part.path, 'code', fitting.code),
    preferred,
  };
}

function addEmpty(analysis: Analysis, part: StackPart): Fix {
  return {
    title: 'Add code, to be filled in',
    changes: insertKey(analysis.spec, part.path, 'code', '$0'),
    snippet: true,
  };
}
