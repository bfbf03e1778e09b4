import { force } from '../../engine/base/figures.ts';
import { compoundForce, type RangedValue } from '../../engine/seats/mounting-force.ts';
import { compoundStrength } from '../../engine/tables/retaining-compound.ts';

/** What a retaining compound holds of an outer ring beside its press fit, N; `width` is the length of contact, mm. */
export function compoundHold(outside: number, width: number): RangedValue {
  const { least, typical, most } = compoundStrength;
  const held = (strength: number): number => compoundForce(strength, outside, width);
  return { least: held(least), typical: held(typical), most: held(most) };
}

/** `5.3 kN by its retaining compound, 10 MPa in shear; 5 to 20 MPa are 2.7 to 10.6 kN` */
export function compoundInBrief(hold: RangedValue): string {
  const { least, typical, most } = compoundStrength;
  return `${force(hold.typical)} by its retaining compound, ${typical} MPa in shear; ${least} to ${most} MPa are ${force(hold.least)} to ${force(hold.most)}`;
}
