import { expect, test } from 'vitest';
import { exactOf, hubText, wheelOn } from './wheel-files.ts';

const lacing = (left: string, right = left) => `lacing: { left: { ${left} }, right: { ${right} } }\n`;
const dished = hubText(
  'holes: 14, circle: 44, from-centre: 34.5, hole: 2.6',
  'holes: 14, circle: 49, from-centre: 18.5, hole: 2.6',
);

// Lengths by the vector from hub hole to rim point, worked out outside this project (derived), mm.
test('28 holes, 3 crossings, dished: 297.58 left and 295.79 right', () => {
  const wheel = wheelOn(dished, `rim: { erd: 602, erd-to: slot-bottom, holes: 28 }\n${lacing('crosses: 3')}`);
  expect(exactOf(wheel, 'left')).toBeCloseTo(297.5782, 3);
  expect(exactOf(wheel, 'right')).toBeCloseTo(295.7884, 3);
  expect(wheel.unchecked.map(({ what }) => what)).toEqual([
    'stiffness, buckling, slack loads and turns of the nipples',
  ]);
});

test('a rim with its holes 2.8 to the left takes from the left and adds to the right', () => {
  const hub = hubText(
    'holes: 16, circle: 57, from-centre: 34, hole: 2.6',
    'holes: 16, circle: 57, from-centre: 20, hole: 2.6',
  );
  const wheel = wheelOn(
    hub,
    `rim: { erd: 598, erd-to: slot-bottom, holes: 32, offset: 2.8 }\n${lacing('crosses: 3')}`,
  );
  expect(exactOf(wheel, 'left')).toBeCloseTo(289.6718, 3);
  expect(exactOf(wheel, 'right')).toBeCloseTo(288.8913, 3);
});

test('staggered holes stand nearer their own flange, or across', () => {
  const hub = hubText(
    'holes: 16, circle: 58, from-centre: 40, hole: 2.6',
    'holes: 16, circle: 58, from-centre: 40, hole: 2.6',
  );
  const rim = (apart: string) => `rim: { erd: 530, erd-to: slot-bottom, holes: 32, hole-offset: ${apart} }\n`;
  expect(exactOf(wheelOn(hub, rim('15') + lacing('crosses: 3')), 'right')).toBeCloseTo(255.233, 3);
  expect(exactOf(wheelOn(hub, rim('-15') + lacing('crosses: 3')), 'left')).toBeCloseTo(259.8688, 3);
});

test('a 2:1 wheel wants its phase: 280.36 or 277.91, and neither is guessed', () => {
  const hub = hubText(
    'holes: 8, circle: 40, from-centre: 38, hole: 2.6',
    'holes: 16, circle: 50, from-centre: 17, hole: 2.6',
  );
  const rim = 'rim: { erd: 594, erd-to: slot-bottom, holes: 24 }\n';
  const wide = wheelOn(hub, rim + lacing('crosses: 0', 'crosses: 2, phase: wider'));
  expect(exactOf(wide, 'right')).toBeCloseTo(280.3589, 3);
  expect(exactOf(wide, 'left')).toBeCloseTo(278.2943, 3);
  expect(
    exactOf(wheelOn(hub, rim + lacing('crosses: 0', 'crosses: 2, phase: narrower')), 'right'),
  ).toBeCloseTo(277.9099, 3);
  const untold = wheelOn(hub, rim + lacing('crosses: 0', 'crosses: 2'));
  expect(exactOf(untold, 'right')).toBeNaN();
  expect(untold.unchecked.map(({ missing }) => missing)).toContain('lacing.right.phase: wider or narrower');
  // The balance hardly hangs on the phase: 888 N left for 1000 N right, derived for the wider one on a rim of 594.
  expect(Math.abs((untold.tension?.ratio ?? 0) - 0.888)).toBeLessThan(0.01);
  expect(Math.abs((wide.tension?.ratio ?? 0) - 0.888179)).toBeLessThan(0.001);
  expect(wide.assumed.join()).toContain('every third rim hole');
});

