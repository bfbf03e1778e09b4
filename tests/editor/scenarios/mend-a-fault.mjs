import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

export const title = 'a mechanic sees the strange code, reads about it, mends it and saves';

export async function run({ user, workspace }) {
  const { page, editor } = user;
  await user.open('faulty-front.hub.yaml');
  await page.locator('.statusbar-item', { hasText: 'Hub Spec' }).waitFor();
  await editor.locator('.squiggly-error').first().waitFor();
  await user.screenshot('fault-1-squiggle');

  await user.words('6893').hover();
  const hover = page.locator('.monaco-hover:visible').first();
  await hover.getByText('6893-2RS').first().waitFor();
  await user.screenshot('fault-2-hover');
  await page.keyboard.press('Escape');

  await user.words('6893').click();
  const fix = page.locator('.action-widget .monaco-list-row.action', { hasText: /6[0-9]{3}-2RS/ }).first();
  await user.pressUntil('Control+.', fix);
  await user.screenshot('fault-3-menu');
  await fix.click();
  await user.words('6893').waitFor({ state: 'detached' });
  await page.locator('.tab.dirty').waitFor();
  await page.keyboard.press('Control+s');
  await page.locator('.tab.dirty').waitFor({ state: 'detached' });
  await user.screenshot('fault-4-mended');
  const saved = await readFile(join(workspace, 'faulty-front.hub.yaml'), 'utf8');
  assert.doesNotMatch(saved, /6893/);
}
