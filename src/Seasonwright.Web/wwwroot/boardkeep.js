// Keeps what is tapped at a board: first in this browser, then at the workspace, whenever it answers. A mark sent twice is kept once.
// Two tabs of one board share what waits; what other boards left waiting is sent along when any board opens.

import { newId } from './gestures.js';

const begins = 'seasonwright.board.', lastEnding = '.last';

const asGuid = id => id.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
const read = key => { try { return JSON.parse(localStorage.getItem(key) ?? 'null'); } catch { return null; } };
const queues = () => Object.keys(localStorage).filter(key => key.startsWith(begins) && !key.endsWith(lastEnding));
const post = async (address, marks, knows) => {
  const response = await fetch(`${address}/marks?knows=${encodeURIComponent(knows)}`, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(marks) });
  return response.headers.get('Content-Type')?.includes('json') ? response.json() : null;
};

export class BoardKeep {
  #address; #key; #waiting; #told; #stamp = ''; #sending = false; #again = false; #pause = 500; #wake = null; #cannot = false;

  /** @param told hears { waiting, isCutOff, cannotKeep, trouble, sent } and, where something is new, { marks, floor, stamp }. */
  constructor(address, told) {
    this.#address = address;
    this.#key = `${begins}${address}`;
    this.#waiting = read(this.#key) ?? [];
    this.#told = told;
    addEventListener('online', () => this.send());
    addEventListener('storage', event => { if (event.key === this.#key) this.#waiting = read(this.#key) ?? []; });
    setInterval(() => { if (!document.hidden) this.send(); }, 5000);
    this.#sendOthers();
  }

  get waiting() { return this.#waiting; }

  /** What the workspace answered last, { marks, floor }: the sheet that opens without a connection is older. */
  get last() { return read(`${this.#key}${lastEnding}`); }

  /** Puts ids and the time on marks and keeps them. No mark is older than the one it stands for: clocks of two boards differ. */
  add(marks, after) {
    const made = marks.map(mark => ({ ...mark, id: asGuid(newId()), at: new Date(Math.max(Date.now(), after(mark) + 1)).toISOString() }));
    this.#change(waiting => [...waiting, ...made]);
    this.send();
    return made;
  }

  // What waits is read, changed and written at once: another tab of the same board adds to it too.
  #change(to) {
    const stored = read(this.#key) ?? [], known = new Set(stored.map(mark => mark.id));
    this.#waiting = to(this.#cannot ? [...stored, ...this.#waiting.filter(mark => !known.has(mark.id))] : stored);
    try {
      if (this.#waiting.length) localStorage.setItem(this.#key, JSON.stringify(this.#waiting));
      else localStorage.removeItem(this.#key);
      this.#cannot = false;
    } catch { this.#cannot = true; }
  }

  /** Sends what waits and hears what others tapped; after a failure it goes on by itself. */
  async send() {
    this.#wake?.();
    if (this.#sending) { this.#again = true; return; }
    this.#sending = true;
    try {
      do {
        this.#again = false;
        const batch = this.#waiting.slice(0, 500);
        let answer = null;
        try { answer = await post(this.#address, batch, this.#stamp); } catch { /* cut off */ }
        if (answer?.stamp) {
          const sent = new Set(batch.map(mark => mark.id));
          if (batch.length) this.#change(waiting => waiting.filter(mark => !sent.has(mark.id)));
          this.#stamp = answer.stamp;
          this.#pause = 500;
          this.#tell({ ...answer, isCutOff: false, sent: batch.length });
          if (answer.marks) try { localStorage.setItem(`${this.#key}${lastEnding}`, JSON.stringify({ marks: answer.marks, floor: answer.floor })); } catch { /* the sheet that opens without a connection stays older */ }
        } else {
          this.#tell({ isCutOff: true, trouble: answer?.trouble ?? undefined });
          if (!this.#waiting.length) break;
          await new Promise(wake => { this.#wake = wake; setTimeout(wake, this.#pause); });
          this.#wake = null;
          this.#pause = Math.min(this.#pause * 2, 8000);
        }
      } while (this.#waiting.length || this.#again);
    } finally { this.#sending = false; }
  }

  // A page that fails to draw must not stop what is kept from being sent.
  #tell(told) { Promise.resolve().then(() => this.#told({ ...told, waiting: this.#waiting.length, cannotKeep: this.#cannot })).catch(fault => setTimeout(() => { throw fault; })); }

  async #sendOthers() {
    for (const key of queues().filter(one => one !== this.#key)) {
      const marks = read(key) ?? [];
      try { if (!marks.length || (await post(key.slice(begins.length), marks, ''))?.stamp) localStorage.removeItem(key); } catch { /* later */ }
    }
  }
}

/** Keeps the page itself, so that it opens without a connection; what boards of other sessions left behind goes, but for those that have something to send. */
export async function keepPage(address) {
  if (!('serviceWorker' in navigator)) return false;
  await navigator.serviceWorker.register('/board-worker.js', { scope: '/board/' });
  await navigator.serviceWorker.ready;
  const own = [location.href, `${address}/sheet.json`, ...performance.getEntriesByType('resource').map(entry => entry.name)].filter(url => new URL(url, location.href).origin === location.origin && !url.includes('/marks'));
  const stays = [address, ...queues().map(key => key.slice(begins.length))];
  for (const key of Object.keys(localStorage)) if (key.startsWith(begins) && key.endsWith(lastEnding) && !stays.some(one => key.includes(one))) localStorage.removeItem(key);
  for (const name of await caches.keys()) {
    const kept = await caches.open(name);
    for (const request of await kept.keys()) if (new URL(request.url).pathname.startsWith('/board/') && !stays.some(one => request.url.includes(one))) await kept.delete(request);
  }
  await Promise.all([...new Set(own)].map(url => fetch(url).catch(() => {})));
  return true;
}
