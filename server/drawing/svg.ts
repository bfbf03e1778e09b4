import type { Group, Point, Scene, Shape } from './scene.ts';

/** Numbers of a drawing: hundredths of a millimetre, no negative zero. */
function n(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return String(rounded === 0 ? 0 : rounded);
}

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text safe inside an element or a quoted attribute; control characters have no place in XML. */
export function escapeXml(text: string): string {
  return [...text]
    .map((sign) => (sign < ' ' && sign !== '\n' && sign !== '\t' ? ' ' : (entities[sign] ?? sign)))
    .join('');
}

/** What is around the scene in the file. */
export interface SvgFrame {
  readonly title: string;
  readonly description: string;
  /** Printed size, for a file of its own; inside a page the host gives the size. */
  readonly printed: boolean;
  readonly style: string | null;
  /** Begins the ids of title and description, so that a page can hold several drawings. */
  readonly id?: string;
}

/** A scene as SVG: classes for the looks, presentation attributes for what must hold without any style. */
export function svg(scene: Scene, frame: SvgFrame): string {
  const [left, top, width, height] = scene.view;
  const size = frame.printed ? ` width="${n(width)}mm" height="${n(height)}mm"` : '';
  const id = frame.id ?? 'hw';
  const head = [
    `<svg xmlns="http://www.w3.org/2000/svg" class="hw-drawing" role="group" aria-labelledby="${id}-title" aria-describedby="${id}-description"${size} viewBox="${n(left)} ${n(top)} ${n(width)} ${n(height)}">`,
    `<title id="${id}-title">${escapeXml(frame.title)}</title>`,
    `<desc id="${id}-description">${escapeXml(frame.description)}</desc>`,
    ...(frame.style === null ? [] : [`<style>${frame.style}</style>`]),
    ...(frame.printed
      ? [
          `<rect class="hw-paper" x="${n(left)}" y="${n(top)}" width="${n(width)}" height="${n(height)}" fill="#fff"/>`,
        ]
      : []),
    '<g fill="none" stroke="currentColor" stroke-width="0.25" stroke-linejoin="round" stroke-linecap="butt">',
  ];
  return `${[...head, ...scene.groups.map(groupText), '</g>', '</svg>'].join('\n')}\n`;
}

function groupText(group: Group): string {
  const state = group.state === null ? '' : ` hw-${group.state}`;
  const address = group.address === null ? '' : ` data-address="${escapeXml(group.address)}"`;
  const part =
    group.kind === 'part'
      ? ` tabindex="0" role="img" aria-label="${escapeXml(group.label ?? group.address ?? '')}"`
      : ' aria-hidden="true"';
  return `<g class="hw-${group.kind === 'dimension' ? 'size' : group.kind}${state}"${address}${part}>\n${shapesText(group.shapes)}\n</g>`;
}

/** Lines of one role are one path: a drawing stays small. */
function shapesText(shapes: readonly Shape[]): string {
  const paths = new Map<string, string[]>();
  const others: string[] = [];
  for (const shape of shapes) {
    if (shape.kind === 'line') {
      add(paths, `hw-${shape.role}`, path(shape.points, shape.closed));
    } else if (shape.kind === 'hatch') {
      for (const [from, to] of shape.lines) add(paths, 'hw-hatch', path([from, to], false));
    } else {
      others.push(single(shape));
    }
  }
  const order = [
    'hw-hatch',
    'hw-thin',
    'hw-centre',
    'hw-assumed',
    'hw-hidden',
    'hw-dimension',
    'hw-leader',
    'hw-outline',
  ];
  const lines = order.flatMap((name) => {
    const parts = paths.get(name);
    return parts ? [`<path class="${name}"${attributes[name] ?? ''} d="${parts.join('')}"/>`] : [];
  });
  const faces = others.filter((text) => text.startsWith('<path class="hw-face"'));
  return [...faces, ...lines, ...others.filter((text) => !faces.includes(text))].join('\n');
}

/** ISO 128-2, line group 0.5: wide lines 0.5 mm, narrow ones 0.25 mm, and the dashes of each kind. */
const attributes: Readonly<Record<string, string>> = {
  'hw-outline': ' stroke-width="0.5"',
  'hw-hatch': ' stroke-width="0.18"',
  'hw-centre': ' stroke-dasharray="6 0.75 0.15 0.75"',
  'hw-assumed': ' stroke-dasharray="1.5 0.75"',
  'hw-hidden': ' stroke-dasharray="3 0.75"',
};

function add(paths: Map<string, string[]>, name: string, text: string): void {
  const known = paths.get(name);
  if (known) known.push(text);
  else paths.set(name, [text]);
}

function path(points: readonly Point[], closed: boolean): string {
  const [first, ...rest] = points;
  if (!first) return '';
  return `M${n(first.x)} ${n(first.y)}${rest.map(({ x, y }) => `L${n(x)} ${n(y)}`).join('')}${closed ? 'Z' : ''}`;
}

function single(shape: Exclude<Shape, { kind: 'line' } | { kind: 'hatch' }>): string {
  switch (shape.kind) {
    case 'face':
      return `<path class="hw-face" pointer-events="all" stroke="none" d="${path(shape.area, true)}"/>`;
    case 'solid':
      return `<path class="hw-solid" fill="currentColor" pointer-events="all" d="${path(shape.area, true)}"/>`;
    case 'circle':
      return `<circle class="hw-${shape.role}"${attributes[`hw-${shape.role}`] ?? ''} cx="${n(shape.centre.x)}" cy="${n(shape.centre.y)}" r="${n(shape.radius)}"/>`;
    case 'dot':
      return `<circle class="hw-dot" fill="currentColor" stroke="none" cx="${n(shape.centre.x)}" cy="${n(shape.centre.y)}" r="${n(shape.radius)}"/>`;
    case 'arrow':
      return `<path class="hw-arrow" fill="currentColor" stroke="none" d="${path(arrowhead(shape.tip, shape.towards), true)}"/>`;
    case 'badge':
      return `<g class="hw-badge"><circle cx="${n(shape.centre.x)}" cy="${n(shape.centre.y)}" r="2.25" stroke-width="0.35"/><text class="hw-text" x="${n(shape.centre.x)}" y="${n(shape.centre.y + 1.2)}" font-size="3.4" text-anchor="middle" fill="currentColor" stroke="none">${shape.number}</text></g>`;
    case 'text': {
      const { at, anchor, size, upright, strong, text } = shape;
      const turn = upright ? ` transform="rotate(-90 ${n(at.x)} ${n(at.y)})"` : '';
      return `<text class="hw-text${strong ? ' hw-strong' : ''}" x="${n(at.x)}" y="${n(at.y)}" font-size="${n(size)}" text-anchor="${anchor}"${turn} fill="currentColor" stroke="none">${escapeXml(text)}</text>`;
    }
  }
}

/** Closed and filled, slim: 2.5 mm long (ISO 129-1). */
function arrowhead({ x, y }: Point, towards: 'left' | 'right' | 'up' | 'down'): readonly Point[] {
  const [dx, dy] = { left: [-1, 0], right: [1, 0], up: [0, -1], down: [0, 1] }[towards] as [number, number];
  const back = { x: x - dx * 2.5, y: y - dy * 2.5 };
  return [
    { x, y },
    { x: back.x + dy * 0.42, y: back.y + dx * 0.42 },
    { x: back.x - dy * 0.42, y: back.y - dx * 0.42 },
  ];
}
