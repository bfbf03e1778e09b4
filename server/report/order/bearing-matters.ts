import type { DecodedBearing } from '../../engine/bearings/decode-bearing.ts';

/** What the suffixes of a bearing say, as far as a supplier must keep to it, in plain words. */
export function bearingMatters(bearing: DecodedBearing): string {
  const { clearance, material, fullComplement, toleranceClass, kind, contactAngle, cage } = bearing;
  if (material === 'unknown') return 'seals and clearance not written';
  return [
    closedBy(bearing),
    ...(kind === 'deep-groove' ? [`clearance ${clearance.group}`] : []),
    ...(contactAngle === null ? [] : [`contact angle ${contactAngle}°`]),
    ...(material === 'steel' ? [] : [material]),
    ...(fullComplement ? ['full complement'] : []),
    ...(cage === null ? [] : [`${cage} cage`.replace(/ cage cage$/, ' cage')]),
    ...(toleranceClass === 'Normal' ? [] : [`class ${toleranceClass}`]),
  ].join(', ');
}

function closedBy({ closure, closedSides, rubs }: DecodedBearing): string {
  if (closure === 'open') return 'open';
  const lips = rubs === true ? 'rubbing ' : rubs === false && closure === 'seal' ? 'non-rubbing ' : '';
  return `${lips}${closure}${closedSides === 2 ? 's' : ' on one side'}`;
}
