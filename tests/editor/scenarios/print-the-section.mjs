// The file the command line draws, printed as a browser prints it. The PDFs stay in artifacts for the eye.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { newPage } from '../machine/browser.mjs';

export const title =
  'a drawn section prints on A4 across, at the scale it states, in letters of the standard';

export const withoutEditor = true;

/** ISO 216: A4 is 210 × 297 mm; a point is 1/72 inch. */
const a4 = [297, 210].map((mm) => (mm / 25.4) * 72);
const pxPerMm = 96 / 25.4;
/** Sum of the lengths written in each sample, mm: 14.03 + 5 + 62.06 + 5 + 14.03, and so on. */
const hubs = { 'dunlin-front': 100.12, 'plover-rear': 142.24, 'faulty-front': 100.24 };

export async function run({ browser, workspace, data, artifacts }) {
  const page = await newPage(browser);
  try {
    for (const [name, width] of Object.entries(hubs)) {
      const file = join(artifacts, `${name}.svg`);
      const cli = join(data.extension, 'dist', 'cli.js');
      const done = spawnSync(process.execPath, [
        cli,
        'draw',
        join(workspace, `${name}.hub.yaml`),
        '-o',
        file,
      ]);
      assert.equal(done.status, 0, String(done.stderr));
      await page.goto(pathToFileURL(file).href);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      await writeFile(join(artifacts, `${name}.pdf`), pdf);
      const boxes = [...pdf.toString('latin1').matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)];
      const height = await page.evaluate(() => document.documentElement.height.baseVal.value);
      const sheets = Math.ceil(height / pxPerMm / 210 - 0.01);
      assert.equal(boxes.length, sheets, `${name}: ${sheets} sheets of A4 are printed on ${boxes.length}`);
      for (const [, ...size] of boxes)
        for (const [at, points] of size.entries())
          assert.ok(Math.abs(points - a4[at]) < 1, `${name} is on a sheet of ${size.join(' × ')} points`);

      const { scale, drawn, smallest } = await page.evaluate(() => {
        const texts = [...document.querySelectorAll('text')];
        const foot = texts
          .map(({ textContent }) => /scale ([\d.]+):([\d.]+)/.exec(textContent))
          .find(Boolean);
        const lines = [...document.querySelectorAll('[data-address=width] .hw-dimension')];
        return {
          scale: Number(foot?.[1]) / Number(foot?.[2]),
          drawn: Math.max(...lines.map((line) => line.getBoundingClientRect().width)),
          smallest: Math.min(
            ...texts.map(
              (text) =>
                Number.parseFloat(getComputedStyle(text).fontSize) * text.getScreenCTM().d ||
                Number.POSITIVE_INFINITY,
            ),
          ),
        };
      });
      const measured = drawn / pxPerMm / scale;
      assert.ok(
        Math.abs(measured - width) < 0.3,
        `${name} measures ${measured} mm at ${scale}:1, wanted ${width}`,
      );
      // Capitals take 0.73 of the size of the usual sans-serif letters; ISO 3098-1 begins at 1.8 and wants 2.5 on A4.
      const capital = Math.abs(smallest / pxPerMm) * 0.73;
      assert.ok(2.45 < capital, `${name} has capitals of ${capital.toFixed(2)} mm`);
    }
  } finally {
    await page.context().close();
  }
}