test('straight-pull spokes run along their tangents: 304.98', () => {
  const flange = `kind: straight-pull, holes: 16, head-circle: ${(2 * Math.hypot(22, 6)).toFixed(6)}, head-setback: 6, from-centre: 33`;
  const wheel = wheelOn(
    hubText(flange, flange),
    `rim: { erd: 596, erd-to: slot-bottom }\n${lacing('crosses: 3')}`,
  );
  expect(exactOf(wheel, 'left')).toBeCloseTo(304.9774, 3);
  expect(wheel.groups.map(({ head, count, crossing }) => [head, count, crossing])).toEqual([
    ['straight-pull', 16, null],
    ['straight-pull', 16, null],
  ]);
});

test('spokes with the head inwards lie outside the flange and are longer, by half the flange and half the wire', () => {
  const flange = 'holes: 16, circle: 45, from-centre: 35, hole: 2.6, thickness: 3';
  const wheel = wheelOn(
    hubText(flange, flange),
    `rim: { erd: 600, erd-to: slot-bottom }\nspokes: { left: { profile: 2.0 } }\n${lacing('crosses: 3')}`,
  );
  const [inwards, outwards] = wheel.groups;
  expect(inwards).toMatchObject({ head: 'head-in', count: 8, side: 'left' });
  expect(outwards).toMatchObject({ head: 'head-out', count: 8 });
  const at = (w: number) =>
    Math.sqrt(300 ** 2 + 22.5 ** 2 + w ** 2 - 2 * 300 * 22.5 * Math.cos((67.5 * Math.PI) / 180)) - 1.3;
  expect(exactOf(wheel, 'left', 0)).toBeCloseTo(at(37.5), 6);
  expect(exactOf(wheel, 'left', 1)).toBeCloseTo(at(32.5), 6);
});

test('to the seat of the nipple, spokes are longer by the rest to the slot and by a washer; to its top, shorter', () => {
  const of = (to: string, nipples = '') =>
    exactOf(wheelOn(dished, `rim: { erd: 602, erd-to: ${to} }\n${nipples}${lacing('crosses: 3')}`), 'left');
  const slot = of('slot-bottom');
  // The slope of a length with the radius is 0.995 for these spokes (the radial share of their direction).
  expect(of('nipple-seat', 'nipples: { seat-to-slot: 3 }\n') - slot).toBeCloseTo(3 * 0.993, 1);
  expect(of('nipple-seat', 'nipples: { seat-to-slot: 3, washer: 0.5 }\n') - slot).toBeCloseTo(3.5 * 0.993, 1);
  expect(of('nipple-top')).toBeLessThan(slot);
});

test('with the section of the rim and a tension, the length to cut is 0.69 mm less (derived)', () => {
  const flange = 'holes: 16, circle: 45, from-centre: 35, hole: 2.6';
  // 100 mm² at 69 000 MPa, 2 mm wire at 200 000 MPa, 1000 N: 292.9193 becomes 292.2339.
  const wheel = wheelOn(
    hubText(flange, flange),
    `rim: { erd: 604, erd-to: slot-bottom, area: 100, material: house alloy }
nipples: { seat-to-slot: 2 }
spokes: { left: { profile: 2.0, material: house wire }, right: { profile: 2.0, material: house wire } }
tension: { side: right, value: 1000 N }
${lacing('crosses: 3')}`,
    'materials:\n  house alloy: { E: 69 GPa, nu: 0.33, expansion: 23, density: 2700 }\n  house wire: { E: 200 GPa, nu: 0.3, expansion: 12, density: 7900 }\n',
  );
  const length = wheel.groups[0]?.fit?.length;
  expect((length?.exact ?? 0) - (length?.corrected ?? 0)).toBeCloseTo(0.6854, 2);
});

test('lengths come from the stock of the workshop file, in whatever spelling of the profile', () => {
  const written = `rim: { erd: 602, erd-to: slot-bottom }
spokes: { left: { profile: 2.0/1.8/2.0 }, right: { profile: 2.0/1.8/2.0, length: 300 } }
${lacing('crosses: 3')}`;
  const wheel = wheelOn(dished, written, 'stock: { spokes: { 2/1.8/2: [290, 296, 298] } }\n');
  expect(wheel.groups[0]?.fit?.length).toMatchObject({
    chosen: 298,
    proposed: 298,
    written: null,
    fromStock: true,
  });
  const right = wheel.groups.find(({ side }) => side === 'right')?.fit;
  expect(right?.length).toMatchObject({ chosen: 300, proposed: 296 });
  expect(right?.nipple.end).toBeGreaterThan(right?.band.hi ?? Number.POSITIVE_INFINITY);
  expect(wheelOn(dished, written).groups[0]?.fit?.length.fromStock).toBe(false);
});

