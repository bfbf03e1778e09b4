/** Turns as they are made at a nipple: in eighths, an eighth at the least; the sign is left to the words around. */
export function sayTurns(turns: number): string {
  const eighths = Math.max(1, Math.round(Math.abs(turns) * 8));
  const whole = Math.floor(eighths / 8);
  const rest = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'][eighths % 8] ?? '';
  const turn = whole === 1 && rest === '' ? 'turn' : 'turns';
  return whole === 0 ? `${rest} turn` : `${whole}${rest} ${turn}`;
}
