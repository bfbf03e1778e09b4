import type { VariantAnalysis } from '../analysis/analyze.ts';
import { lifeOf } from '../analysis/life/life-of.ts';
import { sayKilometres } from '../analysis/life/say-kilometres.ts';
import { compoundInBrief } from '../analysis/mechanics/compound-hold.ts';
import { geometryRange } from '../analysis/mechanics/geometry-range.ts';
import type { Mechanics } from '../analysis/mechanics/mechanics-of.ts';
import type { MountedBearing } from '../analysis/mechanics/mounted-bearing.ts';
import { isCounted, isWorked, type PairMechanics } from '../analysis/mechanics/pair-mechanics.ts';
import { pairRange } from '../analysis/mechanics/pair-range.ts';
import { endsInBrief, rangeInBrief } from '../analysis/mechanics/range-in-brief.ts';
import { spacerOf } from '../analysis/mechanics/spacer-of.ts';
import type { PairLoop } from '../assembly/loop.ts';
import { force, micrometres } from '../engine/base/figures.ts';
import type { WantedShare } from '../engine/play/best-yield.ts';
import type { SpecPath } from '../spec/place.ts';
import type { Workshop } from '../spec/workshop-model.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { adviceWords, buildsWords } from './builds-words.ts';
import { coneWords } from './cone-words.ts';
import { escaped } from './markdown.ts';
import {
  lineWords,
  lossWords,
  mountedWords,
  playWords,
  ringFitWords,
  shorteningWords,
} from './mechanics-words.ts';
import { samePath } from './section-at.ts';

/** Variants looked at for one value: more would not be read, and each takes a millisecond. */
const mostVariants = 4;

/** What fits, clamp and play make of the value at a path, as far as it is a part of them; at 20 °C. */
export function mechanicsWords({ analysis }: Snapshot, path: SpecPath): readonly string[] {
  const said = new Set<string>();
  const wanted = {
    mostPlay: analysis.limits.value('play-clamped'),
    share: 1 - analysis.limits.value('share-outside'),
  };
  const concerned = analysis.variants.filter((one) => matters(one, path)).slice(0, mostVariants);
  for (const variant of concerned) {
    // As built falls back to the drawing where nothing was measured.
    const mechanics = variant.mechanics('built');
    const words = [
      ...mechanics.bearings.flatMap((bearing) => [
        ...bearingParagraphs(bearing, variant, path),
        ...(samePath(path, bearing.stack.from) ? lifeWords(variant, analysis.workshop, bearing.address) : []),
      ]),
      ...playParagraphs(variant, mechanics, path, wanted, variant === concerned[0]),
      ...clampParagraphs(mechanics, path),
      ...coneWords(mechanics, path, wanted.mostPlay),
    ];
    const fresh = words.filter((text) => !said.has(text));
    if (variant.name !== null && fresh.length > 0) said.add(`variant ${escaped(variant.name)}:`);
    for (const text of fresh) said.add(text);
  }
  return [...said];
}

/** Whether mechanics have anything to do with a value; told without working them out. */
function matters({ assembly, pairs }: VariantAnalysis, path: SpecPath): boolean {
  const { hub, bearings } = assembly;
  const paths = [
    ...bearings.flatMap(({ from, part, address }) => [
      from,
      part.values.journal?.path,
      seatBore(assembly, address),
    ]),
    ...pairs.flatMap(({ loop }) => [...loop.terms.map((item) => item.path), settingPath(loop)]),
    hub.axle?.values.diameter?.path,
    ...hub.stack.flatMap(({ values: { balls, set, thread } }) => [balls?.path, set?.path, thread?.path]),
    ...(hub.shell?.cups ?? []).map(({ values }) => values['ball-circle']?.path),
  ];
  return path.includes('clamp') || paths.some((other) => other && samePath(other, path));
}

/** How far the bearing would go by fatigue alone. */
function lifeWords(variant: VariantAnalysis, workshop: Workshop | null, address: string): readonly string[] {
  const life = lifeOf(variant, workshop, { how: 'built', rider: null });
  const own = life.bearings.find((bearing) => bearing.address === address);
  if (!own) return [];
  return [
    escaped(
      `for comparison: ${force(own.equivalent)} of mean load, nine in ten reach ${sayKilometres(own.kilometres)} by fatigue alone`,
    ),
  ];
}

