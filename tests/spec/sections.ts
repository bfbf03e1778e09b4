import { besideKinds } from '../../server/spec/beside-model.ts';
import { stackKinds } from '../../server/spec/model.ts';
import type { SectionId } from '../../server/spec/schema/key-info.ts';

/** Every section with keys of its own. */
export const sections: readonly SectionId[] = [
  'hub',
  ...stackKinds.map((kind): SectionId => `part:${kind}`),
  ...besideKinds.map((kind): SectionId => `beside:${kind}`),
  'housing:shell',
  'housing:freehub',
  'seat',
  'retaining-ring',
  'flange',
  'cup',
  'axle',
  'clamp',
  'duty',
  'variant',
  'added',
  'workshop',
  'workshop:bearing',
  'workshop:material',
  'workshop:stock',
  'workshop:driver',
  'workshop:defaults',
  'wheel',
  'wheel:rim',
  'wheel:lacing',
  'wheel:lacing-side',
  'wheel:spokes',
  'wheel:spoke-side',
  'wheel:nipples',
  'wheel:tension',
  'wheel:measured',
  'wheel:tyre',
  'wheel:rider',
];
