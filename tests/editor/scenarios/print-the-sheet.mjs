// The service sheets of three hubs, printed as a browser prints them. What a printed sheet has to pass, written down
// before looking; the PDFs stay in artifacts for the eye.
//   1. A4 upright; one page for a hub with two bearings, two at most for a rear hub with a freehub of its own.
//   2. The order of work can be read at arm's length: names of steps of 11 points or more, nothing under 7.
//   3. Every figure stands beside its step: driver, support, force and stop in the item of the step, its picture too.
//   4. Nothing is cut off: no text wider than its place, nothing beyond the edge of the paper.
//   5. Black and white: no colour but greys.
//   6. Cautions stand before the first step, the checks before riding after the last.
//   7. No picture has two letters on each other.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { newPage } from '../machine/browser.mjs';

export const title =
  'service sheets print on A4 in black and white, the order of work readable, every figure beside its step';

export const withoutEditor = true;

/** The most pages each may have. */
const hubs = { 'dunlin-front': 1, 'knot-front': 1, 'plover-rear': 2 };

export async function run({ browser, workspace, data, artifacts }) {
  const page = await newPage(browser);
  try {
    for (const [name, most] of Object.entries(hubs)) {
      const file = join(artifacts, `${name}-sheet.html`);
      const cli = join(data.extension, 'dist', 'cli.js');
      const done = spawnSync(process.execPath, [
        cli,
        'sheet',
        join(workspace, `${name}.hub.yaml`),
        '-o',
        file,
      ]);
      assert.equal(done.status, 0, String(done.stderr));
      await page.goto(pathToFileURL(file).href);
      await page.emulateMedia({ media: 'print' });
      const pdf = await page.pdf({ preferCSSPageSize: true });
      await writeFile(join(artifacts, `${name}-sheet.pdf`), pdf);
      const boxes = [...pdf.toString('latin1').matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)];
      assert.ok(boxes.length <= most, `${name} takes ${boxes.length} pages, wanted ${most} at most`);
      for (const [, width, height] of boxes)
        assert.ok(
          Math.abs(width - 595) < 1 && Math.abs(height - 842) < 1,
          `${name}: ${width} × ${height} points`,
        );
      // The width of the paper less its margins, as the print lays it out.
      await page.setViewportSize({ width: Math.round((190 / 25.4) * 96), height: 1000 });
      assert.deepEqual(await page.evaluate(problems), [], name);
    }
  } finally {
    await page.context().close();
  }
}

/** Runs in the page and gives all that is wrong. */
function problems() {
  const wrong = [];
  const points = (element) => Number.parseFloat(getComputedStyle(element).fontSize) * 0.75;
  const told = [...document.querySelectorAll('h1, h2, h3, li, td, th, p, dt, dd')];
  for (const element of told)
    if (points(element) < 7) wrong.push(`2. ${points(element)} points: ${element.textContent.slice(0, 40)}`);
  const steps = [...document.querySelectorAll('.steps ol > li')];
  if (steps.length < 8) wrong.push(`3. only ${steps.length} steps`);
  for (const step of steps) {
    const name = step.querySelector('h3');
    if (!name || points(name) < 10.9) wrong.push(`2. a step of ${name && points(name)} points`);
    const text = step.textContent;
    const pressed = /^\d+(Press|Drive|Pull)/.test(text);
    if (pressed && !step.querySelector('svg')) wrong.push(`3. no picture: ${text.slice(0, 50)}`);
    if (
      /^\d+Press .* into/.test(text) &&
      !(/D: /.test(text) && /about|by hand|not known/.test(text) && /stop /.test(text))
    )
      wrong.push(`3. a figure is missing: ${text.slice(0, 50)}`);
  }
  const edge = document.documentElement.clientWidth;
  for (const element of told) {
    const { left, right } = element.getBoundingClientRect();
    if (left < -1 || edge + 1 < right) wrong.push(`4. over the edge: ${element.textContent.slice(0, 40)}`);
    if (element.clientWidth + 1 < element.scrollWidth)
      wrong.push(`4. cut off: ${element.textContent.slice(0, 40)}`);
  }
  for (const element of document.querySelectorAll('body *')) {
    const { color, backgroundColor, stroke, fill } = getComputedStyle(element);
    for (const value of [color, backgroundColor, stroke, fill]) {
      const [r, g, b] = /rgba?\((\d+), (\d+), (\d+)/.exec(value)?.slice(1).map(Number) ?? [0, 0, 0];
      if (8 < Math.max(r, g, b) - Math.min(r, g, b)) wrong.push(`5. ${value} in ${element.tagName}`);
    }
  }
  const order = [
    document.querySelector('.cautions'),
    steps[0],
    steps.at(-1),
    document.querySelector('.checks'),
  ];
  for (const [i, element] of order.entries()) {
    const before = order[i - 1];
    if (!element) wrong.push(`6. part ${i} is missing`);
    else if (before && !(before.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_FOLLOWING))
      wrong.push(`6. part ${i} stands before its turn`);
  }
  for (const picture of document.querySelectorAll('.steps svg')) {
    const letters = [...picture.querySelectorAll('text')].map((text) => text.getBoundingClientRect());
    for (const [i, a] of letters.entries())
      for (const b of letters.slice(i + 1))
        if (a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1)
          wrong.push('7. two letters lie on each other');
  }
  return wrong;
}
