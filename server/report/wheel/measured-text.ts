import type { MeasuredSide, MeasuredWheel } from '../../analysis/wheel/measured-wheel.ts';
import { sayTurns } from '../../analysis/wheel/say-turns.ts';
import { tensionSpread } from '../../engine/tables/wheel-limits.ts';
import { sayTension } from './say-tension.ts';

/** Readings of a meter for people: each side, the ratio, the spokes to turn. */
export function measuredLines(measured: MeasuredWheel): readonly string[] {
  const { sides, ratio, balance, doubtful } = measured;
  const wide = doubtful ? ': dish, lengths or the meter are to be looked at' : '';
  return [
    ...(sides.left ? sideLines('left', sides.left) : []),
    ...(sides.right ? sideLines('right', sides.right) : []),
    ...(ratio === null
      ? []
      : [`left over right ${ratio.toFixed(2)}, balance asks for ${balance.toFixed(2)}${wide}`]),
  ];
}

function sideLines(side: string, one: MeasuredSide): readonly string[] {
  const { mean, least, most, spread, readings, spokes, outliers } = one;
  const { good, acceptable } = tensionSpread;
  const verdict = spread <= good ? 'good' : spread <= acceptable ? 'acceptable' : 'uneven';
  const counted = readings.length === spokes ? `${spokes} spokes` : `${readings.length} of ${spokes} spokes`;
  return [
    `${side} mean ${sayTension(mean)}, ${sayTension(least)} to ${sayTension(most)} on ${counted}: ±${(spread * 100).toFixed(0)} %, ${verdict}`,
    ...outliers.map(
      ({ at, tension, share, turns }) =>
        `  spoke ${at + 1} ${sayTension(tension)}, ${share < 0 ? '−' : '+'}${(Math.abs(share) * 100).toFixed(0)} %${turns === null ? '' : `: ${turns < 0 ? 'loosen' : 'tighten'} ${sayTurns(turns)}`}`,
    ),
  ];
}
