import { plain } from '../engine/base/figures.ts';
import type { Assembly } from './assemble.ts';
import type { LinePart } from './line.ts';
import { neighbour, outward } from './section-around.ts';
import { sectionBearing } from './section-bearing.ts';
import { sectionEndCap } from './section-end-cap.ts';
import type { Places } from './section-places.ts';
import { plainPart, type Say, type SectionPart, type Step } from './section-shape.ts';

/** One part of the clamped line as a ring. */
export function sectionPart(part: LinePart, assembly: Assembly, places: Places, say: Say): SectionPart {
  const place = places.at.get(part) ?? { left: 0, right: 0, guessed: true };
  const base = {
    address: part.address,
    kind: part.part.kind,
    path: part.part.path,
    ...span(place),
    broken: place.guessed,
  };
  switch (part.part.kind) {
    case 'bearing': {
      const bearing = sectionBearing(part, place, assembly, say);
      return plainPart({ ...base, steps: [bearing.inner], bearing });
    }
    case 'end-cap':
      return plainPart({ ...base, ...sectionEndCap(part, place, assembly, say) });
    case 'cone':
      return coneSection(part, base, assembly, say);
    default:
      return sleeveSection(part, base, assembly, say);
  }
}

type Base = Pick<SectionPart, 'address' | 'kind' | 'path' | 'left' | 'right' | 'broken'>;

/** Spacers, shims, washers, collars, adjusters, springs and locknuts: tubes of one inside and one outside. */
function sleeveSection(part: LinePart, base: Base, assembly: Assembly, say: Say): SectionPart {
  const { kind, values } = part.part;
  const ofAxle = kind === 'collar' && assembly.hub.axle !== null;
  const around = neighbour(part, assembly);
  const bore = values.inside?.value.nominal ?? values.bore?.value.nominal;
  const outside = values.outside?.value.nominal ?? values.face?.value.nominal;
  const axleBore = assembly.hub.axle?.values.bore?.value.nominal;
  const guessedInside = ofAxle ? (axleBore ?? 0) : around.bore;
  const guessedOutside = kind === 'locknut' ? around.bore + 8 : around.innerOutside;
  if (bore === undefined && !ofAxle)
    say(`inside of ${part.address} is drawn ⌀${plain(guessedInside)}: ${around.boreSource}`);
  if (outside === undefined)
    say(
      `outside of ${part.address} is drawn ⌀${plain(round(guessedOutside))}: ${kind === 'locknut' ? 'a usual wall' : around.outsideSource}`,
    );
  const step: Step = {
    left: base.left,
    right: base.right,
    inside: bore ?? guessedInside,
    outside: outside ?? guessedOutside,
    guessed: { inside: bore === undefined && !ofAxle, outside: outside === undefined },
  };
  return plainPart({ ...base, steps: [step], ofAxle });
}

/** A cone: it widens outwards, and its balls run where it begins to widen. */
function coneSection(part: LinePart, base: Base, assembly: Assembly, say: Say): SectionPart {
  const side = outward(part, assembly);
  const axle = assembly.hub.axle?.values.diameter?.value.nominal ?? 10;
  const written = part.part.values.balls?.value;
  const cup = assembly.hub.shell?.cups.find(({ name }) => name === side)?.values['ball-circle']?.value
    .nominal;
  const diameter = written?.diameter ?? 6;
  const circle = cup ?? axle + 6 + diameter;
  if (!written) say(`balls of ${part.address} are drawn ⌀${plain(diameter)}: none are written`);
  if (cup === undefined) say(`ball circle of ${part.address} is drawn ⌀${plain(circle)}: no cup is written`);
  say(`profile of ${part.address} is drawn from its balls: a cone's own dimensions are not written`);
  const inward = side === 'left' ? 'right' : 'left';
  const inner = side === 'left' ? base.right : base.left;
  // The length of a cone ends at the middle of its ball track.
  const at = inner;
  const steps: readonly Step[] = [
    { left: base.left, right: base.right, inside: axle, outside: circle, guessed: { outside: true } },
  ];
  return plainPart({ ...base, steps, coneBall: { circle, diameter, at, inward } });
}

const span = ({ left, right }: { readonly left: number; readonly right: number }) => ({ left, right });
const round = (value: number): number => Math.round(value * 100) / 100;
