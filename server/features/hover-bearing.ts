import { exchangeNames, nearWords } from '../analysis/exchange/exchange-words.ts';
import type { StackBearing } from '../assembly/bearings.ts';
import { micrometres, plain } from '../engine/base/figures.ts';
import type { DecodedBearing, NotDecoded } from '../engine/bearings/decoded-bearing.ts';
import { alternatives } from '../engine/bearings/interchange.ts';
import { nearSizes } from '../engine/bearings/near-sizes.ts';
import { ringDeviations } from '../engine/bearings/ring-deviations.ts';
import type { SpecPath } from '../spec/place.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { code, escaped, paragraphs, signedWhole, table } from './markdown.ts';
import { startsWith } from './section-at.ts';
import { sourceWords } from './source-words.ts';

/** Everything a bearing's code or size says, as on a drawing. */
export function bearingWords({ analysis }: Snapshot, path: SpecPath): string | null {
  const bearings = analysis.variants.flatMap(({ assembly }) => assembly.bearings);
  const found =
    bearings.find((bearing) => startsWith(path, bearing.from)) ??
    bearings.find(({ part }) => startsWith(path, part.path));
  if (!found) return null;
  const failed = found.failure ? unread(found.failure) : null;
  if (!found.bearing) return failed;
  return paragraphs(failed, failed && 'Its size is taken instead.', decodedWords(found.bearing, found));
}

function unread({ code: written, error, didYouMean }: NotDecoded): string {
  const near = didYouMean.map((other) => `${code(other.code)} (${escaped(other.size)})`);
  return paragraphs(
    `**${escaped(written)}** is not read as a bearing`,
    escaped(error),
    near.length > 0 && `Near it: ${near.join(', ')}.`,
  );
}

/** A decoded bearing as a short table, with sources and notes under it. */
export function decodedWords(bearing: DecodedBearing, placed: StackBearing | null): string {
  const title =
    bearing.basis === 'size' ? `${bearing.bore} × ${bearing.outside} × ${bearing.width}` : bearing.code;
  const house = placed?.houseCode ? `${escaped(placed.houseCode)} in the workshop file: ` : '';
  return paragraphs(
    `${house}**${escaped(title)}**, ${bearing.kind.replaceAll('-', ' ')}${bearing.kind === 'deep-groove' ? ' ball bearing' : ''}`,
    table(rows(bearing)),
    bearing.notes.map((note) => `- ${escaped(note)}`).join('\n'),
    insteadWords(bearing),
    bearing.sources.length > 0 &&
      `*Sources: ${[...new Set(bearing.sources.map(sourceWords))].map(escaped).join('; ')}*`,
  );
}

/** What fits in its place and what only looks like it, in one line each. */
function insteadWords(bearing: DecodedBearing): string {
  const others = alternatives(bearing).map(
    ({ code: other, exchange }) => `${code(other)} ${exchangeNames[exchange]}`,
  );
  const near = nearSizes(bearing)
    .slice(0, 3)
    .map((other) => `${code(other.code)} (${escaped(nearWords(other))})`);
  return [
    ...(others.length > 0 ? [`Fits in its place: ${others.join(', ')}.`] : []),
    ...(near.length > 0 ? [`Looks right and is not: ${near.join(', ')}.`] : []),
  ].join('\n\n');
}

function rows(bearing: DecodedBearing): readonly (readonly [string, string])[] {
  const { bore, outside, width } = bearing;
  const rings = ringDeviations(bearing);
  const ring = (size: number, { lower, upper }: { lower: number; upper: number }): string =>
    `${plain(size)} mm  ${signedWhole(upper * 1000)}/${signedWhole(lower * 1000)} µm`;
  const list: (readonly [string, string])[] = [
    ['bore × outside × width', `${plain(bore)} × ${plain(outside)} × ${plain(width)} mm`],
    ['bore', ring(bore, rings.bore)],
    ['outside', ring(outside, rings.outside)],
    ['ring width', `${ring(width, rings.width)}${otherWidth(bearing)}`],
    ['tolerance class', `${bearing.toleranceClass}, ${sourceWords(rings.source)}`],
  ];
  if (bearing.chamferMin !== null) list.push(['chamfer', `at least ${plain(bearing.chamferMin)} mm`]);
  list.push(['closed by', closureWords(bearing)]);
  list.push(['radial clearance', clearanceWords(bearing)]);
  if (bearing.contactAngle !== null) list.push(['contact angle', `${plain(bearing.contactAngle)}°`]);
  if (bearing.dynamicRating !== null) list.push(['dynamic rating C', newtons(bearing.dynamicRating)]);
  if (bearing.staticRating !== null) list.push(['static rating C0', newtons(bearing.staticRating)]);
  if (bearing.balls) list.push(['balls', `${bearing.balls.count} × ${plain(bearing.balls.diameter)} mm`]);
  if (bearing.fullComplement) list.push(['cage', 'none: full complement']);
  else if (bearing.cage) list.push(['cage', bearing.cage]);
  if (bearing.material !== 'steel')
    list.push(['material', bearing.material === 'unknown' ? 'not told by the code' : bearing.material]);
  if (bearing.standardEquivalent) list.push(['present-day code', bearing.standardEquivalent]);
  return list;
}

function otherWidth({ width, widthOpen, widthClosed }: DecodedBearing): string {
  if (widthOpen === null || widthClosed === null || widthOpen === widthClosed) return '';
  return width === widthOpen
    ? `; ${plain(widthClosed)} mm when closed`
    : `; ${plain(widthOpen)} mm when open`;
}

function closureWords({ closure, closedSides, rubs }: DecodedBearing): string {
  if (closure === 'open') return 'nothing: open on both sides';
  const what = `${closure} on ${closedSides === 2 ? 'both sides' : 'one side'}`;
  if (rubs === null) return `${what}; makers differ on whether it rubs`;
  return `${what}, ${rubs ? 'rubbing' : 'not rubbing'}`;
}

function clearanceWords({ clearance }: DecodedBearing): string {
  const { group, minUm, maxUm } = clearance;
  if (minUm === null || maxUm === null) return `group ${group}, not in the tables`;
  return `group ${group}: ${plain(minUm)} to ${micrometres(maxUm / 1000)}`;
}

/** Three figures, in newtons. */
function newtons(value: number): string {
  return `${Number(value.toPrecision(3))} N`;
}
