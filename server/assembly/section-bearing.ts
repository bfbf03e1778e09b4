import { plain } from '../engine/base/figures.ts';
import type { Side } from '../spec/model.ts';
import type { Assembly } from './assemble.ts';
import type { LinePart } from './line.ts';
import type { BearingSection, Say } from './section-shape.ts';

/** Ball diameter as a share of the section height (D − d)/2, where nobody prints or writes the balls. */
const usualBall = 0.6;

/** The rings, balls and closures of a bearing standing at `place`; an unread one is drawn after its neighbour. */
export function sectionBearing(
  part: LinePart,
  place: { readonly left: number; readonly right: number },
  assembly: Assembly,
  say: Say,
): BearingSection {
  const read = part.bearing?.bearing ? part.bearing : null;
  const other = read ?? assembly.bearings.find(({ bearing }) => bearing);
  const bore = other?.bore?.drawn.nominal ?? 17;
  const outside = other?.outside?.drawn.nominal ?? 30;
  if (!read) {
    const like = other ? `like ${other.address}` : `${plain(bore)} × ${plain(outside)}`;
    say(`${part.address} is drawn ${like}: neither code nor size could be read`);
  }
  const decoded = read?.bearing ?? null;
  const innerOutside = read?.innerOutside ?? {
    value: other?.innerOutside?.value ?? (1.05 * (4 * bore + outside)) / 5,
    estimated: true,
  };
  const outerInside = other?.outerInside ?? (0.95 * (bore + 4 * outside)) / 5;
  if (innerOutside.estimated) {
    say('shoulders of bearing rings are estimated from their section, where inner-outside is not written');
  }
  const width = place.right - place.left;
  const outerWidth = read?.outerWidth?.drawn.nominal ?? width;
  const outer = outerPlace(part, place, outerWidth, assembly);
  const written = part.part.values.balls?.value ?? decoded?.balls ?? null;
  const rows = decoded?.kind === 'double-row-angular-contact' ? 2 : 1;
  const largest = ((rows === 2 ? 0.42 : 0.8) * outerWidth * 1) / 1;
  const diameter = written?.diameter ?? Math.min((usualBall * (outside - bore)) / 2, largest);
  if (!written)
    say(`balls of ${part.address} are drawn ⌀${diameter.toFixed(1)}, estimated from the section height`);
  const middle = (outer.left + outer.right) / 2;
  const backFace =
    decoded && decoded.kind !== 'deep-groove' ? (part.part.values['back-face']?.value ?? null) : null;
  return {
    decoded,
    inner: {
      ...place,
      inside: bore,
      outside: innerOutside.value,
      guessed: { outside: innerOutside.estimated },
    },
    outer: { ...outer, inside: outerInside, outside, guessed: { inside: true } },
    balls: {
      circle: (bore + outside) / 2,
      diameter,
      rows: rows === 2 ? [middle - outerWidth / 4, middle + outerWidth / 4] : [middle],
    },
    chamfer: decoded?.chamferMin ?? 0.3,
    closed: closedSides(decoded?.closedSides ?? 0, backFace),
    backFace,
    contactAngle: decoded?.contactAngle ? (decoded.contactAngle * Math.PI) / 180 : null,
  };
}

/** The outer ring stands flush with the inner on the side of its stop, else centred on it. */
function outerPlace(
  part: LinePart,
  place: { readonly left: number; readonly right: number },
  width: number,
  assembly: Assembly,
): { readonly left: number; readonly right: number } {
  const seat = [assembly.shell, assembly.freehub]
    .flatMap((housing) => housing?.seats ?? [])
    .find(({ bearings }) => bearings.includes(part));
  if (seat?.contact === part) {
    return seat.stopSide === 'right'
      ? { left: place.right - width, right: place.right }
      : { left: place.left, right: place.left + width };
  }
  const middle = (place.left + place.right) / 2;
  return { left: middle - width / 2, right: middle + width / 2 };
}

/** One closed side is drawn on the side of the back face, else on the left. */
function closedSides(
  count: number,
  backFace: Side | null,
): { readonly left: boolean; readonly right: boolean } {
  if (count === 2) return { left: true, right: true };
  if (count === 0) return { left: false, right: false };
  return { left: backFace !== 'right', right: backFace === 'right' };
}
