import type { Side } from '../spec/model.ts';
import type { Blocking } from './blocking.ts';
import type { Body, Tube } from './body.ts';
import { opposite, spanOf } from './body.ts';

/** How a bearing is got at from behind to bring it out of its seat. Diameters and lengths in mm. */
export type Reach =
  /** The outer ring lies bare from behind, this wide: it is pushed without loading the balls. */
  | { readonly by: 'outer-ring'; readonly bare: number }
  /** Another part pushes its inner ring out: an axle with a shoulder. */
  | { readonly by: 'part'; readonly part: string }
  /** A drift through the hub on the inner ring, bare this wide once the spacer is pushed aside. */
  | { readonly by: 'drift'; readonly bare: number; readonly aside: string | null; readonly room: number }
  /** A collet spread behind the inner ring: its size is the bore. */
  | { readonly by: 'extractor'; readonly size: number; readonly ledge: number }
  /** Nothing reaches it; what lies in the way and how much of the inner ring it leaves bare. */
  | { readonly by: 'none'; readonly bare: number; readonly inTheWay: string | null };

/** Width of flat face a drift needs beyond the chamfer of the ring, mm (`common practice`: a punch with a flat edge). */
export const driftFace = 0.3;
/** Ledge all round that a spreading collet needs behind a ring, mm (`common practice`). */
const colletLedge = 0.25;
/** Width of the outer ring that a driver needs to bear on, mm (`common practice`). */
const driverFace = 0.5;

/** What stands around the bearing when it is to come out. */
export interface Scene {
  /** Every body still there. */
  readonly bodies: readonly Body[];
  readonly moving: readonly string[];
  readonly blocking: Blocking;
  /** Bodies held by a fit or a thread: they cannot be pushed aside. */
  readonly tied: ReadonlySet<string>;
}

/** How a bearing is reached that is to leave its housing towards `side`. */
export function reachOf(bearing: Body, side: Side, scene: Scene): Reach {
  const rings = bearing.part.bearing;
  if (!rings) return { by: 'none', bare: 0, inTheWay: null };
  const others = scene.bodies.filter(({ address }) => address !== bearing.address);
  const behind = others.map((body) => ({
    body,
    tubes: body.tubes.filter((tube) => isBehind(tube, bearing, side)),
  }));
  const outer = bareWidth(
    rings.outer.inside,
    rings.outer.outside,
    behind.flatMap(({ tubes }) => tubes),
  );
  if (driverFace <= outer) return { by: 'outer-ring', bare: outer };

  const pusher = others.find(
    (body) =>
      scene.moving.includes(body.address) &&
      scene.blocking.pushes(body.address, side).has(bearing.address) &&
      isBare(body, side, others),
  );
  if (pusher) return { by: 'part', part: pusher.address };

  const { inside: bore, outside: shoulder } = rings.inner;
  const filled = others.find(({ tubes }) => tubes.some((tube) => fills(tube, bore, bearing)));
  if (filled) return { by: 'none', bare: 0, inTheWay: filled.address };
  const housings = scene.bodies.filter(({ kind }) => kind === 'shell' || kind === 'freehub');
  const covers = behind.flatMap(({ body, tubes }) => {
    // A bearing further back is looked through; a housing leaves what its bore leaves.
    if (body.kind === 'bearing' || tubes.length === 0) return [];
    const inside = Math.min(...tubes.map((tube) => tube.inside));
    if (shoulder <= inside) return [];
    const loose = !scene.tied.has(body.address) && !housings.includes(body);
    const shift = loose ? sideways(body, housings) : 0;
    return [{ address: body.address, ledge: (inside - bore) / 2, bare: (inside - bore) / 2 + shift, shift }];
  });
  const full = (shoulder - bore) / 2;
  const worst = covers.sort((a, b) => a.bare - b.bare)[0];
  const bare = Math.max(0, Math.min(full, worst?.bare ?? full));
  const through = others.flatMap(({ part, tubes }) =>
    part.bearing && tubes.some((tube) => isBehind(tube, bearing, side)) ? [part.bearing.inner.inside] : [],
  );
  const room = Math.min(bore, ...through);
  const aside = worst && 0 < worst.shift ? worst.address : null;
  if (rings.chamfer + driftFace <= bare) return { by: 'drift', bare, aside, room };
  const ledge = Math.max(0, Math.min(full, ...covers.map((cover) => cover.ledge)));
  if (colletLedge <= ledge) return { by: 'extractor', size: bore, ledge };
  return { by: 'none', bare, inTheWay: worst?.address ?? null };
}

/** Whether a part can be pushed on its own end: enough of it lies bare from behind. */
function isBare(body: Body, side: Side, others: readonly Body[]): boolean {
  const ends =
    side === 'right'
      ? [...body.tubes].sort((a, b) => a.left - b.left)
      : [...body.tubes].sort((a, b) => b.right - a.right);
  const [end] = ends;
  if (!end) return false;
  const middle = end.left + end.right;
  const inFront = others.flatMap(({ address, tubes }) =>
    address === body.address
      ? []
      : tubes.filter(({ left, right }) => left + right < middle === (side === 'right')),
  );
  return driverFace <= bareWidth(end.inside, end.outside, inFront);
}

/** Whether a tube lies behind a bearing that leaves to a side. */
export function isBehind(tube: Tube, bearing: Body, side: Side): boolean {
  const { left, right } = spanOf(bearing.tubes);
  const middle = (left + right) / 2;
  return opposite(side) === 'left'
    ? tube.left + tube.right < 2 * middle
    : 2 * middle < tube.left + tube.right;
}

/** Whether a tube stands in the bore of the bearing, or in the way to it. */
function fills(tube: Tube, bore: number, bearing: Body): boolean {
  const { left, right } = spanOf(bearing.tubes);
  return tube.left < right && left < tube.right && tube.inside < bore - 2 && tube.outside <= bore + 0.2;
}

/** The widest ring of a face between two diameters that no tube lies in front of, as a width of one side, mm. */
export function bareWidth(from: number, to: number, tubes: readonly Tube[]): number {
  const spans = tubes
    .filter(({ inside, outside }) => inside < to && from < outside)
    .sort((a, b) => a.inside - b.inside);
  let at = from;
  let widest = 0;
  for (const { inside, outside } of spans) {
    widest = Math.max(widest, inside - at);
    at = Math.max(at, outside);
  }
  return Math.max(widest, to - at) / 2;
}

/** How far a loose sleeve can be pushed aside: half its free play in the narrowest bore it stands in, mm. */
function sideways(body: Body, housings: readonly Body[]): number {
  const { left, right } = spanOf(body.tubes);
  const outside = Math.max(...body.tubes.map((tube) => tube.outside));
  const bores = housings.flatMap(({ tubes }) =>
    tubes.flatMap((tube) =>
      tube.left < right && left < tube.right && outside <= tube.inside ? [tube.inside] : [],
    ),
  );
  // A sleeve that stands in no bore drops out of the way.
  return bores.length === 0 ? outside : Math.max(0, (Math.min(...bores) - outside) / 2);
}
