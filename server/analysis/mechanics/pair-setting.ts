import type { PairLoop, SetBy } from '../../assembly/loop.ts';
import { force } from '../../engine/base/figures.ts';
import {
  mismatchForPlay,
  mismatchForPreload,
  waveWasherPreloadAfter,
} from '../../engine/play/adjusted-pair.ts';
import { clampForce } from '../../engine/play/clamp-compression.ts';
import { type PairSide, travel } from '../../engine/play/pair-side.ts';
import type { SpecPath } from '../../spec/place.ts';
import { usualFriction } from './clamp-of.ts';
import { readThread } from './read-thread.ts';

/** A pair whose inner distance is set by hand, or sprung. */
export interface PairSetting {
  readonly kind: SetBy['kind'];
  readonly where: SetBy['where'];
  readonly address: string;
  /** The setting, or the height of the spring. */
  readonly path: SpecPath;
  /** Whether the inner rings are brought together or apart. */
  readonly way: 'inward' | 'outward';
  /** Play it is set to on the bench, mm; null where it presses. */
  readonly play: number | null;
  /** Force it presses with on the bench, N; null where it leaves a play. */
  readonly preload: number | null;
  /** N/mm; null for an adjuster, which is stiff. */
  readonly rate: number | null;
  /** δ at the bench, mm; of a spring what its parts come to. */
  readonly mismatch: number;
  readonly assumed: readonly string[];
}

/** What the setting of a pair rests on. */
interface Given {
  readonly left: PairSide;
  readonly right: PairSide;
  /** δ of the parts as written, the adjuster in mid position, mm. */
  readonly mismatch: number;
  /** What temperature adds to δ, mm. */
  readonly warmed: number;
  /** Give of everything that the adjuster presses against beside the balls, mm/N. */
  readonly give: number;
}

/** The setting of a pair, or what is missing to know it; null where its parts set the distance. */
export function pairSetting(
  { setBy }: PairLoop,
  given: Given,
): PairSetting | { readonly missing: string } | null {
  if (!setBy) return null;
  return setBy.kind === 'adjuster' ? adjusted(setBy, given) : sprung(setBy, given);
}

function adjusted({ part, where }: SetBy, given: Given): PairSetting | { readonly missing: string } {
  const { address } = part;
  const { left, right, give } = given;
  const { set, thread } = part.values;
  if (!set) return { missing: `set of ${address}` };
  const isPlay = 'nominal' in set.value;
  const way = wayOf(where, given, isPlay);
  const base = { kind: 'adjuster', where, address, path: set.path, way, rate: null } as const;
  const isOpen = !Number.isFinite(travel(left, way) + travel(right, way));
  if ('nominal' in set.value) {
    const play = set.value.nominal;
    const mismatch = isOpen ? 0 : mismatchForPlay(left, right, play, way);
    return { ...base, play, preload: null, mismatch, assumed: [] };
  }
  const size = thread ? readThread(thread.value) : null;
  if (!thread || !size) return { missing: `thread of ${address}` };
  const preload = clampForce({
    torque: set.value.value,
    ...size,
    threadFriction: usualFriction,
    headFriction: usualFriction,
  });
  const mismatch = isOpen ? 0 : mismatchForPreload(left, right, preload, give, way);
  const said = `${force(preload)} by ${set.value.written} on ${thread.value} of ${address}, friction of thread and face taken as ${usualFriction}`;
  return { ...base, play: null, preload, mismatch, assumed: [said] };
}

/** A spring pushes apart what it stands between, and together what it stands beside. */
function sprung({ part, where }: SetBy, given: Given): PairSetting | { readonly missing: string } {
  const { address } = part;
  const { free, rate, length } = part.values;
  const missing = !free ? 'free' : !rate ? 'rate' : !length ? 'length' : null;
  if (!free || !rate || !length) return { missing: `${missing} of ${address}` };
  const washer = { free: free.value.nominal, assembled: length.value.nominal, rate: rate.value.value };
  // An inner line that grows more than the shell squeezes the washer between its rings.
  const change = where === 'between' ? -given.warmed : 0;
  return {
    kind: 'spring',
    where,
    address,
    path: length.path,
    way: where === 'between' ? 'outward' : 'inward',
    play: null,
    preload: waveWasherPreloadAfter(washer, change),
    rate: washer.rate,
    mismatch: given.mismatch,
    assumed: [
      `${address} takes up all play and carries ${force(washer.rate)} for a millimetre; the clamp goes past it through the axle`,
    ],
  };
}

/**
 * Angular-contact bearings say themselves which way they close. Deep groove bearings are pushed together by an
 * adjuster beside them; one between them pushes them apart with a torque, and leaves a play at the end where stops
 * hold the outer rings.
 */
function wayOf(where: SetBy['where'], { left, right }: Given, isPlay: boolean): 'inward' | 'outward' {
  const one = [left, right].map(({ carries }) => carries).find((carries) => carries !== 'both');
  if (one === 'inward' || one === 'outward') return one;
  if (where === 'beside') return 'inward';
  const heldOutward = Number.isFinite(left.holdOutward) || Number.isFinite(right.holdOutward);
  return isPlay && heldOutward ? 'inward' : 'outward';
}
