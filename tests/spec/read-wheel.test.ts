import { expect, test } from 'vitest';
import { readSpec } from '../../server/spec/read-spec.ts';

const text = `wheel: Dunlin touring front
hub: ./dunlin-front.hub.yaml
variant: thru-15
rim:
  bead-seat: 622
  erd: 596.5 ±0.5
  erd-to: nipple-seat
  holes: 32
  offset: 2.8
  mass: 495 g
  tension-limit: 1250 N
  lateral-stiffness: 206 N·m²
lacing:
  left: { crosses: 3, heads: alternate }
  right: { crosses: 3, heads: alternate, interlaced: yes }
spokes:
  left: { length: 289, profile: 2.0/1.8/2.0, material: stainless }
  right: { length: 287, profile: 2.0/2.3x0.9/2.0 }
nipples: { length: 12, material: brass }
tension:
  side: right
  value: 1100 ±100 N
  measured: { left: [980, 1010 N, 995], right: 1005 }
tyre: { width: 32, pressure: 65 psi }
rider: { mass: 95 kg, share: 0.45 }
`;

/** What is wrong and where: the code and the text under the mark. */
function problemsOf(written: string): readonly (readonly [string, string])[] {
  return readSpec(written, 'wheel').problems.map(({ code, span }) => [
    code,
    written.slice(span.start, span.end),
  ]);
}

const head = 'wheel: W\nhub: ./w.hub.yaml\n';

test('a wheel file is read with its rim, lacing, spokes, tensions, tyre and rider, each value with its place', () => {
  const { wheel, problems } = readSpec(text, 'wheel');
  expect(problems).toEqual([]);
  expect(wheel?.values.hub).toEqual({ value: './dunlin-front.hub.yaml', path: ['hub'] });
  expect(wheel?.rim?.values.erd?.value).toMatchObject({
    nominal: 596.5,
    tolerance: { lower: -0.5, upper: 0.5 },
  });
  expect(wheel?.rim?.values['lateral-stiffness']?.value).toMatchObject({ value: 206e6, unit: 'N·mm²' });
  expect(wheel?.lacing.right?.values.interlaced).toEqual({
    value: true,
    path: ['lacing', 'right', 'interlaced'],
  });
  expect(wheel?.spokes.left?.values.profile?.value).toMatchObject({ diameters: [2, 1.8, 2], blade: null });
  expect(wheel?.spokes.right?.values.profile?.value).toMatchObject({
    diameters: [2, 2],
    blade: { width: 2.3, thickness: 0.9 },
  });
  expect(wheel?.tension?.values.value?.value).toMatchObject({ value: 1100, spread: 100, unit: 'N' });
  expect(wheel?.measured.left).toEqual({
    value: [980, 1010, 995],
    path: ['tension', 'measured', 'left'],
  });
  expect(wheel?.measured.right?.value).toEqual([1005]);
  expect(wheel?.tyre?.values.pressure?.value.value).toBeCloseTo(4.48, 2);
  expect(wheel?.rider?.values.share?.value).toBe(0.45);
});

test.each([
  ['1100 N', 1100, null],
  ['1100 ±100 N', 1100, 100],
  ['110 ±10 kgf', 1078.7315, 98.0665],
  ['1.1 ±0.1 kN', 1100, 100],
  ['1100 N ±100', 1100, 100],
])('a tension %s is so many newtons and may stray so far', (written, newtons, spread) => {
  const value = readSpec(`${head}tension: { value: ${written} }\n`, 'wheel').wheel?.tension?.values.value
    ?.value;
  expect(value?.value).toBeCloseTo(newtons, 6);
  if (spread === null) expect(value?.spread).toBeNull();
  else expect(value?.spread).toBeCloseTo(spread, 6);
});

test.each([
  ['2', [2], null],
  ['2.0/1.8/2.0', [2, 1.8, 2], null],
  ['2.3/2.0', [2.3, 2], null],
  ['2.0-1.5-2.0 mm', [2, 1.5, 2], null],
  ['2.0/2.3x0.9/2.0', [2, 2], { width: 2.3, thickness: 0.9 }],
])('a spoke profile %s is read from head to thread', (written, diameters, blade) => {
  const wheel = readSpec(`${head}spokes: { left: { profile: ${written} } }\n`, 'wheel').wheel;
  expect(wheel?.spokes.left?.values.profile?.value).toEqual({ written, diameters, blade });
});

test.each(['', '9', '2.0/', '2.0/1.8/2.0/2.0', '2.3x0.9', '2.0/0.9x2.3/2.0', 'thin'])(
  'a spoke profile «%s» is none, and the rest of the file is read',
  (written) => {
    const broken = `${head}spokes: { left: { length: 289, profile: '${written}' } }\n`;
    expect(problemsOf(broken).map(([code]) => code)).toEqual(['value-not-understood']);
    expect(readSpec(broken, 'wheel').wheel?.spokes.left?.values.length?.value.nominal).toBe(289);
  },
);

test('what is not understood is reported under its own characters, section by section', () => {
  expect(
    problemsOf(
      `${head}rim: { erdd: 596, holes: 32.5 }\nlacing: { left: { crosses: 3, heads: alternat }, middle: { crosses: 3 } }\ntension: { side: right, value: 1100, measured: { left: [980, x] } }\nspokes: 289\n`,
    ),
  ).toEqual([
    ['unknown-key', 'erdd'],
    ['value-not-understood', '32.5'],
    ['value-not-understood', 'alternat'],
    ['unknown-key', 'middle'],
    ['wrong-unit', '1100'],
    ['value-not-understood', 'x'],
    ['value-not-understood', '289'],
  ]);
});

test('a section twice is one finding, its keys are read once', () => {
  expect(problemsOf(`${head}rim: { holes: 32 }\nrim: { holes: 36 }\n`)).toEqual([['duplicate-key', 'rim']]);
});
