import { expect, test } from 'vitest';
import { plainPart } from '../../server/assembly/section-shape.ts';
import { blockingOf } from '../../server/service/blocking.ts';
import type { Body, Tube } from '../../server/service/body.ts';
import { lockedBodies, takeApart } from '../../server/service/take-apart.ts';
import { diceOf } from '../support/random-hub.ts';
import { comesApart, holdEachOther, type Pieces } from '../support/replay.ts';

const body = (address: string, tubes: readonly Tube[], squeezed: Tube | null = null): Body => ({
  address,
  kind: squeezed ? 'retaining-ring' : 'spacer',
  path: [],
  tubes,
  with: [],
  squeezed,
  part: plainPart({ address, kind: 'spacer', path: [], left: 0, right: 1, steps: [] }),
});
const tube = (left: number, right: number, inside: number, outside: number): Tube => ({
  left,
  right,
  inside,
  outside,
});
const locked = (bodies: readonly Body[]) => lockedBodies(bodies, blockingOf(bodies));

const piecesOf = (bodies: readonly Body[]): Pieces => ({
  metal: new Map(
    bodies.map(({ address, tubes }) => [
      address,
      tubes.map(({ left, right, inside, outside }) => ({
        from: left,
        to: right,
        hole: inside,
        rim: outside,
      })),
    ]),
  ),
  closed: new Map(),
});

test('a ball of a part between two lips of another is locked, and a third part beside them is not named', () => {
  const shell = body('shell', [tube(0, 5, 10, 40), tube(5, 15, 30, 40), tube(15, 20, 10, 40)]);
  const inside = body('inside', [tube(6, 14, 0, 28)]);
  const beside = body('beside', [tube(30, 40, 0, 20)]);
  expect(locked([shell, inside, beside])).toEqual(['shell', 'inside']);
});

test('three parts that hook into each other in a circle are named, though no two of them lock', () => {
  // Each stands left of the next at one radius, and the last left of the first.
  const a = body('a', [tube(0, 5, 0, 10), tube(10, 15, 20, 30)]);
  const b = body('b', [tube(10, 15, 0, 10), tube(0, 5, 40, 50)]);
  const c = body('c', [tube(10, 15, 40, 50), tube(0, 5, 20, 30)]);
  expect(locked([a, b, c])).toEqual(['a', 'b', 'c']);
  for (const two of [
    [a, b],
    [b, c],
    [a, c],
  ])
    expect(locked(two)).toBeNull();
});

test('a retaining ring that the pliers reach comes out and sets its part free; behind a narrow mouth it does not', () => {
  const seat = (mouth: number): Body =>
    body('shell', [tube(0, 5, 10, 40), tube(5, 15, 30, 40), tube(15, 17, 32, 40), tube(17, 20, mouth, 40)]);
  const bearing = body('bearing', [tube(5, 15, 12, 30)]);
  const ring = body('ring', [tube(15, 16.5, 27, 31.9)], tube(15, 16.5, 25, 30));
  expect(locked([seat(30), bearing, ring])).toBeNull();
  const { moves } = takeApart([seat(30), bearing, ring], blockingOf([seat(30), bearing, ring]), [], () => 1);
  expect(moves.map(({ kind, moving }) => [kind, ...moving])).toEqual([
    ['ring', 'ring'],
    ['part', 'bearing'],
  ]);
  expect(locked([seat(26), bearing, ring])).toEqual(['shell', 'ring']);
});

/** Parts made of cells of a board of radii and places along the axle, no two in one cell. */
function board(seed: number): readonly Body[] {
  const { between, pick } = diceOf(seed);
  const count = pick([2, 3, 4, 5]);
  const cells = Array.from({ length: 36 }, (_, index) => index);
  const owned = Array.from({ length: count }, (): Tube[] => []);
  for (let i = 0; i < count * between(1, 3.4); i++) {
    const [cell = 0] = cells.splice(Math.floor(between(0, cells.length - 1)), 1);
    const [band, place] = [cell % 6, Math.floor(cell / 6)];
    owned[i % count]?.push(tube(place * 5, place * 5 + 5, band * 4, band * 4 + 4));
  }
  return owned.map((tubes, index) => body(`part.${index}`, tubes)).filter(({ tubes }) => tubes.length > 0);
}

test('of 600 random heaps of hooked parts those come apart that do so when every share of them is tried', () => {
  let stuck = 0;
  for (let seed = 1; seed <= 600; seed++) {
    const bodies = board(seed);
    const pieces = piecesOf(bodies);
    const names = bodies.map(({ address }) => address);
    const found = locked(bodies);
    expect([seed, found === null]).toEqual([seed, comesApart(pieces, names)]);
    if (!found) continue;
    stuck += 1;
    expect([seed, holdEachOther(pieces, found)]).toEqual([seed, true]);
    const spare = found.filter(
      (one) =>
        !comesApart(
          pieces,
          found.filter((other) => other !== one),
        ),
    );
    expect([seed, spare]).toEqual([seed, []]);
  }
  // The heaps are worth trying: many come apart, many do not.
  expect(stuck).toBeGreaterThan(60);
  expect(stuck).toBeLessThan(540);
});
