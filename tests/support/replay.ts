import type { VariantAnalysis } from '../../server/analysis/analyze.ts';
import { section } from '../../server/assembly/section.ts';
import type { Step } from '../../server/service/step.ts';

/*
 * A bench that knows only rings and collisions. It cuts the hub into pieces by itself and slides them bodily along
 * the axle, looking for metal in metal at every place where two edges pass each other. It shares no code with the
 * planner.
 */

interface Metal {
  readonly from: number;
  readonly to: number;
  readonly hole: number;
  readonly rim: number;
}

export interface Pieces {
  readonly metal: ReadonlyMap<string, readonly Metal[]>;
  /** Retaining rings as pliers hold them: closed down to the bore beside their groove. */
  readonly closed: ReadonlyMap<string, readonly Metal[]>;
}

/** The pieces of a hub in their places: a bearing is one, an axle with its collars is one. */
export function piecesOf({ assembly }: VariantAnalysis): Pieces {
  const metal = new Map<string, Metal[]>();
  const closed = new Map<string, Metal[]>();
  const { parts } = section(assembly);
  const add = (address: string, from: number, to: number, hole: number, rim: number): void => {
    if (to <= from) return;
    metal.set(address, [...(metal.get(address) ?? []), { from, to, hole, rim }]);
  };
  for (const part of parts) {
    if (part.kind === 'rotor-face' || part.kind === 'driver-face') continue;
    const name = part.kind === 'collar' ? 'axle' : part.address;
    if (part.bearing) {
      const { inner, outer } = part.bearing;
      add(name, inner.left, inner.right, inner.inside, inner.outside);
      add(name, outer.left, outer.right, outer.inside, outer.outside);
      add(
        name,
        Math.max(inner.left, outer.left),
        Math.min(inner.right, outer.right),
        inner.outside,
        outer.inside,
      );
    } else
      for (const step of [...part.steps, ...part.detached])
        add(name, step.left, step.right, step.inside, step.outside);
  }
  for (const part of parts) {
    if (part.kind !== 'retaining-ring') continue;
    const housing = parts.find(({ address }) => address === part.address.split('.')[0]);
    const bores = (housing?.steps ?? [])
      .filter(({ left, right }) => part.left < right + 1 && left - 1 < part.right)
      .map(({ inside }) => inside);
    const [ring] = part.steps;
    if (!ring) continue;
    // It closes by as much as the groove is deep; beside a groove at a shoulder the wider bore is the seat's.
    const bore = Math.max(...bores.filter((inside) => inside < ring.outside));
    const by = ring.outside - bore;
    closed.set(part.address, [{ from: ring.left, to: ring.right, hole: ring.inside - by, rim: bore }]);
  }
  return { metal, closed };
}

/** Whether two tubes, one of them moved by `by`, lie in each other by more than fits and straying lengths do. */
function jammed(a: Metal, b: Metal, by: number): boolean {
  const radial = Math.min(a.rim, b.rim) - Math.max(a.hole, b.hole);
  if (radial <= 0.1) return false;
  const axial = Math.min(a.to + by, b.to) - Math.max(a.from + by, b.from);
  return axial > Math.min(0.25, Math.min(a.to - a.from, b.to - b.from) / 2);
}

/** Slides tubes from their places to far away; null, or how far they got. Tubes jammed at rest are looked past. */
function slide(moving: readonly Metal[], still: readonly Metal[], way: 1 | -1): number | null {
  let first: number | null = null;
  for (const a of moving) {
    for (const b of still) {
      if (jammed(a, b, 0)) continue;
      const edges = [b.to - a.from, b.to - a.to, b.from - a.from, b.from - a.to]
        .map((off) => off * way)
        .filter((off) => 0 < off)
        .sort((x, y) => x - y);
      const places = edges.flatMap((off, index) => [((edges[index - 1] ?? 0) + off) / 2, off]);
      const hit = places.find((off) => jammed(a, b, off * way));
      if (hit !== undefined && (first === null || hit < first)) first = hit;
    }
  }
  return first;
}

const metalOf = (pieces: Pieces, addresses: readonly string[]): readonly Metal[] =>
  addresses.flatMap((address) => pieces.metal.get(address) ?? []);

