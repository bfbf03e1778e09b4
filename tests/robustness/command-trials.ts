import { lifeOf } from '../../server/analysis/life/life-of.ts';
import { spacerAnswers } from '../../server/analysis/mechanics/spacer-answer.ts';
import { interchangeAnswer } from '../../server/report/interchange/interchange-answer.ts';
import { interchangeText } from '../../server/report/interchange/interchange-text.ts';
import { jsonText } from '../../server/report/json-text.ts';
import { lifeJson } from '../../server/report/life/life-json.ts';
import { lifeText } from '../../server/report/life/life-text.ts';
import { mountAnswer } from '../../server/report/mount/mount-answer.ts';
import { mountJson } from '../../server/report/mount/mount-json.ts';
import { mountText } from '../../server/report/mount/mount-text.ts';
import { orderList } from '../../server/report/order/order-list.ts';
import { orderCsv, orderMarkdown, orderText } from '../../server/report/order/order-print.ts';
import { planAnswers } from '../../server/report/plan/plan-answers.ts';
import { planJson } from '../../server/report/plan/plan-json.ts';
import { planText } from '../../server/report/plan/plan-text.ts';
import { serviceSheet } from '../../server/report/sheet/service-sheet.ts';
import { sheetHtml } from '../../server/report/sheet/sheet-html.ts';
import { sheetMarkdown } from '../../server/report/sheet/sheet-markdown.ts';
import { spacerJson } from '../../server/report/solve/solve-json.ts';
import { solveText } from '../../server/report/solve/solve-text.ts';
import type { Snapshot } from '../../server/workspace/workspace.ts';
import { dice } from './mutate.ts';

const path = 'looked-at.hub.yaml';

/** Something a command says of one text in `every`; the name stands before a complaint about it. */
type Saying = readonly [
  command: string,
  every: number,
  say: (snapshot: Snapshot, seed: number) => readonly unknown[],
];

/** What the commands about one hub say: the words, and what goes into JSON. Those that count many builds are asked seldom. */
const sayings: readonly Saying[] = [
  [
    'mount',
    150,
    ({ analysis: { variants, workshop, limits } }, seed) =>
      variants.flatMap((variant) => {
        const by = dice(seed);
        const conditions = { temperature: by.below(180) - 60, clampForce: by.below(50_000) };
        return (['drawn', 'built'] as const).flatMap((how) => {
          const answer = mountAnswer(variant, how, { workshop, limits, conditions });
          return [mountText(path, 'hub', answer), mountJson(answer)];
        });
      }),
  ],
  [
    'life',
    12,
    ({ analysis: { variants, workshop } }) =>
      variants.flatMap((variant) => {
        const life = lifeOf(variant, workshop, { how: 'built', rider: null });
        return [lifeText('hub', life), lifeJson(variant.name, life)];
      }),
  ],
  [
    'plan',
    12,
    ({ analysis }) =>
      planAnswers(analysis, path).flatMap(({ hub, plan }) => [planText(path, hub, plan), planJson(plan)]),
  ],
  [
    'sheet',
    24,
    (snapshot) => {
      const [variant] = snapshot.analysis.variants;
      if (!variant) return [];
      const sheet = serviceSheet(snapshot, variant);
      return [sheetMarkdown(sheet), sheetHtml(sheet), { ...sheet, drawing: undefined }];
    },
  ],
  [
    'order',
    12,
    (snapshot, seed) => {
      const list = orderList([{ path, snapshot }], { variant: null, sets: 1 + (seed % 9) });
      return [orderText(list), orderMarkdown(list), orderCsv(list), list];
    },
  ],
  [
    'interchange',
    150,
    ({ analysis }, seed) => {
      const bearings = analysis.variants.flatMap(({ assembly }) =>
        assembly.bearings.flatMap(({ bearing }) => bearing ?? []),
      );
      const bearing = bearings[dice(seed).below(bearings.length)];
      if (!bearing) return [];
      const answer = interchangeAnswer(bearing, analysis);
      return [interchangeText(answer), answer.alternatives, answer.near];
    },
  ],
  [
    'solve',
    600,
    ({ analysis: { variants, limits } }) =>
      variants.slice(0, 1).flatMap((variant) => {
        const answers = spacerAnswers(variant, 'drawn', { limits, share: 0.9973 });
        const asked = { share: 0.9973, mostPlay: limits.value('play-clamped') };
        return [solveText('hub', answers, asked), answers.map(spacerJson)];
      }),
  ],
];

/** What the commands lose on the way to the reader of one hub, each line beginning with the command. */
export function commandTrials(snapshot: Snapshot, seed: number): readonly string[] {
  if (snapshot.document.kind !== 'hub') return [];
  const { text } = snapshot.document;
  return sayings
    .filter(([, every]) => seed % every === 0)
    .flatMap(([command, , say]) => say(snapshot, seed).flatMap((said) => lostIn(command, said, text)));
}

/** Words a program says when it has lost a value, and numbers that are none; a text that holds one may be quoted. */
function lostIn(command: string, said: unknown, text: string): readonly string[] {
  const isData = typeof said !== 'string';
  const written = isData ? jsonText(said) : said;
  const word = /undefined|NaN|Infinity|\[object/.exec(written)?.[0];
  const wrong = word && !text.includes(word) ? [`${command} says ${word}`] : [];
  return isData ? [...wrong, ...notNumbers(said, command)] : wrong;
}

/** Where plain data holds a NaN, which JSON would show as null; one without end is a limit that is open. */
function notNumbers(data: unknown, at: string): readonly string[] {
  if (typeof data === 'number') return Number.isNaN(data) ? [`${at} is NaN`] : [];
  if (data === null || typeof data !== 'object') return [];
  return Object.entries(data).flatMap(([key, value]) => notNumbers(value, `${at}.${key}`));
}
