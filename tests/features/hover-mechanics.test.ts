import { expect, test } from 'vitest';
import { hover } from '../../server/features/hover.ts';
import { sanderling } from '../support/sanderling.ts';
import { hubWith, specAtCursor } from '../support/spec-at-cursor.ts';

function hoverAt(marked: string): string {
  const { snapshot, position } = specAtCursor(marked);
  const found = hover(snapshot, position);
  return found === null ? '' : (found.contents as { value: string }).value;
}

/** A hub whose clearance comes from the table alone: no wall round its seats, its axle loose on average. Demo data. */
const hub = (...changes: readonly (readonly [string, string])[]): string =>
  `${hubWith(
    ['    outside: 19.6', '    outside: 19.6\n    material: aluminium 7075-T6'],
    ...changes,
  ).replaceAll('seat: shell', 'balls: 13 × 2.778\n    groove: 0.52\n    seat: shell')}clamp: 2 kN\n`;

test('a bearing says its clearance when mounted, and what the fits take', () => {
  const text = hoverAt(hub(['code: 6803-2RS', 'code: 68$003-2RS']));
  // ISO 5753-1, group N over 10 to 18 mm: 3 to 18 µm; only a large axle in a small bore takes a little of it.
  expect(text).toMatch(/\*\*mounted clearance\*\* of bearing\.left: 1[01] µm on average, [0-3] to 18 µm/);
  expect(text).toContain('3 to 18 µm before mounting');
  expect(text).toContain('the seat counts as free');
  // √(4·0.11112·0.0105 − 0.0105²) = 0.0675 mm, as reckoned in the test of the hints.
  expect(text).toMatch(/6[78] µm along the axle/);
});

test('a wall round the seat takes clearance, and the seat says its pressure', () => {
  const walled = hub(['  between-shoulders', '  outside: 34\n  between-shoulders'], ['26 N7', '26 N$07']);
  // N7 −7/−28 (ISO 286-2) against 0/−9 (ISO 492): 13 µm on average before smoothing, less after it.
  const text = hoverAt(walled);
  const found = /after smoothing (\d+) µm on average/.exec(text);
  expect(Number(found?.[1])).toBeGreaterThan(9);
  expect(Number(found?.[1])).toBeLessThan(13);
  expect(text).toMatch(/MPa in the seat, \d+ µm less clearance/);
  expect(text).toContain('outside of bearing.left');
});

test('an axle that is loose on average grips nothing', () => {
  const text = hoverAt(hub(['diameter: 17 h6', 'diameter: 17 $0h6']));
  expect(text).toContain('bore of bearing.left: it does not grip on average');
});

test('the spacer and the distance it is held against say the play, the end cap does not', () => {
  for (const change of [
    ['62.06', '62.0$06'],
    ['62.05', '62.0$05'],
  ] as const) {
    const text = hoverAt(hub(change));
    // 67.5 − 10 on the bench; the clamp takes 24 µm more, so that δ is −14 (by hand in the test of the hints).
    expect(text).toMatch(/\*\*play\*\* of bearing\.left and bearing\.right: on the bench 5[78] µm of play/);
    expect(text).toMatch(/clamped with 2 kN 5[34] µm of play/);
  }
  expect(hoverAt(hub(['14.03', '14.0$03']))).not.toContain('**play**');
});

test('the clamp says how much it shortens the stack and what play it leaves', () => {
  const text = hoverAt(hub().replace('2 kN', '2$0 kN'));
  // F·L/(E·A) = 2000·62.06/(71 700·72.06) = 24.0 µm.
  expect(text).toContain('shortens the stack from bearing.left to bearing.right by 24 µm');
  expect(text).toMatch(/5[34] µm of play/);
});

test('a clamp torque says what was taken for granted', () => {
  const text = hoverAt(hub().replace('clamp: 2 kN', 'clamp:\n  torque: 1$02 N·m\n  thread: M12x1.5'));
  expect(text).toContain('**clamp**');
  expect(text).toMatch(/friction of the clamp taken as 0\.15/);
});

test('a short spacer says the load on the balls', () => {
  const text = hoverAt(hub(['62.06', '61.9$00']));
  expect(text).toMatch(/on the bench no play, 8[23] µm too tight/);
  expect(text).toMatch(/no play: \d+(\.\d+)? k?N through each bearing, inner rings pressed together/);
});

test('a variant is named where it differs from the hub as written', () => {
  const text = hoverAt(
    `${hub(['code: 6803-2RS', 'code: 68$003-2RS'])}variants:\n  loose:\n    change:\n      bearing.right: { code: 6803-2RS C3 }\n`,
  );
  expect(text.match(/\*\*mounted clearance\*\*/g)).toHaveLength(1);
});

test('the spacer says what becomes of many builds, what to write and how wide the tolerances may be', () => {
  const text = hoverAt(sanderling({ clamp: '5 kN', code: '6803-2RS C3', spacer: '62.0$06 ±0.02' })) ?? '';
  expect(text).toMatch(/9\d % of builds right: \d(\.\d)? % loaded/);
  expect(text).toMatch(/play strays most by spacer\.centre \d\d %, shell\.between-shoulders \d\d %/);
  expect(text).toMatch(/were both bearings alike, as two of one batch may be, \d\d % right/);
  expect(text).toMatch(
    /best is 62\.07: 97 % right; for 99\.73 % right the tolerances may be spacer\.centre ±0\.01/,
  );
  const shoulders = sanderling({ clamp: '5 kN' }).replace('62.05 ±', '62.$005 ±');
  expect(hoverAt(shoulders)).toContain('of builds right');
  expect(hoverAt(shoulders)).not.toContain('best is');
  expect(hoverAt(sanderling().replace('62.06', '62.$006'))).not.toContain('of builds right');
});
