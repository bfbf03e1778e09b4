import { plain } from '../engine/base/figures.ts';
import { flangePlaces } from './flange-places.ts';
import type { HousingContext } from './section-housing.ts';
import type { SpokeHole, Step } from './section-shape.ts';

/** A flange cut through one of its spoke holes. */
export interface FlangeRings {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** Diameter up to which it is one with the shell: the inner edge of its holes. */
  readonly foot: number;
  /** What stands outside of the holes; null for straight-pull flanges, drawn to their head circle. */
  readonly rim: Step | null;
  readonly spokeHole: SpokeHole | null;
}

/** The flanges of a shell. They keep their place on the shell when a variant moves the dropout faces. */
export function flangeRings(outside: number, context: HousingContext): readonly FlangeRings[] {
  const { say, assembly, asWritten } = context;
  return flangePlaces(assembly, asWritten).flatMap(({ name, flange, fromMiddle }): readonly FlangeRings[] => {
    const { values } = flange;
    const circle = (values.circle ?? values['head-circle'])?.value.nominal;
    if (fromMiddle === null || circle === undefined) {
      say(
        `the ${name} flange is not drawn: ${fromMiddle === null ? 'from-centre' : 'circle'} is not written`,
      );
      return [];
    }
    const thickness = values.thickness?.value.nominal ?? 3;
    if (!values.thickness) say(`flanges are drawn ${plain(thickness)} mm thick where it is not written`);
    const middle = context.middle + fromMiddle;
    const [from, to] = [middle - thickness / 2, middle + thickness / 2];
    if (values.kind?.value === 'straight-pull') {
      say(`the ${name} flange is drawn up to its head circle: seats of straight-pull spokes are not drawn`);
      return [{ name, from, to, foot: Math.max(circle, outside), rim: null, spokeHole: null }];
    }
    const hole = values.hole?.value.nominal ?? 2.6;
    if (!values.hole) say(`spoke holes are drawn ⌀${plain(hole)} where they are not written`);
    // Practice leaves about a hole's width of metal outside of the hole.
    const rimOutside = circle + hole + 2 * Math.max(hole, 2.5);
    say('the edge of each flange is drawn one hole outside of its holes: it is not written');
    return [
      {
        name,
        from,
        to,
        foot: circle - hole,
        rim: {
          left: from,
          right: to,
          inside: circle + hole,
          outside: rimOutside,
          guessed: { outside: true },
        },
        spokeHole: { at: middle, thickness, circle, hole },
      },
    ];
  });
}
