import assert from 'node:assert/strict';

export const title =
  'a framebuilder opens the section beside the text, and it follows the typing and the theme';

const themes = [
  ['light', 'Light Modern', 'vs'],
  ['dark', 'Dark Modern', 'vs-dark'],
  ['high-contrast', 'Dark High Contrast', 'hc-black'],
];

export async function run({ user }) {
  const { page } = user;
  await user.open('dunlin-front.hub.yaml');
  await user.command('Hubwright: Open Section Beside');
  const preview = user.preview();
  const drawing = preview.locator('svg').first();
  await drawing.waitFor();

  assert.match(
    await preview.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content'),
    /default-src 'none'/,
  );
  const words = await preview.locator('body').textContent();
  assert.match(words, /6803-2RS/);
  const box = await drawing.boundingBox();
  assert.ok(box && box.width > 200 && box.height > 60, `the drawing is ${JSON.stringify(box)}`);
  const spoken =
    (await drawing.getAttribute('aria-label')) ?? (await drawing.getAttribute('aria-labelledby'));
  assert.ok(spoken, 'the drawing has a name for a screen reader');

  const before = await drawing.innerHTML();
  await user.words('62.06').dblclick();
  await page.keyboard.type('61.56');
  await assertChanges(() => drawing.innerHTML(), before);
  await page.keyboard.press('Control+z');

  for (const [name, theme, worn] of themes) {
    await user.theme(theme, worn);
    await preview.locator(`body.vscode-${name}`).waitFor();
    await user.screenshot(`section-${name}`);
  }
}

async function assertChanges(read, before) {
  const end = Date.now() + 10_000;
  while (Date.now() < end) if ((await read()) !== before) return;
  assert.fail('the drawing did not follow the typing');
}
