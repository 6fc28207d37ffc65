// The cells of the drawing, in its own coordinates: which one lies under the pointer, and which one is next to another.

export class Cells {
  #svg; #list = null; #weeks = null; #rows = new WeakMap();

  // Only rows that are painted anew are read again.
  constructor(svg) {
    this.#svg = svg;
    new MutationObserver(changes => {
      for (const { target } of changes) this.#rows.delete(target.closest('[data-top]'));
      this.#list = this.#weeks = null;
    }).observe(svg, { childList: true, subtree: true, attributes: true, attributeFilter: ['data-top', 'x', 'y', 'width', 'height'] });
  }

  get all() { return this.#list ??= [...this.#svg.querySelectorAll('[data-top]')].flatMap(row => this.#row(row)); }

  /** First and last week in sight. */
  get weeksSeen() { return this.#weeks ??= this.all.reduce(([first, last], { week }) => [Math.min(first, week), Math.max(last, week)], [Infinity, -Infinity]); }

  #row(row) {
    const known = this.#rows.get(row);
    if (known) return known;
    const top = Number(row.dataset.top);
    const cells = [...row.querySelectorAll('rect.cell')].map(rect => {
      const number = name => Number(rect.getAttribute(name));
      return { id: rect.id, track: rect.closest('g.track').dataset.track, week: Number(rect.dataset.week), day: rect.dataset.date ?? null,
        top, x: number('x'), y: number('y') + top, width: number('width'), height: number('height'), label: rect.getAttribute('aria-label') };
    });
    this.#rows.set(row, cells);
    return cells;
  }

  /** The cell of a track at a day or week, or the nearest to it in sight. */
  find(track, week, day) {
    const row = this.all.filter(cell => cell.track === track);
    return row.find(cell => cell.day === day && (day || cell.week === week))
      ?? row.reduce((best, cell) => !best || Math.abs(cell.week - week) < Math.abs(best.week - week) ? cell : best, null);
  }

  /** The place of a pointer event in the drawing. */
  place(event) {
    const box = this.#svg.getBoundingClientRect();
    const view = this.#svg.viewBox.baseVal;
    return { x: (event.clientX - box.left) * view.width / box.width, y: (event.clientY - box.top) * view.height / box.height };
  }

  at({ x, y }) { return this.all.find(cell => cell.x <= x && x < cell.x + cell.width && cell.y <= y && y < cell.y + cell.height) ?? null; }

  /** The cell of a track nearest to a place: while a stroke runs, the pointer may leave the track. */
  nearest(track, { x, y }) {
    const off = (low, size, at) => Math.max(low - at, 0, at - low - size);
    let best = null, least = Infinity;
    for (const cell of this.all) {
      if (cell.track !== track) continue;
      const distance = off(cell.x, cell.width, x) * 1000 + off(cell.y, cell.height, y);
      if (distance < least) { least = distance; best = cell; }
    }
    return best;
  }

  /** The next cell in a direction: along the row by time, across rows at the same time. */
  next(from, dx, dy) {
    const middle = from.x + from.width / 2;
    let best = null, least = Infinity;
    for (const cell of this.all) {
      const along = dx !== 0 && cell.track === from.track && Math.abs(cell.y - from.y) < 1 && Math.sign(cell.x - from.x) === dx;
      const across = dy !== 0 && Math.sign(cell.y - from.y) === dy && Math.abs(cell.y - from.y) >= 1;
      if (!along && !across) continue;
      const aside = Math.max(cell.x - middle, 0, middle - cell.x - cell.width);
      const distance = along ? Math.abs(cell.x - from.x) : Math.abs(cell.y - from.y) + aside * 0.001;
      if (distance < least) { least = distance; best = cell; }
    }
    return best;
  }

  /** All cells of a run, in order of time. */
  run(from, to) {
    const row = this.all.filter(cell => cell.track === from.track);
    if (from.day && to.day) {
      const [first, last] = [from.day, to.day].sort();
      return row.filter(cell => first <= cell.day && cell.day <= last);
    }
    const [first, last] = [Math.min(from.week, to.week), Math.max(from.week, to.week)];
    return row.filter(cell => first <= cell.week && cell.week <= last);
  }
}
