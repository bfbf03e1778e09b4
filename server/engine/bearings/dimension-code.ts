/** Bore, outside and width read from the digits of a code, mm. */
export interface DigitSize {
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
}

/**
 * Reads five or six digits as bore, outside and width written together: 15267 is 15 × 26 × 7. Best split first:
 * two digits for the bore and two for the outside are the trade's habit (common practice); a split counts only when
 * its proportions are those of a cycle bearing.
 */
export function readDimensionCode(digits: string): readonly DigitSize[] {
  const splits: DigitSize[] = [];
  for (const [boreDigits, outsideDigits] of [
    [2, 2],
    [1, 2],
  ] as const) {
    const widthText = digits.slice(boreDigits + outsideDigits);
    if (widthText.length < 1 || widthText.length > 2 || widthText.startsWith('0')) continue;
    const size = {
      bore: Number(digits.slice(0, boreDigits)),
      outside: Number(digits.slice(boreDigits, boreDigits + outsideDigits)),
      width: Number(widthText),
    };
    if (isPlausibleSize(size.bore, size.outside, size.width)) splits.push(size);
  }
  return splits;
}

/**
 * Whether a bore, an outside and a width (mm) can be those of a cycle bearing: the section (outside − bore) / 2 runs
 * from 2 mm to the bore, and the width from half the section to three times it. Every line of the ISO 15 plan used
 * here, from a bore of 8 mm on, lies inside (common practice).
 */
export function isPlausibleSize(bore: number, outside: number, width: number): boolean {
  const section = (outside - bore) / 2;
  if (bore < 3 || bore > 50 || outside > 110) return false;
  return 2 <= section && section <= Math.max(6, bore * 1.25) && section / 2 <= width && width <= section * 3;
}
