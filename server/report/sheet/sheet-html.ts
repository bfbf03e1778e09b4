import { escapeXml } from '../../drawing/svg.ts';
import type { ServiceSheet, SheetStep } from './service-sheet.ts';
import { sheetLook } from './sheet-look.ts';

/** The sheet as a page of its own that prints on A4 in black and white; nothing is loaded from anywhere. */
export function sheetHtml(sheet: ServiceSheet): string {
  const body = [
    header(sheet),
    cautions(sheet.cautions),
    `<div class="top"><figure class="section">${sheet.drawing}</figure>${parts(sheet)}</div>`,
    sheet.findings.length > 0 ? block('Findings that stand', sheet.findings, 'findings') : '',
    sheet.locked === null ? '' : `<p class="locked">${escapeXml(sheet.locked)}</p>`,
    pictureKey(sheet),
    `<div class="work">${steps('Apart', sheet.apart)}${steps('Together', sheet.together)}</div>`,
    `<div class="care">${[
      readings(sheet),
      ...sheet.care.map(({ title, lines }) => block(title, lines)),
      block('Before it is ridden', sheet.checks, 'checks'),
      block('Not known: measure', sheet.measure),
      block('Assumed', sheet.assumed),
    ].join('')}</div>`,
    '<p class="foot">Computed figures are for comparison. No finding means that nothing was found, not that the hub is safe.</p>',
  ];
  return [
    '<!doctype html>',
    `<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escapeXml(sheet.title)}: service sheet</title>`,
    `<style>${sheetLook}</style></head><body>`,
    ...body.filter((text) => text !== ''),
    '</body></html>',
    '',
  ].join('\n');
}

function header({ title, facts }: ServiceSheet): string {
  const told = [...facts, ['Date', ''], ['By', '']] as const;
  const cells = told.map(
    ([name, value]) =>
      `<div><dt>${escapeXml(name)}</dt><dd>${value === '' ? '<span class="blank"></span>' : escapeXml(value)}</dd></div>`,
  );
  return `<header><h1>${escapeXml(title)}</h1><dl>${cells.join('')}</dl></header>`;
}

function cautions(lines: readonly string[]): string {
  return `<aside class="cautions"><strong>Before you begin</strong><ul>${items(lines)}</ul></aside>`;
}

function parts({ parts: rows }: ServiceSheet): string {
  const lines = rows.map(
    ({ part, what, size, note }, index) =>
      `<tr><td class="number">${index + 1}</td><th scope="row">${escapeXml(part)}</th><td>${escapeXml(what)}</td><td class="size">${escapeXml(size)}</td><td>${escapeXml(note)}</td></tr>`,
  );
  return `<section><h2>Parts, left to right</h2><table><tbody>${lines.join('')}</tbody></table></section>`;
}

function readings({ readings: rows }: ServiceSheet): string {
  const lines = rows.map(
    ({ what, wanted }) =>
      `<tr><th scope="row">${escapeXml(what)}</th><td>${escapeXml(wanted)}</td><td class="blank"></td></tr>`,
  );
  return `<section><h2>Read and write down</h2><table><tbody>${lines.join('')}</tbody></table></section>`;
}

function steps(title: string, list: readonly SheetStep[]): string {
  if (list.length === 0) return '';
  return `<section class="steps"><h2>${title}</h2><ol>${list.map(step).join('')}</ol></section>`;
}

function pictureKey({ apart, together }: ServiceSheet): string {
  return [...apart, ...together].some(({ picture }) => picture !== null)
    ? '<p class="key">Pictures: close lines move, wide lines stay; D is the driver, S the support (never on a flange or the rim), P what pulls, the arrow the way.</p>'
    : '';
}

/** A step with a picture has its figures in a list beside it; of a simple one they stand behind its name. */
function step({ number, head, brief: details, picture }: SheetStep): string {
  const name = `<span class="number">${number}</span>${escapeXml(head)}`;
  if (picture === null && details.length < 2) {
    const said = details.map((text) => ` <span class="also">${escapeXml(text)}</span>`).join('');
    return `<li><h3>${name}${said}</h3></li>`;
  }
  const drawn = picture === null ? '' : `<figure>${picture.svg}</figure>`;
  return `<li><h3>${name}</h3>${drawn}<ul>${items(details)}</ul></li>`;
}

function block(title: string, lines: readonly string[], name = ''): string {
  if (lines.length === 0) return '';
  return `<section class="${name}"><h2>${escapeXml(title)}</h2><ul>${items(lines)}</ul></section>`;
}

const items = (lines: readonly string[]): string =>
  lines.map((line) => `<li>${escapeXml(line)}</li>`).join('');
