/**
 * A front hub on two angular-contact bearings for the pages of checks: length of its spacer and of each end cap, mm
 * as written, and the side that the back face of the right bearing looks to.
 */
export const angularPageHub = (
  spacer: string,
  cap: string,
  back: 'left' | 'right',
): string => `hub: Pratincole front
position: front
width: 100 ±0.3
clamp: 5 kN
axle: { material: aluminium 7075, diameter: 17 h6, bore: 12.1 }
shell:
  material: aluminium 6061
  outside: 38
  through: 26
  between-shoulders: 50 ±0.01
  seats:
    left: { bore: 30 N7, depth: 7.1 ±0.02, shoulder-bore: 27 }
    right: { bore: 30 N7, depth: 7.1 ±0.02, shoulder-bore: 27 }
stack:
  - end-cap: left
    length: ${cap} ±0.02
  - bearing: left
    code: 71903C
    seat: shell.left
    back-face: right
  - spacer: centre
    length: ${spacer} ±0.01
    inside: 17.1
    outside: 21
    material: aluminium 6061
  - bearing: right
    code: 71903C
    seat: shell.right
    back-face: ${back}
  - end-cap: right
    length: ${cap} ±0.02
`;
