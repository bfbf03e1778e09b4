import type { Check } from '../check.ts';
import { pageWheel } from '../page-wheel.ts';

const readings = (list: string): readonly [string, string] => [
  'tension: { side: right, value: 1000 ±100 N }',
  `tension:
  side: right
  value: 1000 ±100 N
  measured: { right: [${list}] }`,
];
const sixteen = '1000, 1010, 990, 1000, 1005, 995, 1000, 1000, 1010, 990, 1000, 995, 1005, 1000, 990, 1010';

/** Not every spoke of a side has its reading. */
export const readingsMissing: Check = {
  code: 'readings-missing',
  group: 'wheel',
  severity: 'information',
  summary: 'A side has another number of tension readings than spokes.',
  page: {
    why: 'Readings are counted from the valve on, one a spoke. With one left out, or one too many, every spoke behind it is mistaken for its neighbour, and the one that is told to be turned is the wrong one.',
    bad: pageWheel(readings(sixteen.replace('1000, 1010, ', ''))),
    good: pageWheel(readings(sixteen)),
    sources: ['common practice'],
  },
  *run(analysis) {
    const measured = analysis.wheel()?.measured;
    for (const side of ['left', 'right'] as const) {
      const read = measured?.sides[side];
      if (!read || read.readings.length === read.spokes) continue;
      yield {
        path: read.path,
        part: 'key',
        message: `${read.readings.length} readings for ${read.spokes} spokes on the ${side} side — one a spoke, from the valve on`,
        data: { readings: read.readings.length, spokes: read.spokes },
      };
    }
  },
};
