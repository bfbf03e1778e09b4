import type { Body } from './body.ts';
import type { Hubwork } from './hubwork.ts';
import { type Reach, reachOf } from './reach.ts';
import type { Split } from './splits.ts';

/** How a bearing of a split is reached while it comes out. */
export function reachIn(
  bearing: Body,
  split: Pick<Split, 'moving' | 'side'>,
  group: readonly string[],
  { find, blocking, ties }: Pick<Hubwork, 'find' | 'blocking' | 'ties'>,
): Reach {
  const bodies = group.flatMap((address) => find.get(address) ?? []);
  const inside = new Set(group);
  const tied = new Set(
    ties.filter(({ a, b }) => inside.has(a) && inside.has(b)).flatMap(({ a, b }) => [a, b]),
  );
  const moves = split.moving.includes(bearing.address);
  const moving = moves ? split.moving : group.filter((address) => !split.moving.includes(address));
  return reachOf(bearing, leaves(bearing.address, split), { bodies, moving, blocking, tied });
}

/** The side a bearing leaves its housing by: the other one where the housing moves off it. */
export function leaves(bearing: string, { moving, side }: Pick<Split, 'moving' | 'side'>): 'left' | 'right' {
  if (moving.includes(bearing)) return side;
  return side === 'left' ? 'right' : 'left';
}
