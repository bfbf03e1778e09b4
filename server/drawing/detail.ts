import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { LoopAnalysis } from '../analysis/close.ts';
import type { Section } from '../assembly/section.ts';
import { micrometres, millimetres, signed } from '../engine/base/figures.ts';
import { type LocatedMark, marksOn, stateOf } from './fault-mark.ts';
import type { State } from './scene.ts';

/** Two faces too close to each other to be told apart at the drawing's scale. */
export interface Detail {
  readonly letter: string;
  /** Where in the hub, mm. */
  readonly at: number;
  readonly radius: number;
  /** From the left face to the right one, mm; negative where they overlap. */
  readonly gap: number;
  readonly left: string;
  readonly right: string;
  /** The right face is a limit, not a part. */
  readonly limit: boolean;
  readonly text: string;
  readonly state: State;
  readonly marks: readonly LocatedMark[];
}

type Found = Omit<Detail, 'letter' | 'state' | 'marks'>;

/** More would not help: what is drawn large must stay few. */
const most = 3;

/** The faults whose gap or overlap has to be enlarged to be seen. */
export function faultDetails(
  variant: VariantAnalysis,
  section: Section,
  marks: readonly LocatedMark[],
): readonly Detail[] {
  const candidates: readonly (readonly [string, () => Found | null])[] = [
    ['width', () => widthDetail(variant, section)],
    ...variant.seats.map(
      (seat) => [`depth:${seat.loop.seat}`, () => seatDetail(seat, variant, section)] as const,
    ),
    ['gap:freehub', () => gapDetail(variant, section)],
    ['gap:axle', () => axleDetail(variant, section)],
    ['between:shell', () => pairDetail('shell', variant, section)],
    ['between:freehub', () => pairDetail('freehub', variant, section)],
  ];
  return candidates
    .flatMap(([id, find]): readonly Omit<Detail, 'letter'>[] => {
      const own = marksOn(marks, id);
      const state = stateOf(own);
      const found = state === null || state === 'note' ? null : find();
      return found ? [{ ...found, state, marks: own }] : [];
    })
    .slice(0, most)
    .map((detail, index) => ({ ...detail, letter: 'ABC'[index] ?? 'Z' }));
}

const mean = (analysis: LoopAnalysis): number | null => (analysis.built ?? analysis.drawn)?.mean ?? null;

/** The end of the hub against the limit of the width it passes. */
function widthDetail(variant: VariantAnalysis, section: Section): Found | null {
  const { wanted } = variant.width.loop;
  const width = mean(variant.width);
  const last = variant.assembly.line.at(-1);
  const part = section.parts.find(({ address }) => address === last?.address);
  if (!wanted || width === null || !part) return null;
  const limit = wanted.hi < width ? wanted.hi : width < wanted.lo ? wanted.lo : null;
  if (limit === null) return null;
  const step = part.steps.at(-1);
  return {
    at: part.right,
    radius: step ? (step.inside + step.outside) / 4 : 0,
    gap: limit - width,
    left: part.address,
    right: `${limit === wanted.hi ? 'upper' : 'lower'} limit ${limit.toFixed(2)}`,
    limit: true,
    text: millimetres(Math.abs(limit - width)),
  };
}

/** The face of a bearing against the end face of its housing. */
function seatDetail(
  seat: VariantAnalysis['seats'][number],
  variant: VariantAnalysis,
  section: Section,
): Found | null {
  const recess = mean(seat);
  const filled = [variant.assembly.shell, variant.assembly.freehub]
    .flatMap((housing) => housing?.seats ?? [])
    .find(({ address }) => address === seat.loop.seat);
  const outermost = filled?.from === 'left' ? filled.bearings[0] : filled?.bearings.at(-1);
  const part = section.parts.find(({ address }) => address === outermost?.address);
  if (recess === null || !filled || !part?.bearing) return null;
  const { outer } = part.bearing;
  const [bearing, end] = [part.address, `end face of the ${filled.housing}`];
  const left = filled.from === 'left';
  return {
    at: left ? outer.left : outer.right,
    radius: (outer.inside + outer.outside) / 4,
    gap: recess,
    left: left ? end : bearing,
    right: left ? bearing : end,
    limit: false,
    text: recess < 0 ? `${millimetres(-recess)} proud` : `${millimetres(recess)} deep`,
  };
}

function gapDetail(variant: VariantAnalysis, section: Section): Found | null {
  const gap = variant.gaps.find(({ loop }) => loop.role === 'running');
  const shell = section.parts.find(({ address }) => address === 'shell');
  const value = gap ? mean(gap) : null;
  const step = shell?.steps.at(-1);
  if (value === null || !shell || !step) return null;
  const text = value < 0 ? `${millimetres(-value)} of overlap` : millimetres(value);
  return {
    at: shell.right,
    radius: (step.inside + step.outside) / 4,
    gap: value,
    left: 'shell',
    right: 'freehub',
    limit: false,
    text,
  };
}

/** The end of the axle against the bottom of the cap's socket: the room of both ends together. */
function axleDetail(variant: VariantAnalysis, section: Section): Found | null {
  const gap = variant.gaps.find(({ loop }) => loop.role === 'axle-end');
  const axle = section.parts.find(({ address }) => address === 'axle');
  const value = gap ? mean(gap) : null;
  const step = axle?.steps.at(-1);
  const last = variant.assembly.line.at(-1);
  if (value === null || !axle || !step || !last) return null;
  const text = value < 0 ? `${millimetres(-value)} too long` : millimetres(value);
  return {
    at: axle.right,
    radius: (step.inside + step.outside) / 4,
    gap: value,
    left: 'axle',
    right: `bottom of ${last.address}`,
    limit: false,
    text,
  };
}

/** The inner distance against the outer: the spacer's end against where the shoulders want the ring. */
function pairDetail(housing: 'shell' | 'freehub', variant: VariantAnalysis, section: Section): Found | null {
  const pair = variant.pairs.find(({ loop }) => loop.housing === housing && loop.located === 'shoulders');
  const value = pair ? mean(pair) : null;
  const right = section.parts.find(({ address }) => address === pair?.loop.bearings[1]);
  if (value === null || !right?.bearing) return null;
  const text = `δ ${signed(value * 1000, 0)} µm`;
  const step = right.bearing.inner;
  return {
    at: step.left,
    radius: (step.inside + step.outside) / 4,
    gap: -value,
    left: 'inner distance',
    right: 'outer distance',
    limit: true,
    text: Math.abs(value) < 1 ? text : `δ ${micrometres(value)}`,
  };
}
