import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { plain } from '../../engine/base/figures.ts';
import { setValue } from '../../spec/edit.ts';
import type { Fix } from '../../spec/problem.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { type Filled, filledCones } from './cones-of.ts';
import { pageConeHub } from './page-cone-hub.ts';

/** Two like cups with unlike balls. */
export const ballsDiffer: Check = {
  code: 'balls-differ',
  group: 'cup',
  severity: 'information',
  summary: 'Both cups have the same ball circle, and the balls in them differ.',
  page: {
    why: 'Two cups with one ball circle are made for one set of balls. A count or a size that differs is usually a slip of the pen, or a ball that was lost.',
    bad: pageConeHub(['10 × 3/16', '11 × 3/16']),
    good: pageConeHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => differ(analysis, variant)),
};

/** Circles nearer than this are one circle, mm. */
const sameCircle = 0.05;

function* differ(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const [left, right] = filledCones(analysis, variant);
  if (!left || !right) return;
  // A count that does not go with its own circle is said there.
  const isRight = ({ balls }: Filled) => balls.usual <= balls.count && balls.count <= balls.most;
  if (!isRight(left) || !isRight(right) || sameCircle < Math.abs(left.balls.circle - right.balls.circle))
    return;
  const [a, b] = [left.balls, right.balls];
  if (a.count === b.count && Math.abs(a.diameter - b.diameter) < 0.001) return;
  // The row that is one ball short of full is the usual one, and the other the likelier slip.
  const [odd, sound] = b.count === b.usual && a.count !== a.usual ? [left, right] : [right, left];
  yield {
    path: odd.balls.path,
    message: `balls of ${odd.part.address} are ${said(odd)}, of ${sound.part.address} ${said(sound)}, on circles of ${plain(odd.balls.circle)} and ${plain(sound.balls.circle)} mm — make them the same if the cups are alike`,
    related: [{ path: sound.balls.path, message: `${said(sound)} here` }],
    data: {
      left: { count: a.count, diameter: a.diameter },
      right: { count: b.count, diameter: b.diameter },
      circles: [a.circle, b.circle],
    },
    fixes: [copyFix(analysis, odd, sound), copyFix(analysis, sound, odd)],
  };
}

const said = ({ balls }: Filled): string => `${balls.count} × ${plain(balls.diameter)}`;

function copyFix(analysis: Analysis, to: Filled, from: Filled): Fix {
  const { start, end } = analysis.spec.span(from.balls.path);
  const text = analysis.spec.text.slice(start, end).replace(/^["']|["']$/g, '');
  return {
    title: `Change balls of ${to.part.address} to ${text}: the same as ${from.part.address}`,
    changes: setValue(analysis.spec, to.balls.path, text),
    preferred: false,
  };
}
