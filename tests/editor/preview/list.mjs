// What a section beside the text has to pass, whatever hub and theme. Each point is looked for by a function that runs
// inside the page and gives what is wrong, a sentence each; the pictures in artifacts are for the eye.
//   1. Nothing overlaps: no two texts of the drawing, nothing beyond the edge of the panel.
//   2. Cut faces are hatched, in every part but the balls.
//   3. Every dimension can be read: on the screen letters of 9 px at least; on A4 capitals of 2.5 mm (ISO 3098-1).
//   4. A fault is marked where it is, and has the number it has in the list below; a sound hub has no mark.
//   5. The table fits the panel: no figure is cut off, in a narrow panel neither.
//   6. Colours are those of the theme; text has a contrast of 4.5 to its ground, lines 3 (WCAG 2.2, 1.4.3 and 1.4.11).
//   7. Everything works from the keyboard, in the order it is read, and what has the focus shows it.
//   8. A screen reader has names, headings, a table, and the drawing in words.
//   9. Nothing foreign runs or loads: a policy that allows nothing, no style and no script inside the page's elements.
// Points 4 and 7 need a hub and a hand: they are in the scenario.

/** Gives all that is wrong with the page, with the number of its point. */
export const problemsOf = async (preview) => {
  const body = preview.locator('body');
  const problems = [];
  for (const [point, look] of Object.entries(points)) {
    for (const problem of await body.evaluate(look)) problems.push(`${point}. ${problem}`);
  }
  return problems;
};

