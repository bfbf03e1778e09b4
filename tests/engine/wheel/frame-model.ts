/**
 * A wheel as a frame in space, written for these tests alone: the rim of straight beams of twelve degrees of freedom
 * with the geometric stiffness of their axial force, every spoke a bar with the geometric stiffness of its tension, the
 * hub rigid. It shares nothing with the code under test and knows no waves and no smearing.
 */
export interface FrameWheel {
  readonly radius: number;
  readonly EI1: number;
  readonly EI2: number;
  readonly GJ: number;
  readonly EA: number;
  readonly spokes: readonly FrameSpoke[];
  /** Beams from one rim hole to the next. */
  readonly beams: number;
}

export interface FrameSpoke {
  /** Rim hole by its number; holes are even. */
  readonly hole: number;
  /** Hub hole: angle (rad), radius and place along the axle (mm). */
  readonly hub: { readonly angle: number; readonly radius: number; readonly z: number };
  readonly EA: number;
  readonly tension: number;
}

type Vector = readonly [number, number, number];

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const size = (a: Vector): number => Math.hypot(...a);

/** A wheel laced as on the bench: holes left and right in turn, flange holes even, X crossings; spans from the vectors. */
export function lacedFrame(given: {
  radius: number;
  EI1: number;
  EI2: number;
  GJ: number;
  EA: number;
  holes: number;
  crosses: number;
  hubRadius: number;
  left: number;
  right: number;
  spokeEA: number;
  tension?: number;
  beams?: number;
}): FrameWheel {
  const { holes, crosses, hubRadius } = given;
  const step = (2 * Math.PI) / holes;
  const spokes = Array.from({ length: holes }, (_, hole): FrameSpoke => {
    const right = hole % 2 === 1;
    const place = Math.floor(hole / 2);
    const lean = (place % 2 === 0 ? -1 : 1) * crosses * 2 * step;
    return {
      hole,
      hub: { angle: hole * step + lean, radius: hubRadius, z: right ? given.right : -given.left },
      EA: given.spokeEA,
      tension: given.tension ?? 0,
    };
  });
  return { ...given, spokes, beams: given.beams ?? 2 };
}

/** Place of a rim hole. */
function rimPoint(wheel: FrameWheel, angle: number): Vector {
  return [wheel.radius * Math.cos(angle), wheel.radius * Math.sin(angle), 0];
}

function spokeVector(wheel: FrameWheel, spoke: FrameSpoke): Vector {
  const angle = (2 * Math.PI * spoke.hole) / wheel.spokes.length;
  const { angle: at, radius, z } = spoke.hub;
  return minus([radius * Math.cos(at), radius * Math.sin(at), z], rimPoint(wheel, angle));
}

/** The stiffness matrix, N/mm and N·mm; `scale` multiplies every tension. */
export function stiffnessMatrix(wheel: FrameWheel, scale = 1): Float64Array[] {
  const nodes = wheel.spokes.length * wheel.beams;
  const K = Array.from({ length: 6 * nodes }, () => new Float64Array(6 * nodes));
  let inwards = 0;
  for (const spoke of wheel.spokes) {
    const along = spokeVector(wheel, spoke);
    const L = size(along);
    const n = along.map((one) => one / L);
    const T = spoke.tension * scale;
    const angle = (2 * Math.PI * spoke.hole) / wheel.spokes.length;
    inwards -= T * ((n[0] ?? 0) * Math.cos(angle) + (n[1] ?? 0) * Math.sin(angle));
    const base = 6 * spoke.hole * wheel.beams;
    for (let i = 0; i < 3; i += 1)
      for (let j = 0; j < 3; j += 1) {
        const nn = (n[i] ?? 0) * (n[j] ?? 0);
        add(K, base + i, base + j, (spoke.EA / L) * nn + (T / L) * ((i === j ? 1 : 0) - nn));
      }
  }
  const hoop = inwards / (2 * Math.PI);
  for (let node = 0; node < nodes; node += 1) addBeam(K, wheel, node, (node + 1) % nodes, nodes, -hoop);
  return K;
}

function add(K: Float64Array[], row: number, column: number, value: number): void {
  const line = K[row];
  if (line) line[column] = (line[column] ?? 0) + value;
}

