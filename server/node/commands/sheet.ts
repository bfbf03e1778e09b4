import { resolve } from 'node:path';
import { jsonText } from '../../report/json-text.ts';
import { buildSheet } from '../../report/sheet/build-sheet.ts';
import { buildSheetHtml } from '../../report/sheet/build-sheet-html.ts';
import { buildSheetMarkdown } from '../../report/sheet/build-sheet-markdown.ts';
import { serviceSheet } from '../../report/sheet/service-sheet.ts';
import { sheetHtml } from '../../report/sheet/sheet-html.ts';
import { sheetMarkdown } from '../../report/sheet/sheet-markdown.ts';
import { messageLines, misused } from '../failures.ts';
import type { Command, Outcome } from '../outcome.ts';
import { isWheelFile, readOneHub, readOneWheel } from '../read-one-hub.ts';
import { writeFile } from '../write-file.ts';

/** `sheet FILE -o FILE.html`: what whoever services the hub, or builds the wheel, needs at the bench. */
export const sheet: Command = {
  name: 'sheet',
  usage: 'sheet FILE [-o FILE.html | FILE.md] [--variant NAME]',
  summary:
    'Write the service sheet of a hub, or the build sheet of a wheel: parts, order of work, figures, checks.',
  options: {
    output: {
      takes: 'FILE',
      short: 'o',
      summary: 'the file to write, .html to print or .md; without it Markdown goes to standard output',
    },
    variant: { takes: 'NAME', summary: 'the variant on the stand; without it the hub as written' },
  },
  run: ({ words, options, json }, cwd): Outcome => {
    const [path, ...more] = words;
    if (path === undefined || more.length > 0)
      return misused('sheet wants one hub file or one wheel file', json);
    const output = options.get('output') ?? null;
    if (output !== null && !/\.(html?|md)$/i.test(output))
      return misused(`${output} ends neither in .html nor in .md: sheet writes those`, json, { file: path });
    if (isWheelFile(path)) return ofWheel(path, options.get('variant') ?? null, output, json, cwd);
    const read = readOneHub(path, cwd);
    if ('message' in read) return misused(read.message, json, { file: path });
    const { variants } = read.snapshot.analysis;
    const name = options.get('variant') ?? null;
    const variant = variants.find((other) => other.name === name);
    if (!variant) {
      const known = variants.flatMap((other) => other.name ?? []);
      const error =
        name === null
          ? `${path}: no hub could be read`
          : `${path} has no variant ${name}; ${known.length > 0 ? `its variants are ${known.join(', ')}` : 'it has no variants'}`;
      return misused(error, json, { file: path });
    }
    const made = serviceSheet(read.snapshot, variant);
    const text = output !== null && !/\.md$/i.test(output) ? sheetHtml(made) : sheetMarkdown(made);
    if (output !== null) {
      const failure = writeFile(resolve(cwd, output), text);
      if (failure !== null) return misused(`${output} cannot be written: ${failure}`, json, { file: path });
    }
    const plain = output === null ? text : `${made.title}: written to ${output}\n`;
    const answer = { file: path, variant: name, output, sheet: { ...made, drawing: undefined } };
    const messages = read.hint === null ? [] : [read.hint];
    return {
      exit: made.locked === null ? 0 : 1,
      out: json ? jsonText(answer) : plain,
      err: messageLines(messages),
    };
  },
};

function ofWheel(
  path: string,
  variant: string | null,
  output: string | null,
  json: boolean,
  cwd: string,
): Outcome {
  const read = readOneWheel(path, cwd, variant);
  if ('message' in read) return misused(read.message, json, { file: path });
  const made = buildSheet(read.snapshot);
  if (!made) return misused(`${path}: no wheel could be read`, json, { file: path });
  const text = output !== null && !/\.md$/i.test(output) ? buildSheetHtml(made) : buildSheetMarkdown(made);
  if (output !== null) {
    const failure = writeFile(resolve(cwd, output), text);
    if (failure !== null) return misused(`${output} cannot be written: ${failure}`, json, { file: path });
  }
  const answer = { file: path, output, sheet: { ...made, drawing: undefined } };
  const plain = output === null ? text : `${made.title}: written to ${output}\n`;
  const messages = read.hint === null ? [] : [read.hint];
  return { exit: 0, out: json ? jsonText(answer) : plain, err: messageLines(messages) };
}
