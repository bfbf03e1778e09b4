import { chromium } from 'playwright-core';

const flags = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-sync'];
flags.push('--disable-background-networking', '--disable-component-update');

export const openBrowser = (executablePath) =>
  chromium.launch({ executablePath, headless: true, args: flags });

/** A page with empty storage that reaches this machine only, so that nothing waits for a network. */
export async function newPage(browser) {
  const context = await browser.newContext({ viewport: { width: 1400, height: 900 }, locale: 'en-US' });
  await context.route(
    ({ protocol, hostname }) => protocol !== 'file:' && !['localhost', '127.0.0.1'].includes(hostname),
    (route) => route.abort(),
  );
  context.setDefaultTimeout(20_000);
  return context.newPage();
}
