// Sound hub files of any length: a front hub, then variants with comments and notes until the lines are reached.

const hub = (name) => `# A front hub on two cartridge bearings, made for the bench.
hub: ${name}
revision: C
position: front
width: 100 ±0.2            # face to face over the end caps

shell:
  material: aluminium 6061-T6
  outside: 34
  between-shoulders: 62.05 ±0.02
  through: 22.5
  length: 72.25
  seats:                   # N7 holds an outer ring that turns with the wheel
    left:  { bore: 26 N7, depth: 5.1 ±0.02, fillet: 0.2, shoulder-bore: 22.5 }
    right: { bore: 26 N7, depth: 5.1 ±0.02, fillet: 0.2, shoulder-bore: 22.5 }
  flanges:
    left:  { holes: 16, circle: 40, from-centre: 30, hole: 2.6, thickness: 3.2 }
    right: { holes: 16, circle: 40, from-centre: 30, hole: 2.6, thickness: 3.2 }

axle:
  material: aluminium 7075-T6
  diameter: 17 h6
  bore: 12.1
  length: 87.5 ±0.1

stack:                     # what the dropouts clamp, left to right
  - end-cap: left
    length: 14.03 ±0.02
    face: 19.4
    outside: 25
    bore: 12.1
    socket: 8 +0.1/0
  - bearing: left
    code: 6803-2RS
    seat: shell.left
  - spacer: centre
    length: 62.09 ±0.01    # typed into by the bench
    inside: 17.1
    outside: 19.5
    material: aluminium 7075-T6
  - bearing: right
    code: 6803-2RS
    seat: shell.right
  - end-cap: right
    length: 14.03 ±0.02
    face: 19.4
    outside: 25
    bore: 12.1
    socket: 8 +0.1/0

clamp: 5 kN
`;

/** 24 lines: another set of end caps for another width, so that the clamped width closes again. */
const variant = (at) => {
  const longer = (at % 40) / 4;
  const cap = (14.03 + longer).toFixed(2);
  const width = String(100 + 2 * longer);
  return `  # Set ${at}: caps for a frame that is ${width} mm wide inside.
  # Drawn from the set before it; the flanges stay where they are,
  # because both caps grow by the same length.
  set-${at}:
    width: ${width} ±0.2
    change:
      end-cap.left:
        length: ${cap} ±0.02   # half of the difference
        bore: ${(5.2 + (at % 7)).toFixed(1)}
        outside: 25
      end-cap.right:
        length: ${cap} ±0.02
        bore: ${(5.2 + (at % 7)).toFixed(1)}
        outside: 25
    clamp: 5 kN
    notes: |
      Turned from the same bar as the set before it.
      The left cap carries a groove for its O-ring,
      the right one is smooth.
      Check the face with a straight edge: a burr of
      0.02 mm is as much as the whole tolerance.
      Set ${at} of the drawing list.

`;
};

/** A sound hub file of about so many lines. */
export function hubOfLines(lines, name = 'Dunlin front') {
  const base = hub(name);
  const start = base.split('\n').length - 1;
  const sets = Math.max(0, Math.floor((lines - start - 2) / 24));
  const text =
    sets === 0
      ? base
      : `${base}\nvariants:\n${Array.from({ length: sets }, (_, at) => variant(at)).join('')}`;
  const missing = lines - (text.split('\n').length - 1);
  const log = Array.from(
    { length: Math.max(0, missing) },
    (_, at) => `# ${at + 1}. checked on the bench, nothing to note\n`,
  );
  return text + log.join('');
}

/** Two hundred single keys typed and taken back, at places that change different things. */
export function typedEdits(text, count = 200) {
  const lines = text.split('\n');
  const lineOf = (words, last = false) => {
    const test = (line) => line.includes(words);
    return last ? lines.findLastIndex(test) : lines.findIndex(test);
  };
  const places = [
    { line: lineOf('62.09 ±0.01'), after: '62.09', keys: ['1', '5'] },
    { line: lineOf('# typed into by the bench'), after: 'by the bench', keys: [' ', 'a'] },
    { line: lineOf('code: 6803-2RS'), after: '6803-2RS', keys: ['/', 'C'] },
    { line: lineOf('face: 19.4', true), after: 'face', keys: ['s', 't'] },
    { line: lineOf('bore:', true), after: ': ', keys: ['1', '1'] },
  ];
  const edits = [];
  for (let at = 0; edits.length < count; at++) {
    const { line, after, keys } = places[at % places.length];
    const from = lines[line].indexOf(after) + after.length;
    // Two keys in, two keys back: the text is the same again after four edits.
    edits.push(insert(line, from, keys[0]), insert(line, from + 1, keys[1]));
    edits.push(remove(line, from + 1), remove(line, from));
  }
  return edits.slice(0, count);
}

const insert = (line, character, text) => ({
  range: { start: { line, character }, end: { line, character } },
  text,
});
const remove = (line, character) => ({
  range: { start: { line, character }, end: { line, character: character + 1 } },
  text: '',
});
