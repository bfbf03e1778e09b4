import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { Closed } from '../../analysis/close.ts';
import type { ResolvedLimits } from '../../analysis/limits.ts';
import { shareOutsideOneBatch } from '../../analysis/one-batch.ts';
import { type Limits, meanOf } from '../../assembly/settle.ts';
import { length, plain, share } from '../../engine/base/figures.ts';
import { loopTable } from '../loop-table.ts';
import { textTable } from '../text-table.ts';
import { playLines } from './play-text.ts';
import { assumptions } from './stack-json.ts';

/** The stack of every variant for people: parts with tolerances and shares, loops, what was assumed. */
export function stackText(
  file: string,
  variants: readonly VariantAnalysis[],
  limits: ResolvedLimits,
): string {
  return `${variants.map((variant) => variantText(file, variant, limits)).join('\n\n')}\n`;
}

function variantText(file: string, variant: VariantAnalysis, limits: ResolvedLimits): string {
  const name = variant.assembly.hub.values.hub?.value ?? file;
  const title = variant.name === null ? `${name} — ${file}` : `${name}, variant ${variant.name} — ${file}`;
  const rows = loopTable(variant, limits);
  const measured = rows.some((row) => row.measured !== '');
  const head = [
    'loop, mm',
    'nominal',
    'mean',
    'worst case',
    'root-sum-square',
    'wanted',
    'outside',
    ...(measured ? ['as measured'] : []),
    'verdict',
  ];
  const lines = rows.map((row) => [
    row.what,
    row.nominal,
    row.mean,
    row.worst,
    row.rss,
    row.wanted,
    row.outside,
    ...(measured ? [row.measured] : []),
    row.verdict,
  ]);
  return [
    title,
    '',
    ...partsTable(variant),
    '',
    ...(rows.length === 0
      ? ['  No loop closes yet.']
      : textTable([head, ...lines], { indent: 2, right: [1, 2] })),
    ...batchLines(variant),
    ...playLines(variant, limits),
    ...list(
      'Not checked',
      variant.unchecked.map(({ what, missing }) => `${what} — missing: ${missing}`),
    ),
    ...list('Assumed', assumptions(variant)),
  ].join('\n');
}

/** The clamped width where rings of one kind are alike, as far as that makes a difference. */
function batchLines({ width: { loop, drawn } }: VariantAnalysis): readonly string[] {
  const alike = shareOutsideOneBatch(loop, 'drawn');
  if (alike === null || drawn?.shareOutside === null || drawn === null) return [];
  const said = share(alike);
  if (said === share(drawn.shareOutside)) return [];
  return [`  clamped width: were rings of one kind alike, as those of one batch may be, ${said} outside`];
}

/** Every part of the clamped line: where it begins, how long it is, and its share of the spread. */
function partsTable(variant: VariantAnalysis): readonly string[] {
  const { loop, drawn } = variant.width;
  const lines = variant.assembly.line.map(({ address, length: item, at, bearing }) => {
    const begins = at ? length(at.left) : '';
    const code = bearing?.bearing?.code ?? '';
    if (!item.settled) return [address, code, begins, `${item.key} missing`, '', '', ''];
    const { drawn: limits, built } = item.settled;
    const times = item.count === 1 ? '' : `${item.count} × `;
    return [
      address,
      code,
      begins,
      `${times}${plain(limits.nominal)}${tolerance(limits)}`,
      length(item.count * meanOf(limits), 3),
      shareOf(drawn, loop.terms.indexOf(item)),
      built ? `measured ${plain(built.nominal)}${tolerance(built)}` : '',
    ];
  });
  return textTable([['part', 'code', 'begins', 'length, mm', 'mean', 'share'], ...lines], {
    indent: 2,
    right: [2, 4, 5],
  });
}

function shareOf(closed: Closed | null, index: number): string {
  const found = closed?.contributions.find(({ id }) => id === String(index));
  return found ? share(found.share) : '';
}

/** ` ±0.02`, ` 0/−0.12`, or nothing for an exact length. */
function tolerance({ lower, upper }: Limits): string {
  if (lower === 0 && upper === 0) return '';
  if (lower === -upper) return ` ±${plain(upper)}`;
  return ` ${deviation(upper)}/${deviation(lower)}`;
}

function deviation(value: number): string {
  if (value === 0) return '0';
  return `${value < 0 ? '−' : '+'}${plain(Math.abs(value))}`;
}

function list(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['', `  ${title}`, ...lines.map((line) => `    ${line}`)];
}
