import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { setValue, swapItems } from '../../spec/edit.ts';
import type { StackPart } from '../../spec/model.ts';
import type { Fix } from '../../spec/problem.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';

/** A part stands where it cannot be: outside the end caps, or left and right in the wrong order. */
export const partOutOfOrder: Check = {
  code: 'part-out-of-order',
  group: 'stack',
  severity: 'error',
  summary: 'A part of the stack stands where it cannot be.',
  page: {
    why: 'The stack is written as it lies on the axle, from the non-drive side to the drive side. The dropouts bear on the outermost parts, so nothing stands outside the end caps, a part called left lies left of its twin called right, and the bearing in the left seat of a housing left of the one in its right seat. Everything else, from the clamped width to the order of work, reads that order.',
    bad: pageHub(
      [
        'bearing: left\n    code: 6803-2RS\n    seat: shell.left',
        'bearing: right\n    code: 6803-2RS\n    seat: shell.right',
      ],
      ['spacer: centre', 'spacer: middle'],
      [
        'bearing: right\n    code: 6803-2RS\n    seat: shell.right\n  - end-cap',
        'bearing: left\n    code: 6803-2RS\n    seat: shell.left\n  - end-cap',
      ],
    ),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => outOfOrder(analysis, variant)),
};

function* outOfOrder(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { stack } = variant.assembly.hub;
  for (const part of stack.filter(({ name }) => name === 'right')) {
    const twin = stack.find((other) => other.kind === part.kind && other.name === 'left');
    if (part.kind === 'end-cap' || !twin || stack.indexOf(part) > stack.indexOf(twin)) continue;
    yield {
      path: [...part.path, part.kind],
      message: `${part.address} stands left of ${twin.address}: the stack runs from left to right — swap the two`,
      related: [{ path: [...twin.path, twin.kind], message: `${twin.address} stands here` }],
      data: { part: part.address, twin: twin.address },
      fixes: swap(analysis, part, twin),
    };
  }
  yield* outsideTheCaps(analysis, stack);
  yield* seatsCrossed(analysis, variant);
}

/** The left bearing of a housing names its right seat, and the other way round. */
function* seatsCrossed(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { shell, freehub, line } = variant.assembly;
  for (const housing of [shell, freehub]) {
    const [left, right] = ['left', 'right'].map((side) =>
      housing?.seats.find(({ seat }) => seat.name === side),
    );
    const [inLeft, inRight] = [left?.bearings[0], right?.bearings.at(-1)];
    if (!left || !right || !inLeft || !inRight || line.indexOf(inLeft) < line.indexOf(inRight)) continue;
    // Parts that are written in the wrong order as well are swapped whole, which takes their seats along.
    if (inLeft.part.name === 'left' && inRight.part.name === 'right') continue;
    const [one, other] = [inRight.part.values.seat, inLeft.part.values.seat];
    if (!one || !other) continue;
    const changes = [
      ...setValue(analysis.spec, one.path, left.address),
      ...setValue(analysis.spec, other.path, right.address),
    ];
    yield {
      path: one.path,
      message: `${inRight.address} names seat ${right.address} and stands left of ${inLeft.address}, which names ${left.address}: the stack runs from left to right — swap the two seats`,
      related: [{ path: other.path, message: `${inLeft.address} names ${left.address}` }],
      data: { part: inRight.address, twin: inLeft.address },
      fixes: [{ title: `Swap the seats ${left.address} and ${right.address}`, changes, preferred: true }],
    };
  }
}

function* outsideTheCaps(analysis: Analysis, stack: readonly StackPart[]): Iterable<Draft> {
  const caps = stack.filter(({ kind }) => kind === 'end-cap');
  const [first, last] = [caps[0], caps.at(-1)];
  if (!first || !last || first === last) return;
  const from = stack.indexOf(first);
  const to = stack.indexOf(last);
  for (const part of [...stack.slice(0, from), ...stack.slice(to + 1)]) {
    const cap = stack.indexOf(part) < from ? first : last;
    yield {
      path: [...part.path, part.kind],
      message: `${part.address} stands outside ${cap.address}: the dropout bears on the end cap — swap the two`,
      related: [{ path: [...cap.path, cap.kind], message: `${cap.address} stands here` }],
      data: { part: part.address, cap: cap.address },
      fixes: swap(analysis, part, cap),
    };
  }
}

function swap(analysis: Analysis, part: StackPart, other: StackPart): readonly Fix[] {
  const changes = swapItems(analysis.spec, part.path, other.path);
  if (changes.length === 0) return [];
  return [{ title: `Swap ${part.address} and ${other.address} in the stack`, changes, preferred: true }];
}
