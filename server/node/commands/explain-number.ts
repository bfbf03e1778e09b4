import { trace, tracedAddresses } from '../../analysis/trace/trace.ts';
import { traceLife } from '../../analysis/trace/trace-life.ts';
import { jsonText } from '../../report/json-text.ts';
import { traceJson } from '../../report/trace/trace-json.ts';
import { traceText } from '../../report/trace/trace-text.ts';
import { nearestOf } from '../../spec/nearest.ts';
import { messageLines, misused } from '../failures.ts';
import type { Given, Outcome } from '../outcome.ts';
import { readOneHub } from '../read-one-hub.ts';

/** `explain FILE ADDRESS`: the chain of numbers at an address; without one, the addresses there are. */
export function explainNumber(
  path: string,
  address: string | undefined,
  { options, json }: Given,
  cwd: string,
): Outcome {
  const read = readOneHub(path, cwd);
  if ('message' in read) return misused(read.message, json, { file: path, steps: [] });
  const name = options.get('variant') ?? null;
  const { variants } = read.snapshot.analysis;
  const variant = variants.find((other) => other.name === name);
  if (!variant) {
    const known = variants.flatMap((other) => other.name ?? []);
    const message =
      name === null
        ? `${path}: no hub could be read`
        : `${path} has no variant ${name}; ${known.length > 0 ? `its variants are ${known.join(', ')}` : 'it has no variants'}`;
    return misused(message, json, { file: path, steps: [] });
  }
  const { workshop } = read.snapshot.analysis;
  const lives = traceLife(variant, workshop, 'drawn') ? ['life'] : [];
  const addresses = [...tracedAddresses(variant), ...lives];
  const list =
    addresses.length > 0
      ? `numbers are worked out for ${addresses.join(', ')}`
      : 'no number is worked out in this hub yet';
  if (address === undefined)
    return misused(`explain ${path} wants an address; ${list}`, json, { file: path, steps: [] });
  const how = options.has('measured') ? 'built' : 'drawn';
  const mostPlay = read.snapshot.analysis.limits.value('play-clamped');
  const steps =
    address === 'life' ? traceLife(variant, workshop, how) : trace(variant, address, how, mostPlay);
  if (!steps) {
    const near = nearestOf(address, addresses);
    const message = `no number is worked out for ${address}${near === null ? `; ${list}` : `; nearest is ${near}`}`;
    return misused(message, json, {
      file: path,
      address,
      steps: [],
      didYouMean: near === null ? [] : [near],
    });
  }
  const hub = variant.assembly.hub.values.hub?.value ?? path;
  const title = `${address} of ${hub}${name === null ? '' : `, variant ${name}`}${how === 'built' ? ', as measured' : ''}, at 20 °C and on average`;
  const out = json
    ? jsonText({ file: path, variant: name, address, steps: traceJson(steps) })
    : traceText(title, steps);
  return { exit: 0, out, err: messageLines(read.hint === null ? [] : [read.hint]) };
}