function bearingParagraphs(
  bearing: MountedBearing,
  variant: VariantAnalysis,
  path: SpecPath,
): readonly string[] {
  const { stack, outerFit, innerFit, address, compound } = bearing;
  if (samePath(path, stack.from)) return mountedParagraphs(bearing);
  const bore = seatBore(variant.assembly, address);
  if (outerFit && bore && samePath(path, bore))
    return [
      escaped(ringFitWords(outerFit, `outside of ${address}`)),
      ...(compound ? [escaped(`held with ${compoundInBrief(compound)}`)] : []),
    ];
  const journal = stack.part.values.journal ?? variant.assembly.hub.axle?.values.diameter;
  if (innerFit && journal && samePath(path, journal.path))
    return [escaped(ringFitWords(innerFit, `bore of ${address}`))];
  return [];
}

function mountedParagraphs(bearing: MountedBearing): readonly string[] {
  const mounted = mountedWords(bearing);
  if (mounted === null) return [];
  const { axial, address, assumed, contactAngle } = bearing;
  const ends = geometryRange(bearing)?.axial;
  const open = ends ? `, ${endsInBrief(ends)} as its grooves are estimated` : '';
  const along = axial === null ? '' : `; ${micrometres(axial)} along the axle${open}`;
  return [
    `**${contactAngle ? 'contact angle' : 'mounted clearance'}** of ${escaped(address)}: ${mounted}${along}`,
    escaped(lossWords(bearing) ?? ''),
    ...assumptions(assumed),
  ];
}

function seatBore(assembly: VariantAnalysis['assembly'], address: string): SpecPath | null {
  const seats = [assembly.shell, assembly.freehub].flatMap((housing) => housing?.seats ?? []);
  const seat = seats.find(({ bearings }) => bearings.some((bearing) => bearing.address === address));
  return seat?.seat.values.bore?.path ?? null;
}

/** The lengths between two bearings set their play; the spacer is where something can be done about it. */
function playParagraphs(
  variant: VariantAnalysis,
  { pairs, clamp, lines }: Mechanics,
  path: SpecPath,
  wanted: WantedShare,
  isFirst: boolean,
): readonly string[] {
  return worked(pairs).flatMap((pair) => {
    const lengths = pair.loop.terms.filter(({ key }) => key !== 'code' && key !== 'size');
    const places = [...lengths.map((item) => item.path), settingPath(pair.loop)];
    if (!places.some((place) => place && samePath(place, path))) return [];
    const name = `**play** of ${escaped(pair.loop.bearings.join(' and '))}`;
    const range = pairRange(pair);
    const line = lines.find(({ housing }) => housing === pair.loop.housing);
    const together = line ? [escaped(lineWords(line, clamp))] : [];
    const spacer = spacerOf(variant, pair);
    // Angular-contact bearings are set with a load: no play is no fault of theirs.
    const free = pair.input.left.carries === 'both' && pair.input.right.carries === 'both';
    const many = clamp && free && isCounted(pair) ? buildsWords(pair, wanted) : [];
    // Advice takes a tenth of a second: one variant is enough to hold the mouse over.
    const advice =
      isFirst && clamp && free && spacer && samePath(spacer.path, path)
        ? adviceWords(pair, spacer, wanted)
        : [];
    return [
      `${name}: ${escaped(playWords(pair, clamp))}`,
      ...together,
      ...(range ? [escaped(rangeInBrief(range, clamp))] : []),
      ...[many, advice].filter((words) => words.length > 0).map((words) => escaped(words.join('; '))),
      ...assumptions(pair.assumed),
    ];
  });
}

function clampParagraphs({ pairs, clamp }: Mechanics, path: SpecPath): readonly string[] {
  if (!clamp || !samePath(clamp.path, path)) return [];
  return [
    `**clamp** ${force(clamp.force)}`,
    ...worked(pairs).flatMap((pair) => [
      escaped(shorteningWords(pair)),
      `play of ${escaped(pair.loop.bearings.join(' and '))}: ${escaped(playWords(pair, clamp))}`,
    ]),
    ...assumptions(clamp.assumed),
  ];
}

/** Where a part that is set by hand says its setting, or a spring its height. */
function settingPath({ setBy }: PairLoop): SpecPath | null {
  const { set, length } = setBy?.part.values ?? {};
  return (setBy?.kind === 'adjuster' ? set : length)?.path ?? null;
}

const worked = (pairs: Mechanics['pairs']): readonly PairMechanics[] => pairs.filter(isWorked);

function assumptions(assumed: readonly string[]): readonly string[] {
  return assumed.length === 0 ? [] : [`*${escaped(assumed.join('; '))}*`];
}
