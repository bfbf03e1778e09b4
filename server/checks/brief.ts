/** A message longer than this quotes more of a file than anybody reads. */
const long = 300;

/** A message on one line, with the very long words and stretches it quotes cut. */
export function brief(message: string): string {
  const line = /[\r\n]/.test(message) ? message.replace(/\s*[\r\n]+\s*/g, ' ') : message;
  if (line.length <= long) return line;
  const words = line.replace(/\S{61,}/g, (word) => `${whole(word.slice(0, 40))}…`);
  return words.length <= 2 * long ? words : `${whole(words.slice(0, long))} … ${words.slice(-long / 2)}`;
}

/** Never half of a character that takes two. */
const whole = (text: string): string => text.replace(/[\ud800-\udbff]$/, '');
