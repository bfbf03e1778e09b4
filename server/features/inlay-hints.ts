import type { InlayHint, Range } from 'vscode-languageserver-types';
import type { VariantAnalysis } from '../analysis/analyze.ts';
import { degreesOf } from '../analysis/mechanics/angular-contact.ts';
import { clampedInBrief, leaveInBrief } from '../analysis/mechanics/cones-in-brief.ts';
import { isConeWorked } from '../analysis/mechanics/cup-cone.ts';
import type { Mechanics } from '../analysis/mechanics/mechanics-of.ts';
import { isWorked } from '../analysis/mechanics/pair-mechanics.ts';
import { playInBrief } from '../analysis/mechanics/play-in-brief.ts';
import { micrometres } from '../engine/base/figures.ts';
import type { SpecPath } from '../spec/place.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { lossWords, mountedWords, playWords, shorteningWords } from './mechanics-words.ts';
import { positionsOf } from './positions.ts';

interface Hint {
  readonly path: SpecPath;
  readonly label: string;
  readonly tooltip: string;
}

/** Results written behind the values they belong to: clearance behind a bearing's code, play behind a spacer's length, shortening behind the clamp. */
export function inlayHints({ document, analysis }: Snapshot, within: Range): InlayHint[] {
  const positions = positionsOf(document);
  const [start, end] = [positions.offset(within.start), positions.offset(within.end)];
  const seen = new Set<string>();
  const isNew = (path: SpecPath): boolean => {
    const before = seen.size;
    return before < seen.add(path.join('\n')).size;
  };
  // The hub as written comes first; a variant adds hints for what only it has.
  const variants = analysis.variants.filter((variant) => placesOf(variant).filter(isNew).length > 0);
  const shown = new Set<string>();
  return variants.flatMap((variant) =>
    hintsOf(variant, variant.mechanics('built')).flatMap(({ path, label, tooltip }): readonly InlayHint[] => {
      const span = document.span(path);
      if (shown.has(path.join('\n')) || span.end < start || end < span.end) return [];
      shown.add(path.join('\n'));
      return [{ position: positions.position(span.end), label, tooltip, paddingLeft: true }];
    }),
  );
}

/** Values that get a hint, told without working anything out. */
function placesOf({ assembly, pairs }: VariantAnalysis): readonly SpecPath[] {
  const lengths = pairs.flatMap(({ loop }) => loop.inner.filter(({ key }) => key === 'length'));
  const settings = pairs.flatMap(({ loop }): readonly SpecPath[] => {
    const { set, length } = loop.setBy?.part.values ?? {};
    return [set?.path, length?.path].filter((path) => path !== undefined);
  });
  const set = assembly.hub.stack.flatMap(({ kind, path, values }): readonly SpecPath[] =>
    kind === 'cone' ? [values.set?.path ?? path] : [],
  );
  return [
    ...assembly.bearings.map(({ from }) => from),
    ...lengths.map(({ path }) => path),
    ...settings,
    ...set,
  ];
}

function hintsOf({ assembly }: VariantAnalysis, mechanics: Mechanics): readonly Hint[] {
  const { bearings, pairs, clamp } = mechanics;
  const worked = pairs.filter(isWorked);
  const clearances = bearings.flatMap((bearing): readonly Hint[] => {
    const words = mountedWords(bearing);
    if (words === null || !bearing.mounted) return [];
    const { contactAngle, mounted } = bearing;
    const tooltip = `${contactAngle ? 'contact angle' : 'mounted clearance'} ${words}; ${lossWords(bearing)}`;
    const short = contactAngle ? degreesOf(contactAngle.mounted) : micrometres(mounted.mean);
    return [{ path: bearing.stack.from, label: `mounted ${short}`, tooltip }];
  });
  const plays = worked.flatMap((pair): readonly Hint[] => {
    const spacer = pair.loop.inner.find(
      ({ address, key }) => key === 'length' && assembly.line.some((part) => part.address === address),
    );
    const path = pair.setting?.path ?? spacer?.path;
    if (!path) return [];
    const tooltip = [playWords(pair, clamp), ...pair.assumed].join('; ');
    return [{ path, label: playInBrief(pair, clamp), tooltip }];
  });
  const cones = coneHints(mechanics);
  // A clamp of the workshop stands in another file.
  const isHere = clamp !== null && 0 < clamp.path.length && clamp.path.includes('clamp');
  if (!isHere || worked.length === 0) return [...clearances, ...plays, ...cones];
  const shortening: Hint = {
    path: clamp.path,
    label: `shortens by ${worked.map(({ result }) => micrometres(result.clampShortening)).join(' and ')}`,
    tooltip: [...worked.map(shorteningWords), ...clamp.assumed].join('; '),
  };
  return [...clearances, ...plays, ...cones, shortening];
}

/** The play that a clamp leaves of the one set, behind it; the play to leave behind the clamp. */
function coneHints({ cups, clamp }: Mechanics): readonly Hint[] {
  if (!isConeWorked(cups) || !clamp) return [];
  const tooltip = cups.assumed.join('; ');
  const felt = clampedInBrief(cups, clamp);
  const isHere = clamp.path.includes('clamp');
  return [
    ...(cups.set && felt ? [{ path: cups.set.path, label: felt, tooltip }] : []),
    ...(isHere ? [{ path: clamp.path, label: leaveInBrief(cups), tooltip }] : []),
  ];
}
