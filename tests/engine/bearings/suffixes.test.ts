import { expect, test } from 'vitest';
import { csvRows } from './csv-rows.ts';
import { decoded } from './decoded.ts';

// designation_suffixes.csv names the maker's list behind every row in its `source` column.
const suffixes = csvRows('designation_suffixes');

/** What the published contact type says about a lip: it rubs, it does not, or the word leaves it open. */
const rubsByType: Readonly<Record<string, boolean | null>> = {
  contact: true,
  'light contact': true,
  'low-friction (light contact)': true,
  'non-contact': false,
  'non-contact (gap)': false,
  'low-friction (practically non-contact)': null,
};

const closures = suffixes.flatMap((row) =>
  (row.code ?? '')
    .split(/ ?\/ ?|, ?/)
    .filter(() => row.category === 'seal' || row.category === 'shield')
    .map((code) => ({ code, category: row.category, type: row.contact_type ?? '' })),
);

test('every published seal and shield suffix rubs as its contact type says', () => {
  const checked = closures.filter(({ type, code }) => type in rubsByType && code !== 'V' && code !== 'D');
  for (const { code, type } of checked) {
    expect(decoded(`6902${code}`).rubs, code).toBe(rubsByType[type]);
    expect(decoded(`6902-${code} C3`).rubs, code).toBe(rubsByType[type]);
  }
  expect(checked.length).toBe(43);
});

test('a mixed family of seal suffixes is told apart as its row says', () => {
  // designation_suffixes.csv: "NK, NKE = non-contact rubber seal; NSL, NSE = contact rubber seal".
  for (const code of ['NK', '2NK', 'NKE', '2NKE']) expect(decoded(`6902${code}`).rubs, code).toBe(false);
  for (const code of ['NSL', '2NSL', 'NSE', '2NSE']) expect(decoded(`6902${code}`).rubs, code).toBe(true);
});

test('every published seal suffix is a seal and every shield suffix a shield', () => {
  for (const { code, category } of closures) {
    if (code === 'V') continue;
    // 2TZ stands in a row of seals and is printed there as "metal/PTFE shields".
    const wanted = code === '2TZ' ? 'shield' : category;
    expect(decoded(`6902 ${code}`).closure, code).toBe(wanted);
  }
});

test('a suffix closes one side or both as makers print it', () => {
  // NSK E1102e Table 7.6, NTN 2203/E Table 5.2, SKF 2017 p.320, NKE 2018 p.222, KOYO 203E-1 Table 1.
  for (const one of ['Z', 'RS', 'RS1', 'RSH', 'RZ', 'RSR', 'LB', 'LU', 'LH', 'DU', 'RU', 'RD', 'RK']) {
    expect(decoded(`6902${one}`).closedSides, one).toBe(1);
  }
  for (const both of [
    'ZZ',
    '2Z',
    '2RS',
    '2RS1',
    '2RSH',
    '2RZ',
    '2RSR',
    'LLB',
    'LLU',
    'LLH',
    'VV',
    'DDU',
    'DD',
    '2RU',
  ]) {
    expect(decoded(`6902${both}`).closedSides, both).toBe(2);
  }
  expect(decoded('6902').closedSides).toBe(0);
  // A seal on one side and a shield on the other are two one-sided suffixes.
  expect(decoded('6902 RS-Z')).toMatchObject({ closure: 'seal', closedSides: 2, rubs: true });
});

test('clearance groups and tolerance classes are read, alone and combined', () => {
  // SKF 2017 p.321: P62 is P6 with C2, P63 is P6 with C3, P52 is P5 with C2. NSK Table 8.2 remark 2: ABEC classes.
  for (const group of ['C2', 'C3', 'C4', 'C5'])
    expect(decoded(`6803-2RS ${group}`).clearance.group).toBe(group);
  for (const normal of ['CN', 'C0']) expect(decoded(`6803-2RS ${normal}`).clearance.group).toBe('N');
  const classes = { P0: 'Normal', PN: 'Normal', P6: '6', P5: '5', P4: '4', P2: '2' };
  for (const [code, name] of Object.entries(classes))
    expect(decoded(`6803/${code}`).toleranceClass).toBe(name);
  const abec = { 1: 'Normal', 3: '6', 5: '5', 7: '4', 9: '2' };
  for (const [grade, name] of Object.entries(abec)) {
    for (const code of [`6803 ABEC${grade}`, `6803-2RS ABEC-${grade}`, `6803 abec ${grade}`]) {
      expect(decoded(code).toleranceClass, code).toBe(name);
    }
  }
  const combined = { P62: ['6', 'C2'], P63: ['6', 'C3'], P52: ['5', 'C2'] };
  for (const [code, wanted] of Object.entries(combined)) {
    const { toleranceClass, clearance } = decoded(`6803-2RS/${code}`);
    expect([toleranceClass, clearance.group], code).toEqual(wanted);
  }
});