/** One beam between two nodes under an axial force P (pull positive); local x along it, y outwards, z along the axle. */
function addBeam(K: Float64Array[], wheel: FrameWheel, a: number, b: number, nodes: number, P: number): void {
  const from = rimPoint(wheel, (2 * Math.PI * a) / nodes);
  const to = rimPoint(wheel, (2 * Math.PI * b) / nodes);
  const along = minus(to, from);
  const L = size(along);
  const x: Vector = [along[0] / L, along[1] / L, 0];
  const axes: readonly Vector[] = [x, [x[1], -x[0], 0], [0, 0, -1]];
  const k = localBeam(wheel, L, P);
  const dof = (i: number): number => 6 * (i < 6 ? a : b) + (i % 6);
  // k in space = Rᵀ·k·R, R holding the axes for each of the four triples.
  for (let i = 0; i < 12; i += 1)
    for (let j = 0; j < 12; j += 1) {
      let sum = 0;
      for (let p = 0; p < 3; p += 1)
        for (let q = 0; q < 3; q += 1) {
          const ip = 3 * Math.floor(i / 3) + p;
          const jq = 3 * Math.floor(j / 3) + q;
          sum += (axes[p]?.[i % 3] ?? 0) * (k[ip]?.[jq] ?? 0) * (axes[q]?.[j % 3] ?? 0);
        }
      add(K, dof(i), dof(j), sum);
    }
}

function localBeam(wheel: FrameWheel, L: number, P: number): number[][] {
  const k = Array.from({ length: 12 }, () => new Array<number>(12).fill(0));
  const put = (i: number, j: number, value: number): void => {
    const row = k[i];
    if (row) row[j] = (row[j] ?? 0) + value;
  };
  const pair = (i: number, j: number, value: number): void => {
    put(i, i, value);
    put(j, j, value);
    put(i, j, -value);
    put(j, i, -value);
  };
  pair(0, 6, wheel.EA / L);
  pair(3, 9, wheel.GJ / L);
  // Bending in x-y turns about z; in x-z about y with the other sign. P/(30·L) is the geometric part.
  for (const [move, turn, sign, EI] of [
    [1, 5, 1, wheel.EI1],
    [2, 4, -1, wheel.EI2],
  ] as const) {
    const rows = [move, turn, move + 6, turn + 6];
    const signs = [1, sign, 1, sign];
    const e = EI / L ** 3;
    const g = P / (30 * L);
    const bend = [
      [12, 6 * L, -12, 6 * L],
      [6 * L, 4 * L * L, -6 * L, 2 * L * L],
      [-12, -6 * L, 12, -6 * L],
      [6 * L, 2 * L * L, -6 * L, 4 * L * L],
    ];
    const pull = [
      [36, 3 * L, -36, 3 * L],
      [3 * L, 4 * L * L, -3 * L, -L * L],
      [-36, -3 * L, 36, -3 * L],
      [3 * L, -L * L, -3 * L, 4 * L * L],
    ];
    rows.forEach((i, at) => {
      rows.forEach((j, to) => {
        const value = e * (bend[at]?.[to] ?? 0) + g * (pull[at]?.[to] ?? 0);
        put(i, j, value * (signs[at] ?? 1) * (signs[to] ?? 1));
      });
    });
  }
  return k;
}

/** Lower triangle of the matrix's root; null where it is not positive: the wheel has buckled. */
export function cholesky(K: readonly Float64Array[]): Float64Array[] | null {
  const n = K.length;
  const root = Array.from({ length: n }, () => new Float64Array(n));
  for (let i = 0; i < n; i += 1) {
    const row = root[i] as Float64Array;
    for (let j = 0; j <= i; j += 1) {
      const other = root[j] as Float64Array;
      let sum = (K[i] as Float64Array)[j] as number;
      for (let q = 0; q < j; q += 1) sum -= (row[q] as number) * (other[q] as number);
      if (i === j) {
        if (sum <= 0) return null;
        row[i] = Math.sqrt(sum);
      } else row[j] = sum / (other[j] as number);
    }
  }
  return root;
}

