// Keeps what is tapped at a board: first in this browser, then at the workspace, whenever it answers. A mark sent twice is kept once.

import { newId } from './gestures.js';

const begins = 'seasonwright.board.', lastEnding = '.last';

const asGuid = id => id.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');

export class BoardKeep {
  #address; #key; #waiting; #told; #sending = false; #pause = 500; #wake = null;

  /** @param told hears { waiting, isCutOff, trouble } and, where the workspace has the marks, { marks, floor }. */
  constructor(address, told) {
    this.#address = address;
    this.#key = `${begins}${address}`;
    this.#waiting = JSON.parse(localStorage.getItem(this.#key) ?? '[]');
    this.#told = told;
    addEventListener('online', () => this.send());
    setInterval(() => { if (!document.hidden) this.send(); }, 5000);
  }

  get waiting() { return this.#waiting; }

  /** What the workspace answered last, { marks, floor }: the sheet that opens without a connection is older. */
  get last() { return JSON.parse(localStorage.getItem(`${this.#key}${lastEnding}`) ?? 'null'); }

  /** Puts ids and the time on marks and keeps them. */
  add(marks) {
    const at = new Date().toISOString();
    const made = marks.map(mark => ({ ...mark, id: asGuid(newId()), at }));
    this.#waiting.push(...made);
    this.#save();
    this.send();
    return made;
  }

  #save() {
    if (this.#waiting.length) localStorage.setItem(this.#key, JSON.stringify(this.#waiting));
    else localStorage.removeItem(this.#key);
  }

  /** Sends what waits and hears what others tapped; after a failure it goes on by itself. */
  async send() {
    this.#wake?.();
    if (this.#sending) return;
    this.#sending = true;
    do {
      const batch = this.#waiting.slice(0, 500);
      let answer = null;
      try {
        const response = await fetch(`${this.#address}/marks`, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(batch) });
        answer = response.headers.get('Content-Type')?.includes('json') ? await response.json() : null;
      } catch { /* cut off */ }
      if (answer?.marks) {
        const sent = new Set(batch.map(mark => mark.id));
        this.#waiting = this.#waiting.filter(mark => !sent.has(mark.id));
        this.#save();
        localStorage.setItem(`${this.#key}${lastEnding}`, JSON.stringify({ marks: answer.marks, floor: answer.floor }));
        this.#pause = 500;
        this.#told({ waiting: this.#waiting.length, isCutOff: false, ...answer });
      } else {
        this.#told({ waiting: this.#waiting.length, isCutOff: true, trouble: answer?.trouble });
        if (!this.#waiting.length) break;
        await new Promise(wake => { this.#wake = wake; setTimeout(wake, this.#pause); });
        this.#wake = null;
        this.#pause = Math.min(this.#pause * 2, 8000);
      }
    } while (this.#waiting.length);
    this.#sending = false;
  }
}

/** Keeps the page itself, so that it opens without a connection; what boards of other sessions left behind goes. */
export async function keepPage(address) {
  if (!('serviceWorker' in navigator)) return;
  await navigator.serviceWorker.register('/board-worker.js', { scope: '/board/' });
  await navigator.serviceWorker.ready;
  const own = [location.href, `${address}/sheet.json`, ...performance.getEntriesByType('resource').map(entry => entry.name)].filter(url => new URL(url, location.href).origin === location.origin);
  for (const key of Object.keys(localStorage)) if (key.startsWith(begins) && key.endsWith(lastEnding) && !key.includes(address)) localStorage.removeItem(key);
  for (const name of await caches.keys()) {
    const kept = await caches.open(name);
    for (const request of await kept.keys()) if (new URL(request.url).pathname.startsWith('/board/') && !request.url.includes(address)) await kept.delete(request);
  }
  await Promise.all([...new Set(own)].map(url => fetch(url).catch(() => {})));
}
