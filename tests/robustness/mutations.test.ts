import { describe, expect, test } from 'vitest';
import { mutated } from './mutate.ts';
import { samples } from './samples.ts';
import { trials } from './trials.ts';

/** Texts in all; each is the same on every machine. */
const count = 5_000;
const each = Math.floor(count / samples.length);

describe.each(samples.map((sample, at) => ({ ...sample, first: at * each })))('$name', (sample) => {
  test(`${each} texts made of it are read, worked out, drawn, answered and mended`, () => {
    const { name, text, first } = sample;
    const wrong: string[] = [];
    for (let seed = first; seed < first + each && wrong.length < 5; seed++) {
      wrong.push(...trials(`seed ${seed}`, name, mutated(text, seed), seed));
    }
    expect(wrong).toEqual([]);
  });
});
