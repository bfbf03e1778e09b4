import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { LinePart } from '../../assembly/line.ts';
import { neighbours, ringFace } from '../ring-face.ts';

/** Two end caps whose faces each suit the other's bearing; null where they are right, or wrong both ways. */
export function swappedFaces(
  variant: VariantAnalysis,
  sealGap: number,
): readonly [LinePart, LinePart] | null {
  const caps = variant.assembly.line.filter(({ part }) => part.kind === 'end-cap');
  const [left, right] = caps;
  if (!left || !right || caps.length !== 2) return null;
  const [leftBearing] = neighbours(variant.assembly.line, left);
  const [rightBearing] = neighbours(variant.assembly.line, right);
  const [a, b] = [left.part.values.face?.value.nominal, right.part.values.face?.value.nominal];
  // Of a bearing that could not be read nobody knows which face suits it.
  if (!leftBearing?.bearing || !rightBearing?.bearing || a === undefined || b === undefined) return null;
  const rubsAsWritten = ringFace(leftBearing, a, sealGap) || ringFace(rightBearing, b, sealGap);
  const rubsSwapped = ringFace(leftBearing, b, sealGap) || ringFace(rightBearing, a, sealGap);
  return rubsAsWritten && !rubsSwapped ? [left, right] : null;
}
