/** What holds for every build, with how sure it is. The makers of rim, hub and spokes come first. */
export const buildPractice = {
  cautions: [
    'The makers of rim, hub and spokes come first where they say something else',
    'Eye protection when spokes are cut, broken or pressed',
    'Tension is let down evenly all round before a spoke is cut: one under tension flies',
    'Never more tension than rim, spoke and hub allow; a wheel can fold while it is stressed',
    'No tension against a missing spoke or over a tyre that is not seated',
    'Read again after the first rides',
  ],
  truing: [
    ['sideways', '±0.15 mm', 'trade; 0.3 mm for wheels made in numbers'],
    ['radially', '±0.2 mm', 'trade; the joint of the rim may limit it to 0.25 mm'],
    ['dish', '0.5 mm', 'common practice; 1 mm for a utility wheel'],
    ['spread of tension, each side', '±10 %', 'trade; ±20 % for wheels made in numbers'],
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
    'Read every spoke, write the readings below and into the file, under tension.measured',
  ],
} as const;
