// A first hub from nothing. The recording says every key: `take` accepts a suggestion by its name, with no letter typed
// when the list is open and it is on top, else with as many letters as bring it there; `type` writes what no list can
// know; `press` presses one key. artifacts/editor/first-hub.txt keeps the keys and the text after each step.
import assert from 'node:assert/strict';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

export const title = 'a first hub is written key by key from suggestions, and checks clean';

const name = 'sanderling-front.hub.yaml';

const recording = [
  ...['take hub', 'take Sanderling front', 'press Enter'],
  ...['take position', 'take front', 'press Enter'],
  ...['take width', 'take 100 ±0.2', 'press Enter'],
  ...['take stack', 'take end-cap', 'type 14.03', 'take 14.03 ±0.02', 'press Enter'],
  ...['take - bearing', 'take 6803-2RS', 'press Enter'],
  ...['take - spacer', 'type 62.06', 'take 62.06 ±0.02', 'press Enter'],
  ...['take - bearing', 'take 6803-2RS', 'press Enter'],
  // The last length is worked out: it closes the stack.
  ...['take - end-cap', 'take 14.03 ±0.02'],
];

/** 14.03 + 5 + 62.06 + 5 + 14.03 = 100.12; two ring widths of 0/−0.12 mm (ISO 492) bring the mean to 100.00. */
const wanted = `hub: Sanderling front
position: front
width: 100 ±0.2
stack:
  - end-cap: left
    length: 14.03 ±0.02
  - bearing: left
    code: 6803-2RS
  - spacer: centre
    length: 62.06 ±0.02
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
    press: (key) => page.keyboard.press(key).then(() => [key]),
    type: (text) => page.keyboard.type(text).then(() => [...text]),
  };
  const record = [];
  let keys = 0;
  try {
    for (const step of recording) {
      const [, move, what] = /^(\w+) (.*)$/.exec(step);
      const pressed = await moves[move](what);
      keys += pressed.length;
      record.push(`${step}\n  keys: ${pressed.join(' ')}\n${(await text(user)).replace(/^/gm, '  | ')}`);
      // An unfinished hub says so: the clean end below is no silence of a server that does not run.
      if (step === 'take 100 ±0.2') await problems.getByLabel(/Errors: [1-9]/).waitFor();
    }
  } finally {
    record.push(`${keys} keys for ${wanted.length} characters`);
    await writeFile(join(artifacts, 'first-hub.txt'), `${record.join('\n\n')}\n`);
  }
  await page.keyboard.press('Control+s');
  await page.locator('.tab.dirty').waitFor({ state: 'detached' });
  assert.equal((await readFile(join(workspace, name), 'utf8')).trimEnd(), wanted.trimEnd());
  await problems.getByLabel('No Problems').waitFor();
  await user.screenshot('first-hub');
}

async function newFile({ page, editor }) {
  await page.locator('.explorer-folders-view').hover();
  await page.getByRole('button', { name: 'New File...' }).click();
  await page.locator('.explorer-item-edited input').fill(name);
  await page.keyboard.press('Enter');
  await page.locator('.tab.active', { hasText: name }).waitFor();
  await editor.locator('.view-line').first().click();
}

/** Brings a suggestion to the top and accepts it; returns the keys pressed. */
async function take({ page, editor }, label) {
  const top = editor.locator('.suggest-widget.visible .monaco-list-row.focused .label-name');
  const wanted = top.filter({ hasText: new RegExp(`^${label.replace(/[.+-]/g, '\\$&')}$`) });
  const isTop = (timeout) =>
    wanted.waitFor({ timeout }).then(
      () => true,
      () => false,
    );
  const pressed = [];
  let there = await isTop(1000);
  for (const letter of label.replace(/^- /, '')) {
    if (there) break;
    await page.keyboard.press(letter);
    pressed.push(letter);
    there = await isTop(500);
  }
  assert.ok(there, `no suggestion "${label}" on top after the keys ${pressed.join(' ')}`);
  await page.keyboard.press('Enter');
  await wanted.waitFor({ state: 'detached', timeout: 500 }).catch(() => undefined); // The next list may begin alike.
  return [...pressed, 'Enter'];
}

/** The text as the editor shows it, once it has drawn what was typed; what it adds behind a value left out. */
async function text({ page, editor }) {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  return editor.locator('.view-lines .view-line').evaluateAll((lines) =>
    lines
      .toSorted((a, b) => Number.parseFloat(a.style.top) - Number.parseFloat(b.style.top))
      .map((line) => {
        const written = line.cloneNode(true);
        for (const added of written.querySelectorAll('[class*=dyn-rule]')) added.remove();
        return written.textContent.replaceAll('\u00a0', ' ');
      })
      .join('\n'),
  );
}
