/** Exponent of life against load of ball bearings (source `iso-281`). */
export const LIFE_EXPONENT = 3;
/** Weibull slope by which lives of ball bearings combine (source `iso-281`). */
export const SYSTEM_EXPONENT = 10 / 9;

/** Turns that nine in ten bearings reach, L10 = (C/P)³, millions (source `iso-281`); Infinity without load. */
export function basicLife(dynamicRating: number, equivalentLoad: number): number {
  return equivalentLoad > 0 ? (dynamicRating / equivalentLoad) ** LIFE_EXPONENT : Number.POSITIVE_INFINITY;
}

/** Hours of `millions` of turns at a speed in 1/min. */
export function lifeHours(millions: number, speed: number): number {
  return (millions * 1e6) / (60 * speed);
}

/** Kilometres of `millions` of turns of a wheel, its rolled circumference in mm. */
export function lifeKilometres(millions: number, circumference: number): number {
  return millions * circumference;
}

/** C/P that `hours` at a speed (1/min) need. */
export function neededLoadRatio(hours: number, speed: number): number {
  return ((60 * speed * hours) / 1e6) ** (1 / LIFE_EXPONENT);
}

/**
 * Life of several bearings that must all last, (Σ Li^−e)^(−1/e), in the unit of the lives: never more than the
 * shortest (source `iso-281`; e = 10/9 for balls, 9/8 for rollers).
 */
export function systemLife(lives: readonly number[], exponent = SYSTEM_EXPONENT): number {
  const sum = lives.reduce((total, life) => total + life ** -exponent, 0);
  return sum > 0 ? sum ** (-1 / exponent) : Number.POSITIVE_INFINITY;
}

/** One stretch of a duty. */
export interface DutyShare {
  /** Equivalent load, N. */
  readonly load: number;
  /** Share of the turns, any unit. */
  readonly turns: number;
}

/** Load that does the same damage as a duty of several, (Σ Fi³·ni / Σ ni)^⅓, N. */
export function meanLoad(duty: readonly DutyShare[]): number {
  const turns = duty.reduce((sum, share) => sum + share.turns, 0);
  const damage = duty.reduce((sum, share) => sum + share.load ** LIFE_EXPONENT * share.turns, 0);
  return turns > 0 ? (damage / turns) ** (1 / LIFE_EXPONENT) : 0;
}
