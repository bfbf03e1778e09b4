/** The sound rear hub of the freehub pages; `gap` is the line of the freehub that says its gap. */
export function freehubPage(gap: string, spacer = '17.4'): string {
  return `hub: Plover rear
position: rear
width: 142 ±1
shell:
  between-shoulders: 50
  seats:
    left: { bore: 28 N7, depth: 7 }
    right: { bore: 28 N7, depth: 7 }
freehub:
  ${gap}
  between-shoulders: 20
  seats:
    left: { bore: 28 N7, depth: 7 }
    right: { bore: 28 N7, depth: 7 }
stack:
  - end-cap: left
    length: 14
  - bearing: left
    code: 6902-2RS
    seat: shell.left
  - spacer: centre
    length: 50
  - bearing: right
    code: 6902-2RS
    seat: shell.right
  - spacer: freehub
    length: ${spacer === '17.4' ? '0.76' : spacer}
  - bearing: inboard
    code: 6902-2RS
    seat: freehub.left
  - spacer: inner
    length: 20
  - bearing: outboard
    code: 6902-2RS
    seat: freehub.right
  - end-cap: right
    length: 29.5
`;
}
