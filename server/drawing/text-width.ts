import type { Point, Shape, Text } from './scene.ts';

/** Font size of everything but titles, mm: capitals stand 2.55 mm high. */
export const textSize = 3.5;
/** From base line to base line, mm. */
export const lineHeight = 4.6;

/*
 * Advance widths in thousandths of the font size, taken from a wide open sans-serif (DejaVu Sans), so that a
 * narrower font on the reader's machine only leaves more room.
 */
const groups: readonly (readonly [width: number, characters: string])[] = [
  [278, 'ijl'],
  [318, ' .,·'],
  [337, '/:;\\|'],
  [361, '-'],
  [392, 'ftrI\'J()[]"!'],
  [525, 'zs*_°–'],
  [560, 'cLF?'],
  [602, 'kvxy⌀'],
  [640, '0123456789aeghnopqubdµEPSTY'],
  [700, 'ABCKRVXZ&'],
  [790, 'DGHNOQUØ'],
  [838, 'w+−±×<>=~#'],
  [990, 'mMW%@—…'],
];

const widths = new Map(
  groups.flatMap(([width, characters]) => [...characters].map((sign) => [sign, width] as const)),
);

/** Bold letters stand this much wider. */
const boldWidth = 1.12;

/** How wide a text stands, mm. Signs outside the table count as wide ones. */
export function textWidth(text: string, size = textSize, strong = false): number {
  let sum = 0;
  for (const sign of text) sum += widths.get(sign) ?? 900;
  return (sum * size * (strong ? boldWidth : 1)) / 1000;
}

/** Left, top, right, bottom of a text, mm. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The box a text fills, descenders included. */
export function textBox(text: Text): Box {
  const width = textWidth(text.text, text.size, text.strong);
  const start = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? -width / 2 : -width;
  const [above, below] = [text.size * 0.76, text.size * 0.22];
  const { x, y } = text.at;
  if (!text.upright) return { left: x + start, top: y - above, right: x + start + width, bottom: y + below };
  return { left: x - above, top: y - start - width, right: x + below, bottom: y - start };
}

/** The box of what is to be read: a text, or the number of a fault; null for lines. */
export function boxOf(shape: Shape): Box | null {
  if (shape.kind === 'text') return textBox(shape);
  if (shape.kind !== 'badge') return null;
  const { x, y } = shape.centre;
  return { left: x - 2.3, top: y - 2.3, right: x + 2.3, bottom: y + 2.3 };
}

/** A text of the usual size. */
export function writing(text: string, at: Point, more: Partial<Text> = {}): Text {
  return { kind: 'text', text, at, anchor: 'middle', size: textSize, upright: false, strong: false, ...more };
}