/** Pairs of pieces that lie in each other before anything has moved. */
export function jammedAtRest({ metal }: Pieces): readonly string[] {
  const all = [...metal];
  return all.flatMap(([a, tubes], index) =>
    all
      .slice(index + 1)
      .filter(([, others]) => tubes.some((one) => others.some((other) => jammed(one, other, 0))))
      .map(([b]) => `${a} in ${b}`),
  );
}

/** Carries a plan out on the bench; what goes wrong, a sentence each. */
export function replay(pieces: Pieces, apart: readonly Step[], together: readonly Step[]): readonly string[] {
  return [...takenApart(pieces, apart), ...putTogether(pieces, together)];
}

const keyOf = (addresses: readonly string[]): string => [...addresses].sort().join(' ');
const wayOf = (towards: 'left' | 'right'): 1 | -1 => (towards === 'right' ? 1 : -1);

function moved(pieces: Pieces, step: Step): readonly Metal[] {
  const ring = step.kind === 'take-ring-out' || step.kind === 'put-ring-in';
  return ring
    ? step.moving.flatMap((address) => pieces.closed.get(address) ?? [])
    : metalOf(pieces, step.moving);
}

function takenApart(pieces: Pieces, steps: readonly Step[]): readonly string[] {
  const groups = new Set([keyOf([...pieces.metal.keys()])]);
  const wrong: string[] = [];
  for (const step of steps) {
    const whole = keyOf([...step.moving, ...step.held]);
    if (!groups.delete(whole)) wrong.push(`${step.part}: ${whole} is not together any more`);
    groups.add(keyOf(step.moving));
    groups.add(keyOf(step.held));
    const hit = slide(moved(pieces, step), metalOf(pieces, step.held), wayOf(step.towards));
    if (hit !== null) wrong.push(`${step.part} jams after ${hit} mm on its way ${step.towards}`);
  }
  const left = [...groups].filter((group) => group.includes(' '));
  return [...wrong, ...left.map((group) => `${group} was never taken apart`)];
}

function putTogether(pieces: Pieces, steps: readonly Step[]): readonly string[] {
  const groups = new Set([...pieces.metal.keys()]);
  const wrong: string[] = [];
  for (const step of steps) {
    for (const group of [step.moving, step.held])
      if (!groups.delete(keyOf(group))) wrong.push(`${step.part}: ${keyOf(group)} is not there to be moved`);
    groups.add(keyOf([...step.moving, ...step.held]));
    // The way in is the way out gone backwards: from far away on the other side to its place.
    const back = step.towards === 'right' ? 'left' : 'right';
    const hit = slide(moved(pieces, step), metalOf(pieces, step.held), wayOf(back));
    if (hit !== null)
      wrong.push(`${step.part} jams ${hit} mm before its place, coming from the ${step.side}`);
  }
  const whole = keyOf([...pieces.metal.keys()]);
  return groups.size === 1 && groups.has(whole) ? wrong : [...wrong, 'the hub is not whole at the end'];
}

/** Whether pieces alone, everything else gone, hold each other: no share of them slides off, no ring comes out. */
export function holdEachOther(pieces: Pieces, addresses: readonly string[]): boolean {
  const count = addresses.length;
  if (count < 2) return false;
  for (let mask = 1; mask < 2 ** count - 1; mask++) {
    const moving = addresses.filter((_, index) => mask & (1 << index));
    const held = addresses.filter((address) => !moving.includes(address));
    for (const way of [1, -1] as const)
      if (slide(metalOf(pieces, moving), metalOf(pieces, held), way) === null) return false;
  }
  return addresses.every((address) => {
    const ring = pieces.closed.get(address);
    const others = metalOf(
      pieces,
      addresses.filter((other) => other !== address),
    );
    return ring === undefined || ([1, -1] as const).every((way) => slide(ring, others, way) !== null);
  });
}

/** Whether pieces come apart at all, found by trying every share of them on every way out: a dozen at most. */
export function comesApart(pieces: Pieces, addresses: readonly string[]): boolean {
  const count = addresses.length;
  if (count < 2) return true;
  for (let mask = 1; mask < 2 ** count - 1; mask++) {
    const moving = addresses.filter((_, index) => mask & (1 << index));
    const held = addresses.filter((address) => !moving.includes(address));
    if (slide(metalOf(pieces, moving), metalOf(pieces, held), 1) !== null) continue;
    // What slides off is gone for good: if the rest did not come apart now, it would not have with it either.
    return comesApart(pieces, moving) && comesApart(pieces, held);
  }
  return false;
}
