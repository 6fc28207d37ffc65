// What the taps at a board come to, and what stands for whom. It looks up what the sheet holds and reckons nothing: weights, swaps and
// what the first set makes of the rest were worked out before (Core/Boards/BoardSheet). The same rule as BoardState: of marks about the
// same thing the last one holds, in whatever order they came.

/** What a mark is about: two marks with one key stand for each other. */
export const keyOf = mark => ({
  came: () => `came ${mark.person}`,
  set: () => `set ${mark.person} ${mark.item} ${mark.set}`,
  swap: () => `swap ${mark.person} ${mark.item}`,
  rack: () => `rack ${mark.rack}`,
  stand: () => `stand ${mark.person}`,
  way: () => 'way',
  start: () => 'start',
})[mark.mark]?.() ?? `unknown ${mark.mark}`;

/** A mark that says nothing of what this one is about. */
export const nothingOf = mark => ({
  came: () => ({ mark: 'came', person: mark.person, how: 'expected' }),
  set: () => ({ mark: 'set', person: mark.person, item: mark.item, set: mark.set, how: 'open', exercise: mark.exercise }),
  swap: () => ({ mark: 'swap', person: mark.person, item: mark.item, exercise: null }),
  rack: () => ({ mark: 'rack', rack: mark.rack, isOut: false }),
  stand: () => ({ mark: 'stand', person: mark.person, rack: null }),
  way: () => ({ mark: 'way', way: 'together' }),
  start: () => ({ mark: 'start', isRunning: false }),
})[mark.mark]();

const amountOf = weight => parseFloat(weight), unitOf = weight => weight.split(' ')[1];

/** The place of a weight on a ladder; of one that cannot be made there the next lighter one. Null where the ladder has none of its unit as light. */
export function rungOf(ladder, weight) {
  const at = ladder.findIndex(rung => rung.v === weight);
  if (at >= 0) return at;
  const lighter = ladder.findLastIndex(rung => unitOf(rung.v) === unitOf(weight) && amountOf(rung.v) <= amountOf(weight));
  return lighter < 0 ? null : lighter;
}

/** The marks that hold, by what they are about. */
export function held(marks) {
  const last = new Map();
  for (const mark of marks) {
    const key = keyOf(mark), other = last.get(key);
    const at = Date.parse(mark.at), before = other && Date.parse(other.at);
    if (!other || at > before || at === before && mark.id > other.id) last.set(key, mark);
  }
  return last;
}

export class BoardState {
  constructor(sheet, marks) {
    this.sheet = sheet;
    this.held = held(marks);
    this.items = new Map(sheet.items.map(item => [item.id, item]));
  }

  came(person) { return this.held.get(`came ${person}`)?.how ?? 'expected'; }
  isOut(rack) { return this.held.get(`rack ${rack.name}`)?.isOut ?? rack.broken; }
  get started() { const start = this.held.get('start'); return start?.isRunning ? Date.parse(start.since ?? start.at) : null; }
  get way() { return this.held.get('way')?.way ?? null; }
  stand(person) { return this.held.get(`stand ${person}`) ?? null; }

  /** The rack somebody lifts at; null for elsewhere. */
  rackOf(person) {
    const name = this.stand(person)?.rack;
    return name == null ? null : this.sheet.racks.find(rack => rack.name === name && !this.isOut(rack)) ?? null;
  }

  /** An exercise as somebody does it; null where nothing of it is left. */
  line(athlete, item) {
    const swap = this.held.get(`swap ${athlete.id} ${item}`)?.exercise;
    return (swap && athlete.lines.find(line => line.item === item && line.exercise === swap)) ?? athlete.lines.find(line => line.item === item) ?? null;
  }

  /** The letters of the parts in the order in which somebody does them: who begins elsewhere in a split does the rest first. */
  parts(athlete) {
    const letters = this.sheet.parts.map(part => part.letter);
    const turns = this.way === 'split' ? this.turns.filter(turn => turn.half === this.stand(athlete.id)?.half).sort((a, b) => a.from - b.from) : [];
    const first = turns.flatMap(turn => turn.parts.split(', '));
    return [...first.filter(letter => letters.includes(letter)), ...letters.filter(letter => !first.includes(letter))];
  }

