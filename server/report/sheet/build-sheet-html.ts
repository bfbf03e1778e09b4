import { escapeXml } from '../../drawing/svg.ts';
import type { BuildSheet, SheetTable } from './build-sheet.ts';
import { sheetLook } from './sheet-look.ts';

/** What the build sheet has beyond the looks of every sheet. */
const look = [
  '.wheel svg{display:block;width:100%}',
  '.pair{display:grid;grid-template-columns:1fr 1fr;gap:0 6mm;font-size:7.8pt}',
  '.lacing ol,.order ol{margin:0;padding-left:5mm}.lacing li{margin-bottom:.4mm}.pair section{break-inside:avoid}',
  '.readings{font-size:7.5pt;table-layout:fixed}.readings td,.readings th{border:.15mm solid #555;text-align:center;padding:.2mm;height:4.2mm}.readings td{color:#000}',
  '.pair td:nth-child(-n+2){white-space:nowrap}.lacing,.order{font-size:7.6pt}.order ol,.rest ul{columns:2;column-gap:6mm}.rest{font-size:6.8pt}.readings+p,.readings~p{margin:.8mm 0}h2{margin-top:1mm}.pair{font-size:7.6pt}.foot{margin-top:.6mm}body{line-height:1.13}',
  '.hw-hidden{stroke:#333}',
].join('');

/** The build sheet as a page of its own that prints on A4 in black and white; nothing is loaded from anywhere. */
export function buildSheetHtml(sheet: BuildSheet): string {
  const body = [
    header(sheet),
    `<aside class="cautions"><strong>Before you begin</strong><ul>${items(sheet.cautions)}</ul></aside>`,
    sheet.drawing === null ? '' : `<figure class="wheel">${sheet.drawing}</figure>`,
    `<div class="pair">${table('Parts', sheet.parts)}${table('Lengths', sheet.lengths)}</div>`,
    list('Findings that stand', sheet.findings, 'ul'),
    `<div class="lacing">${list('Lacing; rim holes count from the valve, clockwise as seen from the right', sheet.lacing, 'ol')}</div>`,
    `<div class="pair">${list('Tension wanted', sheet.tension, 'ul')}${table('True within', sheet.truing)}</div>`,
    readings(sheet),
    `<div class="order">${list('Order of work', sheet.work, 'ol')}</div>`,
    list('Not known: measure', sheet.measure, 'ul'),
    `<div class="rest">${list('Assumed', sheet.assumed, 'ul')}</div>`,
    '<p class="foot">Computed figures are for comparison. No finding means that nothing was found, not that the wheel is safe.</p>',
  ];
  return [
    '<!doctype html>',
    `<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escapeXml(sheet.title)}: build sheet</title>`,
    `<style>${sheetLook}${look}</style></head><body>`,
    ...body.filter((text) => text !== ''),
    '</body></html>',
    '',
  ].join('\n');
}

function header({ title, facts }: BuildSheet): string {
  const told = [...facts, ['Date', ''], ['By', ''], ['Meter', '']] as const;
  const cells = told.map(
    ([name, value]) =>
      `<div><dt>${escapeXml(name)}</dt><dd>${value === '' ? '<span class="blank"></span>' : escapeXml(value)}</dd></div>`,
  );
  return `<header><h1>${escapeXml(title)}</h1><dl>${cells.join('')}</dl></header>`;
}

function table(title: string, { titles, rows }: SheetTable): string {
  if (rows.length === 0) return '<div></div>';
  const head = `<tr>${titles.map((name) => `<th scope="col">${escapeXml(name)}</th>`).join('')}</tr>`;
  const lines = rows.map(
    (cells) => `<tr>${cells.map((cell) => `<td>${escapeXml(cell)}</td>`).join('')}</tr>`,
  );
  return `<section><h2>${escapeXml(title)}</h2><table><thead>${head}</thead><tbody>${lines.join('')}</tbody></table></section>`;
}

/** A box for each spoke, and boxes for what is read of the whole wheel. */
function readings({ readings: sides }: BuildSheet): string {
  if (sides.length === 0) return '';
  const rows = sides.map(({ side, count, read }) => {
    const numbers = Array.from({ length: count }, (_, at) => `<th scope="col">${at + 1}</th>`);
    const boxes = Array.from({ length: count }, (_, at) => `<td>${read[at] ?? ''}</td>`);
    return `<table class="readings"><tbody><tr><th scope="row">${escapeXml(side)}</th>${numbers.join('')}</tr><tr><th scope="row">N</th>${boxes.join('')}</tr></tbody></table>`;
  });
  const whole = ['mean left', 'mean right', 'sideways', 'radially', 'dish'].map(
    (name) => `${name} <span class="blank"></span>`,
  );
  return `<section><h2>Readings, spokes from the valve on, clockwise as seen from the right</h2>${rows.join('')}<p>${whole.join(' ')}</p></section>`;
}

function list(title: string, lines: readonly string[], kind: 'ul' | 'ol'): string {
  if (lines.length === 0) return '';
  return `<section><h2>${escapeXml(title)}</h2><${kind}>${items(lines)}</${kind}></section>`;
}

const items = (lines: readonly string[]): string =>
  lines.map((line) => `<li>${escapeXml(line)}</li>`).join('');
