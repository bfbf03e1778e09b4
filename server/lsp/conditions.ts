import type { VariantAnalysis } from '../analysis/analyze.ts';
import { bench, type Conditions } from '../analysis/mechanics/conditions.ts';
import { isObject } from './settings.ts';

/** What a hub is looked at under, within what can be reckoned with: −60 to 120 °C, up to 50 kN. */
const ends = { coldest: -60, warmest: 120, strongest: 50_000 };

/** Conditions as a client sent them; anything odd is the bench and the written clamp. */
export function conditionsOf(sent: unknown): Conditions {
  if (!isObject(sent)) return bench;
  const { temperature, clampForce } = sent;
  return {
    temperature: isNumber(temperature)
      ? Math.min(Math.max(temperature, ends.coldest), ends.warmest)
      : bench.temperature,
    clampForce: isNumber(clampForce) ? Math.min(Math.max(clampForce, 0), ends.strongest) : null,
  };
}

/** A variant whose mechanics are those of the conditions, for everything that draws or tabulates it. */
export function under(variant: VariantAnalysis, conditions: Conditions): VariantAnalysis {
  return { ...variant, mechanics: (how, asked = conditions) => variant.mechanics(how, asked) };
}

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
