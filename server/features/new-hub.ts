/** The text of a new hub, once with stops to fill in and once as it stands. */
export function newHub(
  name: string,
  position: 'front' | 'rear',
): { readonly snippet: string; readonly text: string } {
  const snippet = skeleton(name, position);
  return {
    snippet,
    text: snippet
      .replace(/\$\{\d+:((?:\\.|[^}])*)\}|\$\d+/g, (_, held) => held ?? '')
      .replace(/\\([$}\\])/g, '$1'),
  };
}

/** A small hub that closes: every value is there to be replaced by the one on the drawing. */
function skeleton(name: string, position: 'front' | 'rear'): string {
  const escaped = name.trim().replace(/[\\$}]/g, '\\$&');
  const title = /^[\w][\w .()/-]*$/.test(name.trim())
    ? escaped
    : name.trim() === ''
      ? ''
      : JSON.stringify(name.trim()).replace(/[\\$}]/g, '\\$&');
  const named = title === '' ? `\${1:Name of the hub}` : `\${1:${title}}`;
  return position === 'front' ? front(named) : rear(named);
}

const cap = (side: string, stop: number, length: string): string =>
  `  - end-cap: ${side}\n    length: \${${stop}:${length}} ±0.02\n`;
const bearing = (side: string, stop: number, code: string): string =>
  `  - bearing: ${side}\n    code: \${${stop}:${code}}\n`;
const spacer = (name: string, stop: number, length: string): string =>
  `  - spacer: ${name}\n    length: \${${stop}:${length}} ±0.01\n`;

function front(name: string): string {
  return `hub: ${name}\nposition: front\nwidth: \${2:100} ±0.2\nstack:\n${cap('left', 3, '14.03')}${bearing('left', 4, '6803-2RS')}${spacer('centre', 5, '62.06')}${bearing('right', 6, '6803-2RS')}${cap('right', 7, '14.03')}$0`;
}

function rear(name: string): string {
  return `hub: ${name}\nposition: rear\nwidth: \${2:142} ±0.2\nstack:\n${cap('left', 3, '13.03')}${bearing('left', 4, '6902-2RS')}${spacer('centre', 5, '102.06')}${bearing('right', 6, '6902-2RS')}${cap('right', 7, '13.03')}$0`;
}
