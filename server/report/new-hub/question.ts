/** One question at the bench. An empty answer is "not known" wherever that is possible. */
export interface Question {
  /** What is asked, a line. */
  readonly text: string;
  /** How the answer looks, and what an empty one means. */
  readonly hint: string;
  /** The answers there are, where only a few will do; the first is taken for an empty one. */
  readonly choices: readonly string[] | null;
  /** Why the last answer to this question was not taken. */
  readonly problem: string | null;
}

/** Asks until an answer is taken. `take` gives the value, or why not. */
export type Script<T> = Generator<Question, T, string>;

/** What people say in place of an answer they do not have. */
const notKnown =
  /^(\?+|-+|(i )?(don[’']?t|do not) know|not (known|sure|measured|seen|readable)|unknown|no idea)$/i;

/** A question whose answer is read by `take`; asked again, with the reason, until it is understood. */
export function* ask<T>(
  question: Omit<Question, 'problem'>,
  take: (answer: string) => { readonly value: T } | { readonly problem: string },
): Script<T> {
  let problem: string | null = null;
  for (;;) {
    const answer: string = yield { ...question, problem };
    const said = answer.trim();
    const taken = take(notKnown.test(said) ? '' : said);
    if ('value' in taken) return taken.value;
    problem = taken.problem;
  }
}

/** What is asked of everything that may be there without anybody having looked. */
export const seen = ['not looked', 'no', 'yes'] as const;

/** One of a few words; a beginning of one will do, nothing takes the first. */
export function* choose<const C extends string>(
  text: string,
  choices: readonly [C, ...C[]],
  hint = `${choices.join(', ')}; empty: ${choices[0]}`,
): Script<C> {
  return yield* ask({ text, hint, choices }, (answer) => {
    if (answer === '') return { value: choices[0] };
    const said = answer.toLowerCase();
    const whole = choices.filter((choice) => choice.toLowerCase() === said);
    // The whole word wins over others that begin with it: `no` is not `not looked`.
    const found =
      whole.length > 0 ? whole : choices.filter((choice) => choice.toLowerCase().startsWith(said));
    const [only] = found;
    return only !== undefined && found.length === 1
      ? { value: only }
      : { problem: `${answer} is none of ${choices.join(', ')}` };
  });
}
