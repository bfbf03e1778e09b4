import { expect, test } from 'vitest';
import { isWorked, type PairMechanics } from '../../server/analysis/mechanics/pair-mechanics.ts';
import { analyzeText, asWritten } from '../support/analyze-text.ts';

/** A front hub on two angular-contact bearings: 13 balls of 3.5 mm, grooves of 0.52, contact angle 25°. */
function hub({ left = 'right', right = 'left', spacer = '50.02', bore = '30', clamp = '5 kN' } = {}): string {
  const bearing = (name: string, back: string): string => `  - bearing: ${name}
    size: 17x30x7
    contact-angle: 25
    back-face: ${back}
    balls: 13 × 3.5
    groove: 0.52
    seat: shell.${name}
`;
  return `hub: Pratincole front
position: front
width: 100
clamp: ${clamp}
axle: { diameter: 17, bore: 12 }
shell:
  material: aluminium 6061
  outside: 38
  through: 26
  between-shoulders: 50 ±0.01
  seats:
    left: { bore: ${bore}, depth: 7 }
    right: { bore: ${bore}, depth: 7 }
stack:
  - end-cap: left
    length: 18
${bearing('left', left)}  - spacer: centre
    length: ${spacer} ±0.01
    inside: 17
    outside: 21
    material: steel
${bearing('right', right)}  - end-cap: right
    length: 18
`;
}

function pairOf(text: string): PairMechanics {
  const [pair] = asWritten(text).mechanics().pairs;
  if (!pair || !isWorked(pair)) throw new Error(`not worked: ${pair?.missing}`);
  return pair;
}

test('back to back without press fits the play is what the spacer is longer than the shoulders', () => {
  expect(pairOf(hub()).result.playUnclamped).toBeCloseTo(0.02, 9);
  expect(pairOf(hub({ spacer: '49.99' })).result.playUnclamped).toBeCloseTo(-0.01, 9);
});

test('face to face it is the other way round: a long spacer loads the balls', () => {
  const faced = { left: 'left', right: 'right' };
  expect(pairOf(hub({ ...faced, spacer: '49.98' })).result.playUnclamped).toBeCloseTo(0.02, 9);
  expect(pairOf(hub({ ...faced, spacer: '50.01' })).result.playUnclamped).toBeCloseTo(-0.01, 9);
});

test('a press fit lowers the contact angle and lengthens the travel, as the groove centres have it', () => {
  const pair = pairOf(hub({ bore: '30 N7' }));
  const loss = pair.left.outerFit?.fit.clearanceLoss ?? 0;
  expect(loss).toBeGreaterThan(0.003);
  // Groove centres m0 apart at the touch: radially m0·cos 25° + loss/2 once the outer ring has shrunk.
  const m0 = 0.04 * 3.5;
  const alpha = (25 * Math.PI) / 180;
  const radial = m0 * Math.cos(alpha) + loss / 2;
  expect(pair.left.contactAngle?.mounted).toBeCloseTo(Math.acos(radial / m0), 9);
  const each = Math.sqrt(m0 ** 2 - radial ** 2) - m0 * Math.sin(alpha);
  expect(each).toBeLessThan(0);
  expect(pair.result.playUnclamped).toBeCloseTo(0.02 + 2 * each, 9);
});

test('a mirrored hub has the mirrored result', () => {
  const one = pairOf(hub({ bore: '30 N7' })).result;
  const mixed = hub({ bore: '30 N7' }).replace(
    'contact-angle: 25\n    back-face: left',
    'contact-angle: 30\n    back-face: left',
  );
  const turned = hub({ bore: '30 N7' }).replace('contact-angle: 25', 'contact-angle: 30');
  const [a, b] = [pairOf(mixed).result, pairOf(turned).result];
  expect(a.playUnclamped).toBeCloseTo(b.playUnclamped, 9);
  expect(a.ballLoad).toBeCloseTo(b.ballLoad, 6);
  expect(a.right.contactStress).toBeCloseTo(b.left.contactStress, 6);
  expect(one.left.contactStress).toBeCloseTo(one.right.contactStress, 9);
});

test('without force nothing changes, and more clamp never leaves more play back to back', () => {
  const free = pairOf(hub({ clamp: '0 N' })).result;
  expect(free.playClamped).toBeCloseTo(free.playUnclamped, 12);
  const plays = ['1 kN', '3 kN', '6 kN', '12 kN'].map(
    (clamp) => pairOf(hub({ clamp })).result.playClampedSigned,
  );
  for (const [i, play] of plays.entries()) expect(play).toBeLessThan(plays[i - 1] ?? free.playUnclamped);
});

test('what is not written is named: the back face, or the contact angle', () => {
  const missing = (text: string): string => {
    const [pair] = asWritten(text).mechanics().pairs;
    return pair && !isWorked(pair) ? pair.missing : 'nothing';
  };
  expect(missing(hub().replace('    back-face: left\n', ''))).toBe('back-face of bearing.right');
  const coded = hub().replaceAll(/ {4}size: 17x30x7\n {4}contact-angle: 25\n/g, '    code: 71903\n');
  const analysed = analyzeText(coded).variants[0]?.assembly.bearings[0]?.bearing;
  expect(analysed?.kind).toBe('angular-contact');
  expect(missing(coded)).toBe(analysed?.contactAngle === null ? 'contact-angle of bearing.left' : 'nothing');
});

test('two bearings turned alike close nothing, whatever the spacer', () => {
  const tandem = pairOf(hub({ right: 'right' })).result;
  expect(tandem.playClampedSigned).toBe(Number.POSITIVE_INFINITY);
  expect(tandem.ballLoad).toBe(0);
});

test('a ring of another size than its seat or axle has no fit: nothing is reckoned from a size that cannot be', () => {
  const [wrong] = asWritten(hub({ bore: '26 N7' }).replace('diameter: 17,', 'diameter: 12 h6,')).mechanics()
    .bearings;
  expect(wrong?.outerFit).toBeNull();
  expect(wrong?.innerFit).toBeNull();
  expect(wrong?.mounted?.mean).toBeCloseTo(wrong?.free?.lo ?? 0, 12);
});
