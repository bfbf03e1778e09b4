import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { look } from './look.ts';

const folder = join(import.meta.dirname, 'tension-over-limit');
const hub = readFileSync(join(folder, 'dunlin-front.hub.yaml'), 'utf8');
const sound = readFileSync(join(folder, 'valid.wheel.yaml'), 'utf8');
const wanted = 'value: 1000 ±100 N';
const sixteen = (value: number): string => Array.from({ length: 16 }, () => value).join(', ');
const read = (left: string, right: string): string =>
  sound.replace(wanted, `${wanted}, measured: { left: [${left}], right: [${right}] }`);
const found = (text: string, beside = hub) =>
  look(text, { 'dunlin-front.hub.yaml': beside }, 'dunlin.wheel.yaml').findings.findings;

test('the sound wheel is found sound, read as it was wanted too', () => {
  expect(sound).toContain(wanted);
  expect(found(sound)).toEqual([]);
  expect(found(read(sixteen(1000), sixteen(1000)))).toEqual([]);
});

test('a spread that reaches past the limit of the rim is found before the mean does', () => {
  // common practice: the limit of a rim holds for every spoke; 1200 + 100 is 50 over 1250.
  const [one, ...others] = found(sound.replace(wanted, 'value: 1200 ±100 N'));
  expect(others).toEqual([]);
  expect(one).toMatchObject({ code: 'tension-over-limit', severity: 'warning' });
  expect(one?.message).toContain('1300 N, the rim bears 1250 N: 50 N too much');
  expect(found(sound.replace(wanted, 'value: 1150 ±100 N'))).toEqual([]);
});

test('readings over what the rim bears are found, with the spoke and what to do', () => {
  const [one, ...others] = found(read(sixteen(1300), sixteen(1240)));
  expect(others).toEqual([]);
  expect(one).toMatchObject({ code: 'tension-over-limit', severity: 'error' });
  expect(one?.message).toContain('1300 N, the rim bears 1250 N: 50 N too much');
  expect(one?.message).toContain('before it is ridden');
});

test('one spoke far over its side is a spoke to turn, not a wheel to loosen', () => {
  const codes = found(read(sixteen(1000).replace('1000', '1400'), sixteen(1000))).map(({ code }) => code);
  expect(codes).toEqual(['tensions-uneven']);
});

test('a side that reads slack is found, whatever was wanted', () => {
  // JIS D 9301: mean 400 N at least in a new wheel over 22 inch.
  const findings = found(read(sixteen(390), sixteen(390)));
  expect(findings.map(({ code }) => code)).toEqual(['slack-side-low', 'slack-side-low']);
  expect(findings[0]?.message).toContain(
    '390 N on average, wanted 400 N at least in a new wheel: 10 N short',
  );
  expect(found(read(sixteen(400), sixteen(400)))).toEqual([]);
});

test('the limit of a flange holds where it is below that of the rim', () => {
  const weak = hub.replace(/(flanges:\n(?:\s+left:)[^\n]*?) \}/, '$1, tension-limit: 900 N }');
  expect(weak).not.toBe(hub);
  const [one, ...others] = found(sound, weak);
  expect(others).toEqual([]);
  expect(one?.message).toContain('1000 N on the left side, which balance asks for, the hub bears 900 N');
});

test('readings that do not balance say both ratios', () => {
  const [one] = found(read(sixteen(1200), sixteen(1000)));
  expect(one?.message).toContain('1.20 times the tension of the right, balance asks for 1.00');
});

test('no tension at all asks for the least a new wheel should have', () => {
  const [one, ...others] = found(sound.replace(wanted, 'value: 0 N'));
  expect(others).toEqual([]);
  expect(one?.message).toContain('0 N, wanted 400 N at least in a new wheel: 400 N short — 400 N on the');
});

test('crossed spokes on an odd number of holes are no wheel', () => {
  // Geometry: leaning spokes come in twos, one each way.
  const odd = hub.replaceAll('holes: 16', 'holes: 15');
  const findings = found(sound.replace('holes: 32', 'holes: 30'), odd);
  expect(findings.map(({ code }) => code)).toEqual(['crossing-impossible', 'crossing-impossible']);
  expect(findings[0]?.message).toContain('one is left over');
});

test('radial spokes are not proposed where no crossing lies free', () => {
  const [one] = found(sound.replace('erd: 596.5 ±0.5', 'erd: 46'));
  expect(one?.code).toBe('crossing-impossible');
  expect(one?.message).toContain('look at rim.erd and the circle of the flange');
  expect(one?.fixes.filter(({ title }) => title.startsWith('Change crosses'))).toEqual([]);
});
