import type { StackBearing } from '../../assembly/bearings.ts';
import type { InnerGeometry } from '../../engine/play/inner-geometry.ts';
import type { RangedValue } from '../../engine/seats/mounting-force.ts';
import { angularContact } from './angular-contact.ts';
import { compoundInBrief } from './compound-hold.ts';
import type { Around } from './mounted-bearing.ts';

/** What was taken for granted of a bearing in its seat and on its axle, each in words. */
export function mountedAssumptions(
  stack: StackBearing,
  { shell, axle, sleeve }: Pick<Around, 'shell' | 'axle' | 'sleeve'>,
  { ballBasis, grooveBasis, geometry }: InnerGeometry,
  isFitted: boolean,
  compound: RangedValue | null,
): readonly string[] {
  const said: string[] = [];
  if (ballBasis === 'estimate') {
    said.push(
      `${geometry.count} balls of ${geometry.diameter.toFixed(2)} mm in ${stack.address}, estimated from the section`,
    );
  }
  if (grooveBasis === 'estimate') {
    said.push(
      `groove radius ${geometry.innerConformity.toFixed(3)} of the ball in ${stack.address}, estimated`,
    );
  }
  const angle = angularContact(stack)?.angle ?? null;
  if (angle !== null) {
    const degrees = Math.round((angle * 180) / Math.PI);
    said.push(`contact angle of ${stack.address} as made taken as ${degrees}° exactly`);
    if (!stack.part.values['face-offset'])
      said.push(`ring faces of ${stack.address} taken as flush where its balls just touch`);
  }
  if (isFitted && shell?.assumed) said.push(shell.assumed);
  if (isFitted && sleeve) {
    if (sleeve.material.assumed) said.push(sleeve.material.assumed);
    said.push(`sleeve around ${stack.address} and its shell taken as one body that grows as the shell does`);
  }
  if (axle.assumed) said.push(axle.assumed);
  if (compound) said.push(`${stack.address} taken as held with ${compoundInBrief(compound)}`);
  return said;
}
