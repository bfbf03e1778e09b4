// A first hub from nothing. The recording says every key: `take` types letters until the suggestion of that name is on
// top and accepts it, `type` writes what no suggestion can know, `press` presses one key.
import assert from 'node:assert/strict';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

export const title = 'a first hub is written key by key from suggestions, and checks clean';

const name = 'sanderling-front.hub.yaml';

/** From the end of one part to the start of the next. */
const nextPart = ['press Enter', 'press Backspace', 'type - '];

const recording = [
  ...['take hub', 'type Sanderling front', 'press Enter'],
  ...['take position', 'take front', 'press Enter'],
  ...['take width', 'type 100 ±0.2', 'press Enter'],
  ...['take stack', 'take end-cap', 'type 14.03 ±0.02', ...nextPart],
  ...['take bearing', 'take 6803-2RS', ...nextPart],
  ...['take spacer', 'type 62.06 ±0.01', ...nextPart],
  ...['take bearing', 'take 6803-2RS', ...nextPart],
  // The last length is worked out: it closes the stack.
  ...['take end-cap', 'take 14.03 ±0.02', 'press Enter'],
];

const wanted = `hub: Sanderling front
position: front
width: 100 ±0.2
stack:
  - end-cap: left
    length: 14.03 ±0.02
  - bearing: left
    code: 6803-2RS
  - spacer: centre
    length: 62.06 ±0.01
  - bearing: right
    code: 6803-2RS
  - end-cap: right
    length: 14.03 ±0.02
`;

export async function run({ user, workspace, artifacts }) {
  const { page } = user;
  await newFile(user);
  const problems = page.locator('.statusbar-item#status\\.problems');
  const moves = {
    take: (label) => take(user, label),
    press: (key) => page.keyboard.press(key),
    type: (t) => page.keyboard.type(t),
  };
  const keys = [];
  for (const step of recording) {
    const [, move, what] = /^(\w+) (.*)$/.exec(step);
    const pressed = await moves[move](what);
    keys.push(move === 'take' ? `${step}: ${pressed.join(' ')}` : step);
    if (step === 'type 100 ±0.2') await problems.getByLabel(/Errors: [1-9]/).waitFor();
  }
  await writeFile(join(artifacts, 'first-hub.keys.txt'), `${keys.join('\n')}\n`);
  await page.keyboard.press('Control+s');
  await page.locator('.tab.dirty').waitFor({ state: 'detached' });
  await user.screenshot('first-hub');
  assert.equal((await readFile(join(workspace, name), 'utf8')).trimEnd(), wanted.trimEnd());
  await problems.getByLabel('No Problems').waitFor();
}

async function newFile({ page, editor }) {
  await page.locator('.explorer-folders-view').hover();
  await page.getByRole('button', { name: 'New File...' }).click();
  await page.locator('.explorer-item-edited input').fill(name);
  await page.keyboard.press('Enter');
  await page.locator('.tab.active', { hasText: name }).waitFor();
  await editor.locator('.view-line').first().click();
}

/** Types as many letters of a suggestion as bring it to the top, and accepts it; returns the keys pressed. */
async function take({ page, editor }, label) {
  const top = editor.locator('.suggest-widget.visible .monaco-list-row.focused .label-name');
  const isTop = async (patience) => {
    const shown = top.filter({ hasText: new RegExp(`^${label}$`) });
    return shown.waitFor({ timeout: patience }).then(
      () => true,
      () => false,
    );
  };
  const pressed = [];
  for (const letter of label) {
    if (pressed.length > 0 && (await isTop(400))) break;
    await page.keyboard.press(letter);
    pressed.push(letter);
  }
  assert.ok(await isTop(3000), `no suggestion "${label}" after ${pressed.join('')}`);
  await page.keyboard.press('Enter');
  await top.waitFor({ state: 'detached', timeout: 500 }).catch(() => undefined); // The next ones may already be there.
  return [...pressed, 'Enter'];
}
