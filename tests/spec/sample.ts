/** A hub of an invented workshop that reads without a problem and uses most of the language. */
export const dunlin = `# Dunlin, the front hub of the touring pair
hub: Dunlin front
revision: B
position: front            # front | rear
width: 100 ±0.1            # face to face over the end caps
untoleranced: ISO 2768-m
stack:                     # what the dropouts clamp
  - end-cap: left
    length: 14.03 ±0.02    # dropout face to bearing face
    face: 19.4
  # the bearings come from one lot
  - bearing: left
    code: 6803-2RS
    seat: shell.left
  - spacer: centre
    length: 62.06 ±0.01 measured 62.05
    inside: 17.1
    outside: 19.6          # turned from tube
  - bearing: right
    code: 6803-2RS
    seat: shell.right
  - end-cap: right
    length: 14.03 ±0.02
    face: 19.4
shell:
  material: aluminium 6061
  between-shoulders: 62.05 ±0.02
  seats:
    left: { bore: 26 N7, depth: 5 +0.05/0, stop: shoulder }
    right:
      bore: 26 N7
      depth: 5 +0.05/0
      retaining-ring: { side: open, thickness: 1.2 }
  flanges:
    left: { holes: 16, circle: 38, from-centre: 35 }
axle: { material: aluminium 7075, diameter: 17 h6, bore: 12.1 }
beside:
  - seal: left
    at: 2.5 from bearing.left
    to: end-cap.left
    gap: 0.3 ±0.1
clamp: 5 kN
temperature: -10..45 °C
duty: { use: gravel, water: mud, rider: 95 kg }
variants:
  thru-15:
    width: 100 ±0.1
    change:
      end-cap.left: { bore: 15.05 }
      end-cap.right: { bore: 15.05 }
      axle: { bore: 15.1 }
      shell.left: { bore: 26 M7 }
      shell: { material: titanium }
    replace:
      spacer.centre: { length: 62.06 ±0.01, inside: 17.1, outside: 19.6 }
    add: [{ shim: left, length: 0.1, after: end-cap.left }]
    remove: [spacer.centre]
  quick:
    clamp: { torque: 12 N·m, thread: M12x1.5, friction: 0.15 }
notes: |
  bench-fitted; # not a comment
  see the drawing
`;
