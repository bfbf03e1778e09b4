import type { Side } from '../spec/model.ts';
import type { Body, Tube } from './body.ts';

/** Diameters that overlap by no more than this are a fit: force moves them past each other, nothing blocks. mm */
const fitDepth = 0.1;
/** Faces that overlap by no more than this touch: lengths stray, and a drawing is made at their nominals. mm */
const touch = 0.25;

/** Who stands in whose way. */
export interface Blocking {
  /** The bodies a body would push along if it moved to a side. */
  readonly pushes: (address: string, side: Side) => ReadonlySet<string>;
  /** Pairs that lie in each other as written: nothing can be said of their order. */
  readonly clashes: readonly (readonly [string, string])[];
}

/**
 * Looks at every pair of bodies once. Two tubes that share a radius can never pass each other along the axle, so
 * which of them is left of the other holds for as long as both are there: this is all that the order rests on.
 */
export function blockingOf(bodies: readonly Body[]): Blocking {
  const right = new Map(bodies.map(({ address }) => [address, new Set<string>()]));
  const left = new Map(bodies.map(({ address }) => [address, new Set<string>()]));
  const clashes: (readonly [string, string])[] = [];
  bodies.forEach((a, index) => {
    for (const b of bodies.slice(index + 1)) {
      const orders = a.tubes.flatMap((one) => b.tubes.map((other) => orderOf(one, other)));
      if (orders.includes('left')) put(a, b);
      if (orders.includes('right')) put(b, a);
      if (orders.includes('clash')) clashes.push([a.address, b.address]);
    }
  });
  function put(first: Body, second: Body): void {
    right.get(first.address)?.add(second.address);
    left.get(second.address)?.add(first.address);
  }
  const none = new Set<string>();
  return { pushes: (address, side) => (side === 'right' ? right : left).get(address) ?? none, clashes };
}

/** Whether two tubes share a radius, more than a fit does. */
export function shareRadius(a: Tube, b: Tube): boolean {
  return Math.min(a.outside, b.outside) - Math.max(a.inside, b.inside) > fitDepth;
}

/** Which side of `b` the tube `a` is on, for as long as both are there; null where they can pass each other. */
export function orderOf(a: Tube, b: Tube): Side | 'clash' | null {
  if (!shareRadius(a, b)) return null;
  const overlap = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const shorter = Math.min(a.right - a.left, b.right - b.left);
  if (Math.min(touch, shorter / 2) < overlap) return 'clash';
  return a.left + a.right < b.left + b.right ? 'left' : 'right';
}

/** Whether a tube on its way out to a side would meet a body. */
export function meets(tube: Tube, side: Side, body: Body): boolean {
  return body.tubes.some((other) => orderOf(tube, other) === (side === 'right' ? 'left' : 'right'));
}
