import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { LinePart } from '../../assembly/line.ts';
import { plain } from '../../engine/base/figures.ts';
import { setValue, swapItems } from '../../spec/edit.ts';
import type { Fix } from '../../spec/problem.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { swappedFaces } from './swapped-faces.ts';

/** Left and right end cap stand in each other's place. */
export const endCapsSwapped: Check = {
  code: 'end-caps-swapped',
  group: 'end-cap',
  severity: 'error',
  summary: 'Left and right end cap are swapped.',
  page: {
    why: 'A rear hub, or a front hub with a rotor, has two different end caps. Swapped, the faces bear on the wrong rings and the shell sits off to one side by the difference of their lengths.',
    bad: pageHub(
      ['end-cap: left', 'end-cap: xxx'],
      ['end-cap: right', 'end-cap: left'],
      ['end-cap: xxx', 'end-cap: right'],
    ),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => swapped(analysis, variant)),
};

function* swapped(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { stack } = variant.assembly.hub;
  const left = stack.find(({ address }) => address === 'end-cap.left');
  const right = stack.find(({ address }) => address === 'end-cap.right');
  if (left && right && stack.indexOf(right) < stack.indexOf(left)) {
    const changes = swapItems(analysis.spec, right.path, left.path);
    yield {
      path: [...right.path, 'end-cap'],
      message:
        'end-cap.right is the leftmost of the two: the stack runs from left to right — swap the two end caps',
      related: [{ path: [...left.path, 'end-cap'], message: 'end-cap.left stands here' }],
      data: { by: 'order' },
      fixes:
        changes.length > 0 ? [{ title: 'Swap the two end caps in the stack', changes, preferred: true }] : [],
    };
    return;
  }
  const pair = swappedFaces(variant, analysis.limits.value('seal-gap'));
  const [a, b] = [pair?.[0].part.values.face, pair?.[1].part.values.face];
  if (!pair || !a || !b) return;
  yield {
    path: a.path,
    message: `face of ${pair[0].address} is ${plain(a.value.nominal)} and of ${pair[1].address} ${plain(b.value.nominal)}: each suits the bearing of the other end — swap the end caps`,
    related: [{ path: b.path, message: `${plain(b.value.nominal)} here` }],
    data: { by: 'face', left: a.value.nominal, right: b.value.nominal },
    fixes: swapFixes(analysis, pair),
  };
}

/** Everything the two caps are, where they are drawn with the same keys; and the faces alone. */
function swapFixes(analysis: Analysis, [left, right]: readonly [LinePart, LinePart]): readonly Fix[] {
  const [a, b] = [left.part.values, right.part.values];
  const same = dimensions.every((key) => (a[key] === undefined) === (b[key] === undefined));
  const differing = dimensions.filter((key) => a[key]?.value.written !== b[key]?.value.written);
  const swap = (keys: readonly (typeof dimensions)[number][]): Fix['changes'] =>
    keys.flatMap((key) => {
      const [one, other] = [a[key], b[key]];
      if (!one || !other) return [];
      return [
        ...setValue(analysis.spec, one.path, other.value.written),
        ...setValue(analysis.spec, other.path, one.value.written),
      ];
    });
  const faces: Fix = {
    title: `Swap the faces: ${left.address} ${b.face?.value.written}, ${right.address} ${a.face?.value.written}`,
    changes: swap(['face']),
    preferred: true,
  };
  if (!same || differing.length < 2) return [faces];
  const whole: Fix = {
    title: `Swap the two end caps: ${differing.join(', ')} of each become those of the other`,
    changes: swap(differing),
    preferred: true,
  };
  return [whole, { ...faces, preferred: false }];
}

const dimensions = ['length', 'face', 'outside', 'bore', 'spigot', 'socket', 'nose'] as const;
