// The way out for every change a person makes on the page. A gesture is put into the tab's own storage before it is sent
// and leaves it with the answer, so that neither a lost connection nor a reload loses or doubles it: sent again under the
// same id it gets the first answer.

export const newId = () => {
  // A version-7 UUID: it sorts by the time it was made (RFC 9562, 5.7).
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  let now = Date.now();
  for (let i = 5; i >= 0; i--) { bytes[i] = now % 256; now = Math.floor(now / 256); }
  bytes[6] = bytes[6] & 0x0f | 0x70;
  bytes[8] = bytes[8] & 0x3f | 0x80;
  return Array.from(bytes, byte => byte.toString(16).padStart(2, '0')).join('');
};

const asGuid = id => id.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');

export class Gestures {
  #address; #key; #shown; #tell; #kept = []; #queue; #sending = false; #wake = null;

  /** @param shown gives the log number of the season or the team that the page shows; @param tell is told what becomes of gestures. */
  constructor(season, shown, tell, address = `/season/${season}/gestures`) {
    this.#address = address;
    this.#key = `seasonwright.pending.${season}`;
    this.#shown = shown;
    this.#tell = tell;
    this.#queue = JSON.parse(sessionStorage.getItem(this.#key) ?? '[]');
    if (this.#queue.length) this.#flush();
  }

  get waiting() { return this.#queue.length; }

  /** Sends edits of the season or the team; the answer comes through tell. */
  edit(edits, on = 'season', draft = null) { return this.#add({ on, act: 'edit', edits }, draft); }
  undo(on = 'season') { return this.#add({ on, act: 'undo' }); }
  redo(on = 'season') { return this.#add({ on, act: 'redo' }); }

  /** Tries again at once what could not be kept. */
  again() { this.#wake?.(); }

  /** Gives up what could not be kept. */
  drop() { this.#queue.shift(); this.#save(); this.#wake?.(); }

  #add(request, draft = null) {
    const id = newId();
    const basedOn = this.#shown(request.on);
    this.#kept = this.#kept.filter(own => own.number > this.#shown(own.on));
    const knows = [...this.#kept.map(own => own.id), ...this.#queue.map(own => own.request.id)];
    this.#queue.push({ request: { id: asGuid(id), basedOn, knows, edits: [], ...request }, draft });
    this.#save();
    this.#flush();
    return id;
  }

  #save() {
    if (this.#queue.length) sessionStorage.setItem(this.#key, JSON.stringify(this.#queue));
    else sessionStorage.removeItem(this.#key);
  }

  async #flush() {
    if (this.#sending) return;
    this.#sending = true;
    let pause = 250;
    while (this.#queue.length) {
      const { request, draft } = this.#queue[0];
      this.#tell({ state: 'sending' });
      let answer = null;
      try {
        const response = await fetch(this.#address, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(request) });
        answer = response.headers.get('Content-Type')?.includes('json') ? await response.json() : { trouble: null };
      } catch {
        answer = null;
      }
      if (answer?.kept != null || answer?.refused) {
        this.#queue.shift();
        this.#save();
        if (answer.kept != null) this.#kept.push({ id: request.id, on: request.on, number: answer.kept });
        this.#tell(answer.refused ? { state: 'refused', sentences: answer.refused, draft } : { state: 'kept', number: answer.kept, on: request.on, edits: request.edits, draft, sentence: answer.told });
        pause = 250;
        continue;
      }
      this.#tell({ state: answer ? 'trouble' : 'waiting', sentence: answer?.trouble });
      await new Promise(wake => { this.#wake = wake; setTimeout(wake, pause); });
      pause = Math.min(pause * 2, 4000);
    }
    this.#sending = false;
  }
}
