import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { LinePart } from '../../assembly/line.ts';
import { plain } from '../../engine/base/figures.ts';
import { bearingMatters } from './bearing-matters.ts';

/** Some pieces of one thing that a hub holds. */
export interface Piece {
  readonly kind: 'bearing' | 'shim' | 'retaining-ring' | 'ball' | 'spoke' | 'nipple';
  /** Size by which things can stand for each other, mm. */
  readonly size: string;
  readonly code: string | null;
  /** The code as the file writes it. */
  readonly written: string | null;
  /** What a supplier must keep to, in plain words. */
  readonly matters: string;
  readonly count: number;
  /** Of a shim, mm. */
  readonly thickness?: number;
}

/** A part that cannot be listed, and why. */
export interface Unlisted {
  readonly part: string;
  readonly why: string;
}

/** What a variant holds of the things that wear or are bought: bearings, shims, retaining rings, loose balls. */
export function piecesOf({ assembly }: VariantAnalysis): readonly (Piece | Unlisted)[] {
  const seats = [assembly.shell, assembly.freehub].flatMap((housing) => housing?.seats ?? []);
  return [
    ...assembly.bearings.map(bearingPiece),
    ...assembly.line.filter(({ part }) => part.kind === 'shim').map(shimPiece),
    ...seats.flatMap(ringPiece),
    ...assembly.line.filter(({ part }) => part.kind === 'cone').map(ballPiece),
  ];
}

function bearingPiece({
  part,
  bearing,
  failure,
  houseCode,
  address,
}: VariantAnalysis['assembly']['bearings'][number]): Piece | Unlisted {
  const { code, size } = part.values;
  if (!bearing) return { part: address, why: failure ? failure.error : 'neither code nor size is written' };
  return {
    kind: 'bearing',
    size: [bearing.bore, bearing.outside, bearing.width].map(plain).join(' × '),
    // A size of the house has no code but the house's own.
    code: bearing.basis === 'size' ? houseCode : bearing.normalised,
    written: code?.value ?? part.values['house-code']?.value ?? size?.value.written ?? null,
    matters: bearingMatters(bearing),
    count: 1,
  };
}

function shimPiece({ part, length, address }: LinePart): Piece | Unlisted {
  if (!length.settled) return { part: address, why: 'its thickness is not written' };
  const thickness = length.settled.drawn.nominal;
  const inside = part.values.inside?.value.nominal;
  const outside = part.values.outside?.value.nominal;
  // Two shims as thick as each other are two things where their diameters differ.
  const around =
    inside === undefined && outside === undefined
      ? ''
      : `, ${inside === undefined ? '?' : plain(inside)} × ${outside === undefined ? '?' : plain(outside)}`;
  return {
    kind: 'shim',
    size: `${plain(thickness)}${around}`,
    code: null,
    written: null,
    matters: inside === undefined || outside === undefined ? 'diameters not all written' : '',
    count: length.count,
    thickness,
  };
}

function ringPiece({
  seat,
  address,
}: NonNullable<VariantAnalysis['assembly']['shell']>['seats'][number]): readonly (Piece | Unlisted)[] {
  if (!seat.ring) return [];
  const size = seat.ring.values.size?.value.nominal ?? seat.values.bore?.value.nominal;
  if (size === undefined) return [{ part: `${address}.retaining-ring`, why: 'its size is not written' }];
  const thickness = seat.ring.values.thickness?.value.nominal;
  return [
    {
      kind: 'retaining-ring',
      size: `for bore ${plain(size)}`,
      code: thickness === undefined ? null : `${plain(thickness)} thick`,
      written: null,
      matters: thickness === undefined ? 'thickness not written' : '',
      count: 1,
    },
  ];
}

/** The loose balls that run on a cone. */
function ballPiece({ part, address }: LinePart): Piece | Unlisted {
  const balls = part.values.balls?.value;
  if (!balls) return { part: `balls of ${address}`, why: 'how many of which diameter is not written' };
  return {
    kind: 'ball',
    size: plain(balls.diameter),
    code: null,
    written: null,
    matters: 'loose, of one batch',
    count: balls.count,
  };
}
