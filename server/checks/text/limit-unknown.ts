import type { Analysis } from '../../analysis/analyze.ts';
import { defaultLimits } from '../../engine/tables/limits.ts';
import { renameKey } from '../../spec/edit.ts';
import { nearestOf } from '../../spec/nearest.ts';
import type { Check, Draft } from '../check.ts';

/** A workshop sets a limit that no check knows. */
export const limitUnknown: Check = {
  code: 'limit-unknown',
  group: 'text',
  severity: 'warning',
  summary: 'A workshop sets a limit that no check knows.',
  page: {
    why: 'A limit of the house takes the place of the built-in one by its name. Under a name that nothing reads it changes nothing, and the built-in value holds without a word.',
    bad: 'workshop: Saltmarsh\nlimits:\n  runing-gap: 0.4\n',
    good: 'workshop: Saltmarsh\nlimits:\n  running-gap: 0.4\n',
    sources: ['common practice'],
  },
  run: unknownLimits,
};

function* unknownLimits(analysis: Analysis): Iterable<Draft> {
  const known = Object.keys(defaultLimits);
  for (const [name, { path }] of Object.entries(analysis.spec.workshop?.limits ?? {})) {
    if (known.includes(name)) continue;
    const near = nearestOf(name, known, 3);
    yield {
      path,
      part: 'key',
      message: `${name} is no limit${near ? `; nearest is ${near}` : ''}: the built-in limits hold until the name is right`,
      data: { name, near, known },
      fixes: near
        ? [
            {
              title: `Rename ${name} to ${near}`,
              changes: renameKey(analysis.spec, path, near),
              preferred: true,
            },
          ]
        : [],
    };
  }
}
