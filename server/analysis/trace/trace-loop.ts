import type { Loop } from '../../assembly/loop.ts';
import { asBuilt, meanOf } from '../../assembly/settle.ts';
import type { Closed } from '../close.ts';
import { input, step, type TraceStep } from './trace-step.ts';

/** A loop as the sum of its dimensions at their means. */
export function traceLoop(
  name: string,
  symbol: string,
  loop: Loop,
  closed: Closed | null,
  how: 'drawn' | 'built',
): readonly TraceStep[] {
  if (!closed || loop.terms.length === 0) return [];
  const inputs = loop.terms.map(({ address, key, sign, count, settled }) => {
    const mean = meanOf(how === 'built' ? asBuilt(settled) : settled.drawn);
    const times = count === 1 ? '' : `${count} × `;
    const part = address.endsWith(`.${key}`)
      ? address
      : `${key === 'code' ? 'ring width' : key} of ${address}`;
    return input(`${sign === 1 ? '+' : '−'} ${times}${part}`, mean, 'mm');
  });
  const assumed = loop.terms.flatMap(({ settled }) => settled.assumed ?? []);
  return [
    step(input(name, closed.mean, 'mm'), symbol, null, inputs, [
      ...new Set([...assumed, ...(loop.wanted?.assumed ? [loop.wanted.assumed] : [])]),
    ]),
  ];
}
