import { plain } from '../../engine/base/figures.ts';
import type { BearingKind, DecodedBearing } from '../../engine/bearings/decoded-bearing.ts';
import { type Deviation, ringDeviations } from '../../engine/bearings/ring-deviations.ts';
import { textTable } from '../text-table.ts';
import type { BearingAnswer } from './bearing-answer.ts';

const kinds: Readonly<Record<BearingKind, string>> = {
  'deep-groove': 'deep groove ball bearing',
  'angular-contact': 'angular contact ball bearing',
  'double-row-angular-contact': 'double row angular contact ball bearing',
};

/** A decoded bearing for people, or why the code could not be read and what was near it. */
export function bearingText(code: string, answer: BearingAnswer): string {
  if ('failure' in answer) {
    const near = answer.failure.didYouMean.map((other) => [other.code, other.size]);
    const { error } = answer.failure;
    // Most errors begin with the code they are about.
    const head = error.startsWith(code) ? error : `${code}: ${error}`;
    return `${[head, ...(near.length > 0 ? ['Near it:', ...textTable(near, { indent: 2 })] : [])].join('\n')}\n`;
  }
  const { bearing, houseCode } = answer;
  const title = houseCode === null ? bearing.code : `${houseCode}, a code of the house for ${bearing.code}`;
  const lines = [...sizeLines(bearing), ...kindLines(bearing), ...loadLines(bearing)];
  return `${[
    `${title}: ${kinds[bearing.kind]}, ${plain(bearing.bore)} × ${plain(bearing.outside)} × ${plain(bearing.width)} mm`,
    '',
    ...textTable(lines, { indent: 2 }),
    ...section('Notes', bearing.notes),
    ...section('Sources', [...bearing.sources, `tolerances: ${ringDeviations(bearing).source}`]),
  ].join('\n')}\n`;
}

function sizeLines(bearing: DecodedBearing): readonly (readonly string[])[] {
  const { bore, outside, width, class: held } = ringDeviations(bearing);
  const { widthOpen, widthClosed } = bearing;
  const differs = widthOpen !== null && widthClosed !== null && widthOpen !== widthClosed;
  return [
    ['bore', `${plain(bearing.bore)} mm, ${sayDeviation(bore)}`],
    ['outside', `${plain(bearing.outside)} mm, ${sayDeviation(outside)}`],
    ['width', `${plain(bearing.width)} mm, ${sayDeviation(width)}`],
    ...(differs ? [['', `open ${plain(widthOpen)}, closed ${plain(widthClosed)} mm`]] : []),
    ['tolerances', `ISO 492, class ${held}`],
    ['chamfer', bearing.chamferMin === null ? 'not known' : `${plain(bearing.chamferMin)} mm at least`],
  ];
}

function kindLines(bearing: DecodedBearing): readonly (readonly string[])[] {
  const { group, minUm, maxUm } = bearing.clearance;
  const limits = minUm === null || maxUm === null ? 'limits not in a table' : `${minUm} to ${maxUm} µm`;
  return [
    ['closed by', closure(bearing)],
    ['clearance', `group ${group}, ${limits}, before mounting`],
    ...(bearing.contactAngle === null ? [] : [['contact angle', `${plain(bearing.contactAngle)}°`]]),
    ['tolerance class', bearing.toleranceClass],
    ...(bearing.material === 'steel' ? [] : [['material', bearing.material]]),
    ...(bearing.fullComplement ? [['balls fill the groove', 'full complement, no cage']] : []),
    ...(bearing.cage === null ? [] : [['cage', bearing.cage]]),
    ...(bearing.standardEquivalent === null ? [] : [['today written', bearing.standardEquivalent]]),
    ...bearing.ambiguousSuffixes.map(({ suffix, meanings }) => [`suffix ${suffix}`, meanings.join('; or: ')]),
  ];
}

function closure({ closure: by, closedSides, rubs }: DecodedBearing): string {
  if (by === 'open') return 'nothing, open';
  const what = closedSides === 2 ? `${by}s on both sides` : `a ${by} on one side`;
  if (rubs === null) return `${what}; whether the lip rubs differs between makers`;
  return `${what}, ${rubs ? 'rubbing' : 'not rubbing'}`;
}

function loadLines({ dynamicRating, staticRating, balls }: DecodedBearing): readonly (readonly string[])[] {
  return [
    ...(dynamicRating === null ? [] : [['dynamic rating', `${dynamicRating} N, for comparison`]]),
    ...(staticRating === null ? [] : [['static rating', `${staticRating} N, for comparison`]]),
    ...(balls === null ? [] : [['balls', `${balls.count} × ${plain(balls.diameter)} mm`]]),
  ];
}

/** `0/−8 µm`, `±5 µm`. */
function sayDeviation({ lower, upper }: Deviation): string {
  const um = (value: number): string => {
    const text = (Math.abs(value) * 1000).toFixed(0);
    return text === '0' ? '0' : `${value < 0 ? '−' : '+'}${text}`;
  };
  return lower === -upper ? `±${(upper * 1000).toFixed(0)} µm` : `${um(upper)}/${um(lower)} µm`;
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['', `  ${title}`, ...lines.map((line) => `    ${line}`)];
}
