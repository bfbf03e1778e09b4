import { expect, test } from 'vitest';
import { tokenise } from './tokenise.ts';

/** A text in one of the languages, and what must be seen in it: the words and the start of their innermost scope. */
type Row = readonly [title: string, text: string, expected: Readonly<Record<string, string>>];

const figure = 'constant.numeric.dimension';
const code = 'support.class.bearing-code';
const suffix = 'storage.modifier.bearing-suffix';
const fit = 'entity.name.type.fit-class';
const unit = 'keyword.other.unit';
const kind = 'storage.type.part-kind';
const name = 'variable.other.part-name';
const section = 'keyword.control.section';
const word = 'constant.language.value';
const key = 'entity.name.tag';

const hub: readonly Row[] = [
  ['a section key', 'width: 100', { width: section, '100': figure }],
  ['an unknown key stays an ordinary key', 'widht: 100', { widht: key }],
  ['a section word deeper down stays an ordinary key', 'shell:\n  width: 3', { shell: section, width: key }],
  ['a name is text, figures in it too', 'hub: Dunlin 2 front', { 'Dunlin 2 front': 'string.unquoted' }],
  ['a word of the language', 'position: front # or rear', { front: word, ' or rear': 'comment.line' }],
  ['the general tolerance', 'untoleranced: ISO 2768-m', { 'ISO 2768': 'support.constant', m: word }],
  ['symmetric limits', 'a: 62.05 ±0.02', { '62.05': figure, '±': 'keyword.operator', '0.02': figure }],
  ['symmetric limits without the sign', 'a: 62.05 +-0.02', { '+-': 'keyword.operator', '0.02': figure }],
  ['symmetric limits with a stroke', 'a: 62.05 +/-0.02', { '+/-': 'keyword.operator', '0.02': figure }],
  ['two deviations', 'a: 62 +0.05/-0.02', { '62': figure, '+0.05': figure, '-0.02': figure }],
  ['a typeset minus', 'a: 62 −0.01/−0.03', { '−0.01': figure, '−0.03': figure }],
  ['two limits', 'a: 61.98..62.02', { '61.98': figure, '..': 'keyword.operator', '62.02': figure }],
  ['a diameter sign', 'a: Ø19.4', { Ø: 'keyword.operator', '19.4': figure }],
  ['a bore class', 'a: 26 N7', { '26': figure, N7: fit }],
  ['a shaft class', 'a: 17 h6', { '17': figure, h6: fit }],
  ['a two-letter class', 'a: 17 js5', { js5: fit }],
  ['drawn and measured', 'a: 62.05 ±0.02 measured 62.03', { measured: 'keyword.control', '62.03': figure }],
  ['only measured', 'a: measured 62.03 ±0.01', { measured: 'keyword.control', '0.01': figure }],
  [
    'a class and a reading',
    'a: 26 N7 measured 25.98',
    { N7: fit, measured: 'keyword.control', '25.98': figure },
  ],
  ['an inch fraction', 'a: 1/2 in', { '1': figure, '2': figure, in: unit }],
  ['a force is no class', 'a: 1100 ±100 N', { '1100': figure, N: unit }],
  ['a torque', 'a: 12 N·m', { '12': figure, N·m: unit }],
  ['a torque in plain letters', 'a: 12 Nm', { Nm: unit }],
  ['a temperature range', 'a: -10..45 °C', { '-10': figure, '45': figure, '°C': unit }],
  ['a stress', 'a: 310 MPa', { MPa: unit }],
  ['a rate', 'a: 40 N/mm', { 'N/mm': unit }],
  ['a thread', 'a: M12x1.5', { 'M12x1.5': 'constant.numeric.thread' }],
  ['balls', 'a: 13 × 2.778', { '13': figure, '×': 'keyword.operator', '2.778': figure }],
  ['a size', 'size: 17x26x5', { '17': figure, '26': figure, '5': figure }],
  ['a decimal comma', 'a: 62,05', { '62,05': figure }],
  ['a bearing code', 'code: 6803-2RS', { '6803': code, '-2RS': suffix }],
  ['a bare bearing code is no number', 'code: 6803', { '6803': code }],
  ['a code with a clearance', 'code: 6803-2RS C3', { '6803': code, C3: suffix }],
  ['a slash code', 'code: 619/8-2Z', { '619/8': code, '-2Z': suffix }],
  ['a lettered series', 'code: MR15267 LLU', { MR15267: code, LLU: suffix }],
  ['a house code', 'code: DB-17', { 'DB-17': code }],
  ['a code after aligned blanks', 'code:   6902', { '6902': code }],
  ['a code in double quotes', 'code: "6902-2RS"', { '6902': code, '-2RS': suffix }],
  ['a code in single quotes', "code: '6902-2RS'", { '6902': code, '-2RS': suffix }],
  ['a class in quotes', 'a: "26 N7"', { '26': figure, N7: fit }],
  ['a part of the stack', 'stack:\n  - spacer: centre', { spacer: kind, centre: name }],
  ['a part with a hyphen', 'stack:\n  - end-cap: left', { 'end-cap': kind, left: name }],
  [
    'a part in braces',
    '- { shim: left, length: 0.1 mm }',
    { shim: kind, left: name, '0.1': figure, mm: unit },
  ],
  ['an address', 'seat: shell.left', { shell: kind, '.': 'punctuation.separator', left: name }],
  [
    'addresses in brackets',
    'remove: [washer.left, spacer.centre]',
    { washer: kind, spacer: kind, centre: name },
  ],
  [
    'an address as a key',
    'change:\n  end-cap.left: { bore: 15.05 }',
    { 'end-cap': kind, left: name, bore: key },
  ],
  [
    'a seat in braces',
    'left: { bore: 26 N7, stop: shoulder }',
    { bore: key, N7: fit, stop: key, shoulder: word },
  ],
  ['a name that begins with figures', 'hub: 32-hole', { '32-hole': 'string.unquoted' }],
  ['prose', 'notes: turn 62.05 mm to 26 N7', { 'turn 62.05 mm to 26 N7': 'string.unquoted' }],
  ['a key without a value yet', 'code:\nwidth: 100 ±0.1', { code: key, width: section, '100': figure }],
];

