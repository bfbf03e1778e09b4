import { force, micrometres, millimetres } from '../../engine/base/figures.ts';
import type { Alternative } from '../../engine/bearings/interchange.ts';
import type { NearSize } from '../../engine/bearings/near-sizes.ts';
import { sayKilometres } from '../life/say-kilometres.ts';
import type { Exchanged, InHub } from './exchanged.ts';

/** What an exchange is, in a few words. */
export const exchangeNames: Readonly<Record<Alternative['exchange'], string>> = {
  sealed: 'with rubbing seals',
  'lightly sealed': 'with seals that do not rub',
  shielded: 'with shields',
  open: 'open',
  'more clearance': 'with more clearance',
  'less clearance': 'with less clearance',
  'full complement': 'full of balls',
  hybrid: 'with ceramic balls',
  stainless: 'of stainless steel',
  'other kind': 'of another kind',
};

/** What goes wrong with a bearing that only looks right. */
export function nearWords({ differs, by }: NearSize): string {
  const size = millimetres(Math.abs(by), 1);
  if (differs === 'bore')
    return by > 0
      ? `its bore is ${size} larger: loose on the axle`
      : `its bore is ${size} smaller: it does not go on the axle`;
  if (differs === 'outside')
    return by > 0
      ? `it is ${size} larger outside: it does not enter the seat`
      : `it is ${size} smaller outside: loose in the seat`;
  return by > 0
    ? `it is ${size} wider: it stands proud of its seat and lengthens the stack`
    : `it is ${size} narrower: it shortens the stack and moves its rings`;
}

/** `bearing.left: mounted clearance 5 → 12 µm, play clamped 16 → 31 µm`; what stays is left out. */
export function exchangedWords({ address, variant, before, after }: Exchanged): string {
  const changes = [
    change('mounted clearance', before, after, 'mounted', micrometres),
    change('play clamped', before, after, 'playClamped', micrometres),
    change('load on the balls', before, after, 'ballLoad', force),
    change('life, for comparison,', before, after, 'kilometres', sayKilometres),
  ].filter((text) => text !== null);
  const where = variant === null ? address : `${address}, ${variant}`;
  return `${where}: ${changes.length > 0 ? changes.join(', ') : 'clearance, play, load and life stay as they are'}`;
}

function change(
  name: string,
  before: InHub,
  after: InHub,
  key: keyof InHub,
  say: (value: number) => string,
): string | null {
  const [was, is] = [before[key], after[key]].map((value) => (value === null ? 'not known' : say(value)));
  return was === is || was === undefined || is === undefined ? null : `${name} ${was} → ${is}`;
}
