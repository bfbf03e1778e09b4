import { force, length, millimetres, plain } from '../../engine/base/figures.ts';
import type { PressForce, Step, Support } from '../../service/step.ts';
import { pressInWords } from './press-in-words.ts';
import { pressOutWords } from './press-out-words.ts';

/** A step in words: what to do, then what belongs to it, a sentence each. */
export interface StepWords {
  readonly head: string;
  readonly details: readonly string[];
}

/** Says one step the way a mechanic would be told it at the bench. */
export function stepWords(step: Step): StepWords {
  const words = wordsOf(step);
  return { head: words.head, details: [...words.details, ...ballWords(step)] };
}

function wordsOf(step: Step): StepWords {
  switch (step.kind) {
    case 'slide-off':
      return {
        head: `Slide ${step.part} off to the ${step.towards}${along(step)}`,
        details: [...clear(step), ...driveWords(step)],
      };
    case 'slide-on':
      return { head: `Slide ${step.part} on from the ${step.side}${along(step)}`, details: driveWords(step) };
    case 'unscrew':
      return {
        head: alone(step.threads, step.part)
          ? `Unscrew ${step.part}, off to the ${step.towards}${along(step)}`
          : `Unscrew ${list(step.threads)} and take ${step.part} off to the ${step.towards}${along(step)}`,
        details: ['look for a locking screw and for a left-hand thread before using force'],
      };
    case 'screw-on':
      return {
        head: alone(step.threads, step.part)
          ? `Screw ${step.part} on from the ${step.side}${along(step)}`
          : `Put ${step.part} on from the ${step.side}${along(step)} and screw ${list(step.threads)} on`,
        details: step.threads.some((address) => /^(?:cone|adjuster)\./.test(address))
          ? [
              step.on === 'bench'
                ? 'to its place on the axle, then locked against its locknut'
                : 'by hand until the play just goes; what play to leave is set at the end and then locked',
            ]
          : ['torque: as the maker of the part gives it'],
      };
    case 'take-ring-out':
      return {
        head: `Take the retaining ring out of ${step.seat}, to the ${step.towards}`,
        details: [
          ...ringSize(step.size),
          ...(step.holds.length === 0
            ? []
            : [`${list(step.holds)} cannot come past it: driven against the ring, the seat is torn`]),
          'eye protection: the ring jumps; one that is bent or tired is replaced',
        ],
      };
    case 'put-ring-in':
      return {
        head: `Put the retaining ring into ${step.seat}, from the ${step.side}`,
        details: [
          ...ringSize(step.size),
          'sharp edge outwards; turn it in its groove to see that it is seated all round',
          'eye protection: the ring jumps',
        ],
      };
    case 'press-out':
      return pressOutWords(step, step.pressed);
    case 'press-in':
      return pressInWords(step, step.pressed);
  }
}

const alone = (threads: readonly string[], part: string): boolean =>
  threads.length === 1 && threads[0] === part;

/** What goes along with the part a step is named after. */
export function along({ part, moving }: Step): string {
  const others = moving.filter((address) => address !== part);
  return others.length === 0 ? '' : `, together with ${list(others.map(ringName))}`;
}

const ringName = (address: string): string =>
  address.replace(/^(.*)\.retaining-ring$/, 'the retaining ring of $1');

const clear = ({ travel }: Step): readonly string[] =>
  travel < 2 ? [] : [`it is clear after ${millimetres(travel, 1)}`];

/** What is loose between a freehub and its shell is in no hub file, and jumps. */
function driveWords({ part, kind }: Step): readonly string[] {
  if (part !== 'freehub') return [];
  return kind === 'slide-off'
    ? ['hold a rag around it: pawls and springs come loose with it']
    : ['pawls, springs or ratchets go in last, greased as their maker says; never bearing grease on pawls'];
}

const ringSize = (size: number | null): readonly string[] =>
  size === null ? [] : [`ring and pliers for a bore of ${plain(size)} mm`];

function ballWords({ balls, kind }: Step): readonly string[] {
  return balls.map(({ part, count, diameter }) => {
    const what =
      count === null || diameter === null ? 'its balls' : `its ${count} balls of ${length(diameter, 3)} mm`;
    return kind === 'slide-on' || kind === 'screw-on' || kind === 'press-in'
      ? `${part}: ${what} go in with it, all of them new, in grease`
      : `${part}: catch ${what} over a tray and count them`;
  });
}

/** A hollow block or a plate, and where it stands. */
export function supportWords({ under, part, side, inside, outside }: Support): string {
  if (under === 'axle') return `let the ${side} end of the axle stand on the plate`;
  if (under === 'inner-ring')
    return `back the inner ring of ${part} on the ${side}: a sleeve of ⌀${length(inside)} to ${length(outside ?? inside)}, its outer ring free`;
  return `stand the ${part} on a hollow block of ⌀${length(inside, 1)} or more inside, around its ${side} end; never on a flange or the rim`;
}

/** The force to expect, and what to think of another one. */
export function forceWords(expected: PressForce, compound: boolean): string {
  if (compound) return 'force not known: a retaining compound holds it';
  if (expected === null) return 'force not known: the limits of its fit are not written';
  if (expected.most < 1) return 'it goes by hand';
  return `force about ${force(expected.typical)}, ${force(expected.least)} to ${force(expected.most)}`;
}

/** `a, b and c`. */
export function list(items: readonly string[]): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} and ${last}`;
}
