import { expect, test } from 'vitest';
import { definition, type Neighbours } from '../../server/features/definition.ts';
import { positionsIn } from '../../server/features/positions.ts';
import { references } from '../../server/features/references.ts';
import { rename, renameRange } from '../../server/features/rename.ts';
import { createWorkspace } from '../../server/workspace/workspace.ts';
import { edited } from '../support/spec-at-cursor.ts';

const files: Readonly<Record<string, string>> = {
  'dunlin.hub.yaml': `hub: Dunlin front
position: front
width: 100
shell:
  between-shoulders: 62
  seats:
    left: { bore: 26 N7 }
    right: { bore: 26 N7 }
stack:
  - end-cap: left
    length: 14
  - bearing: left
    code: DB-17
    seat: shell.left
  - spacer: centre
    length: 62
  - bearing: right
    code: 6803-2RS
    seat: shell.right
  - end-cap: right
    length: 14
beside:
  - seal: left
    at: 2.5 from bearing.left
    to: end-cap.left
variants:
  thru-15:
    change:
      end-cap.left: { length: 15 }
      shell.left: { depth: 5 }
    remove: [spacer.centre]
    add: [{ shim: left, length: 0.1, after: end-cap.left }]
`,
  'tour.wheel.yaml': 'wheel: Tour\nhub: ./dunlin.hub.yaml\nvariant: thru-15\n',
  'race.wheel.yaml': 'wheel: Race\nhub: ./dunlin.hub.yaml\nvariant: thru-15\n',
  'house.workshop.yaml': 'bearings:\n  DB-17: { code: 6803-2RS C3 }\n',
};

/** The cursor stands behind `before`, `nth` of them counted from 0. */
function at(file: string, before: string, nth = 0) {
  const workspace = createWorkspace();
  workspace.setRoots(['/w']);
  for (const [name, text] of Object.entries(files)) workspace.setFile(`/w/${name}`, text);
  const around: Neighbours & { versionOf: () => null } = {
    snapshot: workspace.snapshot,
    dependents: workspace.dependents,
    uriOf: (path) => path,
    versionOf: () => null,
  };
  const text = files[file] ?? '';
  let offset = -1;
  for (let i = 0; i <= nth; i++) offset = text.indexOf(before, offset + 1);
  if (offset < 0) throw new Error(before);
  const snapshot = workspace.snapshot(`/w/${file}`);
  if (!snapshot) throw new Error(file);
  return { snapshot, position: positionsIn(text).position(offset + before.length), around };
}

/** Locations as file, line from 1 and the text under them. */
function said(
  found: readonly {
    uri: string;
    range: { start: { line: number; character: number }; end: { line: number; character: number } };
  }[],
) {
  return found.map(({ uri, range }) => {
    const text = files[uri.slice(3)] ?? '';
    const { offset } = positionsIn(text);
    return [uri.slice(3), range.start.line + 1, text.slice(offset(range.start), offset(range.end))];
  });
}

const definitionAt = (...given: Parameters<typeof at>) => {
  const { snapshot, position, around } = at(...given);
  return said(definition(snapshot, position, around));
};
const referencesAt = (...given: Parameters<typeof at>) => {
  const { snapshot, position, around } = at(...given);
  return said(references(snapshot, position, around, true));
};

test('a seat, a part, a variant, a hub and a house code lead to where they are named', () => {
  expect(definitionAt('dunlin.hub.yaml', 'seat: shell.l')).toEqual([['dunlin.hub.yaml', 7, 'left']]);
  expect(definitionAt('dunlin.hub.yaml', 'from bearing.l')).toEqual([['dunlin.hub.yaml', 12, 'left']]);
  expect(definitionAt('dunlin.hub.yaml', 'remove: [spacer.c')).toEqual([['dunlin.hub.yaml', 15, 'centre']]);
  expect(definitionAt('dunlin.hub.yaml', 'code: DB')).toEqual([['house.workshop.yaml', 2, 'DB-17']]);
  expect(definitionAt('tour.wheel.yaml', 'variant: thru')).toEqual([['dunlin.hub.yaml', 27, 'thru-15']]);
  expect(definitionAt('tour.wheel.yaml', 'hub: ./dun')).toEqual([['dunlin.hub.yaml', 1, 'Dunlin front']]);
  expect(definitionAt('tour.wheel.yaml', 'wheel: To')).toEqual([]);
});

