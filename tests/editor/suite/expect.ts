/** The few assertions that run in every extension host, where no test framework is at hand. */
export function equal(actual: unknown, expected: unknown): void {
  const [found, wanted] = [JSON.stringify(actual), JSON.stringify(expected)];
  if (found !== wanted) throw new Error(`wanted ${wanted}, found ${found}`);
}

export function holds(text: string, part: string | RegExp): void {
  const found = typeof part === 'string' ? text.includes(part) : part.test(text);
  if (!found) throw new Error(`wanted ${part} in ${JSON.stringify(text.slice(0, 600))}`);
}

/** Asks again until there is an answer; fails after `patience` ms. */
export async function until<T>(
  what: string,
  ask: () => T | undefined | false | PromiseLike<T | undefined | false>,
  patience = 15_000,
): Promise<T> {
  const end = Date.now() + patience;
  while (Date.now() < end) {
    const answer = await ask();
    if (answer) return answer;
    await new Promise((resolve) => setTimeout(resolve, 40));
  }
  throw new Error(`waited ${patience / 1000} s for ${what}`);
}
