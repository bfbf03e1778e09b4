import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, millimetres, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { loopData, relatedTerms } from '../loop-talk.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';

/** The end caps bottom on the axle before they clamp the bearings. */
export const endCapBottoms: Check = {
  code: 'end-cap-bottoms',
  group: 'end-cap',
  severity: 'error',
  summary: 'The end caps bottom on the axle before they clamp the stack.',
  page: {
    why: 'A cap with a socket slides over the end of the axle until its face meets the inner ring. When the axle reaches the bottom of the socket first, the clamp squeezes cap and axle, and the bearings stay loose however hard it is tightened.',
    bad: pageHub(
      ['length: 80 ±0.1', 'length: 83 ±0.1'],
      ['    face: 19.4', '    face: 19.4\n    socket: 5'],
      ['right\n    length: 14.03 ±0.02', 'right\n    socket: 5\n    length: 14.03 ±0.02'],
    ),
    good: pageHub(
      ['    face: 19.4', '    face: 19.4\n    socket: 5'],
      ['right\n    length: 14.03 ±0.02', 'right\n    socket: 5\n    length: 14.03 ±0.02'],
    ),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => bottoms(analysis, variant)),
};

function* bottoms(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const reserve = analysis.limits.value('axle-reserve');
  const axle = variant.assembly.hub.axle?.values.length;
  for (const gap of variant.gaps) {
    const result = gap.built ?? gap.drawn;
    if (gap.loop.role !== 'axle-end' || !result || !axle || reserve <= result.rss[0]) continue;
    const shorter = Math.floor((axle.value.nominal - (reserve - result.rss[0])) * 10) / 10;
    yield {
      path: axle.path,
      severity: result.mean <= 0 ? 'error' : 'warning',
      message: `room between the axle and the bottoms of the end caps is ${millimetres(result.mean)} on average, wanted at least ${plain(reserve)} in every build: ${result.mean <= 0 ? 'the caps bottom before they clamp' : 'some builds bottom before they clamp'} — shorten the axle by ${length(axle.value.nominal - shorter)} to ${length(shorter)}`,
      related: relatedTerms(gap.loop, result, gap.built ? 'built' : 'drawn'),
      data: loopData(gap.loop, result),
      fixes: axle.value.measured
        ? []
        : [
            rewriteFix(analysis, axle, shorter, {
              name: 'length of the axle',
              result: `${millimetres(result.mean + axle.value.nominal - shorter)} of room on average`,
            }),
          ],
    };
  }
}
