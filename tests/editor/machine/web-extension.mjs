// Lets a page load the extension into its web worker host: the page's configuration names the folder, and the folder
// is served from the page's own origin.
import { readFile } from 'node:fs/promises';
import { extname, join, normalize } from 'node:path';

const types = {
  '.js': 'text/javascript',
  '.cjs': 'text/javascript',
  '.json': 'application/json',
  '.css': 'text/css',
};

/** `folders` maps a path below the origin to a folder; returns the page's URI for a path below it. */
export async function serveFolders(page, authority, folders) {
  for (const [prefix, folder] of Object.entries(folders)) {
    await page.context().route(`http://${authority}/${prefix}/**`, async (route) => {
      const path = normalize(
        decodeURIComponent(new URL(route.request().url()).pathname).slice(prefix.length + 1),
      );
      const body = await readFile(join(folder, path)).catch(() => undefined);
      const contentType = types[extname(path)] ?? 'application/octet-stream';
      await route.fulfill(body ? { body, contentType } : { status: 404, body: '' });
    });
  }
  return (path) => ({ scheme: 'http', authority, path: `/${path}` });
}

/** Adds to the page's `developmentOptions` before the workbench reads them. */
export async function developmentOptions(page, options) {
  await page.addInitScript((more) => {
    new MutationObserver((_, observer) => {
      const meta = document.getElementById('vscode-workbench-web-configuration');
      if (!meta) return;
      observer.disconnect();
      const settings = JSON.parse(meta.dataset.settings);
      settings.developmentOptions = { ...settings.developmentOptions, ...more };
      meta.dataset.settings = JSON.stringify(settings);
    }).observe(document, { childList: true, subtree: true });
  }, options);
}
