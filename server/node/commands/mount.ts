import type { Conditions } from '../../analysis/mechanics/conditions.ts';
import { jsonText } from '../../report/json-text.ts';
import { mountAnswer } from '../../report/mount/mount-answer.ts';
import { mountJson } from '../../report/mount/mount-json.ts';
import { mountText } from '../../report/mount/mount-text.ts';
import { readQuantity } from '../../spec/quantity.ts';
import { messageLines, misused } from '../failures.ts';
import type { Command, Given, Misuse, Outcome } from '../outcome.ts';
import { readOneHub } from '../read-one-hub.ts';

/** `mount FILE`: what press fits, the clamp and temperature do to the bearings of a hub. */
export const mount: Command = {
  name: 'mount',
  usage: 'mount FILE [--temperature -10] [--inner 30] [--outer 20] [--clamp "5 kN"]',
  summary:
    'Say what happens to each bearing when it is pressed in and clamped: fits, pressures, clearance, play, load.',
  options: {
    temperature: { takes: '°C', summary: 'temperature of the whole hub; 20 °C without it' },
    inner: { takes: '°C', summary: 'temperature of the axle and all on it, inner rings included' },
    outer: { takes: '°C', summary: 'temperature of the housings with the outer rings in them' },
    clamp: { takes: 'FORCE', summary: 'clamp force in place of the written one, as 5 kN or in newtons' },
  },
  run: (given, cwd): Outcome => {
    const { words, json } = given;
    const [path, ...more] = words;
    if (path === undefined || more.length > 0)
      return misused('mount wants one hub file', json, { variants: [] });
    const conditions = conditionsOf(given);
    if ('misuse' in conditions) return misused(conditions.misuse, json, { file: path, variants: [] });
    const read = readOneHub(path, cwd);
    if ('message' in read) return misused(read.message, json, { file: path, variants: [] });
    const { variants, workshop, limits } = read.snapshot.analysis;
    const messages = read.hint === null ? [] : [read.hint];
    if (variants.length === 0) messages.push(`${path}: no hub could be read`);
    const settings = { workshop, limits, conditions };
    const answers = variants.map((variant) => ({
      hub: variant.assembly.hub.values.hub?.value ?? path,
      drawn: mountAnswer(variant, 'drawn', settings),
      built: isMeasured(variant.mechanics('drawn', conditions), variant.mechanics('built', conditions))
        ? mountAnswer(variant, 'built', settings)
        : null,
    }));
    const out = json
      ? jsonText({
          file: path,
          variants: answers.map(({ drawn, built }) => ({
            ...mountJson(drawn),
            ...(built ? { measured: mountJson(built) } : {}),
          })),
        })
      : answers
          .flatMap(({ hub, drawn, built }) =>
            [drawn, ...(built ? [built] : [])].map((answer) => mountText(path, hub, answer)),
          )
          .map((text) => `${text}\n`)
          .join('\n');
    return { exit: variants.length > 0 ? 0 : 1, out, err: messageLines(messages) };
  },
};

/** Whether what was measured changes anything: the two results are plain data and can be held side by side. */
function isMeasured(drawn: unknown, built: unknown): boolean {
  return JSON.stringify(drawn) !== JSON.stringify(built);
}

function conditionsOf({ options }: Given): Conditions | Misuse {
  const temperatures: { temperature?: number; inner?: number; outer?: number } = {};
  for (const name of ['temperature', 'inner', 'outer'] as const) {
    const degrees = options.get(name);
    if (degrees === undefined) continue;
    const read = readDegrees(degrees);
    if (read === null)
      return {
        misuse: `--${name} ${degrees} is not understood; wanted is °C between -60 and 150, as in --${name} -10`,
      };
    temperatures[name] = read;
  }
  const at = { ...temperatures, temperature: temperatures.temperature ?? 20 };
  const written = options.get('clamp');
  if (written === undefined) return { ...at, clampForce: null };
  const read = readQuantity(/^\s*\d+(\.\d+)?\s*$/.test(written) ? `${written} N` : written, 'force');
  return 'problem' in read
    ? { misuse: `--clamp ${read.problem.message}` }
    : { ...at, clampForce: read.quantity.value };
}

function readDegrees(written: string): number | null {
  const match = /^\s*([+−-]?\d+(?:\.\d+)?)\s*(?:°?\s*C)?\s*$/i.exec(written);
  const value = match ? Number(match[1]?.replace('−', '-')) : Number.NaN;
  return -60 <= value && value <= 150 ? value : null;
}
