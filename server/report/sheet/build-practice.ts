/** What holds for every build, with how sure it is. The makers of rim, hub and spokes come first. */
export const buildPractice = {
  cautions: [
    'What the makers of rim, hub and spokes say comes first',
    'Eye protection when spokes are cut, broken or pressed',
    'Let tension down evenly before cutting: a taut spoke flies',
    'Never above the limits below; a wheel can fold under stress',
    'No tension with a spoke missing or a tyre unseated',
    'Read again after the first rides',
  ],
  truing: [
    ['sideways', '±0.15 mm', 'trade; others 0.3 mm'],
    ['radially', '±0.2 mm', 'trade; at the rim joint 0.25 mm'],
    ['dish', '0.5 mm', 'common practice'],
    ['spread of tension, each side', '±10 %', 'trade; others ±20 %'],
  ],
  work: [
    'Check the parts against the list; measure the rim in three places and the flanges',
    'Lace; bed the elbows against the flange by hand',
    'Lubricate threads and seats; take every nipple to the same line of its thread',
    'Bring the tension up evenly, half a turn or less at a time, from the valve and back to it',
    'Radially before sideways, then dish; each time with a little more tension',
    'Untwist each spoke: go past and come back; hold bladed ones',
    'Stress the wheel: press parallel spokes together in pairs; true again; repeat until nothing moves',
    'If the rim takes two waves under stress, the tension is too high: let all down half a turn',
    'Read every spoke, write the readings into the boxes and into the file, under tension.measured',
  ],
} as const;
