import type { WheelAnalysis, WheelGroup } from '../../analysis/wheel/analyze-wheel.ts';
import { force, millimetres, plain } from '../../engine/base/figures.ts';
import type { FaultMark } from '../fault-mark.ts';

type Side = WheelAnalysis['sides'][number]['side'];

/** A part of the drawn wheel in words, by its address. */
export function wheelPartWords(wheel: WheelAnalysis, address: string): string {
  switch (address) {
    case 'rim':
      return rimWords(wheel);
    case 'hub':
      return hubWords(wheel);
    case 'spokes.left':
      return spokeWords(wheel, 'left');
    case 'spokes.right':
      return spokeWords(wheel, 'right');
    case 'measured.left':
      return measuredWords(wheel, 'left');
    case 'measured.right':
      return measuredWords(wheel, 'right');
    default:
      return address;
  }
}

/** The drawing in words: hub, rim, spokes of each side, readings, faults, what was assumed. */
export function describeWheel(
  title: string,
  wheel: WheelAnalysis,
  faults: readonly FaultMark[],
  assumed: readonly string[],
): string {
  const measured = (['left', 'right'] as const).filter((side) => wheel.measured?.sides[side]);
  return [
    `${title}: the wheel from the right with the valve at the top, its middle from each side, and its upper half from behind.`,
    `${capital(hubWords(wheel))}.`,
    `${capital(rimWords(wheel))}.`,
    ...wheel.sides.map(({ side }) => `${capital(spokeWords(wheel, side))}.`),
    ...measured.map((side) => `${capital(measuredWords(wheel, side))}.`),
    ...faults.map(({ message }, at) => `Fault ${at + 1}: ${message}.`),
    ...assumed.map((text) => `Assumed: ${text}.`),
  ].join(' ');
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function hubWords({ hub, sides }: WheelAnalysis): string {
  const flanges = sides.map(
    ({ side, flange }) =>
      `${side} flange ${flange.offset ? `${millimetres(flange.offset.value)} from the middle` : 'with no place written'}`,
  );
  return [`hub ${hub?.name ?? ''}`.trim(), ...flanges].join(', ');
}

function rimWords({ rim }: WheelAnalysis): string {
  if (!rim) return 'rim not known';
  const off = (rim.holeOffset.left - rim.holeOffset.right) / 2;
  return [
    `rim with ${rim.holes} holes`,
    ...(rim.drilling === 'even' ? [] : [`drilled ${rim.drilling}`]),
    `nipples seated on ${millimetres(2 * rim.seatRadius)}`,
    ...(Math.abs(off) < 0.005
      ? []
      : [`holes ${millimetres(Math.abs(off))} to the ${0 < off ? 'left' : 'right'}`]),
  ].join(', ');
}

function spokeWords(wheel: WheelAnalysis, side: Side): string {
  const own = wheel.sides.find((one) => one.side === side);
  if (!own) return `${side} spokes not known`;
  const { crosses } = own.lacing;
  const tension = wheel.tension?.sides[side].value;
  const lengths = wheel.groups.filter((group) => group.side === side).map(groupWords);
  return [
    `${own.count} ${side} spokes, ${crosses === 0 ? 'radial' : `${crosses} ${crosses === 1 ? 'crossing' : 'crossings'}`}`,
    ...new Set(lengths),
    ...(tension === undefined ? [] : [`mean tension ${force(tension)}`]),
  ].join(', ');
}

/** `8 heads in, trailing, 289 mm` */
export function groupWords({ count, head, direction, fit }: WheelGroup): string {
  const way = { 'head-in': 'heads inwards', 'head-out': 'heads outwards', 'straight-pull': 'straight-pull' }[
    head
  ];
  const length = fit
    ? `${plain(fit.length.chosen)} mm${fit.length.written ? '' : ' proposed'}`
    : 'length not known';
  return `${count} ${way}${direction === 'both' ? '' : ` ${direction}`} ${length}`;
}

function measuredWords({ measured }: WheelAnalysis, side: Side): string {
  const read = measured?.sides[side];
  if (!read) return `${side} spokes not measured`;
  const strays = read.outliers.map(({ at, tension }) => `spoke ${at + 1} ${force(tension)}`);
  return [
    `${side} spokes measured: mean ${force(read.mean)}, ${force(read.least)} to ${force(read.most)}`,
    ...(strays.length > 0 ? [`too far from the mean: ${strays.join(', ')}`] : []),
  ].join(', ');
}
