// The Year page under the hand: a cursor over the cells, keys, menus, forms and (strokes.js) the pointer. What a person does
// is drawn at once; one gesture goes out (gestures.js) and the page repaints from the answer.

import { Cells } from './cells.js';
import { newId } from './gestures.js';
import { keeping } from './keeping.js';
import { editsOf, fill, keepDraft, restoreDrafts } from './forms.js';
import { addDays, daysFrom, daysOf } from './days.js';
import { Overlay, boxOf } from './overlay.js';
import { listen } from './strokes.js';
import { shareCells } from './clipboard.js';

const between = (low, value, high) => Math.min(high, Math.max(low, value));

// A remedy is seen before it is taken: where the findings stand beneath the chart, the changed weeks come into sight.
export function look(page) {
  const seen = page.querySelector('.marked-week') ?? page.querySelector('.chart');
  requestAnimationFrame(() => seen.scrollIntoView({ block: 'nearest', inline: 'center' }));
}

export function start(page, live) {
  const chart = page.querySelector('.chart');
  const svg = page.querySelector('svg.drawing');
  const overlay = new Overlay(page.querySelector('#strokes'));
  const cells = new Cells(svg);
  const season = page.dataset.season;
  const placeKey = `seasonwright.place.${season}`;
  const data = name => JSON.parse(page.dataset[name]);
  let cursor = null, anchor = null;

  // ---- what becomes of gestures ------------------------------------------------------------------------------------

  // A ghost stays until the page shows what it stands for.
  const { gestures, words, say, rest } = keeping(page, { shown: told => { clearGhosts(); showMade(told); }, failed: () => clearGhosts() });

  const send = (edits, on, draft) => edits.length && gestures.edit(edits, on, draft);

  // A form that made something does not stay filled in, to make it twice: the thing itself is shown, where it has a panel.
  const showMade = ({ draft, edits }) => {
    const form = draft && page.querySelector(`form[data-draft="${CSS.escape(draft)}"]`);
    if (!form?.dataset.edit.includes('"$new"')) return;
    form.reset();
    const made = form.dataset.thing && edits[0][form.dataset.thing];
    if (!made) return;
    const day = made.day ?? made.days?.first;
    move(day ? cells.find(cursor.track, weekOf(day), day) : cursor, { item: `${form.dataset.panel}/${made.id}` });
    svg.focus({ preventScroll: true });
  };
  const clearGhosts = () => { if (!strokes.runs) overlay.clear('.ghost'); };

  // ---- the cursor --------------------------------------------------------------------------------------------------

  const run = () => cursor ? cells.run(anchor ?? cursor, cursor) : [];

  const paintCursor = () => {
    overlay.clear('.here, .column');
    const chosen = run();
    if (!chosen.length) return;
    const box = boxOf(chosen);
    overlay.addBehind('rect', { x: box.x, width: box.width, y: 0, height: svg.viewBox.baseVal.height }, 'column');
    if (cursor.day && chosen.length > 1) for (const cell of chosen) overlay.add('rect', boxOf([cell]), 'here');
    else overlay.add('rect', { ...box, rx: 2 }, 'here');
    svg.setAttribute('aria-activedescendant', cursor.id);
    page.querySelector('#said').textContent = chosen.length > 1 ? `${chosen[0].label} – ${chosen.at(-1).label}` : '';
  };

  const weeksChosen = () => { const chosen = run(); return [chosen[0].week, chosen.at(-1).week]; };

  const gaps = () => {
    const weeks = data('weeks');
    const chosen = run();
    const [first, last] = chosen.length ? [chosen[0], chosen.at(-1)] : [{ week: 0 }, { week: 0 }];
    return { first: weeks[first.week].id, last: weeks[last.week].id, day: first.day ?? weeks[first.week].first, lastDay: last.day ?? weeks[last.week].last,
      weeksChosen: chosen.map(cell => weeks[cell.week].id), daysChosen: chosen.flatMap(cell => cell.day ? [cell.day] : daysOf(weeks[cell.week])) };
  };

  let showing = false, shownNext = null;
  const show = async place => {
    shownNext = place;
    if (showing) return;
    showing = true;
    while (shownNext) { const next = shownNext; shownNext = null; try { await live.invokeMethodAsync('Show', next); } catch { /* the connection is away; the page comes back with its place */ } }
    showing = false;
  };

  const move = (to, { extend = false, panel = true, item = null } = {}) => {
    if (!to) return;
    if (!extend || to.track !== cursor?.track) anchor = to; else anchor ??= cursor;
    cursor = to;
    paintCursor();
    sessionStorage.setItem(placeKey, JSON.stringify({ track: to.track, week: to.week, day: to.day }));
    if (panel) tellPanel(item);
  };
  const tellPanel = (item = null, make = null) => {
    const [first, last] = weeksChosen();
    const { day, lastDay } = gaps();
    return show({ track: cursor.track, first, last, day, lastDay, item, make });
  };

  // The drawing is painted anew below the cursor; it stays on its week and track.
  let followed = page.dataset.at;
  new MutationObserver(() => {
    // A finding that is pressed takes the cursor along.
    if (page.dataset.at !== followed) {
      followed = page.dataset.at;
      const [first, last] = followed.split(' ').map(week => cells.find('weeks', Number(week)));
      [anchor, cursor] = [first, last];
      paintCursor();
      svg.querySelector(`#${CSS.escape(last.id)}`)?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
      return;
    }
    if (!cursor) return;
    const before = [cursor, anchor ?? cursor];
    [cursor, anchor] = before.map(cell => cells.find(cell.track, cell.week, cell.day));
    paintCursor();
    // Weeks that have gone out of sight are not chosen any more: the panel names those that are.
    if (before.some((cell, end) => cell.week !== [cursor, anchor][end].week)) tellPanel();
  }).observe(page, { attributes: true, attributeFilter: ['data-number', 'data-layout', 'data-at'] });

  // ---- menus and panels --------------------------------------------------------------------------------------------

  const menuOf = track => document.getElementById(`choose-${track}`);

  const openMenu = first => {
    const menu = menuOf(cursor.track);
    if (!menu) return false;
    const box = boxOf(run()), frame = svg.getBoundingClientRect(), scale = frame.width / svg.viewBox.baseVal.width;
    menu.showPopover();
    const left = frame.left + (box.x + box.width) * scale - menu.offsetWidth / 2, below = frame.top + (box.y + box.height) * scale + 6;
    menu.style.left = `${between(8, left, innerWidth - menu.offsetWidth - 8)}px`;
    menu.style.top = `${below + menu.offsetHeight < innerHeight ? below : Math.max(8, frame.top + box.y * scale - menu.offsetHeight - 6)}px`;
    menu.querySelectorAll('form').forEach(refill);
    const field = menu.querySelector('input:not([type="hidden"]), select, button');
    field.focus();
    if (field.matches('input')) { if (first === undefined) field.select(); else field.value = first; }
    return true;
  };

  // A menu's form begins with what stands under the cursor: the run to rename, or the figures entered.
  const refill = form => {
    form.reset();
    const kind = form.dataset.of;
    const [id, item] = kind ? itemsAt(cursor)[0] ?? [] : [];
    if (kind) form.hidden = !item;
    const entry = item ? { [kind]: id.split('/')[1], name: item.paint.name } : data('entries')[cursor.track]?.[cursor.day ?? cursor.week];
    for (const field of form.elements) if (field.name) field.value = field.name.split('.').reduce((part, name) => part?.[name], entry) ?? '';
  };

  const makes = { matches: 'match', dates: 'match', events: 'event', tests: 'test', notes: 'note', months: 'event' };
  const itemsAt = cell => Object.entries(data('items')).filter(([id, item]) => {
    const kind = id.split('/')[0];
    const home = { matches: ['match'], dates: ['match', 'test'], events: ['event'], tests: ['test'], notes: ['note'], phases: ['phase'], blocks: ['block'] }[cell.track] ?? [];
    if (!home.includes(kind)) return false;
    const week = data('weeks')[cell.week];
    const [first, last] = cell.day ? [cell.day, cell.day] : [week.first, week.last];
    return item.day && item.day <= last && item.lastDay >= first;
  });

  const enter = () => {
    if (!cursor) return;
    const items = itemsAt(cursor);
    if (!makes[cursor.track]) { if (!openMenu()) tellPanel().then(focusPanel); }
    else if (items.length) tellPanel(items[0][0]).then(focusPanel);
    else add();
  };
  // On a track that holds no things, what is added is a note.
  const add = () => tellPanel(null, makes[cursor.track] ?? 'note').then(focusPanel);

  const focusPanel = () => requestAnimationFrame(() => (page.querySelector('.panel [data-first]') ?? page.querySelector('.panel input, .panel select, .panel button'))?.focus());

  const pick = button => {
    const menu = button.closest('[popover]');
    if (button.dataset.edit) {
      const edits = fill(JSON.parse(button.dataset.edit), gaps(), newId);
      send(edits, button.dataset.on);
      ghost(edits, menu ? cursor.track : button.dataset.track, button.dataset.look);
    }
    menu?.hidePopover();
    if (menu) svg.focus({ preventScroll: true });
  };

  // What is on its way is seen on its track at once: on the weeks it names, or on the chosen cells.
  const ghost = (edits, track, look = '') => {
    const weeks = data('weeks').map(week => week.id);
    const named = edits.flatMap(edit => [edit.first, edit.last]).map(id => weeks.indexOf(id)).filter(week => week >= 0).sort((a, b) => a - b);
    const aimed = !named.length && track === cursor.track ? run() : cells.all.filter(cell => cell.track === track && named[0] <= cell.week && cell.week <= named.at(-1));
    if (aimed.length) overlay.add('rect', { ...boxOf(aimed), rx: 2 }, `ghost ${look}`);
  };

  page.addEventListener('click', event => {
    const act = event.target.closest('[data-act]');
    if (act) {
      const acts = { undo: () => gestures.undo(act.dataset.on), redo: () => gestures.redo(act.dataset.on), again: () => gestures.again(), drop: rest,
        item: () => tellPanel(act.dataset.item).then(focusPanel), make: () => tellPanel(null, act.dataset.make).then(focusPanel), grid: () => svg.focus() };
      acts[act.dataset.act]?.();
      return;
    }
    const edit = event.target.closest('button[data-edit]');
    if (edit) pick(edit);
  });

  page.addEventListener('submit', event => {
    const form = event.target.closest('form[data-edit]');
    if (!form) return;
    event.preventDefault();
    if (!('auto' in form.dataset)) submit(form);
  });
  const submit = (form, fields) => {
    const menu = form.closest('[popover]');
    const edits = editsOf(form, gaps(), newId, fields);
    send(edits, form.dataset.on, form.dataset.draft);
    ghost(edits, menu ? cursor.track : form.dataset.track);
    if (menu) { menu.hidePopover(); svg.focus({ preventScroll: true }); }
  };

  // A form that saves itself sends what was changed since the page last painted it; the rest each week keeps.
  const touched = new WeakMap();
  page.addEventListener('change', event => {
    const form = event.target.closest('form[data-auto]');
    if (!form?.reportValidity()) return;
    const before = touched.get(form);
    const fields = before?.edit === form.dataset.edit ? before.fields : new Set();
    fields.add(form.elements.namedItem(event.target.dataset.mirror ?? event.target.name));
    touched.set(form, { edit: form.dataset.edit, fields });
    submit(form, fields);
  });
  page.addEventListener('input', event => {
    const { form, dataset, value } = event.target;
    if (dataset.mirror) form.elements.namedItem(dataset.mirror).value = value;
    keepDraft(event.target.closest('form[data-draft]'));
  });
  new MutationObserver(() => restoreDrafts(page)).observe(page.querySelector('.panel'), { childList: true, subtree: true });
  restoreDrafts(page);

  // ---- keys --------------------------------------------------------------------------------------------------------

  const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

  document.addEventListener('keydown', event => {
    if (!page.isConnected) return;
    const typing = event.target.closest?.('input, textarea, select');
    if ((event.ctrlKey || event.metaKey) && !typing) {
      const key = event.key.toLowerCase();
      if (key === 'z' && !event.shiftKey) { event.preventDefault(); gestures.undo(); }
      if (key === 'y' || (key === 'z' && event.shiftKey)) { event.preventDefault(); gestures.redo(); }
      return;
    }
    if (event.key === 'Escape') { if (strokes.runs) { strokes.cancel(); paintCursor(); return; } leavePanel(event); return; }
    if (event.key === '?' && !typing) { event.preventDefault(); live.invokeMethodAsync('Open', 'keys').then(focusPanel).catch(() => {}); }
  });

  const leavePanel = event => {
    const opened = page.matches('.with-panel');
    if (!opened && !event.target.closest?.('.panel')) return;
    event.preventDefault();
    if (opened) live.invokeMethodAsync('Open', '').catch(() => {});
    svg.focus({ preventScroll: true });
  };

  // In a menu the arrows go up and down, and the keys choose as they do on the chart.
  page.addEventListener('keydown', event => {
    const menu = event.target.closest('.choose');
    if (!menu || event.ctrlKey || event.metaKey || event.target.matches('input, select, textarea')) return;
    const buttons = [...menu.querySelectorAll('button')];
    const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    const chosen = menu.querySelector(`button[data-key="${CSS.escape(event.key)}"]`) ?? (/^(Delete|Backspace)$/.test(event.key) ? menu.querySelector('[data-erase]') : null);
    if (by) { event.preventDefault(); buttons[(buttons.indexOf(event.target) + by + buttons.length) % buttons.length].focus(); }
    if (chosen) { event.preventDefault(); pick(chosen); }
  });

  // Where the page begins: the week its panel shows.
  const home = () => cells.find('weeks', Number(page.dataset.here), null) ?? cells.all[0];
  svg.addEventListener('focus', () => { if (!cursor) move(home()); });

  svg.addEventListener('keydown', event => {
    if (!cursor || event.ctrlKey || event.metaKey) return;
    const arrow = arrows[event.key];
    if (arrow && event.altKey) { event.preventDefault(); shiftItem(arrow[0] * (event.shiftKey ? 7 : 1)); return; }
    if (arrow) { event.preventDefault(); move(cells.next(cursor, ...arrow), { extend: event.shiftKey && arrow[1] === 0 }); scrollTo(); return; }
    const row = cells.all.filter(cell => cell.track === cursor.track && Math.abs(cell.y - cursor.y) < 1);
    const done = {
      Home: () => move(row[0], { extend: event.shiftKey }), End: () => move(row.at(-1), { extend: event.shiftKey }),
      Enter: enter, ' ': () => menuOf(cursor.track)?.matches('[data-tick]') ? pick(menuOf(cursor.track).querySelector('button')) : enter(),
      n: add,
      Delete: () => erase(), Backspace: () => erase(),
      '+': () => cursor.track === 'load' && stepLoad(5), '-': () => cursor.track === 'load' && stepLoad(-5),
    }[event.key];
    if (done) { event.preventDefault(); done(); scrollTo(); return; }
    if (/^[0-9]$/.test(event.key)) {
      const menu = menuOf(cursor.track);
      const button = menu?.querySelector(`button[data-key="${event.key}"]`);
      if (button) { event.preventDefault(); pick(button); } else if (menu?.querySelector('input')) { event.preventDefault(); openMenu(event.key); }
    } else if (event.key.length === 1 && !event.altKey && menuOf(cursor.track)?.matches('[data-typed]')) { event.preventDefault(); openMenu(event.key); }
  });

  const scrollTo = () => document.getElementById(cursor.id)?.scrollIntoView({ block: 'nearest', inline: 'nearest' });

  const erase = () => {
    const button = menuOf(cursor.track)?.querySelector('[data-erase]');
    if (button) pick(button);
    else itemsAt(cursor).slice(0, 1).forEach(([, item]) => item.remove && send([item.remove]));
  };

  const shiftItem = days => {
    const found = itemsAt(cursor).find(([, item]) => item.move);
    if (!found || !days) return;
    moveItem(found[1], addDays(found[1].day, days));
    move(cells.find(cursor.track, weekOf(addDays(cursor.day ?? found[1].day, days)), cursor.day && addDays(cursor.day, days)));
  };
  const weekOf = day => { const index = data('weeks').findIndex(week => week.first <= day && day <= week.last); return index < 0 ? cursor.week : index; };
  const moveItem = (item, day) => {
    const lastDay = addDays(item.lastDay, daysFrom(item.day, day));
    send(fill(item.move, { day, lastDay, lastDayOrNone: item.lastDay === item.day ? undefined : lastDay }, newId));
  };

  const setLoads = levels => {
    const weeks = data('weeks'), reference = Number(page.dataset.reference);
    send(levels.map(([week, percent]) => ({ edit: 'setWeekLoad', first: weeks[week].id, last: weeks[week].id, load: Math.round(percent * reference / 100) })));
  };
  const percentOf = week => data('entries').load[week]?.load ?? 0;
  const stepLoad = by => { const [first, last] = weeksChosen(); const levels = []; for (let week = first; week <= last; week++) levels.push([week, between(0, percentOf(week) + by, 300)]); setLoads(levels); };

  shareCells({
    cells, data, run, weeksChosen, words,
    cursor: () => page.isConnected && document.activeElement === svg ? cursor : null,
    tracks: () => [...svg.querySelectorAll('g.track')].map(track => ({ id: track.dataset.track, name: track.querySelector('[role=row]')?.ariaLabel })),
    read: (text, from) => live.invokeMethodAsync('Paste', text, cursor.track, from.week, from.day).catch(() => ({ edits: [], problem: words.waiting })),
    send,
    say: () => { page.querySelector('#said').textContent = words.copied; },
    refuse: problem => say('refused', problem),
  });

  // ---- the pointer -------------------------------------------------------------------------------------------------

  const strokes = listen(svg, cells, overlay, {
    data, run, move, tellPanel, moveItem, setLoads, send,
    isHere: cell => cursor?.id === cell.id,
    enter,
    choose: () => openMenu() || (makes[cursor.track] && add()),
    settle: () => { if (!gestures.waiting) clearGhosts(); },
  });

  // ---- width, and where the cursor was -----------------------------------------------------------------------------

  const fit = () => {
    const width = Math.round(chart.clientWidth);
    document.cookie = `seasonwright-width=${width}; path=/; SameSite=Strict; Max-Age=31536000`;
    live.invokeMethodAsync('Fit', width).catch(() => {});
  };
  let settle = null;
  new ResizeObserver(() => { clearTimeout(settle); settle = setTimeout(fit, 120); }).observe(chart);

  // An address may name a week, or ask for publishing; from then on the cursor is the person's again.
  const asked = Number(/^#week-(\d+)$/.exec(location.hash)?.[1]), publishes = location.hash === '#publish';
  if (asked || publishes) history.replaceState(history.state, '', location.pathname);
  const place = asked ? { track: 'weeks', week: asked - 1, day: null } : JSON.parse(sessionStorage.getItem(placeKey) ?? 'null');
  move(place ? cells.find(place.track, place.week, place.day) : home(), { panel: !!place && !publishes });
  if (publishes) live.invokeMethodAsync('Open', 'publish').then(focusPanel).catch(() => {});
  page.dataset.live = 'yes';
}

