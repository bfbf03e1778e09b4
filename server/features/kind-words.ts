import type { BesideKind } from '../spec/beside-model.ts';
import type { StackKind } from '../spec/model.ts';

/** What each kind of part is, in a sentence. */
export const kindWords: Readonly<Record<StackKind | BesideKind, string>> = {
  'end-cap': 'The part the dropout bears on; its inner face bears on the inner ring of the bearing.',
  bearing: 'A cartridge bearing; its inner ring is part of the clamped line.',
  spacer: 'A sleeve between two inner rings; its length decides whether the bearings run free.',
  shim: 'A thin spacer to make up a length.',
  washer: 'A thin spacer.',
  collar: 'A shoulder that is part of the axle and works as a spacer.',
  adjuster: 'A threaded collar that sets play or preload.',
  'wave-washer': 'A spring that takes up play.',
  cone: 'The inner race of a cup-and-cone hub.',
  locknut: 'The nut that locks a cone.',
  seal: 'A lip or ring that keeps water out, outside the clamped line.',
  cover: 'A cover outside the clamped line.',
  'rotor-face': 'The face the brake rotor bolts to.',
  'driver-face': 'The face the driver or the cassette ends at.',
};

export function isKind(word: string): word is StackKind | BesideKind {
  return Object.hasOwn(kindWords, word);
}
