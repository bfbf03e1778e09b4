import { decimalComma } from './decimal-comma.ts';
import { plainSigns } from './plain-signs.ts';
import type { Reading } from './small-values.ts';
import type { SpokeProfile } from './wheel-model.ts';

/** Wires of spokes are between these, mm. */
const thinnest = 1;
const thickest = 4;

/** `2.0`, `2.0/1.8/2.0`, `2.3/2.0`, `2.0/2.3x0.9/2.0`: diameters from head to thread, a blade as width x thickness. */
export function readSpokeProfile(written: string): Reading<SpokeProfile> {
  const comma = decimalComma(written);
  if (comma) return { problem: comma };
  const parts = plainSigns(written)
    .replace(/mm\s*$/, '')
    .split(/[/-]/)
    .map((part) => part.trim());
  const blades = parts.map((part) => /^(\d*\.?\d+)\s*[x×]\s*(\d*\.?\d+)$/.exec(part));
  const bladed = blades.findIndex((match) => match !== null);
  const blade = blades[bladed];
  const round = parts.filter((_, at) => at !== bladed).map(Number);
  const fits = round.every((d) => thinnest <= d && d <= thickest);
  const flat = blade ? { width: Number(blade[1]), thickness: Number(blade[2]) } : null;
  const blunt = flat === null || (0.5 <= flat.thickness && flat.thickness <= flat.width && flat.width <= 8);
  const many = parts.length <= 3 && round.length > 0 && (flat === null || parts.length === 3) && bladed !== 0;
  if (fits && blunt && many && bladed !== 2) {
    return { value: { written, diameters: round, blade: flat } };
  }
  const text = written.trim() === '' ? 'nothing' : written.trim();
  const message = `${text} is not understood as the profile of a spoke; wanted is one diameter, or those from head to thread, e.g. 2.0/1.8/2.0 or 2.0/2.3x0.9/2.0`;
  return { problem: { code: 'value-not-understood', message, at: [0, written.length] } };
}