test('half groups of a clearance take the upper or the lower half', () => {
  // SKF 2017 p.321: H is the upper half, L the lower half, P the upper half and the lower half of the next group.
  // ISO 5753-1, bore over 10 up to 18: C2 0 to 9, N 3 to 18, C3 11 to 25, C4 18 to 33 µm.
  expect(decoded('6902 C2H').clearance).toEqual({ group: 'C2H', minUm: 4.5, maxUm: 9 });
  expect(decoded('6902 C3L').clearance).toEqual({ group: 'C3L', minUm: 11, maxUm: 18 });
  expect(decoded('6902 CNP').clearance).toEqual({ group: 'CNP', minUm: 10.5, maxUm: 18 });
});

test('stainless steel, hybrid and cage suffixes are read in every published spelling', () => {
  // designation_suffixes.csv, rows of category material and cage.
  for (const code of ['S6902-2RS', 'SS 6902', 'W 6902', 'SMR105', '6902 h', '688h']) {
    expect(decoded(code).material, code).toBe('stainless');
  }
  for (const code of ['6902/HC5C3', 'HYB 6902', '6902-2RS CB', '6902 CER']) {
    expect(decoded(code).material, code).toBe('hybrid');
  }
  expect(decoded('6902-2RSH').material).toBe('steel');
  expect(decoded('6902-2RS').material).toBe('steel');
  for (const code of ['TN9', 'T2', 'TVH', 'TVP'])
    expect(decoded(`6902 ${code}`).cage, code).toBe('polyamide');
  expect(decoded('6902 M').cage).toBe('machined brass');
  expect(decoded('6902 J').cage).toBe('pressed steel');
});

test('a suffix to which makers give different meanings is listed with all of them', () => {
  // designation_suffixes.csv, column differs_between_makers: V, D, RS2, W in front, X, MAX, A of angular contact.
  const ambiguous = ['6902V', '6902D', '6902-2RS2', 'W 6902', '6902X', '6902-2RS MAX', '7002A'];
  for (const code of ambiguous) {
    const listed = decoded(code).ambiguousSuffixes;
    expect(listed.length, code).toBe(1);
    expect(listed[0]?.meanings.length, code).toBeGreaterThanOrEqual(2);
    expect(decoded(code).notes.join(' '), code).toContain('Makers differ on');
  }
  expect(decoded('6902D').rubs).toBeNull();
  for (const plain of ['6902-2RS1 C3', '6902LLU', '6902DDU', '6902VV']) {
    expect(decoded(plain).ambiguousSuffixes, plain).toEqual([]);
  }
});

test('beside seals a V is the missing cage, and two of them are a seal', () => {
  // NSK Table 7.6: VV is a non-contact seal; NKE 2018 p.223: V is full complement.
  expect(decoded('6902-2RS V')).toMatchObject({ fullComplement: true, closure: 'seal', rubs: true });
  expect(decoded('6902VV')).toMatchObject({ fullComplement: false, closure: 'seal', rubs: false });
  // common practice: cycle codes join the seal and MAX.
  expect(decoded('6902LLBMAX')).toMatchObject({ fullComplement: true, rubs: false, closedSides: 2 });
});

test('a W with a number is a width, alone it is a cage, in front stainless steel', () => {
  // ZEN V.10/12 p.10-13: 688W6 is 8 x 16 x 6, 686-2ZW4.5 is 4.5 wide.
  expect(decoded('688W6')).toMatchObject({ width: 6, basis: 'table' });
  expect(decoded('686-2ZW4.5')).toMatchObject({ width: 4.5, closure: 'shield' });
  expect(decoded('6902 W').cage).toBe('pressed steel');
  expect(decoded('688W7').notes.join(' ')).toContain('no table lists it');
});

test('an unknown suffix is kept out with a note and the bearing stays', () => {
  const bearing = decoded('6902-2RS C3 QQ77');
  expect(bearing).toMatchObject({ bore: 15, outside: 28, width: 7, closure: 'seal' });
  expect(bearing.clearance.group).toBe('C3');
  expect(bearing.notes.join(' ')).toContain('QQ77 is in no list of suffixes');
});

test('case, spaces, hyphens and slashes do not change what a code means', () => {
  const spellings = [
    '6902-2RS',
    '6902 2rs',
    '69022RS',
    '6902/2RS',
    ' 6902 - 2RS ',
    '* 6902-2RS',
    '61902-2RS',
    '6902‑2RS',
  ];
  for (const code of spellings) {
    expect(decoded(code), code).toMatchObject({ normalised: '61902-2RS', width: 7, closedSides: 2 });
  }
  expect(decoded('6902LLU').normalised).toBe('61902-2RS');
  expect(decoded('6902 ZZ').normalised).toBe('61902-2Z');
});