const points = {
  1: function nothingOverlaps(body) {
    const problems = [];
    const texts = [...body.querySelectorAll('svg text')].map((text) => [
      text.textContent,
      text.getBoundingClientRect(),
    ]);
    if (texts.length < 10) problems.push(`only ${texts.length} texts in the drawing`);
    // A box holds the room above and below the letters too, a fifth of its height on either side.
    const letters = ({ left, right, top, bottom }) => {
      const upright = right - left < bottom - top;
      const [dx, dy] = upright ? [(right - left) / 5, 0.5] : [0.5, (bottom - top) / 5];
      return { left: left + dx, right: right - dx, top: top + dy, bottom: bottom - dy };
    };
    for (const [index, [name, box]] of texts.entries()) {
      for (const [other, otherBox] of texts.slice(index + 1)) {
        const [a, b] = [letters(box), letters(otherBox)];
        if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
          problems.push(`"${name}" lies over "${other}"`);
      }
    }
    const { scrollWidth, clientWidth } = document.documentElement;
    if (clientWidth < scrollWidth) problems.push(`the page is ${scrollWidth} px wide in ${clientWidth}`);
    return problems;
  },
  2: function cutFacesAreHatched(body) {
    const parts = [...body.querySelectorAll('.hw-part')];
    if (parts.length < 5) return [`only ${parts.length} parts`];
    return parts
      .filter((part) => !/\bM/.test(part.querySelector('.hw-hatch')?.getAttribute('d') ?? ''))
      .map((part) => `${part.dataset.address} is not hatched`);
  },
  3: function lettersAreLargeEnough(body) {
    return [...body.querySelectorAll('svg text')].flatMap((text) => {
      const size = Number.parseFloat(getComputedStyle(text).fontSize) * text.getScreenCTM().a;
      const turned = Math.abs(text.getScreenCTM().b) * Number.parseFloat(getComputedStyle(text).fontSize);
      const px = Math.max(size, turned);
      return px < 9 ? [`"${text.textContent}" is ${px.toFixed(1)} px high`] : [];
    });
  },
  5: function tableFits(body) {
    // In a narrow panel the row of titles is there for ears only.
    const spoken = body.querySelector('#loops thead').clientHeight <= 1 ? 'tbody ' : '';
    const cells = [...body.querySelectorAll(`#loops ${spoken}:is(th, td)`)].filter((cell) =>
      cell.checkVisibility(),
    );
    if (cells.length < 6) return [`only ${cells.length} cells in the table`];
    return cells
      .filter(
        (cell) =>
          window.innerWidth < cell.getBoundingClientRect().right || cell.clientWidth < cell.scrollWidth,
      )
      .map((cell) => `"${cell.textContent}" is cut off`);
  },
  6: function contrastIsEnough(body) {
    const canvas = document.createElement('canvas');
    canvas.width = canvas.height = 1;
    const pen = canvas.getContext('2d', { willReadFrequently: true });
    /** Paints the colours over each other and gives the luminance of the result. */
    const luminance = (...layers) => {
      pen.clearRect(0, 0, 1, 1);
      for (const [colour, opacity] of layers) {
        pen.globalAlpha = opacity;
        pen.fillStyle = colour;
        pen.fillRect(0, 0, 1, 1);
      }
      const [r, g, b] = [...pen.getImageData(0, 0, 1, 1).data].map((value) => {
        const share = value / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const ancestors = (element) => (element ? [...ancestors(element.parentElement), element] : []);
    const contrast = (element, property) => {
      const chain = ancestors(element);
      const ground = chain
        .filter((item) => item.closest('svg') === null || item.localName === 'svg')
        .map((item) => [getComputedStyle(item).backgroundColor, 1]);
      const opacity = chain.reduce((share, item) => share * Number(getComputedStyle(item).opacity), 1);
      const ink = [getComputedStyle(element)[property], opacity];
      const [a, b] = [luminance(...ground), luminance(...ground, ink)];
      return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    };
    const problems = new Set();
    const want = (element, property, least, name) => {
      const found = contrast(element, property);
      if (found < least) problems.add(`${name} has a contrast of ${found.toFixed(2)}, wanted ${least}`);
    };
    for (const text of body.querySelectorAll('svg text')) want(text, 'fill', 4.5, `"${text.textContent}"`);
    for (const line of body.querySelectorAll('svg .hw-outline, svg .hw-dimension, svg .hw-hatch'))
      want(
        line,
        'stroke',
        3,
        `${line.getAttribute('class')} of ${line.parentElement.dataset.address ?? 'the drawing'}`,
      );
    const written = document.createTreeWalker(body, NodeFilter.SHOW_TEXT, (node) =>
      node.textContent.trim() !== '' && node.parentElement.closest('svg, script') === null
        ? NodeFilter.FILTER_ACCEPT
        : NodeFilter.FILTER_SKIP,
    );
    while (written.nextNode()) {
      const { parentElement, textContent } = written.currentNode;
      if (parentElement.checkVisibility())
        want(parentElement, 'color', 4.5, `"${textContent.trim().slice(0, 40)}"`);
    }
    const theme = getComputedStyle(document.documentElement)
      .getPropertyValue('--vscode-editor-background')
      .trim();
    const [ground, wanted] = [luminance([getComputedStyle(body).backgroundColor, 1]), luminance([theme, 1])];
    if (0.01 < Math.abs(ground - wanted)) problems.add('the ground is not that of the editor');
    return [...problems];
  },
  8: function isSpoken(body) {
    const problems = [];
    const drawing = body.querySelector('svg');
    const said = (attribute) => document.getElementById(drawing.getAttribute(attribute))?.textContent ?? '';
    if (said('aria-labelledby').length < 5) problems.push('the drawing has no name');
    if (!/From left to right:.*Clamped width/s.test(said('aria-describedby')))
      problems.push(`the drawing is told as "${said('aria-describedby')}"`);
    for (const item of body.querySelectorAll('button, select, input, [tabindex]')) {
      const name =
        item.getAttribute('aria-label') ?? (item.textContent.trim() || (item.labels?.[0]?.textContent ?? ''));
      if (item.checkVisibility() && name.trim() === '')
        problems.push(`${item.outerHTML.slice(0, 80)} has no name`);
    }
    for (const section of body.querySelectorAll('section')) {
      if (!document.getElementById(section.getAttribute('aria-labelledby')))
        problems.push(`${section.id} has no title`);
    }
    const table = body.querySelector('#loops');
    const heads = [...table.querySelectorAll('[role=columnheader]')].map(({ textContent }) => textContent);
    for (const row of table.querySelectorAll('tbody [role=row]')) {
      if (row.children.length !== heads.length || row.children[0].getAttribute('role') !== 'rowheader')
        problems.push(`a row of the table has ${row.children.length} cells under ${heads.length} titles`);
    }
    return problems;
  },
  9: function nothingForeign(body) {
    const problems = [];
    const policy =
      document.querySelector('meta[http-equiv="Content-Security-Policy"]')?.getAttribute('content') ?? '';
    if (!/default-src 'none'/.test(policy) || /unsafe|\*;|https?:\s/.test(policy))
      problems.push(`the policy is "${policy}"`);
    for (const item of body.querySelectorAll('*')) {
      // Taking a picture leaves an empty style on an input whose caret it hid.
      const odd = [...item.attributes].filter(
        ({ name, value }) => (name === 'style' && value !== '') || name.startsWith('on'),
      );
      if (odd.length > 0 || item.localName === 'style')
        problems.push(
          `${item.outerHTML.slice(0, 80)} carries ${odd.map(({ name, value }) => `${name}="${value}"`)}`,
        );
      if (item.localName === 'script' && (item.nonce === '' || item.textContent.trim() !== ''))
        problems.push('a script stands in the page');
    }
    return problems;
  },
};
