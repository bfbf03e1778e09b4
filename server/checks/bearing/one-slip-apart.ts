import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { nearestOf } from '../../spec/nearest.ts';
import type { Draft } from '../check.ts';
import { copyCode, type Known } from './copy-code.ts';
import { ownCode, saySize } from './fitting.ts';

/** Without seats to tell, left and right of a front hub whose codes are one slip apart. */
export function* oneSlipApart(analysis: Analysis, { assembly }: VariantAnalysis): Iterable<Draft> {
  const [left, right] = assembly.bearings;
  if (assembly.hub.values.position?.value !== 'front' || assembly.bearings.length !== 2) return;
  if (!left?.bearing || !right?.bearing || saySize(left.bearing) === saySize(right.bearing)) return;
  const [one, other] = [ownCode(left), ownCode(right)];
  if (!one || !other || nearestOf(other.value, [one.value], 1) === null) return;
  const said = ({ stacked, bearing }: Known): string => `${stacked.address} is ${saySize(bearing)}`;
  const a: Known = { stacked: left, bearing: left.bearing };
  const b: Known = { stacked: right, bearing: right.bearing };
  yield {
    path: other.path,
    severity: 'information',
    message: `${said(b)}, ${said(a)}: ${other.value} is one slip from ${one.value} — make them one size, or write their seats`,
    related: [{ path: one.path, message: said(a) }],
    data: { bearings: [b, a].map(({ stacked, bearing }) => [stacked.address, saySize(bearing)]) },
    fixes: [...copyCode(analysis, a, b, false), ...copyCode(analysis, b, a, false)],
  };
}
