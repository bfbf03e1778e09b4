/** The sound hub that the pages of the checks spoil and mend. */
const sound = `hub: Dunlin front
position: front
width: 100 ±0.2
axle: { diameter: 17 h6, bore: 15.05, length: 80 ±0.1 }
shell:
  between-shoulders: 62.05 ±0.01
  seats:
    left: { bore: 26 N7, depth: 5.1 ±0.02, fillet: 0.2, shoulder-bore: 23 }
    right: { bore: 26 N7, depth: 5.1 ±0.02, fillet: 0.2, shoulder-bore: 23 }
stack:
  - end-cap: left
    length: 14.03 ±0.02
    face: 19.4
  - bearing: left
    code: 6803-2RS
    seat: shell.left
  - spacer: centre
    length: 62.06 ±0.01
    inside: 17.1
    outside: 19.6
  - bearing: right
    code: 6803-2RS
    seat: shell.right
  - end-cap: right
    length: 14.03 ±0.02
    face: 19.4
`;

/** The sound hub with some of its words replaced: each pair is what stands there and what stands there instead. */
export function pageHub(...changes: readonly (readonly [from: string, to: string])[]): string {
  return changes.reduce((text, [from, to]) => text.replace(from, () => to), sound);
}
