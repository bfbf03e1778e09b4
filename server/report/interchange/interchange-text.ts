import { exchangedWords, exchangeNames, nearWords } from '../../analysis/exchange/exchange-words.ts';
import { plain } from '../../engine/base/figures.ts';
import type { InterchangeAnswer } from './interchange-answer.ts';

/** What fits instead, for people. */
export function interchangeText(answer: InterchangeAnswer): string {
  const { bearing, spellings, alternatives, near } = answer;
  const size = (of: { bore: number; outside: number; width: number }): string =>
    [of.bore, of.outside, of.width].map(plain).join(' × ');
  return [
    `${bearing.code}: ${size(bearing)} mm`,
    ...placeLines(answer),
    ...(spellings.length > 0 ? ['', `  the same under another name: ${spellings.join(', ')}`] : []),
    ...(alternatives.length > 0
      ? ['', '  Fits in its place']
      : ['', '  No code of the same size is known to differ from it.']),
    ...alternatives.flatMap(({ code, exchange, price, inHub }) => [
      `    ${code}, ${exchangeNames[exchange]}`,
      ...price.map((text) => `      ${text}`),
      ...inHub.map((one) => `      here ${exchangedWords(one)}`),
    ]),
    ...(near.length > 0 ? ['', '  Looks right and is not'] : []),
    ...near.map((other) => `    ${other.code} (${size(other)}): ${nearWords(other)}`),
    '',
    '  Both bearings of a pair are exchanged together. The makers of hub and bearing have the last word.',
  ].join('\n');
}

/** Which bearings of the hub the figures are about; silence would look like an answer. */
function placeLines({ places, bearing }: InterchangeAnswer): readonly string[] {
  if (!places) return [];
  const { byCode, bySize } = places;
  if (byCode.length + bySize.length === 0)
    return ['', `  The hub holds no ${bearing.code}: nothing is worked out in it.`];
  if (bySize.length === 0) return [];
  const written = bySize.length === 1 ? 'is written by its size' : 'are written by their size';
  return ['', `  ${bySize.join(' and ')} ${written} alone and taken to be this bearing.`];
}
