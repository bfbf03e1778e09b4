import { expect, test } from 'vitest';
import { allocate } from '../../../server/engine/stack/allocate.ts';
import { closeLoop, type Term } from '../../../server/engine/stack/loop.ts';
import { recordsOf } from '../../support/reference-rows.ts';

interface StackExample {
  readonly id: string;
  readonly source: string;
  readonly provenance: string;
  readonly inputs: {
    readonly terms?: readonly {
      readonly sign: 1 | -1;
      readonly nominal: number;
      readonly plus: number;
      readonly minus: number;
    }[];
    readonly T?: number;
    readonly fixed?: readonly number[];
    readonly free?: readonly number[];
    readonly a?: number;
    readonly c?: number;
    readonly e?: number;
    readonly ta?: number;
    readonly tc?: number;
    readonly te?: number;
  };
  readonly expected: Readonly<Record<string, number>>;
  readonly tolerance: { readonly abs: number };
}

const examples = recordsOf<StackExample>('worked/fits-and-stacks.json');

function example(id: string): StackExample {
  const found = examples.find((candidate) => candidate.id === id);
  if (!found) throw new Error(`no worked example ${id}`);
  return found;
}

function termsOf({ inputs }: StackExample): Term[] {
  return (inputs.terms ?? []).map(({ sign, nominal, plus, minus }, index) => {
    return { id: String(index), sign, count: 1, nominal, lower: -minus, upper: plus };
  });
}

test.each(['tol-01', 'tol-03'])('the stack of %s closes as its source prints it', (id) => {
  const { expected, tolerance } = example(id);
  const result = closeLoop(termsOf(example(id)));
  const near = (value: number, wanted: number | undefined): void => {
    if (wanted !== undefined) expect(Math.abs(value - wanted)).toBeLessThanOrEqual(tolerance.abs);
  };
  expect(expected.mid).toBeDefined();
  near(result.mean, expected.mid);
  near((result.worst[1] - result.worst[0]) / 2, expected.wc);
  near((result.rss[1] - result.rss[0]) / 2, expected.rss);
  near(result.nominal, expected.nominal);
  near(result.worst[0], expected.min);
  near(result.worst[1], expected.max);
});

test('the allocation of tol-02 scales the free tolerances as its source prints it', () => {
  const { inputs, expected, tolerance } = example('tol-02');
  const allotments = [
    ...(inputs.fixed ?? []).map((halfTolerance, i) => ({ id: `fixed-${i}`, halfTolerance, fixed: true })),
    ...(inputs.free ?? []).map((halfTolerance, i) => ({ id: `free-${i}`, halfTolerance, fixed: false })),
  ];
  const result = allocate(allotments, inputs.T ?? 0, 'worst');
  expect(Math.abs((result?.factor ?? 0) - (expected.P_wc ?? 0))).toBeLessThanOrEqual(tolerance.abs);
});

test('the clutch angle of tol-04, made linear, has the bands its source prints', () => {
  // φ = acos((a + c)/(e − c)); each term of the loop is a sensitivity times its tolerance, in degrees.
  const { inputs, expected, tolerance } = example('tol-04');
  const { a = 0, c = 0, e = 0, ta = 0, tc = 0, te = 0 } = inputs;
  const degrees = 180 / Math.PI;
  const cosine = (a + c) / (e - c);
  const slope = -1 / Math.sqrt(1 - cosine ** 2);
  const sensitivities = [
    (slope * ta) / (e - c),
    (slope * tc * (e + a)) / (e - c) ** 2,
    (-slope * te * (a + c)) / (e - c) ** 2,
  ];
  const terms = sensitivities.map((value, index): Term => {
    const half = Math.abs(value) * degrees;
    return { id: String(index), sign: value < 0 ? -1 : 1, count: 1, nominal: 0, lower: -half, upper: half };
  });
  const angle: Term = {
    id: 'φ',
    sign: 1,
    count: 1,
    nominal: Math.acos(cosine) * degrees,
    lower: 0,
    upper: 0,
  };
  const { mean, worst, rss } = closeLoop([angle, ...terms]);
  expect(Math.abs(mean - (expected.phi ?? 0))).toBeLessThanOrEqual(tolerance.abs);
  expect(Math.abs(worst[1] - mean - (expected.wc ?? 0))).toBeLessThanOrEqual(tolerance.abs);
  expect(Math.abs(rss[1] - mean - (expected.rss ?? 0))).toBeLessThanOrEqual(tolerance.abs);
});
