import { length, millimetres } from '../../engine/base/figures.ts';
import type { ToMake } from '../../service/driver-size.ts';
import type { PressedIn, Step } from '../../service/step.ts';
import { along, forceWords, list, type StepWords, supportWords } from './step-words.ts';

/** Pressing bearings home, in words. */
export function pressInWords(step: Step, pressed: readonly PressedIn[]): StepWords {
  const into = [...new Set(pressed.map((one) => (one.pushed === 'axle' ? one.bearing : one.into)))];
  const where = into.length === 1 && into[0] === 'axle' ? 'onto the axle' : `into ${list(into)}`;
  return {
    head: `Press ${step.part} ${where} from the ${step.side}${along(step)}`,
    details: pressed.flatMap((one) => detailsOf(one, 1 < pressed.length)),
  };
}

const rings = {
  outer: 'the outer ring only',
  inner: 'the inner ring only',
  both: 'both rings at once',
} as const;
const reasons = {
  'tight-in-seat': 'it is tight in its seat',
  'tight-on-axle': 'it is tight on the axle',
  'both-tight': 'both are tight',
  'stopped-by-spacer': 'nothing but the spacer stops it',
} as const;

function detailsOf(one: PressedIn, several: boolean): readonly string[] {
  const how =
    one.pushed === 'axle'
      ? ['push on the end of the axle: it is tight in the bearing, whose inner ring is backed']
      : [
          `push on ${rings[one.ring]}: ${reasons[one.why]}`,
          driverWords(one),
          `pilot in its bore: ${one.pilot.by === 'axle' ? 'the axle itself' : `a pin of ⌀${length(one.pilot.from)} to ${length(one.pilot.to)}`}`,
        ];
  const said = [
    ...how,
    ...one.support.map(supportWords),
    forceWords(one.force, one.compound),
    ...warmWords(one),
    ...pathWords(one),
    stopWords(one),
  ];
  return several ? said.map((text) => `${one.bearing}: ${text}`) : said;
}

function driverWords({ driver, onWall }: PressedIn): string {
  const size = `driver ⌀${toMake(driver.outside)} outside, ⌀${toMake(driver.inside)} inside, faces square within 0.05 mm`;
  if (onWall === null) return size;
  return onWall.length > 0
    ? `driver: ${list(onWall)} from the wall; or ${size.slice(7)}`
    : `${size}: none on the wall fits, make this one`;
}

function toMake({ nominal, lower, upper }: ToMake): string {
  const signed = (value: number): string =>
    value === 0 ? '0' : `${value < 0 ? '−' : '+'}${length(Math.abs(value), 1)}`;
  return `${length(nominal, 1)} ${signed(upper)}/${signed(lower)}`;
}

function warmWords({ warming, force: expected, compound }: PressedIn): readonly string[] {
  if (compound)
    return ['clean and dry, then the compound as its own sheet says; nothing of it in the bearing'];
  if (!warming || !expected || expected.most < 1) return [];
  return warming.dropsIn
    ? [`or warm the housing to ${Math.ceil(warming.to)} °C and let it drop in; no flame`]
    : [
        `not by heat alone: at ${Math.floor(warming.to)} °C, the most a sealed bearing or a bonded shell stands, the tightest ring still wants pressing`,
      ];
}

function pathWords({ path, relief }: PressedIn): readonly string[] {
  const [first] = path;
  const open =
    first?.fit === 'loose' && 1 < path.length
      ? [`the first ${millimetres(first.to - first.from, 1)} go by hand, then the fit begins`]
      : [];
  const loose = relief
    ? [
        `between ${length(relief.from, 1)} and ${millimetres(relief.to, 1)} from the mouth the fit goes loose and then tightens again: it is not home yet, keep it square`,
      ]
    : [];
  return [...open, ...loose];
}

function stopWords({ stop, below, touches, bearing, pushed }: PressedIn): string {
  const touch =
    touches === null
      ? ''
      : `; its inner ring just touches ${touches === 'axle' ? 'the shoulder of the axle' : touches} and still turns free`;
  const depth = below === null ? '' : depthWords(below);
  switch (stop) {
    case 'spacer':
      return `stop when its inner ring meets ${touches ?? 'the spacer'} and no later${depth}: nothing else stops it`;
    case 'ring':
      return `stop softly at the retaining ring${depth}${touch}`;
    case 'bearing':
      return `stop when its rings lie against the bearing before it${depth}${touch}`;
    case 'axle':
      return pushed === 'axle'
        ? `stop when the axle stands in ${bearing} as far as drawn`
        : `stop when ${bearing} is home on the axle${touch}`;
    case 'shoulder':
      return `stop when the tone changes and the force jumps: it is home${depth}${touch}`;
  }
}

function depthWords(below: number): string {
  if (Math.abs(below) < 0.005) return ', flush with the face';
  return `, ${millimetres(Math.abs(below))} ${below < 0 ? 'proud of' : 'below'} the face`;
}
