/** A message longer than this quotes more of a file than anybody reads. */
const long = 300;

/** A message with the very long words and stretches it quotes cut; any other as it is. */
export function brief(message: string): string {
  if (message.length <= long) return message;
  const words = message.replace(/\S{61,}/g, (word) => `${whole(word.slice(0, 40))}…`);
  return words.length <= 2 * long ? words : `${whole(words.slice(0, long))} … ${words.slice(-long / 2)}`;
}

/** Never half of a character that takes two. */
const whole = (text: string): string => text.replace(/[\ud800-\udbff]$/, '');
