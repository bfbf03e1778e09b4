import { makeProblem } from './make-problem.ts';
import type { SpecPath } from './place.ts';
import { placesOf } from './places.ts';
import type { Reader } from './section-reader.ts';

interface Addressed {
  readonly kind: string;
  readonly name: string;
  readonly address: string;
  readonly path: SpecPath;
}

/** Reported at most. */
const most = 20;

/** Reports every part whose address is taken, at the second. */
export function duplicateNames(reader: Reader, parts: readonly Addressed[]): void {
  const first = new Map<string, Addressed>();
  let found = 0;
  const taken = new Set(parts.map((part) => part.address));
  for (const part of parts) {
    const other = first.get(part.address);
    if (!other) first.set(part.address, part);
    else if (part.name !== '' && ++found <= most) {
      const places = placesOf(reader.yaml);
      const span = places.span([...part.path, part.kind]);
      const name = freeName(part, taken);
      taken.add(`${part.kind}.${name}`);
      const message = `${part.address} stands twice; every part needs an address of its own, such as ${part.kind}.${name}`;
      reader.problems.push(
        makeProblem('duplicate-name', message, span, {
          related: [{ span: places.span([...other.path, other.kind]), message: `the first ${part.address}` }],
          data: { address: part.address, path: part.path, suggestion: name },
          fixes: [{ title: `Name it ${name}`, changes: [{ span, text: name }], preferred: true }],
        }),
      );
    }
  }
}

function freeName({ kind, name }: Addressed, taken: ReadonlySet<string>): string {
  const other = name === 'left' ? 'right' : name === 'right' ? 'left' : null;
  if (other && !taken.has(`${kind}.${other}`)) return other;
  const stem = name.replace(/-?\d+$/, '');
  for (let i = 2; ; i++) if (!taken.has(`${kind}.${stem}-${i}`)) return `${stem}-${i}`;
}