test('a variant with a longer right cap dishes the wheel to the left: its flanges move 2.5 against the middle', () => {
  const hub = hubText(
    'holes: 16, circle: 45, from-centre: 30, hole: 2.6',
    'holes: 16, circle: 45, from-centre: 30, hole: 2.6',
    'variants:\n  wide:\n    width: 105.12\n    change:\n      end-cap.right: { length: 19.03 }\n',
  );
  const rest = `rim: { erd: 600, erd-to: slot-bottom }\n${lacing('crosses: 3')}`;
  const plain = wheelOn(hub, rest);
  const wide = wheelOn(hub, `variant: wide\n${rest}`);
  expect(plain.tension?.ratio).toBeCloseTo(1, 9);
  // The shell stands 2.5 left of the new middle: 32.5 left, 27.5 right.
  const at = (w: number) =>
    Math.sqrt(300 ** 2 + 22.5 ** 2 + w ** 2 - 2 * 300 * 22.5 * Math.cos((67.5 * Math.PI) / 180)) - 1.3;
  expect(exactOf(wide, 'left')).toBeCloseTo(at(32.5), 6);
  expect(exactOf(wide, 'right')).toBeCloseTo(at(27.5), 6);
});

test('where no bearing says how a variant moves the shell, no place of a flange is guessed', () => {
  const hub = dished.replaceAll(/ {4}seat: shell\.\w+\n/g, '');
  const wheel = wheelOn(
    `${hub}variants:\n  wide:\n    width: 105.12\n`,
    `variant: wide\nrim: { erd: 600, erd-to: slot-bottom }\n${lacing('crosses: 3')}`,
  );
  expect(wheel.groups).toEqual([]);
  expect(wheel.unchecked.map(({ what }) => what)).toContain('where the flanges of wide stand');
});

test('how far a length may stray follows the sizes it comes from', () => {
  const wheel = wheelOn(dished, `rim: { erd: 602 ±0.5, erd-to: slot-bottom }\n${lacing('crosses: 3')}`);
  // Half a millimetre of diameter is a quarter of length, less the lean of the spoke.
  expect(wheel.groups[0]?.fit?.length.stray).toBeCloseTo(0.25, 1);
});

test('what is missing is told, and nothing is thrown, whatever is left out', () => {
  const missing = (hub: string, wheel: string) => wheelOn(hub, wheel).unchecked.map((one) => one.missing);
  expect(missing(dished, '')).toContain('rim.erd');
  expect(missing(dished, 'rim: { erd: 602 }\n')).toContain('lacing.left.crosses');
  expect(missing(hubText('holes: 14', 'holes: 14'), `rim: { erd: 602 }\n${lacing('crosses: 3')}`)).toContain(
    'from-centre of the left flange in the hub file',
  );
  expect(
    missing(
      hubText('holes: 13, circle: 44, from-centre: 30', 'holes: 14, circle: 44, from-centre: 30'),
      `rim: { erd: 602 }\n${lacing('crosses: 3')}`,
    ),
  ).toContain('an even number of holes in the left flange for crossed spokes');
  expect(missing(dished, 'variant: none\nrim: { erd: 602 }\n')).toContain('variant none in the hub file');
  const across = hubText(
    'holes: 14, circle: 44, from-centre: 1, hole: 2.6',
    'holes: 14, circle: 44, from-centre: 30, hole: 2.6',
  );
  const wheel = wheelOn(across, `rim: { erd: 602, offset: 3 }\n${lacing('crosses: 3')}`);
  expect(wheel.tension).toBeNull();
  expect(wheel.unchecked.map(({ missing: one }) => one)).toContain(
    "a left flange that lies left of the rim's holes",
  );
});
