import { plain } from '../engine/base/figures.ts';
import type { Assembly } from './assemble.ts';
import { outward } from './section-around.ts';
import { plainPart, type Say, type SectionPart, type Step } from './section-shape.ts';

/** The axle under the stack, with its collars and journals as steps; null where no axle is written. */
export function sectionAxle(
  assembly: Assembly,
  stack: readonly SectionPart[],
  total: number,
  say: Say,
): SectionPart | null {
  const axle = assembly.hub.axle;
  if (!axle) return null;
  const bearings = assembly.bearings.flatMap(({ bore }) => (bore ? [bore.drawn.nominal] : []));
  const written = axle.values.diameter?.value.nominal;
  const diameter = written ?? (bearings.length > 0 ? Math.min(...bearings) : 15);
  if (written === undefined) say(`the axle is drawn ⌀${plain(diameter)}: the smallest bore on it`);
  const [from, to] = ends(assembly, stack, total, say);
  const cuts = new Set([from, to]);
  const thicker = stack.flatMap((part, index) => {
    const values = assembly.line[index]?.part.values;
    const own = part.ofAxle ? part.steps[0]?.outside : values?.journal?.value.nominal;
    if (own === undefined) return [];
    for (const at of [part.left, part.right]) if (from < at && at < to) cuts.add(at);
    return [
      {
        left: part.left,
        right: part.right,
        outside: own,
        inside: part.ofAxle ? part.steps[0]?.inside : undefined,
      },
    ];
  });
  const bore = axle.values.bore?.value.nominal ?? 0;
  const places = [...cuts].sort((a, b) => a - b);
  const steps = places.slice(1).map((right, index): Step => {
    const left = places[index] as number;
    const own = thicker.find((part) => part.left <= left && right <= part.right);
    return {
      left,
      right,
      inside: own?.inside ?? bore,
      outside: own?.outside ?? diameter,
      guessed: { outside: !own && written === undefined },
    };
  });
  return plainPart({ address: 'axle', kind: 'axle', path: axle.path, left: from, right: to, steps });
}

/** Where the axle ends: by its length about the middle, else at the bottoms of the sockets, else at the caps. */
function ends(
  assembly: Assembly,
  stack: readonly SectionPart[],
  total: number,
  say: Say,
): readonly [number, number] {
  const length = assembly.hub.axle?.values.length?.value.nominal;
  const reach = (['left', 'right'] as const).map((side) => {
    const index = side === 'left' ? 0 : stack.length - 1;
    const [part, line] = [stack[index], assembly.line[index]];
    if (!part || !line || part.kind !== 'end-cap' || outward(line, assembly) !== side)
      return side === 'left' ? 0 : total;
    const socket = line.part.values.socket?.value.nominal ?? 0;
    return side === 'left' ? part.right - socket : part.left + socket;
  });
  const [left = 0, right = total] = reach;
  if (length === undefined) {
    say(`the axle is drawn ${plain(right - left)} mm long: its length is not written`);
    return [left, right];
  }
  const middle = (left + right) / 2;
  return [middle - length / 2, middle + length / 2];
}