test('references gather a name over the file, and over the wheels built on the hub', () => {
  expect(referencesAt('dunlin.hub.yaml', 'end-cap: l')).toEqual([
    ['dunlin.hub.yaml', 10, 'left'],
    ['dunlin.hub.yaml', 25, 'left'],
    ['dunlin.hub.yaml', 29, 'left'],
    ['dunlin.hub.yaml', 32, 'left'],
  ]);
  const variant = [
    ['dunlin.hub.yaml', 27, 'thru-15'],
    ['tour.wheel.yaml', 3, 'thru-15'],
    ['race.wheel.yaml', 3, 'thru-15'],
  ];
  expect(referencesAt('dunlin.hub.yaml', '  thru')).toEqual(expect.arrayContaining(variant));
  expect(referencesAt('race.wheel.yaml', 'variant: t')).toEqual(expect.arrayContaining(variant));
  expect(referencesAt('dunlin.hub.yaml', 'hub: Dunlin')).toHaveLength(2);
});

test('a rename carries a variant into the wheels, and leaves every file readable', () => {
  const { snapshot, position, around } = at('tour.wheel.yaml', 'variant: t');
  const edit = rename(snapshot, position, 'thru-12', around);
  if (!edit || 'refused' in edit) throw new Error('refused');
  const texts = Object.fromEntries(
    (edit.documentChanges ?? []).map((change) => {
      if (!('textDocument' in change)) throw new Error('no text');
      const name = change.textDocument.uri.slice(3);
      return [name, edited(files[name] ?? '', change.edits as never)];
    }),
  );
  expect(Object.keys(texts).sort()).toEqual(['dunlin.hub.yaml', 'race.wheel.yaml', 'tour.wheel.yaml']);
  for (const text of Object.values(texts)) expect(text).not.toContain('thru-15');
  expect(texts['tour.wheel.yaml']).toContain('variant: thru-12');
  const workspace = createWorkspace();
  for (const [name, text] of Object.entries({ ...files, ...texts })) workspace.setFile(`/w/${name}`, text);
  expect(workspace.snapshot('/w/tour.wheel.yaml')?.findings.findings.map(({ code }) => code)).not.toContain(
    'variant-not-found',
  );
});

test('a part is renamed with everything that speaks of it, and nothing else', () => {
  const { snapshot, position, around } = at('dunlin.hub.yaml', 'end-cap: l');
  const edit = rename(snapshot, position, 'port', around);
  if (!edit || 'refused' in edit) throw new Error('refused');
  const [change] = edit.documentChanges ?? [];
  const text = edited(
    files['dunlin.hub.yaml'] ?? '',
    change && 'edits' in change ? (change.edits as never) : [],
  );
  expect(text).toContain('end-cap: port');
  expect(text).toContain('to: end-cap.port');
  expect(text).toContain('after: end-cap.port');
  expect(text).toContain('bearing: left');
  expect(text).toContain('seat: shell.left');
});

test('a name that is taken or is no name is refused with the reason, a file is not renamed', () => {
  const { snapshot, position, around } = at('dunlin.hub.yaml', 'end-cap: l');
  expect(rename(snapshot, position, 'right', around)).toEqual({ refused: 'right is taken already' });
  expect(rename(snapshot, position, 'a: b', around)).toEqual({
    refused: expect.stringContaining('is no name'),
  });
  const file = at('tour.wheel.yaml', 'hub: ./dun');
  expect(renameRange(file.snapshot, file.position)).toBeNull();
});
