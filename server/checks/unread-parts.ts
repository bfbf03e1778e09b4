import type { Analysis } from '../analysis/analyze.ts';

/**
 * Whether an item of the stack could not be read as a part, or none could: what the stack comes to is then not known,
 * and what hides the part is said where it stands.
 */
export function hasUnreadParts({ spec }: Analysis): boolean {
  const stack = spec.hub?.stack ?? [];
  if (stack.length === 0) return true;
  const read = new Set(stack.map(({ path }) => path[1]));
  for (let index = 0; spec.has(['stack', index]); index++) if (!read.has(index)) return true;
  return false;
}
