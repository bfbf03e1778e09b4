import { plain } from '../engine/base/figures.ts';
import type { Assembly } from './assemble.ts';
import type { LinePart } from './line.ts';
import { neighbour, outward } from './section-around.ts';
import type { Say, Step } from './section-shape.ts';

/** How far the body of a cap stays off the bearing where only its face is smaller, mm. */
const noseLength = 2.5;
/** How deep a spigot is drawn that has no length of its own, mm. */
const spigotLength = 5;

/**
 * An end cap, from its dropout face inwards.
 *
 *      ┌──────────┐ outside
 *      │  body    └───┐ face
 *      │   ┌──────────┤
 *      └───┘ bore     │ socket takes the axle's end
 */
export function sectionEndCap(
  part: LinePart,
  place: { readonly left: number; readonly right: number },
  assembly: Assembly,
  say: Say,
): { readonly steps: readonly Step[] } {
  const { values } = part.part;
  const side = outward(part, assembly);
  const length = place.right - place.left;
  const around = neighbour(part, assembly);
  const axle = assembly.hub.axle?.values;
  const face = values.face?.value.nominal ?? around.innerOutside;
  if (!values.face) say(`face of ${part.address} is drawn ⌀${face.toFixed(2)}: ${around.outsideSource}`);
  const outside = values.outside?.value.nominal ?? face;
  const bore = values.bore?.value.nominal ?? axle?.bore?.value.nominal ?? around.bore;
  if (!values.bore) {
    say(
      `bore of ${part.address} is drawn ⌀${plain(bore)}: ${axle?.bore ? "the axle's bore" : around.boreSource}`,
    );
  }
  const written = values.nose?.value.nominal;
  const nose = Math.min(written ?? noseLength, written === undefined ? length / 3 : length);
  if (outside !== face && written === undefined)
    say(
      `where an end cap's face is not its outside, the step is drawn ${plain(noseLength)} mm from the bearing`,
    );
  const socket = Math.min(values.socket?.value.nominal ?? 0, length);
  const socketBore = axle?.diameter?.value.nominal ?? around.bore;

  // Distances from the dropout face inwards; mirrored for the cap at the right.
  const cuts = [...new Set([0, length - socket, outside === face ? length : length - nose, length])]
    .filter((at) => 0 <= at && at <= length)
    .sort((a, b) => a - b);
  const inwards = cuts.slice(1).map((to, index): Step => {
    const from = cuts[index] as number;
    const inSocket = 0 < socket && length - socket <= from;
    const isNose = outside !== face && length - nose <= from;
    return {
      left: from,
      right: to,
      inside: inSocket ? socketBore : bore,
      outside: isNose ? face : outside,
      guessed: {
        inside: !inSocket && !values.bore,
        outside: isNose ? !values.face : !values.outside && !values.face,
      },
    };
  });
  const spigot = values.spigot?.value.nominal;
  if (spigot !== undefined && bore < spigot) {
    const ring = around.bearing?.innerWidth?.drawn.nominal ?? spigotLength;
    const deep =
      axle?.bore && spigot <= axle.bore.value.nominal + 0.1 ? spigotLength : Math.min(ring, spigotLength);
    say(`the spigot of ${part.address} is drawn ${plain(deep)} mm long: its length is not written`);
    inwards.push({ left: length, right: length + deep, inside: bore, outside: spigot });
  }
  const steps = inwards.filter((step) => step.left < step.right);
  if (side === 'left')
    return {
      steps: steps.map((step) => ({ ...step, left: place.left + step.left, right: place.left + step.right })),
    };
  return {
    steps: steps
      .map((step) => ({ ...step, left: place.right - step.right, right: place.right - step.left }))
      .reverse(),
  };
}
