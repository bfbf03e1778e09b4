/** A cup-and-cone front hub as a snippet: usual dimensions, every one there to be replaced by a measured one. */
export function newConeHub(name: string): string {
  const title = /^[\w][\w .()/-]*$/.test(name.trim()) ? name.trim() : 'Name of the hub';
  const locknut = (side: string, stop: number): string =>
    `  - locknut: ${side}\n    length: \${${stop}:6} ±0.05\n`;
  const race = (side: string, stop: number, set: string): string =>
    `  - cone: ${side}\n    length: \${${stop}:11} ±0.05\n    thread: M9x1\n    balls: 10 × 3/16 in\n${set}`;
  return [
    `hub: \${1:${title}}\nposition: front\nwidth: \${2:100} ±0.2\n`,
    'axle: { material: steel, diameter: 9, bore: 5.2 }\nclamp: { force: 4 kN, through: axle }\n',
    `shell:\n  cups:\n    left: { ball-circle: \${3:17.4}, contact-angle: 45 }\n    right: { ball-circle: \${4:17.4}, contact-angle: 45 }\n`,
    'stack:\n',
    locknut('left', 5),
    race('left', 6, ''),
    race('right', 7, `    set: \${8:0.06} ±0.02\n`),
    locknut('right', 9),
    '$0',
  ].join('');
}
