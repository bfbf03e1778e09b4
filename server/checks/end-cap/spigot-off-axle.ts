import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, plain } from '../../engine/base/figures.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { neighbours } from '../ring-face.ts';

/** The spigot of an end cap does not enter what it is pushed into. */
export const spigotOffAxle: Check = {
  code: 'spigot-off-axle',
  group: 'end-cap',
  severity: 'error',
  summary: 'The spigot of an end cap does not fit its axle or bearing.',
  page: {
    why: 'A pushed-on end cap is centred by its spigot, in the bore of the axle or of the bearing. Too large, it does not go in and the cap never meets the inner ring; with far too much room, the cap falls out with the wheel in the hand and water follows it in.',
    bad: pageHub(['    face: 19.4', '    face: 19.4\n    spigot: 15.4']),
    good: pageHub(['    face: 19.4', '    face: 19.4\n    spigot: 15']),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => offAxle(analysis, variant)),
};

/** Room, mm, beyond which a spigot no longer holds a cap; and the room a fix gives. */
const mostRoom = 0.3;
const pushRoom = 0.05;

function* offAxle(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const axleBore = variant.assembly.hub.axle?.values.bore;
  for (const cap of variant.assembly.line.filter(({ part }) => part.kind === 'end-cap')) {
    const { spigot } = cap.part.values;
    const [bearing] = neighbours(variant.assembly.line, cap);
    if (!spigot) continue;
    const holes = [
      ...(axleBore ? [{ size: axleBore.value.nominal, path: axleBore.path, name: 'bore of the axle' }] : []),
      ...(bearing?.bearing
        ? [{ size: bearing.bearing.bore, path: bearing.from, name: `bore of ${bearing.address}` }]
        : []),
    ];
    const nearest = holes.sort(
      (a, b) => Math.abs(a.size - spigot.value.nominal) - Math.abs(b.size - spigot.value.nominal),
    )[0];
    if (!nearest) continue;
    const room = nearest.size - spigot.value.nominal;
    if (0 <= room && room <= mostRoom) continue;
    const name = `spigot of ${cap.address}`;
    const target = nearest.size - pushRoom;
    yield {
      path: spigot.path,
      severity: room < 0 ? 'error' : 'warning',
      message: `${name} is ${plain(spigot.value.nominal)}, the ${nearest.name} ${plain(nearest.size)}: ${length(Math.abs(room))} mm ${room < 0 ? 'too large to enter' : 'of room, it does not hold'} — ${plain(target)} slides in and stays`,
      related: [{ path: nearest.path, message: `${plain(nearest.size)} here` }],
      data: { spigot: spigot.value.nominal, hole: nearest.size, room },
      fixes: [rewriteFix(analysis, spigot, target, { name, result: `${length(pushRoom)} mm of room` })],
    };
  }
}
