import { decimalComma } from './decimal-comma.ts';
import type { Quantity, TemperatureRange } from './model.ts';
import { nearestOf } from './nearest.ts';
import { plainSigns } from './plain-signs.ts';
import type { ValueProblem } from './value-problem.ts';

export type QuantityKind = 'force' | 'torque' | 'mass' | 'stress' | 'rate' | 'pressure' | 'stiffness';
export type QuantityReading = { readonly quantity: Quantity } | { readonly problem: ValueProblem };

interface Units {
  /** With its article, as in a sentence. */
  readonly name: string;
  readonly base: Quantity['unit'];
  /** Factor to the base unit, by the unit's spelling without blanks, dots and case. */
  readonly factors: Readonly<Record<string, number>>;
  /** As they are best spelled. */
  readonly spelled: readonly string[];
  readonly accepted: string;
  /** The unit a bare number most likely means. */
  readonly likely: (value: number) => string;
}

/** Factors: SI Brochure (9th edition); kgf and lbf by standard gravity 9.80665 m/s² and 1 lb = 0.45359237 kg. */
const quantities: Readonly<Record<QuantityKind, Units>> = {
  force: {
    name: 'a force',
    base: 'N',
    factors: { n: 1, kn: 1000, dan: 10, kgf: 9.80665, kp: 9.80665, lbf: 4.4482216152605 },
    spelled: ['N', 'kN', 'daN', 'kgf', 'lbf'],
    accepted: '5 kN, 1100 N or 110 kgf',
    likely: (value) => (value < 50 ? 'kN' : 'N'),
  },
  torque: {
    name: 'a torque',
    base: 'N·mm',
    factors: { nm: 1000, nmm: 1, ncm: 10, kgfcm: 98.0665, kgfm: 9806.65 },
    spelled: ['N·m', 'N·mm'],
    accepted: '12 N·m',
    likely: () => 'N·m',
  },
  mass: {
    name: 'a mass',
    base: 'kg',
    factors: { kg: 1, g: 0.001 },
    spelled: ['kg', 'g'],
    accepted: '445 g or 95 kg',
    likely: (value) => (value < 200 ? 'kg' : 'g'),
  },
  stress: {
    name: 'a stress',
    base: 'MPa',
    factors: { mpa: 1, gpa: 1000, 'n/mm²': 1, 'n/mm2': 1, 'n/mm^2': 1 },
    spelled: ['MPa', 'GPa'],
    accepted: '71 GPa or 505 MPa',
    likely: (value) => (30 < value && value < 250 ? 'GPa' : 'MPa'),
  },
  rate: {
    name: 'a spring rate',
    base: 'N/mm',
    factors: { 'n/mm': 1, 'n/m': 0.001, 'kn/mm': 1000 },
    spelled: ['N/mm'],
    accepted: '40 N/mm',
    likely: () => 'N/mm',
  },
  pressure: {
    name: 'a pressure',
    base: 'bar',
    factors: { bar: 1, kpa: 0.01, psi: 0.0689475729 },
    spelled: ['bar', 'kPa', 'psi'],
    accepted: '4.5 bar',
    likely: () => 'bar',
  },
  stiffness: {
    name: 'a stiffness against bending or twisting',
    base: 'N·mm²',
    factors: { 'nm²': 1e6, nm2: 1e6, 'nm^2': 1e6, 'nmm²': 1, nmm2: 1, 'nmm^2': 1 },
    spelled: ['N·m²', 'N·mm²'],
    accepted: '110 N·m²',
    likely: () => 'N·m²',
  },
};

const numberAndUnit = /^\s*([+-]?(?:\d+\.?\d*|\.\d+))(?:\s*([^\s\d].*?))?\s*$/i;
const rangeAndUnit =
  /^\s*([+-]?\d+(?:\.\d+)?)\s*(?:°?\s*([CFK])\s*)?(?:\.\.\.?|…|to|–)\s*([+-]?\d+(?:\.\d+)?)\s*(.*?)\s*$/i;