const wheel: readonly Row[] = [
  [
    'a profile',
    'spokes:\n  left: { profile: 2.0/1.8/2.0 }',
    { spokes: section, '2.0': figure, '1.8': figure },
  ],
  ['a mass', 'rider: { mass: 95 kg }', { rider: section, mass: key, '95': figure, kg: unit }],
  ['a path is text', 'hub: ./dunlin.hub.yaml', { './dunlin.hub.yaml': 'string.unquoted' }],
  ['a section of a hub is none of a wheel', 'stack: 3', { stack: key }],
];

const workshop: readonly Row[] = [
  [
    'a house code',
    'bearings:\n  DB-17: { code: 6803-2RS C3 }',
    { bearings: section, '6803': code, C3: suffix },
  ],
  [
    'a code as a key',
    'stock:\n  bearings:\n    6803-2RS: 12',
    { '6803': code, '-2RS': suffix, '12': figure },
  ],
  ['codes as items', 'list:\n  - 6902-2RS\n  - MR15267', { '6902': code, MR15267: code }],
  [
    'codes in brackets',
    'list: [6803-2RS C3, 608/8-2Z]',
    { '6803': code, C3: suffix, '608/8': code, '-2Z': suffix },
  ],
  ['plain figures in brackets', 'shims: [0.05, 0.1 mm]', { '0.05': figure, '0.1': figure, mm: unit }],
  ['a density', 'bronze: { density: 8800 kg/m3 }', { '8800': figure, 'kg/m3': unit }],
];

const tables = { 'source.hub-spec': hub, 'source.wheel-spec': wheel, 'source.workshop-spec': workshop };

for (const [scopeName, rows] of Object.entries(tables)) {
  test.each(rows)(`${scopeName} colours %s`, async (_title, text, expected) => {
    const tokens = (await tokenise(scopeName, text)).flat();
    for (const [words, scope] of Object.entries(expected)) {
      const found = tokens.filter((token) => token.text === words).map((token) => token.scopes.at(-1));
      expect(found, `${words} in ${JSON.stringify(tokens.map((t) => t.text))}`).toContainEqual(
        expect.stringMatching(new RegExp(`^${scope.replaceAll('.', '\\.')}`)),
      );
    }
    expect(
      tokens.map((token) => token.scopes.join(' ')).filter((scope) => scope.includes('invalid')),
    ).toEqual([]);
  });
}

const innermost = async (text: string) =>
  (await tokenise('source.hub-spec', text)).map((line) => line.map((t) => [t.text, t.scopes.at(-1)]));

test('CRLF line ends colour as LF does', async () => {
  const lines = [
    'code: 6803-2RS',
    'stack:',
    '  - spacer: centre',
    '    length: 62.06 ±0.01 # turned',
    'seat: shell.left',
  ];
  expect(await innermost(lines.join('\r\n'))).toEqual(await innermost(lines.join('\n')));
});

test('a block scalar is prose, and the lines after it are read again', async () => {
  const lines = await innermost(
    'notes: |\n  62.05 ±0.02 and code: 6803\n  # allow x because y\nwidth: 100 N7',
  );
  expect(lines[1]?.at(-1)).toEqual(['62.05 ±0.02 and code: 6803', 'string.unquoted.block.yaml']);
  expect(lines[2]?.at(-1)).toEqual(['# allow x because y', 'string.unquoted.block.yaml']);
  expect(lines[3]).toContainEqual(['N7', 'entity.name.type.fit-class.hub-spec']);
});

test('an allowance with its reason stands out of its comment', async () => {
  const [line] = await innermost('# allow width-off because the fork is wide');
  expect(line).toEqual([
    ['#', 'punctuation.definition.comment.yaml'],
    [' ', 'comment.line.number-sign.yaml'],
    ['allow', 'keyword.control.allow.hub-spec'],
    [' ', 'comment.line.number-sign.yaml'],
    ['width-off', 'entity.name.function.finding.hub-spec'],
    [' ', 'comment.line.number-sign.yaml'],
    ['because', 'keyword.control.allow.hub-spec'],
    [' the fork is wide', 'comment.line.number-sign.yaml'],
  ]);
});

test.each(['# allow width-off', '# allow width-off because', '# they allow play because of wear'])(
  'the comment "%s" allows nothing and is plain',
  async (text) => {
    const scopes = (await innermost(text)).flat().map(([, scope]) => scope);
    expect(scopes.filter((scope) => scope?.includes('allow'))).toEqual([]);
  },
);

test('every scope of ours begins as the themes know it', async () => {
  const known =
    /^(?:constant\.(?:language|numeric)|entity\.name\.(?:function|type)|keyword\.(?:control|operator|other\.unit)|meta|punctuation|source|storage\.(?:modifier|type)|support\.(?:class|constant)|variable\.other)\./;
  const texts = Object.entries(tables).flatMap(([scope, rows]) =>
    rows.map((row) => [scope, row[1]] as const),
  );
  const all = await Promise.all(texts.map(([scope, text]) => tokenise(scope, text)));
  const ours = new Set(
    all.flat(2).flatMap((token) => token.scopes.filter((s) => /\.(?:hub|wheel|workshop)-spec$/.test(s))),
  );
  expect(ours.size).toBeGreaterThan(15);
  expect([...ours].filter((scope) => !known.test(scope))).toEqual([]);
});
