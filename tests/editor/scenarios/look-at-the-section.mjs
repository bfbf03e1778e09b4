// The section beside the text in four themes, against the list in ../preview/list.mjs, and by the hand of its reader.
import assert from 'node:assert/strict';
import { problemsOf } from '../preview/list.mjs';

export const title =
  'a framebuilder opens the section beside the text: it passes its list in four themes, follows the typing, and works from the keyboard';

const themes = [
  ['light', 'Light Modern', 'vs'],
  ['dark', 'Dark Modern', 'vs-dark'],
  ['high-contrast', 'Dark High Contrast', 'hc-black'],
  ['high-contrast-light', 'Light High Contrast', 'hc-light'],
];

const hubs = {
  'dunlin-front': 'Dunlin front',
  'plover-rear': 'Plover rear',
  'faulty-front': 'Dotterel front',
  'curlew-family': 'Curlew family',
};

/** Parts of the faulty sample that are wrong, as its text shows: a fillet and a depth, a cap that is on the wrong side, a code, a diameter. */
const faultyParts = ['bearing.left', 'end-cap.right', 'shell', 'spacer.centre'];

export async function run({ user }) {
  const { page } = user;
  await user.open('dunlin-front.hub.yaml');
  await user.command('Hubwright: Open Section Beside');
  const preview = user.preview();
  await preview.locator('svg').first().waitFor();

  await followsTyping(user);
  await worksFromTheKeyboard(user);
  await changesVariant(user);
  const problems = [];
  for (const [name, theme, worn] of themes) {
    await user.theme(theme, worn);
    await preview.locator(`body.vscode-${name}`).waitFor();
    for (const file of Object.keys(hubs)) {
      await showSection(user, file);
      for (const problem of await problemsOf(preview)) problems.push(`${file}, ${theme}: ${problem}`);
      if (name === 'light') problems.push(...(await misplacedFaults(preview, file)));
      await user.screenshot(`section-${file}-${name}`);
    }
  }
  await showSection(user, 'faulty-front');
  // Too narrow for columns; so narrow that the drawing is moved instead; wide enough for the whole table.
  for (const width of [1100, 2300]) {
    await page.setViewportSize({ width, height: 900 });
    await settled(preview);
    for (const problem of await problemsOf(preview)) problems.push(`at ${width} px: ${problem}`);
    await user.screenshot(`section-at-${width}`);
  }
  assert.ok(problems.length === 0, problems.join('\n'));
}

async function showSection(user, file) {
  const preview = user.preview();
  await user.open(`${file}.hub.yaml`);
  await preview.locator('#title', { hasText: hubs[file] }).waitFor();
  await settled(preview);
}

/** Waits until the drawing has been the same for a while: its width is asked for once the panel has its own. */
async function settled(preview) {
  await preview.locator('#drawing').evaluate(async (figure) => {
    const look = () => `${innerWidth} ${figure.querySelector('svg')?.outerHTML}`;
    for (let [last, same] = ['', 0]; same < 5; ) {
      await new Promise((resolve) => setTimeout(resolve, 100));
      same = look() === last ? same + 1 : 0;
      last = look();
    }
  });
}

/** Point 4 of the list. */
async function misplacedFaults(preview, file) {
  const marked = await preview
    .locator('.hw-part.hw-fault, .hw-part.hw-warning')
    .evaluateAll((parts) => parts.map(({ dataset }) => dataset.address).sort());
  const wanted = file === 'faulty-front' ? faultyParts : [];
  const badges = await preview
    .locator('svg .hw-badge text, svg text.hw-badge')
    .evaluateAll((texts) => texts.map(({ textContent }) => Number(textContent)));
  const listed = await preview.locator('#findings li').count();
  const problems = [];
  if (marked.join() !== wanted.join()) problems.push(`${file}: 4. marked are ${marked}, wanted ${wanted}`);
  if (file === 'faulty-front' && badges.length === 0) problems.push(`${file}: 4. no fault has its number`);
  if (badges.some((number) => listed < number)) problems.push(`${file}: 4. a number is not in the list`);
  return problems;
}

async function followsTyping(user) {
  const drawing = user.preview().locator('svg').first();
  const short = user.preview().locator('#findings li', { hasText: /clamped width 99\.50/ });
  await drawing.locator('text', { hasText: '62.06 ±0.01' }).first().waitFor();
  await user.words('62.06').dblclick();
  await user.page.keyboard.type('61.56');
  await drawing.locator('text', { hasText: '61.56 ±0.01' }).first().waitFor();
  await short.waitFor();
  await user.page.keyboard.press('Control+z');
  await drawing.locator('text', { hasText: '62.06 ±0.01' }).first().waitFor();
  await short.waitFor({ state: 'detached' });
}

/** Point 7 of the list. */
async function worksFromTheKeyboard(user) {
  const { page } = user;
  const preview = user.preview();
  const focused = () =>
    preview.locator('body').evaluate(() => {
      const { id, dataset, textContent } = document.activeElement;
      return id || dataset.address || textContent.trim();
    });
  const outlined = () =>
    preview.locator('body').evaluate(() => {
      const { outlineStyle } = getComputedStyle(document.activeElement);
      const face = document.activeElement.querySelector?.('.hw-face');
      return outlineStyle !== 'none' || (face !== null && getComputedStyle(face).stroke !== 'none');
    });
  await preview.locator('#smaller').focus();
  const path = [];
  for (let stop = 0; stop < 40; stop += 1) {
    path.push(await focused());
    assert.ok(await outlined(), `${path.at(-1)} does not show that it has the focus`);
    await page.keyboard.press('Tab');
    if (!(await preview.locator(':focus').count())) break;
  }
  const order = ['smaller', 'fit', 'larger', 'drawing', 'end-cap.left', 'clamped width'];
  const places = order.map((name) => path.indexOf(name));
  assert.ok(
    places.every((place, at) => place > (places[at - 1] ?? -1)),
    `Tab goes ${path.join(', ')}`,
  );

  const width = () => preview.locator('#drawing svg').evaluate((svg) => svg.getBoundingClientRect().width);
  await preview.locator('#drawing').focus();
  const fits = await width();
  await page.keyboard.press('+');
  const larger = await width();
  await page.keyboard.press('-');
  await page.keyboard.press('-');
  const smaller = await width();
  await page.keyboard.press('0');
  assert.ok(smaller < fits && fits < larger, `the drawing is ${smaller}, ${fits}, ${larger} px wide`);
  assert.equal(await width(), fits);

  // Enter on a part and on a row puts the cursor where it is written.
  const caret = page.locator('.statusbar-item', { hasText: /^Ln \d+/ });
  await preview.locator('[data-address="spacer.centre"].hw-part').focus();
  await page.keyboard.press('Enter');
  await caret.filter({ hasText: 'Ln 36,' }).waitFor();
  await preview.locator('#loops button', { hasText: 'clamped width' }).focus();
  await page.keyboard.press('Enter');
  await caret.filter({ hasText: 'Ln 5,' }).waitFor();
}

async function changesVariant(user) {
  await showSection(user, 'curlew-family');
  const preview = user.preview();
  await preview.locator('svg text', { hasText: '⌀12.1' }).first().waitFor();
  await preview.locator('#variant').selectOption('thru-15');
  await preview.locator('svg text', { hasText: '⌀15.1' }).first().waitFor();
  await preview.locator('#variant').selectOption({ label: 'as written' });
  await preview.locator('svg text', { hasText: '⌀12.1' }).first().waitFor();
}
