import { sayKilometres } from '../../analysis/life/say-kilometres.ts';
import type { TracedValue, TraceStep } from '../../analysis/trace/trace-step.ts';
import { force, micrometres, millimetres, stress } from '../../engine/base/figures.ts';
import { sources } from '../../engine/base/sources.ts';
import { textTable } from '../text-table.ts';

/** A chain of numbers for people: each with its formula, what it was fed, its source and what was assumed. */
export function traceText(title: string, steps: readonly TraceStep[]): string {
  return `${[title, ...steps.flatMap((link) => ['', ...stepLines(link)])].join('\n')}\n`;
}

function stepLines({ formula, source, inputs, assumed, ...result }: TraceStep): readonly string[] {
  const fed = textTable(
    inputs.map((value) => [value.name, tracedValue(value)]),
    { indent: 6, right: [1] },
  );
  return [
    `  ${result.name}: ${tracedValue(result)}`,
    ...(formula === null ? [] : [`    ${formula}`]),
    ...fed,
    ...(source === null ? [] : [`    source: ${sources[source].title}`]),
    ...assumed.map((text) => `    assumed: ${text}`),
  ];
}

/** With the digits its size deserves: below a millimetre in µm to a tenth. */
export function tracedValue({ value, unit }: TracedValue): string {
  if (unit === 'N') return force(value);
  if (unit === 'MPa') return 10_000 <= value ? `${(value / 1000).toFixed(1)} GPa` : stress(value);
  if (unit === 'mm' && Math.abs(value) < 0.5) return tenths(value);
  if (unit === 'mm') return millimetres(value, 3);
  if (unit === 'mm/N') return `${(value * 1e6).toFixed(2)} µm/kN`;
  if (unit === 'mm²') return `${value.toFixed(1)} mm²`;
  if (unit === 'km') return sayKilometres(value);
  if (unit === '°') return `${value.toFixed(1)}°`;
  if (unit === '°C') return `${value.toFixed(0)} °C`;
  return String(Number(value.toPrecision(4)));
}

function tenths(value: number): string {
  const said = (value * 1000).toFixed(1).replace('-', '−');
  return Number(value.toFixed(4)) === 0 ? micrometres(0) : `${said} µm`;
}
