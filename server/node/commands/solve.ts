import type { VariantAnalysis } from '../../analysis/analyze.ts';
import { type NoSpacer, type SpacerAnswer, spacerAnswers } from '../../analysis/mechanics/spacer-answer.ts';
import { jsonText } from '../../report/json-text.ts';
import { spacerJson } from '../../report/solve/solve-json.ts';
import { solveText } from '../../report/solve/solve-text.ts';
import { messageLines, misused } from '../failures.ts';
import type { Command, Outcome } from '../outcome.ts';
import { readOneHub } from '../read-one-hub.ts';

/** `solve FILE --for play`: the spacer to write so that the wanted share of builds has the right play. */
export const solve: Command = {
  name: 'solve',
  usage: 'solve FILE --for play [--yield 0.9973]',
  summary: 'Say which spacer to write so that enough builds have play, and not too much, once clamped.',
  options: {
    for: { takes: 'WHAT', choices: ['play'], summary: 'what is to come right: play' },
    yield: {
      takes: 'SHARE',
      summary:
        'share of builds that must come right, 0 to 1 or in %; without it what share-outside leaves, 0.9973',
    },
  },
  run: ({ words, options, json }, cwd): Outcome => {
    const [path, ...more] = words;
    if (path === undefined || more.length > 0)
      return misused('solve wants one hub file', json, { variants: [] });
    const written = options.get('yield');
    const asked = written === undefined ? undefined : readShare(written);
    if (asked === null) {
      const message = `--yield ${written} is not understood; wanted is a share above 0 and below 1, as in --yield 0.9973`;
      return misused(message, json, { file: path, variants: [] });
    }
    const read = readOneHub(path, cwd);
    if ('message' in read) return misused(read.message, json, { file: path, variants: [] });
    const { variants, limits } = read.snapshot.analysis;
    const share = asked ?? 1 - limits.value('share-outside');
    const messages = read.hint === null ? [] : [read.hint];
    if (variants.length === 0) messages.push(`${path}: no hub could be read`);
    const mostPlay = limits.value('play-clamped');
    const solved = variants.map((variant) => ({
      variant,
      drawn: spacerAnswers(variant, 'drawn', { limits, share }),
      built: variant.pairs.some((pair) => pair.built)
        ? spacerAnswers(variant, 'built', { limits, share })
        : null,
    }));
    const answers = solved.flatMap(({ drawn }) => drawn);
    if (variants.length > 0 && answers.length === 0)
      messages.push(`${path}: no two bearings stand in one housing, so there is no play to solve for`);
    const out = json
      ? jsonText({
          file: path,
          for: 'play',
          wanted: { yield: share, playLeast: 0, playMost: mostPlay },
          variants: solved.map(({ variant, drawn, built }) => ({
            name: variant.name,
            pairs: drawn.map(spacerJson),
            ...(built ? { measured: built.map(spacerJson) } : {}),
          })),
        })
      : solved
          .flatMap(({ variant, drawn, built }) => [
            solveText(titleOf(variant, path, ''), drawn, { share, mostPlay }),
            ...(built
              ? [solveText(titleOf(variant, path, ', as measured'), built, { share, mostPlay })]
              : []),
          ])
          .map((text) => `${text}\n`)
          .join('\n');
    const found = answers.length > 0 && answers.every(isReached);
    return { exit: found ? 0 : 1, out, err: messageLines(messages) };
  },
};

const isReached = (answer: SpacerAnswer | NoSpacer): boolean => 'range' in answer && answer.range !== null;

function titleOf({ name, assembly }: VariantAnalysis, path: string, more: string): string {
  const hub = assembly.hub.values.hub?.value ?? path;
  return `${name === null ? hub : `${hub}, variant ${name}`} — ${path}${more}`;
}

function readShare(written: string): number | null {
  const match = /^\s*(\d*\.?\d+)\s*(%?)\s*$/.exec(written);
  if (!match) return null;
  const value = Number(match[1]) / (match[2] === '%' ? 100 : 1);
  return 0 < value && value < 1 ? value : null;
}
