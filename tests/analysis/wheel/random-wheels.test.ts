import { expect, test } from 'vitest';
import { randomFromSeed } from '../../../server/engine/base/random.ts';
import { wheelJson } from '../../../server/report/wheel/wheel-json.ts';
import { wheelText } from '../../../server/report/wheel/wheel-text.ts';
import { hubText, wheelOn } from './wheel-files.ts';

/** Paths of numbers that are none. */
function odd(value: unknown, at = ''): readonly string[] {
  if (typeof value === 'number') return Number.isNaN(value) ? [at] : [];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, item]) => odd(item, `${at}.${key}`));
}

test('whatever is written or left out, a wheel is worked out without an exception and without a number that is none', () => {
  const whole = randomFromSeed(7);
  const next = (): number => whole() / 2 ** 32;
  const pick = <T>(...from: readonly T[]): T => from[Math.floor(next() * from.length)] as T;
  const maybe = (text: string): string => (next() < 0.95 ? text : '');
  const flange = () =>
    pick(true, true, true, false)
      ? `${maybe(`holes: ${pick(1, 2, 8, 9, 16, 18)}, `)}${maybe(`circle: ${pick(40, 44, 45, 50, 58, 62, 0.1, 620)}, `)}${maybe(`from-centre: ${pick(18, 20, 30, 34, 35, 36, 0, 300)}, `)}hole: ${pick(2.6, 9)}, thickness: ${pick(0.1, 3)}${maybe(', pair-distance: 12')}`
      : `kind: straight-pull, holes: 16, ${maybe('head-circle: 44, ')}${maybe(`head-setback: ${pick(0, 6, 60)}, `)}from-centre: 30`;
  const side = () =>
    `{ ${maybe(`crosses: ${pick(0, 1, 2, 3, 5)}`)}${pick('', ', heads: in', ', heads: out', ', heads: alternate')}${pick('', ', phase: wider', ', outside: leading')} }`.replace(
      '{ ,',
      '{',
    );
  let known = 0;
  for (let step = 0; step < 300; step += 1) {
    const spokes = () =>
      `{ ${maybe(`length: ${pick(1, 280, 290)}, `)}profile: ${pick('2.0', '2.0/1.8/2.0', '2.0/2.3x0.9/2.0', '2.3/2.0')} }`;
    const wheel = `rim: { ${maybe(`erd: ${pick(540, 596.5, 598, 600, 602, 900, 1)}, `)}${maybe(`erd-to: ${pick('nipple-seat', 'slot-bottom', 'nipple-top')}, `)}holes: ${pick(16, 24, 32)}, drilling: ${pick('even', 'paired', '2:1')}, ${maybe('pair-distance: 20, ')}offset: ${pick(0, 2.8, 40)}, ${maybe('area: 80, ')}${maybe(`radial-stiffness: ${pick(0.1, 110)} N·m², lateral-stiffness: 200 N·m², torsional-stiffness: ${pick(0.1, 25)} N·m²`)} }
lacing: { left: ${side()}, right: ${side()} }
spokes: { left: ${spokes()}, right: ${spokes()} }
${maybe(`nipples: { length: ${pick(1, 12, 16)}, material: ${pick('brass', 'aluminium', 'gold')} }\n`)}tension: { side: ${pick('left', 'right')}, value: ${pick(0, 1, 1100, 9000)} N, measured: { left: [${pick('0', '900, 1000', '0, 0')}], right: [${pick('1000', '1, 2, 3')}] } }
${maybe('tyre: { width: 32 }\n')}${maybe('rider: { mass: 95 kg, side-force: 100 N }\n')}`;
    const answer = wheelOn(hubText(flange(), flange()), wheel);
    known += answer.strength === null ? 0 : 1;
    expect(odd(wheelJson(answer)), wheel).toEqual([]);
    expect(wheelText('W', answer), wheel).not.toMatch(/NaN|undefined/);
    // Nothing is left out without a word.
    if (answer.groups.length === 0 || answer.tension === null || answer.strength === null)
      expect(answer.unchecked.length, wheel).toBeGreaterThan(0);
  }
  expect(known).toBeGreaterThan(20);
});
