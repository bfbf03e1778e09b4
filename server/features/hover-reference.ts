import { plain } from '../engine/base/figures.ts';
import type { SpecPath } from '../spec/place.ts';
import { nameOf } from '../workspace/location.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { code, escaped, paragraphs } from './markdown.ts';
import { samePath } from './section-at.ts';

/** What an address, a seat or a file points at; null where it points at nothing. */
export function referenceWords(snapshot: Snapshot, path: SpecPath, written: string): string | null {
  return fileWords(snapshot, path) ?? partWords(snapshot, written) ?? seatWords(snapshot, written);
}

function fileWords({ analysis }: Snapshot, path: SpecPath): string | null {
  const reference = analysis.surroundings.references.find((other) => samePath(other.path, path));
  if (reference?.state.kind !== 'found') return null;
  const { document, file } = reference.state;
  const { hub, width, position } = document.hub?.values ?? {};
  const detail = [position?.value, width && `width ${width.value.written}`].filter(Boolean).join(', ');
  return paragraphs(`**${escaped(hub?.value ?? nameOf(file))}**`, escaped(detail));
}

function partWords({ document, analysis }: Snapshot, address: string): string | null {
  const part = document.hub?.stack.find((other) => other.address === address);
  if (!part) return null;
  const line = analysis.variants[0]?.assembly.line.find((other) => other.address === address);
  const { length, code: written } = part.values;
  const size = line?.bearing?.bearing;
  const at = line?.at;
  return paragraphs(
    `**${escaped(address)}**${part.kind === 'bearing' ? '' : `, length ${escaped(length?.value.written ?? 'not written')}`}`,
    written && code(written.value),
    size && `${plain(size.bore)} × ${plain(size.outside)} × ${plain(size.width)} mm`,
    at && `lies from ${at.left.toFixed(2)} to ${at.right.toFixed(2)} mm from the left dropout face`,
  );
}

function seatWords({ analysis }: Snapshot, address: string): string | null {
  const assembly = analysis.variants[0]?.assembly;
  const seats = [assembly?.shell, assembly?.freehub].flatMap((housing) => housing?.seats ?? []);
  const filled = seats.find((seat) => seat.address === address);
  if (!filled) return null;
  const { bore, depth } = filled.seat.values;
  const from = `pressed in from the ${filled.from}${filled.fromAssumed ? ' (assumed: the nearer side)' : ''}`;
  const bearings = filled.bearings.map((bearing) => bearing.address);
  return paragraphs(
    `**${escaped(address)}**, ${[
      bore && `bore ${bore.value.written}`,
      depth && `depth ${depth.value.written}`,
      from,
    ]
      .filter(Boolean)
      .map((text) => escaped(String(text)))
      .join(', ')}`,
    bearings.length > 0 ? `holds ${bearings.map(escaped).join(', ')}` : 'holds no bearing',
  );
}
