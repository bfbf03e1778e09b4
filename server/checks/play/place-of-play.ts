import type { SpecPath } from '../../spec/place.ts';
import type { LocatedPair } from './located-pair.ts';
import type { PlayChange } from './play-fixes.ts';

/** Where a fault of a pair is said: the length to change, else any length between its bearings, else the clamp. */
export function placeOfPlay({ loop, pair, clamp }: LocatedPair, best: PlayChange | undefined): SpecPath {
  const between = loop.inner.find(({ key }) => key === 'length') ?? loop.terms[0];
  return best?.written.path ?? between?.path ?? clamp?.path ?? pair.left.stack.from;
}