/** Displacements under forces, mm and rad. */
export function solve(root: readonly Float64Array[], force: Float64Array): Float64Array {
  const n = root.length;
  const x = Float64Array.from(force);
  for (let i = 0; i < n; i += 1) {
    const row = root[i] as Float64Array;
    let sum = x[i] as number;
    for (let j = 0; j < i; j += 1) sum -= (row[j] as number) * (x[j] as number);
    x[i] = sum / (row[i] as number);
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    let sum = x[i] as number;
    for (let j = i + 1; j < n; j += 1) sum -= ((root[j] as Float64Array)[i] as number) * (x[j] as number);
    x[i] = sum / ((root[i] as Float64Array)[i] as number);
  }
  return x;
}

/** What the frame does: stiffness at hole 0 (N/mm) and the tension each spoke loses per newton of radial load there. */
export interface FrameAnswer {
  readonly lateral: number;
  readonly radial: number;
  readonly tangential: number;
  readonly radialShares: readonly number[];
  readonly lateralShares: readonly number[];
}

export function frameAnswer(wheel: FrameWheel): FrameAnswer {
  const root = cholesky(stiffnessMatrix(wheel));
  if (!root) return { lateral: 0, radial: 0, tangential: 0, radialShares: [], lateralShares: [] };
  const size = root.length;
  const push = (force: (f: Float64Array) => void): Float64Array => {
    const f = new Float64Array(size);
    force(f);
    return solve(root, f);
  };
  const inwards = push((f) => {
    f[0] = -1;
  });
  const sideways = push((f) => {
    f[2] = 1;
  });
  const nodes = size / 6;
  const tangent = (node: number): Vector => {
    const angle = (2 * Math.PI * node) / nodes;
    return [-Math.sin(angle), Math.cos(angle), 0];
  };
  const round = push((f) => {
    for (let node = 0; node < nodes; node += 1) {
      const [x, y] = tangent(node);
      f[6 * node] = x / nodes;
      f[6 * node + 1] = y / nodes;
    }
  });
  let mean = 0;
  for (let node = 0; node < nodes; node += 1) {
    const [x, y] = tangent(node);
    mean += (x * (round[6 * node] as number) + y * (round[6 * node + 1] as number)) / nodes;
  }
  return {
    lateral: 1 / (sideways[2] as number),
    radial: 1 / -(inwards[0] as number),
    tangential: 1 / mean,
    radialShares: tensionLost(wheel, inwards),
    lateralShares: tensionLost(wheel, sideways),
  };
}

/** Tension each spoke loses when the rim moves, N. */
function tensionLost(wheel: FrameWheel, moved: Float64Array): readonly number[] {
  return wheel.spokes.map((spoke) => {
    const along = spokeVector(wheel, spoke);
    const L = size(along);
    const base = 6 * spoke.hole * wheel.beams;
    const nearer = along.reduce((sum, one, i) => sum + (one / L) * (moved[base + i] as number), 0);
    return (spoke.EA / L) * nearer;
  });
}

/** Tension gained by a spoke that is shortened by `by` mm, the rim giving way, N. */
export function tightened(wheel: FrameWheel, at: number, by: number): number {
  const root = cholesky(stiffnessMatrix(wheel));
  const spoke = wheel.spokes[at];
  if (!root || !spoke) return 0;
  const along = spokeVector(wheel, spoke);
  const L = size(along);
  const force = new Float64Array(root.length);
  const base = 6 * spoke.hole * wheel.beams;
  along.forEach((one, i) => {
    force[base + i] = (spoke.EA / L) * by * (one / L);
  });
  return (spoke.EA / L) * by - (tensionLost(wheel, solve(root, force))[at] ?? 0);
}

/** How many times its tensions a wheel folds at, to a thousandth, by halving. */
export function bucklingFactor(wheel: FrameWheel): number {
  let lo = 0;
  let hi = 1;
  while (cholesky(stiffnessMatrix(wheel, hi)) !== null && hi < 1e3) {
    lo = hi;
    hi *= 2;
  }
  while (hi - lo > 1e-3 * hi) {
    const middle = (lo + hi) / 2;
    if (cholesky(stiffnessMatrix(wheel, middle))) lo = middle;
    else hi = middle;
  }
  return hi;
}
