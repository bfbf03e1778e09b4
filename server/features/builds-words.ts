import { buildsInBrief } from '../analysis/mechanics/builds-in-brief.ts';
import { isChosen } from '../analysis/mechanics/drawing-allocation.ts';
import type { PairMechanics } from '../analysis/mechanics/pair-mechanics.ts';
import { varyingPair } from '../analysis/mechanics/pair-statistics.ts';
import { bestLength, withNewSpacer } from '../analysis/mechanics/spacer-answer.ts';
import type { LoopTerm } from '../assembly/loop.ts';
import { micrometres, plain, share } from '../engine/base/figures.ts';
import { allocateYield } from '../engine/play/allocate-yield.ts';
import type { WantedShare } from '../engine/play/best-yield.ts';

/** What becomes of many builds of a pair as it is written: `93 % of builds right, 5.3 % loaded, …`. */
export function buildsWords(pair: PairMechanics, { mostPlay }: WantedShare): readonly string[] {
  const builds = buildsInBrief(pair, 'built', mostPlay);
  const most = builds.contributions
    .slice(0, 2)
    .map(({ address, share: part }) => `${address} ${share(part)}`)
    .join(', ');
  const loose = builds.loose > 0 ? `, an outer ring loose in ${share(builds.loose)}` : '';
  return [
    `${share(builds.yield)} of builds right: ${share(builds.loaded)} loaded, ${share(builds.playHigh)} with more than ${micrometres(mostPlay)} of play${loose}`,
    ...(most === '' ? [] : [`play strays most by ${most}`]),
    `were both bearings alike, as two of one batch may be, ${share(builds.alike.yield)} right`,
  ];
}

/** What to write for a spacer, and how wide the tolerances of the drawing may be. */
export function adviceWords(pair: PairMechanics, item: LoopTerm, wanted: WantedShare): readonly string[] {
  const varying = varyingPair(withNewSpacer(pair, item, 'built'), 'built');
  const { to, shares, range } = bestLength(varying, item, wanted);
  const same = to === item.settled.drawn.nominal;
  const best = same
    ? `no other length gives more builds right`
    : `best is ${plain(to)}: ${share(shares.yield)} right`;
  // Parts that are measured exist: their tolerances are no longer a question.
  if (pair.loop.terms.some(({ settled }) => settled.built !== null)) return [best];
  const { ceiling, proposals } = allocateYield(varying, isChosen, wanted, ['proportional']);
  const said = (value: number): string => `${plain(value * 100)} %`;
  const [proposal] = proposals;
  if (!proposal) {
    const most = `with every length and diameter exact ${share(ceiling)} would be: the clearance of the bearings as bought takes the rest`;
    return [range ? best : `${best}; ${said(wanted.share)} are not to be had by length`, most];
  }
  const widths = proposal.tolerances.map(({ id, to: half }) => `${id} ±${plain(half)}`).join(', ');
  return [best, `for ${said(wanted.share)} right the tolerances may be ${widths}`];
}
