import { resolve } from 'node:path';
import { jsonText } from '../../report/json-text.ts';
import { sectionDrawing } from '../../report/section-drawing.ts';
import { wheelDrawing, wheelTitle } from '../../report/wheel/wheel-drawing.ts';
import { messageLines, misused } from '../failures.ts';
import type { Command, Outcome } from '../outcome.ts';
import { isWheelFile, readOneHub, readOneWheel } from '../read-one-hub.ts';
import { writeFile } from '../write-file.ts';

/** `draw FILE -o FILE.svg`: the section of a hub, or a wheel, as a drawing that prints to scale. */
export const draw: Command = {
  name: 'draw',
  usage: 'draw FILE -o FILE.svg [--variant NAME]',
  summary: 'Draw the section of a hub, or a wheel from the side and from behind, as an SVG file.',
  options: {
    output: {
      takes: 'FILE',
      short: 'o',
      summary: 'the SVG file to write; without it the drawing goes to standard output',
    },
    variant: { takes: 'NAME', summary: 'the variant to draw; without it the hub as written' },
  },
  run: ({ words, options, json }, cwd): Outcome => {
    const [path, ...more] = words;
    if (path === undefined || more.length > 0)
      return misused('draw wants one hub file or one wheel file', json);
    const output = options.get('output') ?? null;
    if (output !== null && !/\.svg$/i.test(output))
      return misused(`${output} does not end in .svg: draw writes SVG files`, json);
    if (isWheelFile(path)) return drawnWheel(path, options.get('variant') ?? null, output, json, cwd);
    const read = readOneHub(path, cwd);
    if ('message' in read) return misused(read.message, json, { file: path });
    const { variants } = read.snapshot.analysis;
    const name = options.get('variant') ?? null;
    const variant = variants.find((other) => other.name === name);
    const messages = read.hint === null ? [] : [read.hint];
    if (!variant)
      return notDrawn(
        path,
        name,
        variants.flatMap((other) => other.name ?? []),
        json,
      );
    const { svg, title, description, missing } = sectionDrawing(read.snapshot, variant);
    if (output !== null) {
      const failure = writeFile(resolve(cwd, output), svg);
      if (failure !== null) return misused(`${output} cannot be written: ${failure}`, json, { file: path });
    }
    const answer = {
      file: path,
      variant: name,
      output,
      title,
      description,
      assumed: missing,
      ...(output === null ? { svg } : {}),
    };
    const text = output === null ? svg : `${title}: written to ${output}\n`;
    return { exit: 0, out: json ? jsonText(answer) : text, err: messageLines(messages) };
  },
};

function notDrawn(path: string, name: string | null, names: readonly string[], json: boolean): Outcome {
  if (name !== null) {
    const known = names.length > 0 ? `its variants are ${names.join(', ')}` : 'it has no variants';
    return misused(`${path} has no variant ${name}; ${known}`, json, { file: path });
  }
  const error = `${path}: no hub could be read`;
  return { exit: 1, out: json ? jsonText({ file: path, error }) : '', err: messageLines([error]) };
}

function drawnWheel(
  path: string,
  variant: string | null,
  output: string | null,
  json: boolean,
  cwd: string,
): Outcome {
  const read = readOneWheel(path, cwd, variant);
  if ('message' in read) return misused(read.message, json, { file: path });
  const drawn = wheelDrawing(read.snapshot, { standalone: true });
  const title = wheelTitle(read.snapshot);
  const messages = read.hint === null ? [] : [read.hint];
  if (!drawn || drawn.svg === null) {
    const error = `${path}: not enough is known to draw the wheel; hubwright wheel ${path} says what is missing`;
    return {
      exit: 1,
      out: json ? jsonText({ file: path, error }) : '',
      err: messageLines([...messages, error]),
    };
  }
  const { svg, description, assumed } = drawn;
  if (output !== null) {
    const failure = writeFile(resolve(cwd, output), svg);
    if (failure !== null) return misused(`${output} cannot be written: ${failure}`, json, { file: path });
  }
  const answer = { file: path, output, title, description, assumed, ...(output === null ? { svg } : {}) };
  const text = output === null ? svg : `${title}: written to ${output}\n`;
  return { exit: 0, out: json ? jsonText(answer) : text, err: messageLines(messages) };
}
