// The board of a session on a tablet: who is here, who lifts where, the set that is on and the one after it. Drawn anew after each tap
// from the sheet and the marks; everything else is in boardstate.js (what marks come to) and boardkeep.js (keeping them).

import { BoardState, keyOf, nothingOf, held, rungOf } from './boardstate.js';
import { BoardKeep, keepPage } from './boardkeep.js';

const page = document.getElementById('board');
const words = JSON.parse(page.dataset.words);
const address = page.dataset.address;
const say = (id, ...numbers) => words[id].replace(/\{(\d)\}/g, (_, at) => numbers[at]);
const escape = text => String(text).replace(/[&<>"]/g, sign => `&#${sign.charCodeAt(0)};`);
/** Said and not shown: what a button is about, behind what stands on it. */
const unseen = text => `<span class="unseen"> ${escape(text)}</span>`;
const pressed = is => `aria-pressed="${is}"`;

let sheet = null, state = null, view = 'who', open = null, taps = [], rest = null, trouble = null, answer = { waiting: 0, isCutOff: false };
const keep = new BoardKeep(address, async told => {
  answer = told;
  trouble = told.trouble ?? trouble;
  if (!sheet) return;
  if (told.marks) {
    // Another workout, other racks, other people: everybody's sets are worked out anew. The last part of a stamp counts marks.
    const planOf = stamp => stamp.slice(0, stamp.lastIndexOf('.'));
    if (planOf(told.stamp) !== planOf(sheet.stamp)) await getSheet().catch(() => {});
    Object.assign(sheet, { marks: told.marks, floor: told.floor });
  }
  if (told.marks || told.sent) look(); else status();
});

async function getSheet() {
  const response = await fetch(`${address}/sheet.json`);
  if (!response.ok) throw new Error(String(response.status));
  sheet = await response.json();
}

const all = () => [...sheet.marks, ...keep.waiting];

/** Taps in this browser stand for themselves until the workspace has them. What is drawn stays under a finger that is on it. */
const look = () => { state = new BoardState(sheet, all()); if (isPressing) isLate = true; else draw(); };
let isPressing = false, isLate = false;
page.addEventListener('pointerdown', () => { isPressing = true; });
for (const end of ['pointerup', 'pointercancel']) addEventListener(end, () => setTimeout(() => { isPressing = false; if (isLate) { isLate = false; draw(); } }));

const add = marks => { const before = held(all()); return keep.add(marks, mark => Date.parse(before.get(keyOf(mark))?.at ?? 0)); };

/** Keeps marks that one tap made, and remembers what stood before them. */
function tap(marks) {
  if (!marks.length) return;
  const before = held(all());
  const was = marks.map(mark => { const { id, at, ...other } = before.get(keyOf(mark)) ?? nothingOf(mark); return other; });
  taps.push({ was, made: add(marks).map(mark => mark.id) });
  look();
}

/** Takes the last tap of this board back, but for what another one has told since. */
function takeBack() {
  const { was, made } = taps.pop() ?? { was: [] }, now = held(all());
  const mine = was.filter(mark => made.includes(now.get(keyOf(mark))?.id));
  if (mine.length < was.length) trouble = say('told-since');
  if (mine.length) add(mine);
  look();
}

// ---- what is drawn

const clockOf = seconds => `${seconds < 0 ? '−' : ''}${Math.floor(Math.abs(seconds) / 60)}:${String(Math.abs(seconds) % 60).padStart(2, '0')}`;
const isLifting = athlete => athlete.fit === 'lifts';
const shown = athlete => state.came(athlete.id) !== 'away';
const marksOf = athlete => [athlete.modified || state.came(athlete.id) === 'modified' ? say('mark-modified') : null, athlete.mostMinutes != null ? say('mark-minutes', athlete.mostMinutes) : null, athlete.minor ? say('mark-minor') : null].filter(one => one).map(one => `<span class="mark">${one}</span>`).join('');
const nameOf = (athlete, name = athlete.name) => `<b class="number">${escape(athlete.number)}</b> ${escape(name)}`;
const halfOf = athlete => { const half = state.stand(athlete.id)?.half; return half ? `<span class="half">${half.toUpperCase()}</span>` : ''; };

function status() {
  const line = page.querySelector('#board-status'), waiting = keep.waiting.length;
  const id = answer.cannotKeep ? 'cannot-keep' : answer.isCutOff ? waiting ? 'cut-off' : 'cut-off-none' : waiting ? 'sending' : 'kept';
  const text = trouble ?? say(id, waiting);
  line.dataset.state = trouble ? 'refused' : id;
  if (line.textContent !== text) line.textContent = text;
}

let drawn = null;

function draw() {
  const at = document.activeElement?.closest?.('[data-key]')?.dataset.key;
  const main = view === 'who' ? drawWho() : drawFloor();
  if (main !== drawn) { page.querySelector('#board-main').innerHTML = main; drawn = main; }
  page.querySelector('#board-counts').innerHTML = counts();
  for (const button of page.querySelectorAll('[data-view]')) button.setAttribute('aria-pressed', String(button.dataset.view === view));
  page.querySelector('[data-do="back"]').disabled = !taps.length;
  if (at) page.querySelector(`[data-key="${CSS.escape(at)}"]`)?.focus({ preventScroll: true });
  if (open) drawOpen();
  status();
  tick();
}

function counts() {
  const of = how => sheet.athletes.filter(athlete => state.came(athlete.id) === how).length;
  const told = [['here', of('here') + of('modified')], ['late', of('late')], ['modified', sheet.athletes.filter(athlete => athlete.modified && shown(athlete) || state.came(athlete.id) === 'modified').length], ['away', of('away')], ['expected', of('expected')]];
  return told.filter(([how, count]) => count || how === 'here').map(([how, count]) => `<span>${say(`count-${how}`, count)}</span>`).join('');
}

function drawWho() {
  const tile = athlete => {
    const how = state.came(athlete.id);
    const one = which => `<button type="button" ${pressed(how === which)} data-do="came" data-person="${athlete.id}" data-how="${which}" data-key="came ${athlete.id} ${which}">${say(which)}${unseen(athlete.name)}</button>`;
    return `<li class="who-tile" data-how="${how}"><span class="who">${nameOf(athlete)}${marksOf(athlete)}${athlete.fit === 'asks' ? `<span class="mark">${say('asks')}</span>` : athlete.fit === 'none' ? `<span class="mark">${say('takes-no-part')}</span>` : ''}</span><span class="ways">${['here', 'late', 'modified', 'away'].map(one).join('')}</span></li>`;
  };
  const expected = sheet.athletes.some(athlete => state.came(athlete.id) === 'expected');
  return `<div class="board-lead"><p>${say('who-lead')}</p>${expected ? `<button type="button" class="main-act" data-do="all-here" data-key="all-here">${say('all-here')}</button>` : ''}<button type="button" class="${expected ? '' : 'main-act'}" data-view="floor" data-key="to-floor">${say('to-floor')}</button></div>
    <ul class="who-tiles">${sheet.athletes.map(tile).join('')}</ul><p class="caution">${say('modified-words')}</p>`;
}

function drawFloor() {
  const ways = sheet.floor.ways, short = sheet.floor.says.filter(need => need.short);
  const stood = sheet.athletes.filter(athlete => isLifting(athlete) && shown(athlete) && (state.stand(athlete.id)?.rack || state.stand(athlete.id)?.half));
  if (!stood.length && ways.length) return `${cautionLine()}<section class="ways-list" aria-label="${say('ways')}"><h2>${say('ways')}</h2>${needs(short)}${wayList(ways)}</section>`;
  const at = new Map(sheet.racks.map(rack => [rack.name, []])), elsewhere = [];
  for (const athlete of sheet.athletes.filter(one => isLifting(one) && shown(one))) ((!state.isElsewhere(athlete) && !state.waits(athlete) && at.get(state.rackOf(athlete.id)?.name)) || elsewhere).push(athlete);
  const racks = sheet.racks.map(rack => drawRack(rack, at.get(rack.name))).join('');
  const out = sheet.athletes.filter(athlete => !isLifting(athlete) && shown(athlete));
  return `${short.length ? `<div class="short" role="status"><div>${needs(short)}</div><button type="button" data-do="ways" data-key="ways">${say('see-ways')}</button></div>` : ''}
    <div class="racks">${racks}${elsewhere.length ? card(say('elsewhere'), elsewhere, 'elsewhere') : ''}</div>
    ${out.length ? `<p class="out">${say('out', out.map(athlete => `${escape(athlete.number)} ${escape(athlete.name)} (${athlete.fit === 'asks' ? say('asks') : say('takes-no-part')})`).join(', '))}</p>` : ''}${cautionLine()}`;
}

const cautionLine = () => `<p class="caution">${say('caution')}</p>`;
const needs = all => all.map(need => `<p class="need">${escape(need.words)}</p>`).join('');
const wayList = ways => `<ul class="way-list">${ways.map(way => `<li><p>${escape(way.words)}</p><button type="button" class="main-act" data-do="take-way" data-way="${way.kind}" data-key="way ${way.kind}">${say('take')}</button></li>`).join('')}</ul>`;

function drawRack(rack, athletes) {
  const isOut = state.isOut(rack);
  if (!isOut) return card(say('rack', escape(rack.name)), athletes, `rack ${rack.name}`, rack);
  return `<section class="rack is-out"><header><h2>${say('rack', escape(rack.name))}</h2><span class="mark">${say('broken')}</span><button type="button" data-do="rack" data-rack="${escape(rack.name)}" data-out="false" data-key="out ${escape(rack.name)}">${say('works-again')}</button></header></section>`;
}

function card(title, athletes, key, rack) {
  const working = athletes.filter(athlete => state.isTold(athlete) && state.now(athlete));
  return `<section class="rack${rack ? '' : ' wide'}" aria-label="${title}"><header><h2>${title}${rack ? ` <span class="sub">${escape(rack.words)}</span>` : ''}</h2>
    ${rack ? `<button type="button" class="quiet" data-do="rack" data-rack="${escape(rack.name)}" data-out="true" data-key="out ${escape(rack.name)}">${say('break')}${unseen(say('breaks', rack.name))}</button>` : ''}
    ${working.length ? `<button type="button" data-do="round" data-people="${working.map(athlete => athlete.id).join(' ')}" data-key="round ${escape(key)}">${say('round')}<span class="unseen"> ${title}: ${say('round-words')}</span></button>` : ''}</header>
    ${athletes.length ? `<ul>${athletes.map(drawRow).join('')}</ul>` : `<p class="empty">${say('nobody')}</p>`}</section>`;
}

function drawRow(athlete) {
  const slot = state.now(athlete), next = state.next(athlete), how = state.came(athlete.id), id = athlete.id;
  const head = `<span class="who">${nameOf(athlete, athlete.short)}${halfOf(athlete)}${marksOf(athlete)}</span>`;
  if (how === 'late') return `<li class="row is-late"><span class="says">${head}<span class="sub">${say('is-late')}</span></span><button type="button" class="arrive" data-do="arrive" data-person="${id}" data-key="arrive ${id}">${say('here')}${unseen(say('arrives', athlete.name))}</button></li>`;
  if (!slot) return `<li class="row is-done"><span class="says">${head}<span class="sub">${say('done')}</span></span>${more(athlete, state.sets(athlete).at(-1))}</li>`;
  const place = state.place(athlete, slot), weight = state.weight(athlete, slot);
  const then = next && state.place(athlete, next)?.at != null ? escape(state.weight(athlete, next)) : null;
  const after = !next ? say('last-set') : next.line.item !== slot.line.item ? say('then', then ? `${next.item.place}, ${then}` : next.item.place) : then ? say('then', then) : null;
  return `<li class="row"><span class="says">${head}
      <button type="button" class="exercise" data-do="swap" data-person="${id}" data-item="${slot.line.item}" data-key="swap ${id}">${slot.item.place} ${escape(slot.line.name)}${unseen(say('swaps', athlete.name))}</button>
      <span class="sub">${say('set-of', slot.set, slot.line.sets, escape([slot.line.amount, slot.line.how].filter(one => one).join(', ')))}${after ? ` · ${after}` : ''}</span></span>
    <button type="button" class="as-written" data-do="as-written" data-person="${id}" data-item="${slot.line.item}" data-set="${slot.set}" data-key="now ${id}"><b class="${place?.at != null ? '' : 'in-words'}">${escape(weight || slot.line.amount)}</b><span class="sub">${place?.at != null && place.ladder[place.at].p ? escape(place.ladder[place.at].p) : say('tap-words')}</span>${place?.adjusted ? `<span class="mark">${say(place.adjusted > 0 ? 'day-up' : 'day-down')}</span>` : place?.byHand ? `<span class="mark">${say('by-hand')}</span>` : ''}${unseen(say('as-written-of', athlete.name, slot.line.name, slot.set))}</button>
    ${more(athlete, slot)}</li>`;
}

const more = (athlete, slot) => slot ? `<button type="button" class="more" data-do="set" data-person="${athlete.id}" data-item="${slot.line.item}" data-set="${slot.set}" data-key="set ${athlete.id}">±${unseen(say('more', athlete.name))}</button>` : '';

// ---- what opens over it: one set, a swap, the ways, the end, a late one

const dialog = page.querySelector('dialog');
const athleteOf = id => sheet.athletes.find(athlete => athlete.id === id);

function show(what) { open = what; drawOpen(); if (!dialog.open) dialog.showModal(); }
function close() { if (dialog.open) { dialog.close(); unsettle(); } open = null; dialog.innerHTML = ''; }

function drawOpen() {
  const at = document.activeElement?.closest?.('dialog [data-key]')?.dataset.key;
  dialog.innerHTML = { set: drawSet, swap: drawSwap, ways: () => `<h2>${say('ways')}</h2>${needs(sheet.floor.says)}${wayList(sheet.floor.ways)}`, end: drawEnd, late: drawLate, stop: () => `<h2>${say('stop-clock')}</h2><p>${say('stop-words')}</p><p class="acts"><button type="button" class="main-act" data-do="stop" data-key="stop">${say('stop-clock')}</button></p>` }[open.what]()
    + (open.what === 'late' ? '' : `<p class="acts"><button type="button" data-do="close" data-key="close">${say('close')}</button></p>`);
  if (at) dialog.querySelector(`[data-key="${CSS.escape(at)}"]`)?.focus();
}

function slotOf({ person, item, set }) { const athlete = athleteOf(person); return { athlete, slot: state.sets(athlete).find(one => one.line.item === item && one.set === set) }; }

/** The place on the ladder: what was chosen in the panel, held as a weight, for another board may move the athlete to another rack meanwhile. */
const chosen = place => open.weight ? rungOf(place.ladder, open.weight) : place?.at ?? null;

function drawSet() {
  const { athlete, slot } = slotOf(open), place = state.place(athlete, slot);
  const at = chosen(place), rung = at == null ? null : place.ladder[at], amount = open.amount ?? slot.mark?.amount ?? slot.line.count;
  const step = (what, by, can, label) => `<button type="button" class="step" data-do="step" data-what="${what}" data-by="${by}" ${can ? '' : 'disabled'} data-key="step ${what} ${by}">${by > 0 ? '+' : '−'}${unseen(label)}</button>`;
  const sets = state.sets(athlete).filter(one => one.line.item === slot.line.item);
  return `<h2>${nameOf(athlete)} <span class="sub">${escape(slot.line.name)}</span></h2>
    <div class="set-strip" role="group" aria-label="${say('sets')}">${sets.map(one => `<button type="button" ${pressed(one.set === slot.set)} data-do="set" data-person="${athlete.id}" data-item="${one.line.item}" data-set="${one.set}" data-key="strip ${one.set}">${one.set} <span class="sub">${one.mark ? say(`how-${one.mark.how}`) : say('how-open')}</span></button>`).join('')}</div>
    ${place ? `<div class="figure"><span>${say('weight')}</span>${step('at', -1, at == null || at > 0, say('lighter'))}<output>${rung ? escape(slot.line.before + rung.w) : say('no-weight')}<span class="sub">${rung?.p ? escape(rung.p) : escape(rung ? '' : slot.line.effort)}</span></output>${step('at', 1, at == null || at < place.ladder.length - 1, say('heavier'))}</div>` : ''}
    <div class="figure"><span>${say(`unit-${slot.line.unit}`)}</span>${step('amount', -slot.line.step, amount > 0, say('fewer'))}<output>${amount}</output>${step('amount', slot.line.step, true, say('more-of'))}</div>
    ${slot.line.unit === 'repetitions' ? `<div class="figure left" role="group" aria-label="${say('left')}"><span>${say('left')}</span>${Array.from({ length: sheet.mostLeft + 1 }, (_, left) => `<button type="button" ${pressed((open.left ?? slot.mark?.left) === left)} data-do="left" data-left="${left}" data-key="left ${left}">${left === sheet.mostLeft ? `${left}+` : left}</button>`).join('')}</div>` : ''}
    ${slot.set === 1 && state.load(athlete, slot.line)?.byLeft.length ? `<p class="sub">${say(athlete.minor ? 'left-words-minor' : 'left-words')}</p>` : ''}
    <p class="acts"><button type="button" class="main-act" data-do="save" data-key="save">${say('save')}</button><button type="button" data-do="not-done" data-key="not-done">${say('not-done')}</button>${slot.mark ? `<button type="button" data-do="open-again" data-key="open-again">${say('open-again')}</button>` : ''}
      <button type="button" data-do="swap" data-person="${athlete.id}" data-item="${slot.line.item}" data-key="swap-here">${say('other-exercise')}</button></p>
    <div class="figure moves" role="group" aria-label="${say('move')}"><span>${say('move')}</span>${sheet.racks.filter(rack => !state.isOut(rack)).map(rack => `<button type="button" ${pressed(state.rackOf(athlete.id) === rack)} data-do="move" data-rack="${escape(rack.name)}" data-key="move ${escape(rack.name)}">${escape(rack.name)}</button>`).join('')}<button type="button" ${pressed(!state.rackOf(athlete.id))} data-do="move" data-key="move elsewhere">${say('elsewhere')}</button></div>`;
}

function drawSwap() {
  const athlete = athleteOf(open.person), item = state.items.get(open.item), line = state.line(athlete, open.item);
  const groups = sheet.groups.filter(group => sheet.athletes.some(one => one.groups.includes(group.id)));
  const whom = [[say('swap-one', escape(athlete.name)), [athlete]], ...groups.map(group => [escape(group.name), sheet.athletes.filter(one => one.groups.includes(group.id))]), [say('swap-all'), sheet.athletes]];
  const row = (exercise, name, isWritten) => `<tr><th scope="row">${escape(name)}${line?.exercise === exercise ? ` <span class="mark">${say('now')}</span>` : ''}</th>${whom.map(([title, people], at) => {
    const can = people.filter(one => isLifting(one) && one.lines.some(other => other.item === item.id && (isWritten ? other.own : other.exercise === exercise)));
    return `<td>${can.length ? `<button type="button" data-do="swap-to" data-exercise="${isWritten ? '' : exercise}" data-people="${can.map(one => one.id).join(' ')}" data-key="to ${exercise} ${at}">${title}${unseen(name)}${at && can.length < people.filter(isLifting).length ? ` <span class="sub">${say('of', can.length, people.filter(isLifting).length)}</span>` : ''}</button>` : `<span class="sub">${say('not-for')}</span>`}</td>`;
  }).join('')}</tr>`;
  return `<h2>${say('swap-title', escape(item.exercise))}</h2><div class="scrolls"><table class="swaps"><tbody>${row(item.exerciseId, item.exercise, true)}${item.swaps.map(swap => row(swap.id, swap.name, false)).join('')}</tbody></table></div><p class="sub">${say('swap-words')}</p>`;
}

/** Somebody said so: at the end nothing is told of who only was expected. */
const isHere = athlete => state.came(athlete.id) === 'here' && state.isTold(athlete);

function drawEnd() {
  const slots = sheet.athletes.filter(athlete => isLifting(athlete) && shown(athlete)).flatMap(athlete => state.sets(athlete).map(slot => ({ athlete, slot })));
  const of = how => slots.filter(({ slot }) => (slot.mark?.how ?? 'open') === how).length;
  const left = slots.filter(({ athlete, slot }) => !slot.mark && isHere(athlete));
  return `<h2>${say('end')}</h2><ul class="sums-list">${['asWritten', 'otherwise', 'notDone', 'open'].map(how => `<li><b>${of(how)}</b> ${say(`sum-${how}`)}</li>`).join('')}</ul>
    ${left.length ? `<p><button type="button" class="main-act" data-do="all-as-written" data-key="all-as-written">${say('rest-as-written', left.length, new Set(left.map(({ athlete }) => athlete.id)).size)}</button></p><p class="sub">${say('rest-words')}</p>` : `<p>${say('all-told')}</p>`}
    <p class="sub">${say(answer.isCutOff || keep.waiting.length ? 'end-waiting' : 'end-kept', keep.waiting.length)}</p>`;
}

function drawLate() {
  const athlete = athleteOf(open.person), { minutes, leave } = timeLeft(athlete);
  return `<h2>${nameOf(athlete)}</h2><p>${leave.length ? say('late-leave', minutes, leave.join(', ')) : say('late-fits', minutes)}</p>
    <p class="acts">${leave.length ? `<button type="button" class="main-act" data-do="leave" data-key="leave">${say('leave', leave.join(', '))}</button>` : ''}<button type="button" class="${leave.length ? '' : 'main-act'}" data-do="close" data-key="keep-all">${say('keep-all')}</button></p><p class="sub">${say('late-words')}</p>`;
}

/** Minutes that are left of the session, and the parts that have no room in them any more. */
function timeLeft(athlete) {
  const minutes = Math.max(0, Math.round(sheet.minutes - state.gone));
  let left = minutes;
  const leave = state.parts(athlete).filter(letter => {
    const part = sheet.parts.find(one => one.letter === letter);
    if (!state.sets(athlete).some(slot => part.items.includes(slot.line.item) && !slot.mark)) return false;
    if (part.minutes > left) return true;
    left -= part.minutes;
    return false;
  });
  return { minutes, leave };
}

// ---- the clock

function tick() {
  if (!state) return;
  const left = state.started ? Math.round(sheet.minutes * 60 - (Date.now() - state.started) / 1000) : null;
  page.querySelector('#board-clock').textContent = left == null ? say('minutes', sheet.minutes) : clockOf(left);
  page.querySelector('#board-clock-words').textContent = left == null ? say('not-begun') : left < 0 ? say('over') : say('left-of', sheet.minutes);
  page.querySelector('[data-do="start"]').textContent = state.started ? say('stop-clock') : say('start-clock');
  const resting = rest ? Math.ceil((rest - Date.now()) / 1000) : null;
  const counter = page.querySelector('#board-rest');
  counter.textContent = resting == null ? '' : resting > 0 ? clockOf(resting) : say('go');
  counter.dataset.state = resting == null ? '' : resting > 0 ? 'resting' : 'go';
  if (resting != null && resting < -20) rest = null;
  const turn = page.querySelector('#board-turn'), gone = state.started ? state.gone : null;
  // What gets ready goes before the first turn and belongs to it.
  const begins = Math.min(...state.turns.map(one => one.from));
  const on = gone == null ? [] : state.turns.filter(one => (one.from === begins || one.from <= gone) && gone < one.to);
  const told = on.length ? on.map(one => say('turn', one.half.toUpperCase(), one.parts)).join(' · ') + ` · ${say('turn-until', clockOf(Math.round((on[0].to - gone) * 60)))}` : state.turns.length && gone == null ? say('turn-waits') : '';
  if (turn.textContent !== told) turn.textContent = told;
  turn.hidden = !told;
}
setInterval(tick, 1000);

// A tablet that sleeps between two sets is no board.
const stayAwake = () => { if (!document.hidden && state?.started) navigator.wakeLock?.request('screen').catch(() => {}); };
document.addEventListener('visibilitychange', stayAwake);
setInterval(stayAwake, 60000);

// ---- taps

const asWritten = (athlete, slot) => { const place = state.place(athlete, slot); return { mark: 'set', person: athlete.id, item: slot.line.item, set: slot.set, how: 'asWritten', exercise: slot.line.exercise, ...(place?.at != null ? { weight: place.ladder[place.at].v } : {}), amount: slot.line.count }; };

/** Who lifts is here. */
const came = athletes => athletes.filter(athlete => state.came(athlete.id) === 'expected').map(athlete => ({ mark: 'came', person: athlete.id, how: 'here' }));

/** What the panel of a set holds. */
function entered() {
  const { athlete, slot } = slotOf(open), place = state.place(athlete, slot), at = chosen(place);
  const amount = open.amount ?? slot.mark?.amount ?? slot.line.count, left = open.left ?? slot.mark?.left;
  const byHand = open.weight ? open.weight !== place.ladder[place.at]?.v || slot.mark?.isByHand : slot.mark?.isByHand;
  const isWritten = !byHand && amount === slot.line.count && slot.mark?.how !== 'otherwise';
  return [{ ...asWritten(athlete, slot), how: isWritten ? 'asWritten' : 'otherwise', ...(at != null ? { weight: place.ladder[at].v } : {}), amount, ...(left != null ? { left } : {}), ...(byHand ? { isByHand: true } : {}) }, ...came([athlete])];
}

/** What was changed in a panel is kept before it turns to something else. */
function saveTouched() { if (open?.what === 'set' && (open.weight || open.amount != null || open.left != null)) tap(entered()); }

const acts = {
  came: ({ person, how }) => tap([{ mark: 'came', person, how: state.came(person) === how ? 'expected' : how }]),
  'all-here': () => tap(sheet.athletes.filter(athlete => state.came(athlete.id) === 'expected').map(athlete => ({ mark: 'came', person: athlete.id, how: 'here' }))),
  arrive: ({ person }) => { tap([{ mark: 'came', person, how: 'here' }]); show({ what: 'late', person }); },
  leave: () => { const athlete = athleteOf(open.person), { leave } = timeLeft(athlete); const items = sheet.parts.filter(part => leave.includes(part.letter)).flatMap(part => part.items); close(); tap(state.sets(athlete).filter(slot => items.includes(slot.line.item) && !slot.mark).map(slot => ({ ...asWritten(athlete, slot), how: 'notDone', weight: undefined, amount: undefined }))); },
  // The button says which set it stands for: what another board told meanwhile is not told again.
  'as-written': ({ person, item, set }) => { const { athlete, slot } = slotOf({ person, item, set: Number(set) }); if (slot && !slot.mark) tap([asWritten(athlete, slot), ...came([athlete])]); },
  // Whoever is a set ahead of the others waits for them.
  round: ({ people }) => {
    const all = people.split(' ').map(athleteOf).filter(athlete => state.isTold(athlete) && state.now(athlete)).map(athlete => ({ athlete, done: state.sets(athlete).filter(slot => slot.mark).length }));
    const round = all.filter(one => one.done === Math.min(...all.map(other => other.done))).map(one => one.athlete);
    tap([...round.map(athlete => asWritten(athlete, state.now(athlete))), ...came(round)]);
  },
  set: ({ person, item, set }) => { saveTouched(); show({ what: 'set', person, item, set: Number(set) }); },
  swap: ({ person, item }) => { saveTouched(); show({ what: 'swap', person, item }); },
  ways: () => show({ what: 'ways' }),
  end: () => show({ what: 'end' }),
  close,
  'swap-to': ({ exercise, people }) => { const item = open.item; close(); tap(people.split(' ').map(person => ({ mark: 'swap', person, item, exercise: exercise || null }))); },
  step: ({ what, by }) => {
    const { athlete, slot } = slotOf(open), place = state.place(athlete, slot);
    const at = chosen(place);
    if (what === 'at') open.weight = place.ladder[at == null ? 0 : Math.min(place.ladder.length - 1, Math.max(0, at + Number(by)))].v;
    else open.amount = Math.max(0, (open.amount ?? slot.mark?.amount ?? slot.line.count) + Number(by));
    drawOpen();
  },
  left: ({ left }) => { open.left = open.left === Number(left) ? undefined : Number(left); drawOpen(); },
  save: () => { const made = entered(); close(); tap(made); },
  'not-done': () => { const { athlete, slot } = slotOf(open); close(); tap([{ mark: 'set', person: athlete.id, item: slot.line.item, set: slot.set, how: 'notDone', exercise: slot.line.exercise }]); },
  'open-again': () => { const { athlete, slot } = slotOf(open); close(); tap([{ mark: 'set', person: athlete.id, item: slot.line.item, set: slot.set, how: 'open', exercise: slot.line.exercise }]); },
  move: ({ rack }) => { saveTouched(); const person = open.person, half = state.stand(person)?.half; close(); tap([{ mark: 'stand', person, rack: rack ?? null, ...(half ? { half } : {}) }]); },
  // Who lifted there goes where fewest are; the coach may share the room anew.
  rack: ({ rack, out }) => {
    const isOut = out === 'true', marks = [{ mark: 'rack', rack, isOut }];
    if (isOut) {
      const left = sheet.racks.filter(other => other.name !== rack && !state.isOut(other)).map(other => ({ other, people: sheet.athletes.filter(athlete => shown(athlete) && state.rackOf(athlete.id) === other).length }));
      for (const athlete of sheet.athletes.filter(one => state.rackOf(one.id)?.name === rack)) {
        const to = left.sort((a, b) => a.people - b.people)[0], half = state.stand(athlete.id)?.half;
        if (to) to.people++;
        marks.push({ mark: 'stand', person: athlete.id, rack: to?.other.name ?? null, ...(half ? { half } : {}) });
      }
    }
    tap(marks);
  },
  'take-way': ({ way: kind }) => {
    const way = sheet.floor.ways.find(one => one.kind === kind);
    close();
    // Turns count from the clock's beginning, also where the way is taken in the middle.
    const gone = Math.round(state.gone), turns = way.turns.map(turn => ({ ...turn, from: turn.from + gone, to: turn.to + gone }));
    view = 'floor';
    tap([{ mark: 'way', way: kind, turns }, ...sheet.athletes.filter(isLifting).map(athlete => { const stand = way.stands.find(one => one.person === athlete.id); return { mark: 'stand', person: athlete.id, rack: stand?.rack ?? null, ...(stand?.half ? { half: stand.half } : {}) }; }), ...way.swaps.map(swap => ({ mark: 'swap', ...swap }))]);
  },
  start: () => state.started ? show({ what: 'stop' }) : tap([{ mark: 'start', isRunning: true, since: new Date().toISOString() }]),
  stop: () => { close(); tap([{ mark: 'start', isRunning: false }]); },
  rest: ({ seconds }) => { rest = Date.now() + Number(seconds) * 1000; tick(); },
  back: takeBack,
  'all-as-written': () => { close(); tap(sheet.athletes.filter(athlete => isLifting(athlete) && isHere(athlete)).flatMap(athlete => state.sets(athlete).filter(slot => !slot.mark).map(slot => asWritten(athlete, slot)))); },
};

// One tap, one thing: a second touch of the same button, a key that is held, and what comes to lie under the finger once a panel or a view is gone tell nothing.
const settle = 400;
let lastKey = null, lastAt = -settle, settling = 0;
function unsettle() { page.dataset.settling = ''; clearTimeout(settling); settling = setTimeout(() => delete page.dataset.settling, settle); }
page.addEventListener('keydown', event => { if (event.repeat && (event.key === 'Enter' || event.key === ' ')) event.preventDefault(); });
page.addEventListener('click', event => {
  const button = event.target.closest('button');
  if (!button || !state || 'settling' in page.dataset) return;
  const { do: what, key = what } = button.dataset;
  // Steps of a figure are meant to be tapped quickly.
  if (what !== 'step' && key && key === lastKey && event.timeStamp - lastAt < settle) return;
  [lastKey, lastAt] = [key, event.timeStamp];
  trouble = null;
  if (button.dataset.view) { view = button.dataset.view; unsettle(); draw(); scrollTo(0, 0); return; }
  if (what) acts[what](button.dataset);
});
// By Escape. The event comes late: another panel may have opened meanwhile.
dialog.addEventListener('close', () => { if (!dialog.open) close(); });

// ---- the beginning

try {
  await getSheet();
  // Marks are only ever added: of two answers the longer one is the later one.
  if (keep.last?.marks.length > sheet.marks.length) Object.assign(sheet, keep.last);
  page.querySelector('#board-rests').innerHTML = [...new Set(sheet.parts.map(part => part.rest).filter(seconds => seconds))].sort((a, b) => b - a).map(seconds => `<button type="button" data-do="rest" data-seconds="${seconds}" aria-label="${escape(say('rest-of', clockOf(seconds)))}">${clockOf(seconds)}</button>`).join('');
  look();
  if (sheet.marks.length || keep.waiting.length) { view = sheet.athletes.some(athlete => state.stand(athlete.id)) ? 'floor' : 'who'; draw(); }
  page.dataset.live = '';
  keep.send();
  keepPage(address).then(isKept => { if (isKept) page.dataset.kept = ''; }).catch(() => {});
} catch {
  page.querySelector('#board-main').textContent = say('no-sheet');
}
