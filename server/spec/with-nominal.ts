import { scanDimension } from './dimension.ts';
import type { Dimension } from './model.ts';

/**
 * The written dimension with another nominal, everything else kept: notation, tolerance, unit, measured part.
 * Limits move together; a fraction of an inch becomes a decimal one. Beside a measured value alone the drawn one is put first.
 *
 * @param nominal mm
 */
export function withNominal(dimension: Dimension, nominal: number): string {
  const { written } = dimension;
  const scan = scanDimension(written, 'offset');
  const tokens = 'problem' in scan ? scanFitted(written) : scan.nominal;
  const scale = dimension.unit === 'in' ? 25.4 : 1;
  const first = tokens[0];
  if (!first) return `${figure(nominal / scale, '', scale)} ${written.trim()}`;
  const shift = (nominal - dimension.nominal) / scale;
  let text = written;
  for (const token of tokens.toReversed()) {
    const old = written.slice(token.at[0], token.at[1]);
    const value = tokens.length === 2 ? token.value + shift : nominal / scale;
    text =
      text.slice(0, token.at[0]) + figure(value, token.fraction ? '' : old, scale) + text.slice(token.at[1]);
  }
  return text;
}

function scanFitted(written: string) {
  for (const context of ['bore', 'shaft'] as const) {
    const scan = scanDimension(written, context);
    if (!('problem' in scan)) return scan.nominal;
  }
  return [];
}

/** As many decimals as stood there, more where the value needs them: to 0.1 µm in mm, to 0.00001 in. */
function figure(value: number, old: string, scale: number): string {
  const kept = /\.(\d*)$/.exec(old)?.[1]?.length ?? 0;
  const most = Math.max(kept, scale === 1 ? 4 : 6);
  const [whole = '0', decimals = ''] = value.toFixed(most).split('.');
  const needed = decimals.replace(/0+$/, '').padEnd(kept, '0');
  const text = needed === '' ? whole : `${whole}.${needed}`;
  return /^-0(?:\.0*)?$/.test(text) ? text.slice(1) : text;
}
