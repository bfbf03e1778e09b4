import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { specKindOf } from '../../server/spec/read-spec.ts';
import { createWorkspace, type Snapshot } from '../../server/workspace/workspace.ts';

/** A sample file of the extension. */
export interface Sample {
  readonly name: string;
  readonly text: string;
}

const folder = join(import.meta.dirname, '..', '..', 'client', 'samples');

/** A wheel of the samples' workshop, so that all three kinds of file are there. Demo data. */
const wheel = `# A wheel built on the Dunlin hub.
wheel: Dunlin touring front
hub: ./dunlin-front.hub.yaml
variant: thru-15
rim: { holes: 32, diameter: 622 }   # of the seat of the tyre
`;

/** The samples as they are shipped, and a wheel file. */
export const samples: readonly Sample[] = [
  ...readdirSync(folder)
    .filter((name) => specKindOf(name) !== null)
    .sort()
    .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') })),
  { name: 'dunlin-touring.wheel.yaml', text: wheel },
];

/** The name a text of a sample goes by while it is looked at; the samples themselves stand beside it. */
export const lookedAt = (name: string): string => `file:///saltmarsh/looked-at-${name}`;

const workspace = createWorkspace();
workspace.setRoots(['file:///saltmarsh']);
for (const { name, text } of samples) workspace.setFile(`file:///saltmarsh/${name}`, text);

/** A text in the place of a sample, read and worked out. */
export function lookAt(name: string, text: string): Snapshot {
  const file = lookedAt(name);
  workspace.open(file, text);
  const snapshot = workspace.snapshot(file);
  workspace.close(file);
  if (!snapshot) throw new Error(`${name} is no spec file`);
  return snapshot;
}
