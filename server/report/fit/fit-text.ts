import { micrometres, millimetres, plain } from '../../engine/base/figures.ts';
import type { DecodedBearing } from '../../engine/bearings/decoded-bearing.ts';
import type { Usualness } from '../../engine/fits/recommended-fits.ts';
import { textTable } from '../text-table.ts';
import type { FitAnswer, FitSide } from './fit-answer.ts';

/** A fit for people: both limits, what lies between them, and whether it is usual in a wheel. */
export function fitText(bearing: DecodedBearing, answer: FitAnswer): string {
  const { written, on, part, ring, clearance, usual, assumed, ringClass, advice } = answer;
  const [name, partner] = on === 'outside' ? ['seat', 'outside'] : ['axle', 'bore'];
  const lines = [
    [`${name} ${written}`, limits(part)],
    [`${partner} of ${bearing.code}`, limits(ring)],
    ...(answer.sameSize
      ? fitLines(clearance)
      : [['difference', `${millimetres(part.nominal - ring.nominal)}: two sizes, no fit`]]),
    ...(answer.sameSize ? [] : otherCase(bearing, answer)),
    ...(usual && answer.sameSize ? [['in a wheel', sayUsual(usual)]] : []),
    ['ring limits from', `ISO 492, class ${ringClass}`],
    ...(assumed === null ? [] : [['assumed', assumed]]),
    ...(advice === null || !answer.sameSize ? [] : [['bear in mind', advice]]),
  ];
  return `${textTable(lines, { indent: 2 }).join('\n')}\n`;
}

/** `26 n7` is an axle; where the bore of a seat was meant, the letter wants to be a capital. */
function otherCase(
  bearing: DecodedBearing,
  { written, on, part }: FitAnswer,
): readonly (readonly string[])[] {
  const match = /^(.*?)([A-Za-z]{1,2})(\d{1,2})$/.exec(written);
  const meant = on === 'outside' ? bearing.bore : bearing.outside;
  if (!match || 0.2 < Math.abs(part.nominal - meant)) return [];
  const [, size = '', letters = '', grade = ''] = match;
  const [kind, other] =
    on === 'outside' ? ['an axle', letters.toLowerCase()] : ['a seat', letters.toUpperCase()];
  return [['perhaps meant', `${kind}: ${size}${other}${grade}`]];
}

function fitLines({ min, mean, max }: FitAnswer['clearance']): readonly (readonly string[])[] {
  return [
    ['loosest', say(max)],
    ['on average', say(mean)],
    ['tightest', say(min)],
  ];
}

function sayUsual({ verdict, usual, why }: Usualness): string {
  if (verdict === 'usual') return why;
  return `${verdict} than the usual ${usual.join(', ')}: ${why}`;
}

function say(clearance: number): string {
  if (Math.abs(clearance) < 0.0005) return '0 µm, neither room nor interference';
  return clearance < 0
    ? `${micrometres(-clearance)} of interference`
    : `${micrometres(clearance)} of clearance`;
}

function limits({ nominal, lower, upper }: FitSide): string {
  const um = (value: number): string => {
    const digits = (Math.abs(value) * 1000).toFixed(0);
    return digits === '0' ? '0' : `${value < 0 ? '−' : '+'}${digits}`;
  };
  const size = (value: number): string => value.toFixed(3);
  return `${plain(nominal)} ${um(upper)}/${um(lower)} µm: ${size(nominal + lower)} to ${size(nominal + upper)} mm`;
}
