import { expect, test } from 'vitest';
import { measuredHub } from '../../server/report/new-hub/measured-hub.ts';
import { readSpec } from '../../server/spec/read-spec.ts';
import { analyzeText } from '../support/analyze-text.ts';

/** Answers by what the question begins with; anything else is not known. */
function converse(said: Readonly<Record<string, string>>, most = 80) {
  const answers: string[] = [];
  const asked: string[] = [];
  for (;;) {
    const turn = measuredHub(answers);
    if (turn.kind === 'file') return { ...turn, asked };
    if (most < answers.length) throw new Error(`no end: ${asked.at(-1)}`);
    const { text, problem } = turn.question;
    if (problem !== null) throw new Error(problem);
    asked.push(text);
    answers.push(Object.entries(said).find(([begin]) => text.startsWith(begin))?.[1] ?? '');
  }
}

const front = {
  Name: 'Whinchat front',
  'Width over': '99.96',
  'Code engraved on the left': '6803-2RS',
  'Code engraved on the right': '=',
  'Length of the sleeve': '62.05 ±0.01',
  'Inside diameter of the sleeve': '17.1',
  'Outside diameter of the sleeve': '19.5',
  'Left end cap': '14.02',
  'Right end cap': '14.03',
  'Distance between': '62.03',
  'Bore of the': '25.985 ±0.002',
  'Depth of the': '5.1',
  'Is there a retaining ring': 'no',
  Force: '5 kN',
};

test('a front hub answered by code is a file that reads without a fault, every reading measured', () => {
  const { text, doubts } = converse(front);
  expect(doubts).toEqual([]);
  const document = readSpec(text, 'hub');
  expect(document.problems).toEqual([]);
  const { variants } = analyzeText(text);
  const [pair] = variants[0]?.pairs ?? [];
  // P − S as measured: 62.05 − 62.03.
  expect(pair?.built?.mean).toBeCloseTo(0.02, 9);
  expect(text).toContain('length: measured 62.05 ±0.01');
  expect(text).toContain('bore: 26 measured 25.985 ±0.002');
  expect(text).toContain('width: 100 # read 99.96 over the end caps\n');
});

/* 15 × 28 × 7 is 6902 of ISO 15, series 19; ring widths run up to 0.12 mm under (ISO 492). */
test('a bearing whose code is not readable is named by its size and what closes it', () => {
  const { text, doubts } = converse({
    ...front,
    'Code engraved on the left': '',
    'Bore, outside diameter and width of the left': '15.02 27.99 6.93',
    'What closes the left': 'metal shields',
  });
  expect(text).toContain('code: 6902-2Z\n    width: measured 6.93');
  expect(doubts.join()).toMatch(/6902-2Z by its size/);
});

test('a bearing whose sides nobody saw keeps its size, and no code says it is open', () => {
  const { text, doubts } = converse({
    ...front,
    'Code engraved on the left': '?',
    'Bore, outside diameter and width of the left': '15.02 27.99 6.93',
  });
  expect(text).toContain('size: 15x28x7\n    width: measured 6.93');
  expect(doubts.join()).toMatch(/size of 6902.*once its seals are seen/);
  expect(readSpec(text, 'hub').problems).toEqual([]);
});

test.each(['?', "don't know", 'Don’t know', 'not known', 'unknown', '-'])(
  '%s is as good as an empty answer to every question but the name',
  (words) => {
    const names: string[] = ['Whinchat'];
    for (let asked = 0; asked < 80; asked++) {
      const turn = measuredHub(names);
      if (turn.kind === 'file') {
        expect(turn.text).toBe(converse({ Name: 'Whinchat' }).text);
        return;
      }
      expect(turn.question.problem).toBeNull();
      names.push(words);
    }
    throw new Error('no end');
  },
);

test('a retaining ring that nobody looked for is a doubt, one that was seen is written', () => {
  const unseen = converse({ ...front, 'Is there a retaining ring': '' });
  expect(unseen.doubts).toEqual([
    expect.stringMatching(/retaining ring before the left bearing: look before it is pushed/),
    expect.stringMatching(/retaining ring before the right bearing/),
  ]);
  expect(unseen.text).not.toContain('retaining-ring');
  // The more particular question stands first: answers go by what a question begins with.
  const seen = converse({
    'Is there a retaining ring before the outboard': 'yes',
    'Which wheel': 'rear',
    ...front,
  });
  expect(seen.text.match(/retaining-ring/g)).toHaveLength(1);
  expect(seen.text.indexOf('retaining-ring')).toBeGreaterThan(seen.text.indexOf('freehub:'));
});