  /** As they stood when the way was taken. */
  get turns() { return this.held.get('way')?.turns ?? []; }

  /** Every set of somebody in the order in which it is done: the exercises of a round in turn. */
  sets(athlete) {
    const all = [];
    for (const letter of this.parts(athlete)) {
      const part = this.sheet.parts.find(one => one.letter === letter);
      const lines = part.items.map(id => this.line(athlete, id)).filter(line => line);
      const of = (line, set) => ({ line, set, item: this.items.get(line.item), mark: this.#mark(athlete.id, line.item, set) });
      if (part.inTurn) {
        for (let set = 1; set <= Math.max(0, ...lines.map(line => line.sets)); set++) all.push(...lines.filter(line => set <= line.sets).map(line => of(line, set)));
      } else {
        for (const line of lines) for (let set = 1; set <= line.sets; set++) all.push(of(line, set));
      }
    }
    return all;
  }

  #mark(person, item, set) {
    const mark = this.held.get(`set ${person} ${item} ${set}`);
    return mark && mark.how !== 'open' ? mark : null;
  }

  /** The ladder and the place on it that stand for a set; null where no weight is known. */
  place(athlete, slot) {
    const { line, set } = slot, load = this.load(athlete, line);
    if (!load) return null;
    const ladder = this.sheet.ladders[load.ladder];
    if (slot.mark?.weight && slot.mark.exercise === line.exercise) return { ladder, at: rungOf(ladder, slot.mark.weight) ?? load.at };
    // A weight that was chosen by hand holds for the sets after it; else what the first set left adjusts the rest.
    for (let before = set - 1; before >= 1; before--) {
      const mark = this.#mark(athlete.id, line.item, before);
      if (mark?.isByHand && mark.weight && mark.exercise === line.exercise) return { ladder, at: rungOf(ladder, mark.weight) ?? load.at, byHand: true };
    }
    const first = set > 1 ? this.#mark(athlete.id, line.item, 1) : null;
    const left = first && first.exercise === line.exercise ? first.left : null;
    if (left == null || !load.byLeft.length || load.at == null) return { ladder, at: load.at };
    const at = load.byLeft[Math.min(left, load.byLeft.length - 1)];
    return { ladder, at, adjusted: at - load.at };
  }

  load(athlete, line) {
    const rack = this.rackOf(athlete.id);
    return line.loads.find(load => rack?.ladders.includes(load.ladder)) ?? line.loads[0] ?? null;
  }

  /** The weight in words, or how hard it should be. */
  weight(athlete, slot) {
    const place = this.place(athlete, slot);
    return place?.at != null ? `${slot.line.before}${place.ladder[place.at].w}` : slot.line.effort;
  }

  /** Whether somebody is in the half that does the rest first. */
  isElsewhere(athlete) {
    const now = this.now(athlete);
    return this.way === 'split' && Boolean(this.stand(athlete.id)?.half && now) && !this.sheet.parts.find(part => part.items.includes(now.line.item)).items.some(id => this.items.get(id).atRack);
  }

  /** Whether somebody is in a wave that has not begun. */
  waits(athlete) {
    const turn = this.way === 'waves' ? this.turns.find(one => one.half === this.stand(athlete.id)?.half) : null;
    return Boolean(turn && turn.from > this.gone);
  }

  /** Minutes since the session began; 0 before. */
  get gone() { return this.started ? (Date.now() - this.started) / 60000 : 0; }

  now(athlete) { return this.sets(athlete).find(slot => !slot.mark) ?? null; }
  next(athlete) { return this.sets(athlete).filter(slot => !slot.mark)[1] ?? null; }
  /** Whether a tap for several tells of somebody too: not of who is late, away, modified, waits for a wave, or has fewer minutes. */
  isTold(athlete) { return ['here', 'expected'].includes(this.came(athlete.id)) && athlete.mostMinutes == null && !this.waits(athlete); }
}
