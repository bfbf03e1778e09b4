// What a person does at the editor: opens a folder, presses keys, reads what stands there.
import { newPage } from './browser.mjs';

/** The workbench on `folder` with an empty history, and the moves of its user. */
export async function openWorkbench({ browser, server, workspace, artifacts }) {
  const page = await newPage(browser);
  await page.goto(`http://${server.authority}/?${new URLSearchParams({ folder: workspace })}`);
  await page.locator('.explorer-folders-view .monaco-list-row').first().waitFor({ timeout: 60_000 });
  const user = {
    page,
    editor: page.locator('.editor-instance .monaco-editor').first(),
    /** A menu that opens while the editor still settles closes again: press until it stays. */
    async pressUntil(key, shown) {
      for (let attempt = 0; attempt < 8; attempt += 1) {
        await page.keyboard.press(key);
        const seen = await shown.waitFor({ timeout: 3000 }).then(
          () => true,
          () => false,
        );
        if (seen && (await stays(shown))) return;
      }
      throw new Error(`${key} did not show ${shown}`);
    },
    /** Runs a command of the palette by its whole title. */
    async command(title) {
      const input = page.locator('.quick-input-widget input.input');
      await user.pressUntil('F1', input);
      await input.fill(`>${title}`);
      await page.locator('.quick-input-list .label-name', { hasText: new RegExp(`^${title}$`) }).click();
    },
    /** Opens a file of the folder by its name and waits for its text. */
    async open(name) {
      await page.locator('.explorer-folders-view .monaco-list-row', { hasText: name }).dblclick();
      await page.locator('.tab.active', { hasText: name }).waitFor();
      await user.editor.locator('.view-line').first().waitFor();
    },
    /** The piece of text in the editor that is coloured as one and reads exactly `words`. */
    words: (words) =>
      user.editor.locator('.view-line span:not(:has(*))', { hasText: new RegExp(`^${words}$`) }).first(),
    /** The inside of the section panel: two frames deep. */
    preview: () => page.frameLocator('iframe.webview.ready').frameLocator('#active-frame'),
    /** Chooses a colour theme by its name and waits for the workbench to wear it. */
    async theme(name, worn) {
      await user.command('Preferences: Color Theme');
      await page.locator('.quick-input-widget input.input').fill(name);
      await page.locator('.quick-input-list .label-name', { hasText: new RegExp(`^${name}$`) }).click();
      await page.locator(`.monaco-workbench.${worn}`).waitFor();
      await page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    },
    screenshot: (name) => page.screenshot({ path: `${artifacts}/${name}.png` }),
    close: () => page.context().close(),
  };
  return user;

  async function stays(shown) {
    await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 250)));
    return shown.isVisible();
  }
}
