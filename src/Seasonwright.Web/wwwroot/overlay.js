// What the script draws over the chart: the cursor, the stroke that runs, and ghosts of what is on its way.

export class Overlay {
  #group;

  constructor(group) { this.#group = group; }

  add(name, attributes, className) {
    const element = document.createElementNS('http://www.w3.org/2000/svg', name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    element.setAttribute('class', className);
    this.#group.append(element);
    return element;
  }

  /** Behind everything else that is drawn here. */
  addBehind(name, attributes, className) { this.#group.prepend(this.add(name, attributes, className)); }

  say(at, words) { this.add('text', { x: at.x + 12, y: at.y - 8, 'font-size': 12, 'font-weight': 600 }, 'ghost aim says').textContent = words; }

  clear(selector) { this.#group.querySelectorAll(selector).forEach(mark => mark.remove()); }

  /** What was aimed at stays as a ghost until the page shows it; words go. */
  keepAim() {
    this.clear('text.aim');
    this.#group.querySelectorAll('.aim').forEach(mark => mark.classList.remove('aim'));
  }
}

/** The smallest box around cells. */
export const boxOf = run => {
  const x = Math.min(...run.map(cell => cell.x)), y = Math.min(...run.map(cell => cell.y));
  return { x, y, width: Math.max(...run.map(cell => cell.x + cell.width)) - x, height: Math.max(...run.map(cell => cell.y + cell.height)) - y };
};
