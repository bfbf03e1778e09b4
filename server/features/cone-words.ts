import {
  ballsInBrief,
  clampedInBrief,
  leaveInBrief,
  settingsInBrief,
} from '../analysis/mechanics/cones-in-brief.ts';
import { isConeWorked } from '../analysis/mechanics/cup-cone.ts';
import type { Mechanics } from '../analysis/mechanics/mechanics-of.ts';
import type { SpecPath } from '../spec/place.ts';
import { escaped } from './markdown.ts';
import { samePath } from './section-at.ts';

/** What the cones make of the value at a path: balls on their circle, the play to leave and what the clamp makes of it. */
export function coneWords({ cups, clamp }: Mechanics, path: SpecPath, mostPlay: number): readonly string[] {
  if (!isConeWorked(cups)) return [];
  const rows = cups.cones.flatMap((side) => {
    const circle = side.cup?.values['ball-circle']?.path;
    const isHere = [side.balls?.path, circle].some((other) => other && samePath(other, path));
    const words = isHere ? ballsInBrief(side) : null;
    return words === null ? [] : [`**balls** of ${escaped(side.part.address)}: ${escaped(words)}`];
  });
  const threads = cups.cones.map(({ part }) => part.part.values.thread?.path);
  const asked = [cups.set?.path, clamp?.path, ...threads].some((other) => other && samePath(other, path));
  if (!asked || !clamp) return rows;
  const said = [leaveInBrief(cups), clampedInBrief(cups, clamp), settingsInBrief(cups, mostPlay)];
  return [
    ...rows,
    `**cones**: ${escaped(said.filter((text) => text !== null).join('; '))}`,
    ...(cups.assumed.length > 0 ? [`*${escaped(cups.assumed.join('; '))}*`] : []),
  ];
}
