import { tension as newtons } from '../../engine/base/figures.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check } from '../check.ts';
import { pageWheel } from '../page-wheel.ts';

/** Spokes lose all their tension under the rider. */
export const spokesGoSlack: Check = {
  code: 'spokes-go-slack',
  group: 'wheel',
  severity: 'warning',
  summary: 'Spokes lose all their tension under the rider.',
  page: {
    why: 'The lowest spokes carry the wheel by losing tension. Where the weight and a push from the side take all of it, the rim moves freely to that side at every turn, nipples unscrew and spokes break at the elbow. The figures compare wheels; measured wheels were softer sideways than reckoned.',
    bad: pageWheel(
      ['value: 1000 ±100 N', 'value: 420 ±20 N'],
      ['rider: { mass: 85 kg }', 'rider: { mass: 140 kg, side-force: 180 N }'],
    ),
    good: pageWheel(),
    sources: [
      'radial and lateral stiffness of a wheel as a ring on springs (Ford 2018, Pippard and Francis 1931)',
    ],
  },
  *run(analysis) {
    const spec = analysis.spec.wheel;
    const wheel = analysis.wheel();
    const tension = wheel?.tension;
    const ridden = wheel?.strength?.slackLoad.ridden;
    const value = spec?.tension?.values.value;
    if (!spec || !tension || !ridden) return;
    // Too little tension from the start is said to be that.
    if ((['left', 'right'] as const).some((side) => tension.sides[side].value < tension.sides[side].least))
      return;
    const side = ridden.left <= ridden.right ? 'left' : 'right';
    if (0 < ridden[side]) return;
    const path = value?.path ?? spec.rider?.values.mass?.path ?? spec.rim?.path ?? [];
    const lost = tension[side] - ridden[side];
    const best = Math.ceil((tension.set.value * (lost * 1.05)) / tension[side] / 10) * 10;
    const room = (['left', 'right'] as const).every(
      (one) =>
        (tension.sides[one].value * best) / tension.set.value +
          (one === tension.set.side ? (tension.set.spread ?? 0) : 0) <=
        tension.sides[one].most,
    );
    const spread = tension.set.spread === null ? '' : ` ±${tension.set.spread}`;
    yield {
      path,
      message: `${newtons(ridden.weight)} on the wheel and ${newtons(ridden.sideForce)} from the side take ${newtons(lost)} from the lowest ${side} spokes, which have ${newtons(tension[side])}: they go slack — ${room ? `${best} N on the ${tension.set.side} side` : 'more or thicker spokes, or a stiffer rim'}; for comparison`,
      data: { side, weight: ridden.weight, sideForce: ridden.sideForce, lost, tension: tension[side] },
      fixes:
        room && value
          ? [
              {
                title: `Change the tension to ${best}${spread} N: more than the rider takes from the ${side} side`,
                changes: setValue(analysis.spec, value.path, `${best}${spread} N`),
                preferred: true,
              },
            ]
          : [],
    };
  },
};