test('what shell and axle are made of is written where it is known', () => {
  const { text } = converse({ ...front, 'What the shell': 'titanium', 'What the axle': 'steel' });
  expect(text).toContain('shell:\n  material: titanium\n');
  expect(text).toContain('axle:\n  material: steel\n');
  expect(converse(front).text).not.toContain('material');
});

test('a width nobody measured is taken, and said to be', () => {
  const { doubts } = converse({ ...front, 'Width over': '' });
  expect(doubts).toEqual(['the width is not measured: 100 mm is taken']);
});

test('a size that no bearing has stands as it was read, with a doubt', () => {
  const { text, doubts } = converse({
    ...front,
    'Code engraved on the left': '',
    'Bore, outside diameter and width of the left': '16.3 27.1 6.2',
  });
  expect(text).toContain('size: 16.3x27.1x6.2');
  expect(doubts.join()).toContain('measure again');
});

test('nothing known but the name makes a file all the same, and what is missing is found', () => {
  const { text } = converse({ Name: 'yes: "no"' });
  const document = readSpec(text, 'hub');
  expect(document.hub?.values.hub?.value).toBe('yes: "no"');
  expect(document.problems.map(({ code }) => code)).not.toContain('yaml-syntax');
  expect(document.problems.every(({ code }) => code === 'missing-key')).toBe(true);
});

test('a rear hub with a freehub of its own has four bearings in their seats', () => {
  const { text } = converse({
    ...front,
    'Which wheel': 'rear',
    'Code engraved on the inboard': '=',
    'Code engraved on the outboard': '=',
  });
  const { variants } = analyzeText(text);
  expect(variants[0]?.assembly.bearings.map(({ part }) => part.values.seat?.value)).toEqual([
    'shell.left',
    'shell.right',
    'freehub.left',
    'freehub.right',
  ]);
});

test('an answer that is not understood is asked again with the reason, and < takes one back', () => {
  const after = (...answers: string[]) => {
    const turn = measuredHub(answers);
    return turn.kind === 'question' ? turn.question : null;
  };
  expect(after('A', 'front', 'wide')?.problem).toMatch(/wide/);
  expect(after('A', 'front', '99,96')?.problem).toMatch(/decimal/);
  expect(after('A', 'front', '99.96', 'QX9')?.problem).toMatch(/QX9|read/);
  expect(after('A', 'sideways')?.problem).toContain('none of front, rear');
  expect(after('A', 'front', '<')?.text).toBe('Which wheel is it for');
  expect(after('<', '<')?.text).toBe('Name of the hub');
});

/* By hand: 14.02 + 14.03 + 62.05 and two rings of 5 (6803, ISO 15 series 18) are 100.1. */
test('parts that do not come to the width that was read are doubted, with both figures', () => {
  expect(converse({ ...front, 'Width over': '100.5' }).doubts).toEqual([]);
  const [short] = converse({ ...front, 'Width over': '102.5' }).doubts;
  expect(short).toContain('add up to 100.10 mm, over the end caps 102.50 mm were read, 2.40 mm more');
  const [long] = converse({ ...front, 'Left end cap': '19.02' }).doubts;
  expect(long).toContain('add up to 105.10 mm, over the end caps 99.96 mm were read, 5.14 mm less');
  expect(converse({ ...front, 'Width over': '102.5', 'Left end cap': '' }).doubts).toEqual([]);
  expect(converse({ ...front, 'What stands': 'nothing', 'Width over': '102.5' }).doubts).toEqual([]);
});

test('a reading with a decimal comma is asked again as it was typed', () => {
  const turn = measuredHub(['Dunlin', 'front', '99,96']);
  expect(turn.kind === 'question' && turn.question.problem).toBe(
    '99,96 has a decimal comma; a point is wanted here: 99.96',
  );
});
