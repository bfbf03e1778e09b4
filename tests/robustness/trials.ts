import { codeActions } from '../../server/features/code-actions.ts';
import { completion } from '../../server/features/completion.ts';
import { diagnostics } from '../../server/features/diagnostics.ts';
import { documentSymbols } from '../../server/features/document-symbols.ts';
import { hover } from '../../server/features/hover.ts';
import { inlayHints } from '../../server/features/inlay-hints.ts';
import { positionsOf } from '../../server/features/positions.ts';
import { soundFixes } from '../../server/features/sound-fixes.ts';
import { drawnBuilds } from '../../server/lsp/drawn-builds.ts';
import { drawnSection } from '../../server/lsp/drawn-section.ts';
import { stackText } from '../../server/report/stack/stack-text.ts';
import type { Snapshot } from '../../server/workspace/workspace.ts';
import { commandTrials } from './command-trials.ts';
import { tried } from './fix-trial.ts';
import { dice } from './mutate.ts';
import { lookAt } from './samples.ts';
import { complaints } from './soundness.ts';
import { watched } from './watchdog.ts';

const uri = 'file:///saltmarsh/looked-at.hub.yaml';
const actionOptions = { uri, pageOf: null, version: 1, snippets: true, only: null, explain: null };
const completionOptions = { snippets: true, suggestAgain: true, files: [uri] };

/** Everything there is to do with one text is done; what is wrong with it, each line beginning with `where`. */
export function trials(where: string, name: string, text: string, seed: number): readonly string[] {
  try {
    return watched(where, () => {
      const snapshot = lookAt(name, text);
      const fixes = seed % 3 === 0 ? ofFixes(name, snapshot, seed) : [];
      return [
        ...complaints(snapshot),
        ...ofAnswers(snapshot, seed),
        ...commandTrials(snapshot, seed),
        ...fixes,
      ];
    }).map((line) => `${where}: ${line}`);
  } catch (error) {
    // Errors thrown in there are of another side, and no `Error` of this one.
    const { stack = String(error) } = error as { readonly stack?: string };
    return [`${where}: ${stack}`];
  }
}

/** What an editor asks of a text, and what is drawn and printed of it. */
function ofAnswers(snapshot: Snapshot, seed: number): readonly string[] {
  const { document, analysis } = snapshot;
  const by = dice(seed);
  const positions = positionsOf(document);
  const at = positions.position(by.below(document.text.length + 1));
  hover(snapshot, at);
  completion(snapshot, at, completionOptions);
  documentSymbols(snapshot);
  diagnostics(snapshot, { uri, pageOf: null });
  codeActions(snapshot, { start: at, end: at }, actionOptions);
  const whole = { start: positions.position(0), end: positions.position(document.text.length) };
  const hints = inlayHints(snapshot, whole).map(({ label, tooltip }) => `${label} ${tooltip}`);
  // Builds take a while: one text in thirty has them, under odd conditions.
  const odd = { temperature: by.below(180) - 60, clampForce: by.below(50_000) };
  const built = seed % 30 === 0 ? drawnBuilds(snapshot, null, odd).pairs : [];
  const felt = lostIn(JSON.stringify([hints, built]), document.text, 'play');
  const drawn = analysis.variants.flatMap((variant) => {
    const { svg, description, pairs, bearings } = drawnSection(snapshot, variant.name, null, odd) ?? {};
    return lostIn(JSON.stringify({ svg, description, pairs, bearings }), document.text, 'section');
  });
  const stack = stackText('looked-at.hub.yaml', analysis.variants, analysis.limits);
  return [...felt, ...drawn, ...lostIn(stack, document.text, 'stack')];
}

/** A value of the program that has come through to the reader, and is none of his own words. */
function lostIn(said: string, text: string, what: string): readonly string[] {
  const lost = /undefined|NaN|Infinity|\[object/.exec(said)?.[0];
  return lost && !text.includes(lost) ? [`the ${what} says ${lost}`] : [];
}

/** Each fix of one finding of the text. */
function ofFixes(name: string, snapshot: Snapshot, seed: number): readonly string[] {
  const { findings } = snapshot.findings;
  const finding = findings[dice(seed).below(findings.length)];
  return finding ? soundFixes(snapshot, finding).flatMap((fix) => tried(name, snapshot, finding, fix)) : [];
}
