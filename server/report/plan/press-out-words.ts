import { length, millimetres } from '../../engine/base/figures.ts';
import { backingFace } from '../../service/off-axle.ts';
import type { PressedOut, Step } from '../../service/step.ts';
import { along, forceWords, list, type StepWords, supportWords } from './step-words.ts';

/** Getting bearings out, in words. */
export function pressOutWords(step: Step, pressed: readonly PressedOut[]): StepWords {
  const from = [...new Set(pressed.map((one) => (one.from === 'axle' ? 'the axle' : one.from)))];
  return {
    head: `${verb(pressed)} ${step.part} ${step.part === 'axle' ? 'out' : `out of ${list(from)}`} to the ${step.towards}${along(step)}`.replace(
      'out of the axle',
      'off the axle',
    ),
    details: pressed.flatMap((one) => detailsOf(one, 1 < pressed.length)),
  };
}

const verb = (pressed: readonly PressedOut[]): string =>
  pressed.some(({ reach }) => reach.by === 'drift')
    ? 'Drive'
    : pressed.some(({ reach }) => reach.by === 'extractor')
      ? 'Pull'
      : 'Press';

function detailsOf(one: PressedOut, several: boolean): readonly string[] {
  const said = [
    ...one.ringsFirst.map(
      (ring) => `first make sure that the retaining ring of ${ring.replace(/\.retaining-ring$/, '')} is out`,
    ),
    ...(one.reach.by === 'inner-ring' && one.support === null && !one.scrap
      ? ['its inner ring is backed through the bearing that the support stands under']
      : [reachWords(one)]),
    one.scrap
      ? `the force goes through the balls: ${one.bearing} is scrap once it is out`
      : `the balls carry nothing of it: ${one.bearing} may be used again if it still runs clean`,
    ...(one.support ? [supportWords(one.support)] : []),
    forceWords(one.force, one.compound),
    ...(one.compound ? ['warm the housing to 60 to 80 °C, no flame; then the compound gives way'] : []),
    ...(one.relief
      ? [
          `it comes loose ${length(one.relief.to, 1)} mm below the face and tightens again at ${length(one.relief.from, 1)} mm: it is not out yet, keep it square`,
        ]
      : []),
  ];
  return several ? said.map((text) => `${one.bearing}: ${text}`) : said;
}

function reachWords({ reach, bearing }: PressedOut): string {
  switch (reach.by) {
    case 'outer-ring':
      return `push on its outer ring from behind: ${millimetres(reach.bare)} of it lie bare`;
    case 'inner-ring':
      return reach.bare < backingFace
        ? 'its inner ring cannot be backed: the axle is driven out against the outer ring'
        : `back its inner ring, ${millimetres(reach.bare)} of it lie bare, and press the axle out of it`;
    case 'part':
      return `push on the end of ${reach.part === 'axle' ? 'the axle' : reach.part}: its shoulder takes ${bearing} along`;
    case 'drift':
      return `${reach.aside === null ? 'set' : `push ${reach.aside} aside and set`} a drift of up to ⌀${length(reach.room - 0.5, 1)} on its inner ring from behind: ${millimetres(reach.bare)} lie bare; tap at opposite points in turn so that it stays square`;
    case 'extractor':
      return `spread a collet for a bore of ${length(reach.size)} mm behind its inner ring, ${millimetres(reach.ledge)} of ledge all round, and draw it`;
    case 'none':
      return `nothing reaches it from behind: ${reach.inTheWay ?? 'the bore'} leaves ${millimetres(reach.bare)} of its inner ring bare; it is drawn by a collet that grips in its bore, or not at all`;
  }
}
