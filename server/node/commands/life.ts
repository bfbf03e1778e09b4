import { lifeOf } from '../../analysis/life/life-of.ts';
import { jsonText } from '../../report/json-text.ts';
import { lifeJson } from '../../report/life/life-json.ts';
import { lifeText } from '../../report/life/life-text.ts';
import { readQuantity } from '../../spec/quantity.ts';
import { messageLines, misused } from '../failures.ts';
import type { Command, Outcome } from '../outcome.ts';
import { readOneHub } from '../read-one-hub.ts';

/** `life FILE`: how far the bearings of a hub would go by fatigue alone, for comparison. */
export const life: Command = {
  name: 'life',
  usage: 'life FILE [--rider "95 kg"]',
  summary: 'Compare how far bearings go: loads from wheel, chain and rotor, ISO 281 life in kilometres.',
  options: {
    rider: { takes: 'MASS', summary: 'mass of the rider in place of the written one, as 95 kg' },
  },
  run: ({ words, options, json }, cwd): Outcome => {
    const [path, ...more] = words;
    if (path === undefined || more.length > 0)
      return misused('life wants one hub file', json, { variants: [] });
    const written = options.get('rider');
    const mass =
      written === undefined
        ? null
        : readQuantity(/^\s*[\d.]+\s*$/.test(written) ? `${written} kg` : written, 'mass');
    if (mass && 'problem' in mass)
      return misused(`--rider ${mass.problem.message}`, json, { file: path, variants: [] });
    const read = readOneHub(path, cwd);
    if ('message' in read) return misused(read.message, json, { file: path, variants: [] });
    const { variants, workshop } = read.snapshot.analysis;
    const messages = read.hint === null ? [] : [read.hint];
    if (variants.length === 0) messages.push(`${path}: no hub could be read`);
    const rider = mass?.quantity.value ?? null;
    const answers = variants.map((variant) => ({
      variant,
      life: lifeOf(variant, workshop, { how: 'built', rider }),
    }));
    const out = json
      ? jsonText({
          file: path,
          variants: answers.map(({ variant, life: one }) => lifeJson(variant.name, one)),
        })
      : answers
          .map(({ variant, life: one }) => {
            const hub = variant.assembly.hub.values.hub?.value ?? path;
            return `${lifeText(`${variant.name === null ? hub : `${hub}, variant ${variant.name}`} — ${path}`, one)}\n`;
          })
          .join('\n');
    const found = answers.some(({ life: one }) => one.bearings.length > 0);
    return { exit: found ? 0 : 1, out, err: messageLines(messages) };
  },
};
