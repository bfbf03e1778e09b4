import type { NoSpacer, Shares, SpacerAnswer } from '../../analysis/mechanics/spacer-answer.ts';
import { length, micrometres, plain, share } from '../../engine/base/figures.ts';
import { textTable } from '../text-table.ts';
import { allocationLines } from './allocation-text.ts';
import { optionLines } from './options-text.ts';
import { percent } from './percent.ts';

/** What is asked for, as one sentence needs it. */
export interface AskedYield {
  readonly share: number;
  /** mm */
  readonly mostPlay: number;
}

/** The spacers to write for one variant, for people. */
export function solveText(
  title: string,
  answers: readonly (SpacerAnswer | NoSpacer)[],
  asked: AskedYield,
): string {
  const wanted = `wanted: ${percent(asked.share)} of builds with 0 to ${micrometres(asked.mostPlay)} of play once clamped`;
  const parts = answers.map((answer) =>
    'missing' in answer
      ? [`  ${answer.bearings.join(' and ')}: no spacer can be told — missing: ${answer.missing}`]
      : answerLines(answer, asked),
  );
  return [title, `  ${wanted}`, ...parts.flatMap((lines) => ['', ...lines])].join('\n');
}

function answerLines(answer: SpacerAnswer, asked: AskedYield): readonly string[] {
  const { bearings, spacer, from, to, range, widest, now, contributions, assumed } = answer;
  const rows = [
    [range ? 'write' : 'best', `${spacer} ${plain(to)}${tolerance(answer)}`, sayShares(answer)],
    ['now', `${spacer} ${plain(from.nominal)}${tolerance(answer)}`, sayShares(now)],
  ];
  const room = range
    ? `lengths from ${length(range.lo, 3)} to ${length(range.hi, 3)} give ${percent(asked.share)} with this tolerance`
    : widest === null
      ? `no length gives ${percent(asked.share)}, not even an exact one: other dimensions stray too far`
      : `no length gives ${percent(asked.share)} with this tolerance`;
  return [
    `  ${bearings.join(' and ')}`,
    ...textTable(rows, { indent: 4 }),
    `    ${room}`,
    ...(widest === null ? [] : [`    ${sayWidest(widest, asked.share)}`]),
    `    the play strays most by ${contributions.map(({ address, share: part }) => `${address} ${share(part)}`).join(', ')}`,
    `    were both bearings alike, as two of one batch may be: ${sayShares(answer.alike)}`,
    ...lostLines(answer),
    ...optionLines(answer),
    ...allocationLines(answer, asked.share),
    ...(assumed.length === 0 ? [] : ['    assumed', ...assumed.map((text) => `      ${text}`)]),
  ];
}

/** Builds that no length puts right. */
function lostLines({ usedUp, loose }: SpacerAnswer): readonly string[] {
  return [
    ...(usedUp > 0
      ? [
          `    in ${usedUp === 1 ? 'every build' : `${share(usedUp)} of builds`} the fits leave no clearance, whatever the length`,
        ]
      : []),
    ...(loose > 0 ? [`    in ${share(loose)} of builds an outer ring is loose in its seat`] : []),
  ];
}

function sayShares({ yield: right, loaded, playHigh }: Shares): string {
  return `${percent(right)} of builds right, ${share(loaded)} loaded, ${share(playHigh)} with too much play`;
}

function sayWidest(widest: number, wanted: number): string {
  return widest === 0
    ? `only an exact spacer gives ${percent(wanted)}: tighten another dimension`
    : `the spacer may be ±${plain(widest)} at most to give ${percent(wanted)}`;
}

function tolerance({ from: { lower, upper } }: SpacerAnswer): string {
  if (lower === 0 && upper === 0) return '';
  if (lower === -upper) return ` ±${plain(upper)}`;
  const said = (value: number): string =>
    value === 0 ? '0' : `${value < 0 ? '-' : '+'}${plain(Math.abs(value))}`;
  return ` ${said(upper)}/${said(lower)}`;
}
