import type { StackKind } from '../spec/model.ts';
import type { LinePart } from './line.ts';
import type { SetBy } from './loop.ts';

/** What holds two inner rings apart at a length of its own. */
const solid: readonly StackKind[] = ['spacer', 'shim', 'washer', 'collar'];

/**
 * The adjuster or wave washer that sets the distance of two inner rings: one that stands between them, or, where
 * nothing solid does, one outside of them. In a hub of two bearings an adjuster that says what it is set to places
 * its ring whatever stands between. Null where the parts between them set it.
 */
export function setByHand(line: readonly LinePart[], from: LinePart, to: LinePart): SetBy | null {
  const [left, right] = [line.indexOf(from), line.indexOf(to)];
  const inside = line.slice(left + 1, right);
  const between = inside.map((part) => asSetter(part, 'between')).find((found) => found !== null);
  if (between) return between;
  const outside = [...line.slice(0, left), ...line.slice(right + 1)];
  const beside = outside.map((part) => asSetter(part, 'beside')).find((found) => found !== null) ?? null;
  if (!inside.some(({ part }) => solid.includes(part.kind))) return beside;
  const isOnlyPair = line.filter(({ part }) => part.kind === 'bearing').length === 2;
  return isOnlyPair && beside?.kind === 'adjuster' && beside.part.values.set ? beside : null;
}

function asSetter({ part }: LinePart, where: SetBy['where']): SetBy | null {
  if (part.kind === 'adjuster') return { kind: 'adjuster', part, where };
  return part.kind === 'wave-washer' ? { kind: 'spring', part, where } : null;
}
