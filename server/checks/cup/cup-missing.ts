import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { insertKey } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { conesOf } from './cones-of.ts';
import { pageConeHub } from './page-cone-hub.ts';

/** A cone on a side where the shell has no cup, while the other side has one. */
export const cupMissing: Check = {
  code: 'cup-missing',
  group: 'cup',
  severity: 'warning',
  summary: 'A cone has no cup on its side of the shell, and the other side has one.',
  page: {
    why: 'The ball circle of the cup says how many balls go in and at what angle they carry. Without it nothing on that side can be worked out: neither the balls nor the load the clamp puts on them.',
    bad: pageConeHub(['    right: { ball-circle: 17.4, contact-angle: 45 }\n', '']),
    good: pageConeHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => missing(analysis, variant)),
};

function* missing(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const cups = variant.assembly.hub.shell?.cups ?? [];
  for (const { side, cup, part } of conesOf(analysis, variant)?.cones ?? []) {
    const other = cups.find(({ name }) => name !== side);
    if (cup || !other) continue;
    const { start, end } = analysis.spec.span(other.path);
    const text = analysis.spec.text.slice(start, end);
    // A cup written over several lines is not copied: its indentation is its own.
    const changes = text.startsWith('{')
      ? insertKey(analysis.spec, other.path.slice(0, -1), side, text, { after: other.name })
      : [];
    yield {
      path: part.part.path,
      part: 'key',
      message: `${part.address} has no ${side} cup in the shell, the ${other.name} one is written — add cups.${side} with its ball-circle`,
      related: [{ path: other.path, message: `the ${other.name} cup` }],
      data: { side },
      fixes:
        changes.length > 0
          ? [{ title: `Add cups.${side}: the same as ${other.name}`, changes, preferred: true }]
          : [],
    };
  }
}
