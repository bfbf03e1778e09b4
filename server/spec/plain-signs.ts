/**
 * The same text with typographic signs as plain ones, character for character, so that offsets stay true:
 * − becomes -, × and X between figures become x, every kind of blank becomes a space, μ becomes µ.
 * The en dash is left alone: it could mean a minus or a range, and neither is guessed.
 */
export function plainSigns(written: string): string {
  if (!/[^\x20-\x7e±µ]/.test(written)) return written;
  return written
    .replace(/[\u2212\u2010\u2011\uff0d]/g, '-')
    .replace(/\u00d7/g, 'x')
    .replace(/[\u00a0\u1680\u2000-\u200b\u202f\u205f\u3000\ufeff\t\r\n]/g, ' ')
    .replace(/\u03bc/g, 'µ')
    .replace(/\uff0b/g, '+')
    .replace(/[\u00f8\u2300\u03a6\u03c6\u2205]/g, 'Ø');
}
