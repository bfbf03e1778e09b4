import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { drawSection } from '../../server/drawing/draw-section.ts';
import type { Point, Scene, Shape } from '../../server/drawing/scene.ts';
import { type Box, textBox } from '../../server/drawing/text-width.ts';
import { createWorkspace } from '../../server/workspace/workspace.ts';
import { type HubDrawing, hubOf, hubsIn } from '../support/hub-drawings.ts';

const own = hubsIn(join(import.meta.dirname, 'hubs'));
const samples = hubsIn(join(import.meta.dirname, '../../client/samples'));
const all = [...own, ...samples.map((hub) => ({ ...hub, name: `sample ${hub.name}` }))];
const draw = ({ variant, asWritten, faults }: HubDrawing, standalone = true, width = 281) =>
  drawSection(variant, faults, { standalone, width, asWritten });
const named = (name: string): HubDrawing => {
  const found = own.find((hub) => hub.name === name);
  if (!found) throw new Error(`no hub ${name}`);
  return found;
};

const shapesOf = (scene: Scene): readonly Shape[] => scene.groups.flatMap(({ shapes }) => shapes);
const boxesOf = (scene: Scene): readonly (Box & { readonly what: string })[] =>
  shapesOf(scene).flatMap((shape) => {
    if (shape.kind === 'text') return [{ what: shape.text, ...textBox(shape) }];
    if (shape.kind !== 'badge') return [];
    const { x, y } = shape.centre;
    return [{ what: `number ${shape.number}`, left: x - 2.2, top: y - 2.2, right: x + 2.2, bottom: y + 2.2 }];
  });

test('there are drawings to look at', () => {
  expect(own.length).toBeGreaterThanOrEqual(9);
  expect(samples.length).toBeGreaterThanOrEqual(6);
});

