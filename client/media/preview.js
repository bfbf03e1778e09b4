// The page beside the text: puts the server's drawing and tables in place and keeps what the reader has set.
(() => {
  const editor = acquireVsCodeApi();
  const at = (id) => document.getElementById(id);
  const state = editor.getState() ?? { uri: null, variant: null, zoom: 1, left: 0, top: 0 };
  /** The last answer whose text could be read whole, and the file it belongs to. */
  let good = null;
  let places = {};
  const figure = at('drawing');
  /** Pixels a millimetre that a drawing never goes below: then it is moved instead. */
  const leastScale = 2.4;

  const remember = (change) => editor.setState(Object.assign(state, change));
  const reveal = (range, focus) => range && editor.postMessage({ type: 'reveal', range, focus });

  addEventListener('message', ({ data }) => {
    if (data?.type !== 'section') return;
    if (state.uri !== data.uri) {
      good = null;
      remember({ uri: data.uri, variant: null, left: 0, top: 0 });
      scrollTo(0, 0);
    }
    show(data.answer);
  });

  function show(answer) {
    if (!answer) return showNothing('This file is no hub, or it is closed.');
    const stale = answer.broken !== null && good !== null;
    if (!stale) {
      if (answer.broken === null) good = answer;
      showVariants(answer);
      showDrawing(answer);
      showLoops(answer.loops);
      showList('open', 'unchecked', answer.unchecked, ({ what, missing, range }) =>
        place(`${what} — ${missing} is not written`, range),
      );
      showList('taken', 'assumed', answer.assumed, (text) => text);
      at('title').textContent = answer.title;
      at('description').textContent = answer.description;
      at('words').hidden = answer.description === '';
      remember({ variant: answer.variant });
    }
    at('stale').hidden = !stale;
    at('stale').textContent = stale
      ? `The drawing is of the last text that could be read: ${answer.broken}`
      : '';
    document.body.classList.toggle('stale', stale);
    showList('found', 'findings', answer.findings, ({ gravity, message, range }) => {
      const item = place(message, range);
      const word = document.createElement('strong');
      word.className = gravity;
      word.textContent = `${gravity} `;
      item.prepend(word);
      return item;
    });
  }

  function showNothing(message) {
    for (const id of ['found', 'sums', 'open', 'taken', 'words', 'variants', 'stale']) at(id).hidden = true;
    at('drawing').replaceChildren();
    at('empty').hidden = false;
    at('empty').textContent = message;
  }

  function showVariants({ variants, variant }) {
    at('variants').hidden = variants.length < 2;
    const chooser = at('variant');
    const names = variants.map((name) => name ?? '');
    if (names.join('\n') !== [...chooser.options].map(({ value }) => value).join('\n')) {
      chooser.replaceChildren(...names.map((name) => new Option(name || 'as written', name)));
    }
    chooser.value = variant ?? '';
  }

  function showDrawing({ svg, places: known }) {
    const focused = figure.contains(document.activeElement) ? document.activeElement.dataset?.address : null;
    places = known;
    const drawing = svg ? new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement : null;
    const sound = drawing?.localName === 'svg';
    at('empty').hidden = sound;
    at('empty').textContent = sound ? '' : 'Nothing to draw yet: the stack has no parts of known size.';
    figure.hidden = !sound;
    if (!sound) return figure.replaceChildren();
    figure.replaceChildren(document.importNode(drawing, true));
    for (const part of figure.querySelectorAll('[data-address]')) {
      if (places[part.dataset.address]) part.classList.add('shown-in-text');
    }
    zoom(state.zoom);
    figure.scrollTo(state.left, state.top);
    if (focused)
      figure.querySelector(`[data-address="${CSS.escape(focused)}"]`)?.focus({ preventScroll: true });
  }

  const columns = [
    ['what', 'Loop'],
    ['verdict', 'Verdict'],
    ['mean', 'Mean'],
    ['measured', 'As measured'],
    ['wanted', 'Wanted'],
    ['outside', 'Outside'],
    ['nominal', 'Nominal'],
    ['worst', 'Worst case'],
    ['rss', '±3σ'],
  ];

  function showLoops(loops) {
    at('sums').hidden = loops.length === 0;
    const used = columns.filter(([key]) => loops.some((loop) => loop[key] !== ''));
    const head = row(used.map(([, name]) => cell('th', name, { scope: 'col' })));
    const body = loops.map((loop) => {
      const [first, ...rest] = used;
      const name = cell('th', '', { scope: 'row' });
      name.append(place(loop[first[0]], loop.range));
      const line = row([name, ...rest.map(([key, title]) => figureCell(loop[key], key, title))]);
      if (loop.gravity) line.classList.add(loop.gravity);
      return line;
    });
    const [top, rows] = [document.createElement('thead'), document.createElement('tbody')];
    for (const part of [top, rows]) part.setAttribute('role', 'rowgroup');
    top.append(head);
    rows.append(...body);
    replaceKeepingFocus(at('loops'), [top, rows]);
  }

  function showList(section, list, items, say) {
    at(section).hidden = items.length === 0;
    replaceKeepingFocus(
      at(list),
      items.map((item) => {
        const line = document.createElement('li');
        line.append(say(item));
        return line;
      }),
    );
  }

  /** New content in place of the old; a button that had the focus has it again. */
  function replaceKeepingFocus(parent, children) {
    const buttons = () => [...parent.querySelectorAll('button')];
    const focused = buttons().indexOf(document.activeElement);
    parent.replaceChildren(...children);
    if (focused !== -1) buttons()[focused]?.focus({ preventScroll: true });
  }

  /** Words that lead to their place in the text. */
  function place(text, range) {
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'place';
    button.textContent = text;
    button.addEventListener('click', (event) => reveal(range, event.detail === 0));
    return button;
  }

  function row(cells) {
    const line = document.createElement('tr');
    line.setAttribute('role', 'row'); // Rows of a narrow table are laid out as blocks, which would hide what they are.
    line.append(...cells);
    return line;
  }

  /** In a narrow panel the figures stand below each other, each with its own title. */
  function figureCell(text, key, title) {
    const attributes = { 'data-title': title, class: key };
    return cell('td', text, text === '' ? { ...attributes, 'data-empty': '' } : attributes);
  }

  function cell(kind, text, attributes = {}) {
    const made = document.createElement(kind);
    made.textContent = text;
    made.setAttribute(
      'role',
      kind === 'td' ? 'cell' : attributes.scope === 'col' ? 'columnheader' : 'rowheader',
    );
    for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
    return made;
  }

  function zoom(factor) {
    const drawing = at('drawing').querySelector('svg');
    const [, , width, height] = (drawing?.getAttribute('viewBox') ?? '').split(/[\s,]+/).map(Number);
    if (!drawing || !(0 < width)) return;
    const kept = Math.min(Math.max(factor, 0.5), 8);
    drawing.setAttribute('width', `${kept * Math.max(figure.clientWidth, width * leastScale)}`);
    drawing.removeAttribute('height');
    drawing.setAttribute('preserveAspectRatio', height ? 'xMidYMin meet' : 'none');
    remember({ zoom: kept });
  }

  at('larger').addEventListener('click', () => zoom(state.zoom * 1.25));
  at('smaller').addEventListener('click', () => zoom(state.zoom / 1.25));
  at('fit').addEventListener('click', () => zoom(1));
  at('variant').addEventListener('change', ({ target }) => {
    remember({ variant: target.value || null });
    editor.postMessage({ type: 'variant', variant: target.value || null });
  });

  /** The letters of a drawing are 3.5 mm high: at this many pixels a millimetre they are read with ease. */
  const readable = 2.75;
  /** The sheet is asked for in steps of this many mm, so that dragging the edge does not redraw it all the time. */
  const coarse = 10;
  let asked = null;

  const room = () => Math.floor(at('title').parentElement.clientWidth / readable / coarse) * coarse;

  function askForWidth() {
    zoom(state.zoom);
    const width = room();
    if (width === asked || width <= 0) return;
    asked = width;
    editor.postMessage({ type: 'width', width });
  }

  const step = 60;
  const keys = {
    '+': () => zoom(state.zoom * 1.25),
    '=': () => zoom(state.zoom * 1.25),
    '-': () => zoom(state.zoom / 1.25),
    0: () => zoom(1),
    ArrowLeft: () => figure.scrollBy(-step, 0),
    ArrowRight: () => figure.scrollBy(step, 0),
    ArrowUp: () => figure.scrollBy(0, -step),
    ArrowDown: () => figure.scrollBy(0, step),
    Enter: (part) => reveal(places[part], true),
  };
  figure.addEventListener('keydown', (event) => {
    const act = event.ctrlKey || event.metaKey || event.altKey ? null : keys[event.key];
    if (!act) return;
    event.preventDefault();
    act(event.target.closest?.('[data-address]')?.dataset.address);
  });
  figure.addEventListener('click', ({ target }) => {
    reveal(places[target.closest?.('[data-address]')?.dataset.address], false);
  });
  figure.addEventListener('scroll', () => remember({ left: figure.scrollLeft, top: figure.scrollTop }));

  asked = room();
  const width = 0 < asked ? { width: asked } : {};
  editor.postMessage(
    state.variant === null
      ? { type: 'ready', ...width }
      : { type: 'variant', variant: state.variant, ...width },
  );
  new ResizeObserver(askForWidth).observe(at('title').parentElement);
})();
