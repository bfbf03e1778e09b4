import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { axleSuitsBearings } from '../journal-of.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';

/** A spacer does not go over the axle it stands on, or hangs on it off centre. */
export const spacerOffAxle: Check = {
  code: 'spacer-off-axle',
  group: 'stack',
  severity: 'error',
  summary: 'A spacer does not fit over its axle.',
  page: {
    why: 'The spacer slides over the axle. With a bore below the axle it cannot be fitted at all; with far too much room it sags, its face hangs over the edge of the inner ring, and the drift does not find the ring again at the next service.',
    bad: pageHub(['inside: 17.1', 'inside: 16.1']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => offAxle(analysis, variant)),
};

/** Bore over the axle that a fix gives, mm: slides on freely, stays centred. */
const slidingRoom = 0.1;

function* offAxle(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const axle = variant.assembly.hub.axle?.values.diameter;
  // An axle that does not suit its bearings is the fault then, and said there.
  if (!axle || !axleSuitsBearings(variant)) return;
  const most = analysis.limits.value('spacer-clearance');
  for (const { part, address } of variant.assembly.line) {
    const { inside } = part.values;
    if (!inside || !['spacer', 'shim', 'washer'].includes(part.kind)) continue;
    const room = inside.value.nominal - axle.value.nominal;
    if (0 < room && room <= most) continue;
    const name = `inside of ${address}`;
    const target = axle.value.nominal + slidingRoom;
    const tooSmall = room <= 0;
    yield {
      path: inside.path,
      severity: tooSmall ? 'error' : 'information',
      message: tooSmall
        ? `${name} is ${plain(inside.value.nominal)}, the axle ${plain(axle.value.nominal)}: ${length(-room)} mm too small to slide on — open it to ${plain(target)}`
        : `${name} is ${plain(inside.value.nominal)}, the axle ${plain(axle.value.nominal)}: ${length(room)} mm of room, ${plain(most)} at most keeps it centred — close it to ${plain(target)}`,
      related: [{ path: axle.path, message: `axle ${plain(axle.value.nominal)} here` }],
      data: { inside: inside.value.nominal, axle: axle.value.nominal, room },
      fixes: [
        rewriteFix(analysis, inside, target, {
          name,
          result: `${length(slidingRoom)} mm of room on the axle`,
        }),
      ],
    };
  }
}
