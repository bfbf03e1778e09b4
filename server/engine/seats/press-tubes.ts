import { solveLinear } from './linear-system.ts';
import { type Tube, type TubeFace, type TubeLoad, tubeAt } from './tube.ts';

/** What acts on a nest of tubes from outside it. */
export interface NestLoad {
  /** Pressure in the innermost bore, MPa. */
  readonly bore?: number;
  /** Pressure on the outermost face, MPa. */
  readonly outside?: number;
  /** Speed of the whole nest, rad/s. */
  readonly speed?: number;
}

/** A nest of tubes pressed into each other. */
export interface PressedTubes {
  /** Pressure at each joint from the inside out, MPa; 0 where the joint stands open. */
  readonly pressures: readonly number[];
  /** State of each tube at its own inner and outer face. */
  readonly faces: readonly { readonly inner: TubeFace; readonly outer: TubeFace }[];
  /** False where the diameters do not nest; the numbers are then NaN. */
  readonly valid: boolean;
}

/**
 * Pressures between tubes nested from the inside out, each a material of its own. `interferences` are diametral,
 * one a joint, mm; a negative one is clearance, and a joint that would have to pull stands open instead. Each
 * tube's `outer` is the next one's `inner`. Displacements agree at every closed joint (Lamé, source `timoshenko-goodier`; formulas of two
 * cylinders in source `ntn-2203e`, general case).
 */
export function pressTubes(
  tubes: readonly Tube[],
  interferences: readonly number[],
  load: NestLoad = {},
): PressedTubes {
  const joints = tubes.length - 1;
  const valid = tubes.every((tube) => 0 <= tube.inner && tube.inner < tube.outer) && joints >= 0;
  let closed = new Array<boolean>(Math.max(0, joints)).fill(true);
  let pressures = solveJoints(tubes, interferences, load, closed);
  // A joint opens where it would pull and closes where the others push it shut; each pass settles at least one.
  for (let pass = 0; pass < 2 ** joints; pass++) {
    const next = closed.map((shut, j) =>
      shut ? (pressures[j] ?? 0) >= 0 : overlapAt(tubes, interferences, load, pressures, j) > 0,
    );
    if (next.every((shut, j) => shut === closed[j])) break;
    closed = next;
    pressures = solveJoints(tubes, interferences, load, closed);
  }
  return {
    pressures,
    faces: tubes.map((tube, i) => {
      const own = loadOn(i, tubes.length, pressures, load);
      return { inner: tubeAt(tube, own, tube.inner), outer: tubeAt(tube, own, tube.outer) };
    }),
    valid: valid && pressures.every(Number.isFinite),
  };
}

function solveJoints(
  tubes: readonly Tube[],
  interferences: readonly number[],
  load: NestLoad,
  closed: readonly boolean[],
): readonly number[] {
  const active = closed.flatMap((shut, j) => (shut ? [j] : []));
  const zero = closed.map(() => 0);
  // The overlap left at a joint is linear in the pressures: its slope is found by one unit pressure at a time.
  const still = active.map((j) => overlapAt(tubes, interferences, load, zero, j));
  const matrix = active.map((j, row) =>
    active.map((k) => {
      const unit = zero.map((_, i) => (i === k ? 1 : 0));
      return (still[row] ?? 0) - overlapAt(tubes, interferences, load, unit, j);
    }),
  );
  const found = solveLinear(matrix, still);
  return zero.map((_, j) => (closed[j] ? (found?.[active.indexOf(j)] ?? Number.NaN) : 0));
}

/** Diametral overlap that is left at joint `j` when these pressures act, mm. */
function overlapAt(
  tubes: readonly Tube[],
  interferences: readonly number[],
  load: NestLoad,
  pressures: readonly number[],
  j: number,
): number {
  const [within, around] = [tubes[j] as Tube, tubes[j + 1] as Tube];
  const grown = tubeAt(within, loadOn(j, tubes.length, pressures, load), within.outer).growth;
  const opened = tubeAt(around, loadOn(j + 1, tubes.length, pressures, load), around.inner).growth;
  return (interferences[j] ?? 0) + grown - opened;
}

function loadOn(i: number, count: number, pressures: readonly number[], load: NestLoad): TubeLoad {
  return {
    inside: i === 0 ? (load.bore ?? 0) : (pressures[i - 1] ?? 0),
    outside: i === count - 1 ? (load.outside ?? 0) : (pressures[i] ?? 0),
    speed: load.speed ?? 0,
  };
}
