const longest = 400;

/** A message as one line that a terminal only shows: no control characters, nothing endless. */
export function printable(message: string): string {
  const plain = message.replace(/[\p{Cc}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069]/gu, '·');
  return plain.length <= longest ? plain : `${plain.slice(0, longest)} …`;
}