describe.each(all.map((hub) => [hub.name, hub] as const))('%s', (_, hub) => {
  test.each([[true, 281], ...[281, 230, 180, 150, 110].map((width) => [false, width] as const)] as const)(
    'no text lies over another, and every text is on the sheet (standalone %s, %d mm wide)',
    (standalone, sheet) => {
      const { scene } = draw(hub, standalone, sheet);
      const boxes = boxesOf(scene);
      const slack = 0.05;
      for (const [at, a] of boxes.entries()) {
        for (const b of boxes.slice(at + 1)) {
          const apart =
            a.right <= b.left + slack ||
            b.right <= a.left + slack ||
            a.bottom <= b.top + slack ||
            b.bottom <= a.top + slack;
          expect(apart, `"${a.what}" lies over "${b.what}"`).toBe(true);
        }
      }
      const [left, top, width, height] = scene.view;
      for (const box of boxes) {
        expect(box.left, box.what).toBeGreaterThanOrEqual(left);
        expect(box.top, box.what).toBeGreaterThanOrEqual(top);
        expect(box.right, box.what).toBeLessThanOrEqual(left + width);
        expect(box.bottom, box.what).toBeLessThanOrEqual(top + height);
      }
    },
  );

  // ISO 3098: lettering of 2.5 mm and up; capitals stand 0.73 of the font size high (common practice).
  test('capitals are at least 2.5 mm high on an A4 sheet', () => {
    const drawing = draw(hub);
    expect(drawing.scene.view[2]).toBeCloseTo(297, 6);
    for (const shape of shapesOf(drawing.scene)) {
      if (shape.kind === 'text') expect(shape.size * 0.73).toBeGreaterThanOrEqual(2.5);
    }
  });

  test('every dimension stands between two extension lines that reach past it', () => {
    const frames = draw(hub).scene.groups.flatMap(({ dimension }) => (dimension ? [dimension] : []));
    expect(frames.length).toBeGreaterThan(2);
    for (const { from, to, extensions } of frames) {
      const upright = Math.abs(from.x - to.x) < 1e-9;
      const across = (at: Point): number => (upright ? at.y : at.x);
      const along = (at: Point): number => (upright ? at.x : at.y);
      for (const [end, [start, stop]] of [[from, extensions[0]] as const, [to, extensions[1]] as const]) {
        expect(across(start)).toBeCloseTo(across(end), 9);
        expect(across(stop)).toBeCloseTo(across(end), 9);
        const reach = (along(stop) - along(end)) * Math.sign(along(end) - along(start));
        expect(reach).toBeGreaterThan(0);
      }
    }
  });

  test('every cut face is a closed outline, and its hatching ends on that outline', () => {
    const faces = shapesOf(draw(hub).scene).filter((shape) => shape.kind === 'hatch');
    expect(faces.length).toBeGreaterThan(0);
    for (const { area, lines } of faces) {
      expect(area.length).toBeGreaterThanOrEqual(3);
      for (const [from, to] of lines) {
        expect(Math.abs(Math.abs(to.x - from.x) - Math.abs(to.y - from.y))).toBeLessThan(1e-6);
        for (const end of [from, to]) expect(distanceTo(area, end)).toBeLessThan(1e-6);
      }
    }
  });

  test('every part of the stack can be reached with the keyboard and is named', () => {
    const { svg } = draw(hub, false);
    for (const { address } of hub.variant.assembly.line) {
      expect(svg).toMatch(
        new RegExp(`data-address="${address}" tabindex="0" role="img" aria-label="${address}`),
      );
    }
  });

  test('what a page embeds carries no style, no script and no event handler, and is drawn the same each time', () => {
    const { svg } = draw(hub, false);
    expect(svg).not.toMatch(/<style|style=|<script|\son\w+=|javascript:/i);
    expect(draw(hub, false).svg).toBe(svg);
    const geometry = svg.match(/ (?:d|x|y|cx|cy|r|viewBox)="[^"]*"/g)?.join('') ?? '';
    expect(geometry).not.toMatch(/NaN|Infinity|undefined|-0[ "LZM]|\d\.\d{3}/);
  });

  test('its text says every part of the stack, the width and each fault', () => {
    const { description } = draw(hub);
    for (const { address } of hub.variant.assembly.line) expect(description).toContain(address);
    expect(description).toMatch(/Clamped width/);
    for (const { message } of hub.faults) expect(description).toContain(message);
  });

  test('it looks as it did', async () => {
    const file = join(import.meta.dirname, '__snapshots__', `${hub.name.replace(' ', '-')}.svg`);
    if (hub.name.startsWith('sample')) return;
    await expect(draw(hub).svg).toMatchFileSnapshot(file);
  });
});

/** Least distance of a point from the edges of a polygon, mm. */
function distanceTo(area: readonly Point[], at: Point): number {
  return Math.min(
    ...area.map((a, index) => {
      const b = area[(index + 1) % area.length] ?? a;
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const length = dx * dx + dy * dy;
      const share =
        length === 0 ? 0 : Math.min(1, Math.max(0, ((at.x - a.x) * dx + (at.y - a.y) * dy) / length));
      return Math.hypot(at.x - a.x - share * dx, at.y - a.y - share * dy);
    }),
  );
}

// 17 × 26 × 5 is 61803 of ISO 15; the lengths are those written in the file.
test('the section is to scale, the same along the axle and across it', () => {
  const { scene, scale } = draw(named('front-sleeve'));
  const bearing = scene.groups.find(({ kind, address }) => kind === 'part' && address === 'bearing.left');
  const outline = (bearing?.shapes ?? []).flatMap((shape) =>
    shape.kind === 'line' && shape.role === 'outline' ? shape.points : [],
  );
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  expect((Math.max(...xs) - Math.min(...xs)) / 5).toBeCloseTo(scale, 6);
  expect((Math.max(...ys) - Math.min(...ys)) / 26).toBeCloseTo(scale, 6);
  const inner = ys.filter((y) => Math.abs(y) < 8.6 * scale).map(Math.abs);
  expect(Math.min(...inner) / 8.5).toBeCloseTo(scale, 6);
});

test('the chain of lengths ends at the faces of the parts', () => {
  const { scene, scale } = draw(named('front-sleeve'));
  const lengths = [14.03, 5, 62.06, 5, 14.03];
  const chain = scene.groups.filter(
    ({ dimension, address }) =>
      dimension && address?.match(/^(end-cap|bearing|spacer)\./) && dimension.from.y === dimension.to.y,
  );
  const drawn = chain.map(({ dimension }) => (dimension ? dimension.to.x - dimension.from.x : 0));
  expect(drawn).toHaveLength(lengths.length);
  for (const [at, length] of lengths.entries()) expect((drawn[at] ?? 0) / scale).toBeCloseTo(length, 6);
  const width = scene.groups.find(({ address }) => address === 'width')?.dimension;
  expect(((width?.to.x ?? 0) - (width?.from.x ?? 0)) / scale).toBeCloseTo(100.12, 6);
});

test('diameters are drawn across the whole of the part', () => {
  const { scene, scale } = draw(named('front-sleeve'));
  const heights = scene.groups.flatMap(({ dimension }) =>
    dimension && dimension.from.x === dimension.to.x ? [(dimension.to.y - dimension.from.y) / scale] : [],
  );
  for (const diameter of [12.1, 21, 26, 32])
    expect(heights.some((height) => Math.abs(height - diameter) < 1e-6)).toBe(true);
});

// Ring widths are 0/−0.12 (ISO 492, class Normal), so the mean lies 0.12 mm under the nominal of two bearings.
test('the overall width tells nominal, mean and wanted', () => {
  expect(draw(named('front-sleeve')).svg).toContain('100.12, on average 100.00; wanted 100 ±0.1');
});

test('a width off its limits is drawn twice, as it is and as it is wanted, marked and enlarged', () => {
  const drawing = draw(named('front-collar'));
  const number = named('front-collar').faults.findIndex(({ code }) => code === 'width-off') + 1;
  const widths = drawing.scene.groups.filter(({ address }) => address === 'width');
  expect(widths).toHaveLength(2);
  for (const { state, shapes } of widths) {
    expect(state).toBe('fault');
    expect(shapes).toContainEqual(expect.objectContaining({ kind: 'badge', number }));
  }
  expect(drawing.svg).toContain('wanted 100 ±0.15: 0.37 under the lower limit');
  expect(drawing.svg).toMatch(/20:1 along the axle/);
});

test('a bearing that stands proud is marked at its depth, and the overlap is enlarged', () => {
  const { scene, svg } = draw(named('faulty'));
  const depth = scene.groups.find(
    ({ dimension, address }) => dimension && address === 'shell.left' && dimension.from.y === dimension.to.y,
  );
  expect(depth?.state).toBe('warning');
  // Depth 4.2 against a ring of 5 0/−0.12: 0.74 stands out on average.
  expect(svg).toContain('0.74 mm proud');
});

test('a faulty part is outlined as faulty and its label carries the number of the fault', () => {
  const hub = named('faulty');
  const number = hub.faults.findIndex(({ code }) => code === 'bearing-not-decoded') + 1;
  const { scene, marks } = draw(hub);
  const groups = scene.groups.filter(({ address }) => address === 'bearing.right');
  expect(groups.filter(({ state }) => state === 'fault').map(({ kind }) => kind)).toEqual(
    expect.arrayContaining(['part', 'label']),
  );
  expect(marks.find((mark) => mark.number === number)?.addresses).toEqual(['bearing.right']);
});

test('a shim too thin to be seen is drawn wider, and that is said', () => {
  const { missing, svg } = draw(named('front-collar'));
  expect(
    missing.some((text) => /shim\.left is 0\.20 mm thick and drawn wider .*not to scale/.test(text)),
  ).toBe(true);
  expect(svg).toContain('hw-solid');
});

test('a part of unknown length is broken and gets what the width leaves', () => {
  const { missing, scene } = draw(named('stack-only'));
  // 100 − 2 × 14.03 − 2 × 5
  expect(missing).toContain('spacer.centre is drawn 61.94 mm long: what the width of 100 mm leaves');
  const spacer = scene.groups.find(({ kind, address }) => kind === 'part' && address === 'spacer.centre');
  expect(spacer?.shapes.some((shape) => shape.kind === 'line' && shape.role === 'thin')).toBe(true);
});

test('what no dimension gives is dashed and named', () => {
  const { missing, scene } = draw(named('stack-only'));
  const cap = scene.groups.find(({ kind, address }) => kind === 'part' && address === 'end-cap.left');
  expect(cap?.shapes.some((shape) => shape.kind === 'line' && shape.role === 'assumed')).toBe(true);
  expect(missing.some((text) => /^bores? of end/.test(text))).toBe(true);
});

test('names from the file cannot break out of the drawing', () => {
  const { svg } = draw(
    hubOf(
      'hub: "<script>alert(1)</script> & \\"co\\""\nposition: front\nwidth: 100\nstack:\n  - spacer: "a\\"b<c"\n    length: 100\n',
    ),
  );
  expect(svg).not.toContain('<script');
  expect(svg).toContain('&lt;script&gt;alert(1)&lt;/script&gt; &amp; ');
  expect(svg.replace(/<[^<>]*>/g, '')).not.toMatch(/[<>]/);
});

test('odd sizes are drawn without a fault of ours', () => {
  for (const length of ['0', '-5', '0.001', '1e9', '99999999999999', '0.1 ±5']) {
    for (const outside of ['0', '3', '1e7']) {
      const text = `hub: Odd\nposition: front\nwidth: 100\nstack:\n  - end-cap: left\n    length: ${length}\n    face: ${outside}\n  - bearing: left\n    code: 6803\n  - spacer: a\n    length: ${length}\n    inside: 30\n    outside: ${outside}\n`;
      const { svg } = draw(hubOf(text));
      expect(svg).not.toMatch(/NaN|Infinity/);
      expect(svg.length).toBeLessThan(400_000);
    }
  }
});

test('a hub of two hundred parts is drawn within a moment', () => {
  const parts = Array.from(
    { length: 200 },
    (_, at) => `  - spacer: s${at}\n    length: 0.5\n    inside: 17\n    outside: 20\n`,
  );
  const hub = hubOf(`hub: Long\nposition: front\nwidth: 100\nstack:\n${parts.join('')}`);
  const start = performance.now();
  const { scene } = draw(hub);
  expect(performance.now() - start).toBeLessThan(30_000);
  expect(scene.groups.filter(({ kind }) => kind === 'part')).toHaveLength(200);
});

test('a file broken off anywhere is still drawn, or has nothing to draw', () => {
  const text = readFileSync(join(import.meta.dirname, 'hubs/rear-freehub.hub.yaml'), 'utf8');
  for (let end = 40; end < text.length; end += 41) {
    const workspace = createWorkspace();
    workspace.setFile('/spec/cut.hub.yaml', text.slice(0, end));
    const snapshot = workspace.snapshot('/spec/cut.hub.yaml');
    for (const variant of snapshot?.analysis.variants ?? []) {
      const { svg } = drawSection(variant, snapshot?.findings.findings ?? [], { standalone: true });
      expect(svg).toMatch(/<\/svg>\n$/);
      expect(svg).not.toMatch(/NaN|Infinity/);
    }
  }
});
