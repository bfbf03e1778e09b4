import type { BearingSection, SectionPart, Step } from '../../assembly/section-shape.ts';
import { hatch } from '../hatch.ts';
import { line, type Point, type Shape } from '../scene.ts';
import type { Sheet } from '../sheet.ts';

/** Rings are hatched alike and closer than the parts around them. */
const ringHatching = { rising: false, spacing: 1.2 } as const;
/** How many points an arc of a groove is drawn with. */
const arcPoints = 12;

/** A rolling bearing: cut rings, the ball uncut, closures as narrow lines; unread, as a frame with a cross (ISO 8826-1). */
export function bearing(part: SectionPart, sheet: Sheet): readonly Shape[] {
  const section = part.bearing;
  if (!section) return [];
  return ([-1, 1] as const).flatMap((half) =>
    section.decoded ? rings(section, sheet, half) : frame(section, sheet, half),
  );
}

function rings(section: BearingSection, sheet: Sheet, half: -1 | 1): readonly Shape[] {
  const { inner, outer, balls } = section;
  const innerArea = ringArea(section, inner, 'inner').map(([along, radius]) =>
    sheet.point(along, radius, half),
  );
  const outerArea = ringArea(section, outer, 'outer').map(([along, radius]) =>
    sheet.point(along, radius, half),
  );
  const corners = [inner, outer].flatMap(({ left, right }) => [left, right]);
  return [
    {
      kind: 'face',
      area: frameArea(Math.min(...corners), Math.max(...corners), inner.inside, outer.outside, sheet, half),
    },
    hatch(innerArea, ringHatching),
    hatch(outerArea, ringHatching),
    line('outline', innerArea, true),
    line('outline', outerArea, true),
    ...balls.rows.flatMap((at): readonly Shape[] => [
      {
        kind: 'circle',
        role: 'outline',
        centre: sheet.point(at, balls.circle / 2, half),
        radius: (balls.diameter / 2) * sheet.scale,
      },
      ...cross(sheet.point(at, balls.circle / 2, half), (balls.diameter / 2) * sheet.scale * 0.4),
    ]),
    ...closures(section, sheet, half),
    ...contactLines(section, sheet, half),
  ];
}

/** Profile of a ring: its chamfers at the seat, its groove at the balls. Place along the axle and radius, mm. */
function ringArea(
  section: BearingSection,
  ring: Step,
  which: 'inner' | 'outer',
): readonly (readonly [number, number])[] {
  const { balls, chamfer, backFace } = section;
  const sign = which === 'inner' ? -1 : 1;
  const [seat, shoulder] =
    which === 'inner' ? [ring.inside / 2, ring.outside / 2] : [ring.outside / 2, ring.inside / 2];
  const cut = Math.min(chamfer, (ring.right - ring.left) / 4, Math.abs(seat - shoulder) / 2);
  const race = balls.diameter / 2;
  const grooves = balls.rows.flatMap((at): readonly (readonly [number, number])[] => {
    const rise = Math.abs(balls.circle / 2 - shoulder);
    if (race <= rise) return [];
    const wide = Math.min(
      Math.sqrt(race * race - rise * rise),
      (ring.right - ring.left) / (2 * balls.rows.length) - 0.05,
    );
    return Array.from({ length: arcPoints + 1 }, (_, n) => {
      const off = -wide + (2 * wide * n) / arcPoints;
      return [at + off, balls.circle / 2 + sign * Math.sqrt(race * race - off * off)] as const;
    });
  });
  // An angular contact bearing carries on the back face's shoulder of its outer ring; the other is relieved.
  const relief = which === 'outer' && backFace ? Math.abs(seat - shoulder) * 0.35 : 0;
  const shoulderAt = (side: 'left' | 'right'): number => shoulder + (backFace !== side ? sign * relief : 0);
  const profile: (readonly [number, number])[] = [
    [ring.left, shoulderAt('left')],
    ...grooves.filter(([, radius]) => relief === 0 || sign * (radius - shoulder) >= 0),
    [ring.right, shoulderAt('right')],
    [ring.right, seat - sign * cut],
    [ring.right - cut, seat],
    [ring.left + cut, seat],
    [ring.left, seat - sign * cut],
  ];
  return profile;
}

/** A seal or shield a little inside the faces. */
function closures(
  { inner, outer, closed, decoded }: BearingSection,
  sheet: Sheet,
  half: -1 | 1,
): readonly Shape[] {
  const set = Math.min(0.35, (outer.right - outer.left) * 0.08);
  const [from, to] = [inner.outside / 2, outer.inside / 2];
  // A lip that rubs reaches the inner ring; a shield stands off it.
  const foot = decoded?.rubs === false ? from + (to - from) * 0.12 : from;
  const places = [...(closed.left ? [outer.left + set] : []), ...(closed.right ? [outer.right - set] : [])];
  return places.map((at) => line('thin', [sheet.point(at, foot, half), sheet.point(at, to, half)]));
}

function contactLines(
  { balls, backFace, contactAngle }: BearingSection,
  sheet: Sheet,
  half: -1 | 1,
): readonly Shape[] {
  if (!contactAngle || balls.rows.length === 0) return [];
  return balls.rows.map((at, row) => {
    const towardsBack = balls.rows.length === 2 ? (row === 0 ? -1 : 1) : backFace === 'left' ? -1 : 1;
    const reach = balls.diameter * 0.8;
    const [along, across] = [Math.sin(contactAngle) * reach * towardsBack, Math.cos(contactAngle) * reach];
    return line('centre', [
      sheet.point(at + along, balls.circle / 2 + across, half),
      sheet.point(at - along, balls.circle / 2 - across, half),
    ]);
  });
}

/** What is drawn of a bearing that could not be read. */
function frame(section: BearingSection, sheet: Sheet, half: -1 | 1): readonly Shape[] {
  const { inner, outer } = section;
  const area = frameArea(inner.left, inner.right, inner.inside, outer.outside, sheet, half);
  const centre = sheet.point((inner.left + inner.right) / 2, (inner.inside + outer.outside) / 4, half);
  const arm = Math.min(inner.right - inner.left, (outer.outside - inner.inside) / 2) * 0.3 * sheet.scale;
  return [{ kind: 'face', area }, line('assumed', area, true), ...cross(centre, arm)];
}

function frameArea(
  left: number,
  right: number,
  inside: number,
  outside: number,
  sheet: Sheet,
  half: -1 | 1,
): readonly Point[] {
  return [
    sheet.point(left, outside / 2, half),
    sheet.point(right, outside / 2, half),
    sheet.point(right, inside / 2, half),
    sheet.point(left, inside / 2, half),
  ];
}

function cross({ x, y }: Point, arm: number): readonly Shape[] {
  return [
    line('thin', [
      { x: x - arm, y },
      { x: x + arm, y },
    ]),
    line('thin', [
      { x, y: y - arm },
      { x, y: y + arm },
    ]),
  ];
}
