import { nameOf } from '../workspace/location.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import type { Suggestion } from './completion-item.ts';
import { newConeHub } from './new-cone-hub.ts';
import { newHub } from './new-hub.ts';

/** A whole hub to start from, while the file says nothing yet. */
export function skeletonSuggestions({ document, file }: Snapshot): readonly Suggestion[] {
  const empty = document.text
    .split(/\r\n|\r|\n/)
    .every((line) => /^\s*([a-z]*|#.*)$/.test(line.replace('\ufeff', '')));
  if (document.kind !== 'hub' || !empty) return [];
  const plain = (['front', 'rear'] as const).map(
    (position): Suggestion => ({
      label: `new ${position} hub`,
      text: newHub(nameFrom(file), position).snippet,
      kind: 'skeleton',
      detail: 'end caps, two bearings and a spacer, to be changed to your drawing',
      filter: `new ${position} hub`,
    }),
  );
  const cones: Suggestion = {
    label: 'new cup-and-cone hub',
    text: newConeHub(nameFrom(file)),
    kind: 'skeleton',
    detail: 'cups, cones with loose balls and locknuts, to be changed to your hub',
    filter: 'new cup-and-cone hub',
  };
  return [...plain, cones];
}

/** `dunlin-front.hub.yaml` is `Dunlin front`. */
export function nameFrom(file: string): string {
  const words = nameOf(file)
    .replace(/\.(hub|wheel|workshop)\.ya?ml$/i, '')
    .replaceAll(/[-_]+/g, ' ')
    .trim();
  return /^untitled/i.test(words) ? '' : words.charAt(0).toUpperCase() + words.slice(1);
}
