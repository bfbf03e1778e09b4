import { plain, signed } from '../../engine/base/figures.ts';
import type { BearingSize, Candidate } from '../../engine/bearings/identify-bearing.ts';
import { textTable } from '../text-table.ts';
import type { IdentifyAnswer } from './identify-answer.ts';

/** The bearings that readings may belong to, and the near ones not to be taken for them. */
export function identifyText({ measured, uncertainty, candidates, nearMisses }: IdentifyAnswer): string {
  const { bore, outside, width } = uncertainty;
  const same = bore === outside && outside === width;
  const by = same ? plain(bore) : `${plain(bore)}, ${plain(outside)}, ${plain(width)}`;
  const head = `measured ${size(measured)} mm, each taken as ±${by} mm`;
  const found =
    candidates.length === 0
      ? ['  No known bearing agrees with all three readings.']
      : textTable([['code', 'size', 'bore off', 'outside off', 'width off', ''], ...candidates.map(line)], {
          indent: 2,
          right: [2, 3, 4],
        });
  const near = nearMisses.map((other) => [other.code, size(other), other.trap ?? '']);
  return `${[
    head,
    '',
    ...found,
    ...(near.length > 0 ? ['', '  Near, and not the same:', ...textTable(near, { indent: 4 })] : []),
    '',
    '  Ring widths run up to 0.12 mm under nominal (ISO 492); a code tells the size, not seal or clearance.',
  ].join('\n')}\n`;
}

function line(candidate: Candidate): readonly string[] {
  const { code, off, closed, note } = candidate;
  const only = closed === null ? '' : closed ? 'closed only' : 'open only';
  const said = [only, note ?? ''].filter((text) => text !== '').join('; ');
  return [code, size(candidate), signed(off.bore), signed(off.outside), signed(off.width), said];
}

function size({ bore, outside, width }: BearingSize): string {
  return `${plain(bore)} × ${plain(outside)} × ${plain(width)}`;
}
