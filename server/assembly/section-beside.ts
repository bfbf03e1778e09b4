import { plain } from '../engine/base/figures.ts';
import type { BesidePart } from '../spec/beside-model.ts';
import { plainPart, type Say, type SectionPart } from './section-shape.ts';

/** A part beside the stack; none where its place is not written. */
export function sectionBeside(
  item: BesidePart,
  stack: readonly SectionPart[],
  say: Say,
): readonly SectionPart[] {
  const { at, length, outside, inside, to } = item.values;
  if (!at) {
    say(`${item.address} is not drawn: its place is not written`);
    return [];
  }
  const from = at.value.from === null ? 0 : stack.find(({ address }) => address === at.value.from)?.left;
  if (from === undefined) {
    say(`${item.address} is not drawn: ${at.value.from} is not in the stack`);
    return [];
  }
  const left = from + at.value.distance.nominal;
  const right = left + (length?.value.nominal ?? 1);
  if (!length) say(`${item.address} is drawn 1 mm long: its length is not written`);
  const target = stack.find(({ address }) => address === to?.value) ?? nearest(stack, (left + right) / 2);
  const around = target?.bearing?.outer.outside ?? target?.steps[0]?.outside ?? 20;
  const step = {
    left,
    right,
    inside: inside?.value.nominal ?? target?.bearing?.inner.outside ?? around,
    outside: outside?.value.nominal ?? Math.max(around, (inside?.value.nominal ?? 0) + 4),
    guessed: { inside: !inside, outside: !outside },
  };
  if (!outside)
    say(
      `outside of ${item.address} is drawn ⌀${plain(Math.round(step.outside * 100) / 100)}: it is not written`,
    );
  return [plainPart({ address: item.address, kind: item.kind, path: item.path, left, right, steps: [step] })];
}

function nearest(stack: readonly SectionPart[], at: number): SectionPart | undefined {
  const off = (part: SectionPart): number => Math.abs((part.left + part.right) / 2 - at);
  return [...stack].sort((a, b) => off(a) - off(b))[0];
}
