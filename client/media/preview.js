// The page beside the text: puts the server's drawing and tables in place and keeps what the reader has set.
(() => {
  const editor = acquireVsCodeApi();
  const at = (id) => document.getElementById(id);
  const bench = { temperature: 20, clamp: null };
  const fresh = { uri: null, variant: null, zoom: 1, left: 0, top: 0, ...bench };
  const state = Object.assign(fresh, editor.getState());
  /** The last answer whose text could be read whole, and the file it belongs to. */
  let good = null;
  let places = {};
  const figure = at('drawing');
  /** Pixels a millimetre that a drawing never goes below: then it is moved instead. */
  const leastScale = 2.4;

  const remember = (change) => editor.setState(Object.assign(state, change));
  const reveal = (range, focus) => range && editor.postMessage({ type: 'reveal', range, focus });

  addEventListener('message', ({ data }) => {
    if (data?.type === 'builds' && data.uri === state.uri) showBuilds(data.answer?.pairs ?? []);
    if (data?.type !== 'section') return;
    if (state.uri !== data.uri) {
      good = null;
      remember({ uri: data.uri, variant: null, left: 0, top: 0, ...bench });
      showBuilds([]);
      scrollTo(0, 0);
    }
    show(data.answer);
  });

  function show(answer) {
    if (!answer) return showNothing('This file is neither hub nor wheel, or it is closed.');
    const stale = answer.broken !== null && good !== null;
    if (!stale) {
      if (answer.broken === null) good = answer;
      showVariants(answer);
      showDrawing(answer);
      showLoops(answer.loops);
      showFelt(answer);
      showTables(answer.tables ?? []);
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
    for (const id of ['found', 'felt', 'more', 'sums', 'open', 'taken', 'words', 'variants', 'stale'])
      at(id).hidden = true;
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
    at('empty').textContent = sound ? '' : 'Nothing to draw yet: too few sizes are known.';
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
    const used = columns.filter(([key]) => loops.some((loop) => loop[key] !== ''));
    showTable('sums', 'loops', {
      titles: used.map(([, title]) => title),
      rows: loops.map((loop) => ({ ...loop, cells: used.map(([key]) => loop[key]) })),
    });
  }

  function showTable(section, table, { titles, rows }) {
    at(section).hidden = rows.length === 0;
    const head = row(titles.map((name) => cell('th', name, { scope: 'col' })));
    const body = rows.map(({ cells, gravity, range }) => {
      const [first, ...rest] = cells;
      const name = cell('th', '', { scope: 'row' });
      name.append(place(first, range));
      const line = row([name, ...rest.map((text, index) => figureCell(text, titles[index + 1]))]);
      if (gravity) line.classList.add(gravity);
      return line;
    });
    const [top, lines] = [document.createElement('thead'), document.createElement('tbody')];
    for (const part of [top, lines]) part.setAttribute('role', 'rowgroup');
    top.append(head);
    lines.append(...body);
    replaceKeepingFocus(at(table), [top, lines]);
  }

  /** Tables that only some files have; each is made with its title. */
  function showTables(tables) {
    const parts = tables.map(({ title }, index) => {
      const heading = document.createElement('h2');
      heading.id = `more-title-${index}`;
      heading.textContent = title;
      const part = document.createElement('div');
      part.id = `more-part-${index}`;
      const table = document.createElement('table');
      table.id = `more-table-${index}`;
      table.setAttribute('role', 'table');
      table.setAttribute('aria-labelledby', heading.id);
      part.append(heading, table);
      return part;
    });
    const known = at('more').childElementCount === tables.length;
    if (!known) at('more').replaceChildren(...parts);
    at('more').hidden = tables.length === 0;
    for (const [index, table] of tables.entries()) {
      at(`more-title-${index}`).textContent = table.title;
      showTable(`more-part-${index}`, `more-table-${index}`, table);
    }
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
  function figureCell(text, title) {
    const attributes = { 'data-title': title, ...(title === 'Verdict' ? { class: 'verdict' } : {}) };
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
    figure.classList.toggle('larger', 1 < kept);
    remember({ zoom: kept });
  }

  /** Play and load: the tables, and the two conditions they stand under. */
  let writtenClamp = null;

  function showFelt({ pairs, bearings, conditions }) {
    writtenClamp = conditions.writtenClamp;
    showTable('pairs-part', 'pairs', pairs);
    showTable('bearings-part', 'bearings', bearings);
    at('felt').hidden = bearings.rows.length === 0;
    showConditions();
  }

  function showConditions() {
    const { temperature, clamp } = state;
    const force = clamp ?? writtenClamp;
    setRange('temperature', temperature, `${temperature} °C`.replace('-', '−'));
    const said = force === null ? 'none written' : `${(force / 1000).toFixed(1)} kN`;
    setRange('clamp', force ?? 0, clamp === null && force !== null ? `${said}, as written` : said);
    at('as-written').disabled = clamp === null && temperature === bench.temperature;
  }

  function setRange(id, value, said) {
    at(id).value = String(value);
    at(id).setAttribute('aria-valuetext', said);
    at(`${id}-said`).textContent = said;
  }

  function setConditions(change) {
    remember(change);
    showConditions();
    editor.postMessage({ type: 'conditions', conditions: conditions() });
  }

  const conditions = () => ({ temperature: state.temperature, clampForce: state.clamp });

  /** Pictures of the spread come later than the drawing; those there are stay until then. */
  function showBuilds(pairs) {
    const figures = pairs.map(({ what, svg, words }) => {
      const made = document.createElement('figure');
      const caption = document.createElement('figcaption');
      caption.textContent = words;
      const picture = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
      const heading = document.createElement('h3');
      heading.textContent = `Play of ${what}, clamped`;
      made.append(
        heading,
        ...(picture.localName === 'svg' ? [document.importNode(picture, true)] : []),
        caption,
      );
      return made;
    });
    at('builds').hidden = figures.length === 0;
    at('builds').replaceChildren(...figures);
  }

  at('temperature').addEventListener('input', ({ target }) =>
    setConditions({ temperature: Number(target.value) }),
  );
  at('clamp').addEventListener('input', ({ target }) => setConditions({ clamp: Number(target.value) }));
  at('as-written').addEventListener('click', () => {
    setConditions(bench);
    at('temperature').focus(); // The button is of no use now, and the focus must not be lost with it.
  });

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
  const known = { ...(0 < asked ? { width: asked } : {}), conditions: conditions() };
  editor.postMessage(
    state.variant === null
      ? { type: 'ready', ...known }
      : { type: 'variant', variant: state.variant, ...known },
  );
  new ResizeObserver(askForWidth).observe(at('title').parentElement);
})();
