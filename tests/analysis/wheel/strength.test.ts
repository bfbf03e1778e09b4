import { expect, test } from 'vitest';
import { hubText, wheelOn } from './wheel-files.ts';

const crossed = 'lacing: { left: { crosses: 3 }, right: { crosses: 3 } }\n';
const flange = (w: number) => `holes: 16, circle: 57, from-centre: ${w}, hole: 2.6`;
const dished = hubText(flange(34), flange(20));
const stiff =
  'area: 100, radial-stiffness: 110 N·m², lateral-stiffness: 200 N·m², torsional-stiffness: 60 N·m²';
const rim = `rim: { erd: 598, erd-to: slot-bottom, holes: 32, tension-limit: 1250 N, ${stiff} }\n`;

test('tension on one side sets the other: 588 of 1000 N on flanges 34 and 20 (simple ratio of a handbook table)', () => {
  const wheel = wheelOn(dished, `${rim}${crossed}tension: { side: right, value: 1000 ±100 N }\n`);
  const { tension } = wheel;
  expect(Math.abs((tension?.left ?? 0) - 588)).toBeLessThan(4);
  expect(tension?.taut).toBe('right');
  expect(tension?.set).toEqual({ side: 'right', value: 1000, spread: 100, written: true });
  expect(tension?.sides.left.least).toBe(300);
  expect(tension?.sides.right.least).toBe(400);
  // Sixteen spokes a side; spokes lean little, so that nearly all their pull is towards the axle.
  const whole = (16 * (1000 + (tension?.left ?? 0))) / (2 * Math.PI);
  expect((tension?.rimCompression ?? 0) / whole).toBeGreaterThan(0.98);
  expect((tension?.rimCompression ?? 0) / whole).toBeLessThan(1);
  const left = wheelOn(dished, `${rim}${crossed}tension: { side: left, value: ${tension?.left} N }\n`);
  expect(left.tension?.right).toBeCloseTo(1000, 3);
});

test('an off-centre rim brings the sides nearer: 733 of 1000 N with 2.8 mm (derived)', () => {
  const wheel = wheelOn(
    dished,
    `${rim.replace('holes: 32', 'holes: 32, offset: 2.8')}${crossed}tension: { side: right, value: 1000 N }\n`,
  );
  expect(Math.abs((wheel.tension?.left ?? 0) - 732.7)).toBeLessThan(1);
});

test('without a tension a usual one is taken, below the limit of the rim, and that is said', () => {
  const wheel = wheelOn(dished, `${rim.replace('1250', '900')}${crossed}`);
  expect(wheel.tension?.right).toBe(900);
  expect(wheel.assumed.join()).toContain('tension taken as 900 N on the right side');
});

test('a stiffer rim is stiffer, a wheel without written stiffness is left open', () => {
  const of = (text: string) => wheelOn(dished, `${text}${crossed}`).strength;
  const soft = of(rim);
  const hard = of(rim.replace('200 N·m²', '400 N·m²'));
  expect(soft).not.toBeNull();
  expect(hard?.stiffness.lateral).toBeGreaterThan(soft?.stiffness.lateral ?? 0);
  expect(hard?.buckling?.tension).toBeGreaterThan(soft?.buckling?.tension ?? 0);
  expect(of('rim: { erd: 598, erd-to: slot-bottom, holes: 32 }\n')).toBeNull();
});

test('the slack side goes slack first, and slack loads grow with the tension as they must', () => {
  const of = (value: number) =>
    wheelOn(
      dished,
      `${rim}${crossed}tension: { side: right, value: ${value} N }\nrider: { mass: 88 kg, bicycle: 12 kg, share: 0.5, side-force: 60 N }\n`,
    ).strength?.slackLoad;
  const low = of(600);
  const high = of(1200);
  expect(low?.radialSide).toBe('left');
  expect((high?.radial ?? 0) / (low?.radial ?? 1)).toBeGreaterThan(1.9);
  expect(low?.ridden.weight).toBeCloseTo(0.5 * 100 * 9.80665, 6);
  expect(low?.ridden.left).toBeLessThan(low?.ridden.right ?? 0);
  // Ridden harder than its slack load, a spoke is short of tension.
  const heavy = wheelOn(
    dished,
    `${rim}${crossed}tension: { side: right, value: 300 N }\nrider: { mass: 150 kg, share: 1 }\n`,
  );
  expect(heavy.strength?.slackLoad.ridden.left).toBeLessThan(0);
});

test('a wheel past its buckling tension has no stiffness', () => {
  const soft = rim.replace('200 N·m²', '20 N·m²').replace('60 N·m²', '2 N·m²');
  const wheel = wheelOn(dished, `${soft}${crossed}tension: { side: right, value: 4000 N }\n`);
  expect(wheel.strength).toBeNull();
  expect(wheel.unchecked.map(({ missing }) => missing)).toContain(
    'a tension below the one that folds the wheel',
  );
});

test('readings give mean, spread, ratio and what to turn', () => {
  const left = Array.from({ length: 16 }, (_, at) => (at === 3 ? 400 : at === 7 ? 700 : 590));
  const right = Array.from({ length: 16 }, () => 1000);
  const { measured } = wheelOn(
    dished,
    `${rim}${crossed}tension: { side: right, value: 1000 N, measured: { left: [${left}], right: [${right}] } }\n`,
  );
  const mean = (14 * 590 + 400 + 700) / 16;
  expect(measured?.sides.left?.mean).toBeCloseTo(mean, 9);
  expect(measured?.sides.right?.outliers).toEqual([]);
  expect(measured?.sides.left?.outliers.map(({ at }) => at)).toEqual([3, 7]);
  const [slack, taut] = measured?.sides.left?.outliers ?? [];
  expect(slack?.turns).toBeGreaterThan(0.3);
  expect(slack?.turns).toBeLessThan(1);
  expect(taut?.turns).toBeLessThan(0);
  expect(measured?.ratio).toBeCloseTo(mean / 1000, 9);
  expect(measured?.doubtful).toBe(false);
});

test('a ratio far from balance is doubted, and short lists are told', () => {
  const answer = wheelOn(
    dished,
    `${rim}${crossed}tension: { measured: { left: [900, 910], right: [1000] } }\n`,
  );
  expect(answer.measured?.doubtful).toBe(true);
  expect(answer.unchecked.filter(({ what }) => what.startsWith('spread of the'))).toHaveLength(2);
});

test('a wheel alike on both sides is alike in everything', () => {
  const { tension, groups, strength } = wheelOn(hubText(flange(30), flange(30)), `${rim}${crossed}`);
  expect(tension?.ratio).toBeCloseTo(1, 12);
  expect(tension?.sides.left.least).toBe(400);
  expect(groups[0]?.fit?.length.exact).toBeCloseTo(groups[2]?.fit?.length.exact ?? 0, 9);
  expect(strength?.slackLoad.lateral.left).toBeCloseTo(strength?.slackLoad.lateral.right ?? 0, 6);
});