/** Reads a force, torque, mass … into its base unit. A unit is always wanted. */
export function readQuantity(written: string, kind: QuantityKind): QuantityReading {
  const units = quantities[kind];
  const comma = decimalComma(written);
  if (comma) return { problem: comma };
  const match = numberAndUnit.exec(plainSigns(written));
  const whole = [0, written.length] as const;
  if (!match) {
    const message = `${quoted(written)} is not understood as ${units.name}; wanted is e.g. ${units.accepted}`;
    return { problem: { code: 'value-not-understood', message, at: whole } };
  }
  const value = Number(match[1]);
  const unit = match[2];
  if (unit === undefined) {
    const suggestion = `${written.trim()} ${units.likely(value)}`;
    const message = `${written.trim()} has no unit; ${units.name} is written with one, as in ${units.accepted}`;
    return { problem: { code: 'wrong-unit', message, at: whole, suggestion } };
  }
  const factor = factorOf(units, unit);
  if (factor === undefined) {
    const start = written.length - written.trimEnd().length + unit.length;
    const at = [Math.max(0, written.length - start), written.trimEnd().length] as const;
    const known = (Object.keys(quantities) as QuantityKind[]).find(
      (k) => factorOf(quantities[k], unit) !== undefined,
    );
    const what = known
      ? `${written.trim()} is ${quantities[known].name}; ${units.name} is wanted here`
      : `${unit} is no unit of ${units.name.replace(/^an? /, '')}; wanted is`;
    const message = `${what}${known ? ', as in' : ''} ${units.accepted}`;
    const near = known ? null : nearestOf(unit.replace(/\.$/, ''), units.spelled, 1);
    const problem = { code: 'wrong-unit', message, at } as const;
    return { problem: near ? { ...problem, suggestion: `${match[1]} ${near}` } : problem };
  }
  if (value < 0) {
    const message = `${written.trim()} is negative; ${units.name} is written without a sign`;
    return { problem: { code: 'value-not-understood', message, at: whole } };
  }
  return { quantity: { written, value: Math.round(value * factor * 1e9) / 1e9, unit: units.base } };
}

/** `-10..45 °C`. A range in °F is a wrong unit, with the range in °C as suggestion. */
export function readTemperatureRange(
  written: string,
): { readonly range: TemperatureRange } | { readonly problem: ValueProblem } {
  const whole = [0, written.length] as const;
  const comma = decimalComma(written);
  if (comma) return { problem: comma };
  const match = rangeAndUnit.exec(plainSigns(written));
  if (!match) {
    const message = `${quoted(written)} is not understood as a temperature range; wanted is e.g. -10..45 °C`;
    return { problem: { code: 'value-not-understood', message, at: whole } };
  }
  const lo = Number(match[1]);
  const hi = Number(match[3]);
  const unit = (match[4] ?? '').replace(/[°º˚\s]|deg/gi, '').toUpperCase();
  if (unit === 'F' || unit === 'K') {
    const celsius = (t: number): number => Math.round(unit === 'F' ? ((t - 32) * 5) / 9 : t - 273.15);
    const suggestion = `${celsius(lo)}..${celsius(hi)} °C`;
    const message = `${written.trim()} is ${suggestion}; temperatures are written in °C`;
    return { problem: { code: 'wrong-unit', message, at: whole, suggestion } };
  }
  if (unit !== 'C') {
    const suggestion = `${match[1]}..${match[3]} °C`;
    const message = `${written.trim()} has no unit; a temperature range is written as ${suggestion}`;
    return { problem: { code: 'wrong-unit', message, at: whole, suggestion } };
  }
  if (hi < lo) {
    const suggestion = `${match[3]}..${match[1]} °C`;
    const message = `the range stands the wrong way round: ${match[1]} is above ${match[3]}; the lower one comes first`;
    return { problem: { code: 'value-not-understood', message, at: whole, suggestion } };
  }
  return { range: { written, lo: lo + 0, hi: hi + 0 } };
}

const factorOf = (units: Units, unit: string): number | undefined =>
  Object.hasOwn(units.factors, unitKey(unit)) ? units.factors[unitKey(unit)] : undefined;

/** `N·m`, `Nm`, `N.m`, `N m` are one unit. */
const unitKey = (unit: string): string => unit.toLowerCase().replace(/[\s·⋅∙.*x]/g, '');

const quoted = (written: string): string => (written.trim() === '' ? 'nothing' : written.trim());
