import { force, length, millimetres } from '../../engine/base/figures.ts';
import type { ToMake } from '../../service/driver-size.ts';
import { backingFace } from '../../service/off-axle.ts';
import type { PressedIn, PressedOut, PressForce, Step, Support } from '../../service/step.ts';
import { list, stepWords } from '../plan/step-words.ts';

/**
 * The lines beside the picture of a step, each short enough for half a sheet: the letters are those of the picture.
 * Steps without a picture are told as the plan tells them.
 */
export function briefStep(step: Step): readonly string[] {
  if (step.kind !== 'press-in' && step.kind !== 'press-out') return stepWords(step).details;
  const several = 1 < step.pressed.length;
  const said =
    step.kind === 'press-in'
      ? step.pressed.map((one) => ({ bearing: one.bearing, lines: inLines(one) }))
      : step.pressed.map((one) => ({ bearing: one.bearing, lines: outLines(one) }));
  return said.flatMap(({ bearing, lines }) => (several ? lines.map((text) => `${bearing}: ${text}`) : lines));
}

const rings = {
  outer: 'on the outer ring only',
  inner: 'on the inner ring only',
  both: 'on both rings at once',
};

function inLines(one: PressedIn): readonly string[] {
  const { driver, onWall, pilot, relief, path, below, touches, stop } = one;
  const size = `⌀${toMake(driver.outside)}, hollow ⌀${toMake(driver.inside)}, square within 0.05`;
  const wall = onWall === null ? '' : onWall.length > 0 ? `${list(onWall)} from the wall, or ` : 'to make, ';
  const begins = path[0]?.fit === 'loose' && 1 < path.length ? path[0] : null;
  return [
    ...(one.pushed === 'axle'
      ? ['push on the end of the axle']
      : [`push ${rings[one.ring]}`, `D: ${wall}${size}`]),
    ...(one.pushed === 'axle'
      ? []
      : [
          pilot.by === 'axle'
            ? 'pilot: the axle itself'
            : `pilot ⌀${length(pilot.from)} to ${length(pilot.to)}`,
        ]),
    ...one.support.map(supportLine),
    forceLine(one.force, one.compound),
    ...heatLines(one),
    ...(begins ? [`the first ${millimetres(begins.to - begins.from, 1)} go by hand`] : []),
    ...(relief
      ? [
          `loose from ${length(relief.from, 1)} to ${millimetres(relief.to, 1)}, then tight again: not home yet`,
        ]
      : []),
    `stop ${stops[stop]}${depth(below)}${touches === null ? '' : `; its inner ring just touches ${touches === 'axle' ? 'the shoulder of the axle' : touches} and turns free`}`,
  ];
}

const stops = {
  shoulder: 'when the tone changes and the force jumps',
  spacer: 'when its inner ring meets the spacer, no later',
  ring: 'softly at the retaining ring',
  bearing: 'against the bearing before it',
  axle: 'when it is home on the axle',
} as const;

function depth(below: number | null): string {
  if (below === null) return '';
  if (Math.abs(below) < 0.005) return ': flush with the face';
  return `: ${millimetres(Math.abs(below))} ${below < 0 ? 'proud of' : 'below'} the face`;
}

function heatLines({ compound, warming, force: expected }: PressedIn): readonly string[] {
  if (compound) return ['clean and dry, then the compound by its own sheet; none of it in the bearing'];
  if (!warming || !expected || expected.most < 1) return [];
  return warming.dropsIn
    ? [`or drop it in at ${Math.ceil(warming.to)} °C of the housing; no flame`]
    : [`not by heat alone: ${Math.floor(warming.to)} °C at most leaves it tight`];
}

function outLines(one: PressedOut): readonly string[] {
  const { reach, scrap, support, relief, ringsFirst, compound } = one;
  return [
    ...ringsFirst.map((ring) => `retaining ring of ${ring.replace(/\.retaining-ring$/, '')} out first`),
    reachLine(reach),
    scrap
      ? `goes through its balls: ${one.bearing} is scrap`
      : 'its balls carry nothing: it may be used again',
    ...(support ? [supportLine(support)] : []),
    forceLine(one.force, compound),
    ...(compound ? ['warm the housing to 60 to 80 °C, no flame'] : []),
    ...(relief
      ? [
          `loose from ${length(relief.to, 1)} to ${millimetres(relief.from, 1)} below the face, then tight again: not out yet`,
        ]
      : []),
  ];
}

function reachLine(reach: PressedOut['reach']): string {
  switch (reach.by) {
    case 'outer-ring':
      return `D on its outer ring from behind, ${millimetres(reach.bare)} bare`;
    case 'inner-ring':
      return reach.bare < backingFace
        ? 'its inner ring cannot be backed: the axle goes out against the outer ring'
        : `back its inner ring, ${millimetres(reach.bare)} bare, and press the axle out`;
    case 'part':
      return `push ${reach.part === 'axle' ? 'the axle' : reach.part}: its shoulder takes it along`;
    case 'drift':
      return `D: drift up to ⌀${length(reach.room - 0.5, 1)} on its inner ring${reach.aside === null ? '' : `, ${reach.aside} pushed aside`}: ${millimetres(reach.bare)} bare; opposite points in turn`;
    case 'extractor':
      return `P: collet for a bore of ${length(reach.size)}, ${millimetres(reach.ledge)} of ledge behind the inner ring`;
    case 'none':
      return 'nothing reaches it from behind: a collet that grips in its bore, or not at all';
  }
}

function supportLine({ under, part, side, inside, outside }: Support): string {
  if (under === 'axle') return `the ${side} end of the axle stands on the plate`;
  if (under === 'inner-ring')
    return `S: sleeve ⌀${length(inside)} to ${length(outside ?? inside)} under the inner ring of ${part}, ${side}`;
  return `S: hollow block ⌀${length(inside, 1)} or more, ${side} end of the ${part}`;
}

function forceLine(expected: PressForce, compound: boolean): string {
  if (compound) return 'force not known: a compound holds it';
  if (expected === null) return 'force not known: its fit is not written';
  if (expected.most < 1) return 'goes by hand';
  return `about ${force(expected.typical)}, ${force(expected.least)} to ${force(expected.most)}`;
}

function toMake({ nominal, lower, upper }: ToMake): string {
  const signed = (value: number): string =>
    value === 0 ? '0' : `${value < 0 ? '−' : '+'}${length(Math.abs(value), 1)}`;
  return `${length(nominal, 1)} ${signed(upper)}/${signed(lower)}`;
}
