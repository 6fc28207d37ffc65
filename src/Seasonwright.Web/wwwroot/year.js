// The Year page under the hand: a cursor over the cells, strokes of the pointer, keys. Everything a person sees while a
// stroke runs is drawn here at once; when it ends, one gesture goes out (gestures.js) and the page repaints from the answer.

import { Cells } from './cells.js';
import { Gestures, newId } from './gestures.js';
import { dropDraft, editsOf, fill, keepDraft, restoreDrafts } from './forms.js';

const addDays = (day, count) => { const date = new Date(day + 'T00:00:00Z'); date.setUTCDate(date.getUTCDate() + count); return date.toISOString().slice(0, 10); };
const daysFrom = (a, b) => Math.round((Date.parse(b) - Date.parse(a)) / 86400000);
const spoken = day => new Date(day + 'T00:00:00Z').toLocaleDateString(document.documentElement.lang, { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });
const between = (low, value, high) => Math.min(high, Math.max(low, value));

export function start(page, live) {
  const chart = page.querySelector('.chart');
  const svg = page.querySelector('svg.drawing');
  const overlay = page.querySelector('#strokes');
  const status = page.querySelector('#keeping');
  const words = JSON.parse(page.dataset.words);
  const cells = new Cells(svg);
  const season = page.dataset.season;
  const placeKey = `seasonwright.place.${season}`;
  const data = name => JSON.parse(page.dataset[name]);
  let cursor = null, anchor = null, stroke = null;

  // ---- what becomes of gestures ------------------------------------------------------------------------------------

  const gestures = new Gestures(season, () => Number(page.dataset.number), told => {
    const { state } = told;
    status.dataset.state = state;
    page.querySelector('#keeping-words').textContent = told.sentence ?? told.sentences?.join(' ') ?? words[state];
    if (state === 'kept') { dropDraft(told.draft); awaitShown(told.number); }
    if (state === 'refused' || state === 'trouble') clearGhosts();
  });

  const send = (edits, on, draft) => edits.length && gestures.edit(edits, on, draft);

  // A ghost stays until the page shows what it stands for.
  const awaitShown = number => {
    const look = () => Number(page.dataset.number) >= number ? clearGhosts() : requestAnimationFrame(look);
    look();
  };
  const clearGhosts = () => { if (!stroke) overlay.querySelectorAll('.ghost').forEach(ghost => ghost.remove()); };

  // ---- the cursor --------------------------------------------------------------------------------------------------

  const shape = (name, attributes, className) => {
    const element = document.createElementNS('http://www.w3.org/2000/svg', name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    element.setAttribute('class', className);
    overlay.append(element);
    return element;
  };
  const boxOf = run => { const x = Math.min(...run.map(c => c.x)), y = Math.min(...run.map(c => c.y)); return { x, y, width: Math.max(...run.map(c => c.x + c.width)) - x, height: Math.max(...run.map(c => c.y + c.height)) - y }; };
  const run = () => cursor ? cells.run(anchor ?? cursor, cursor) : [];

  const paintCursor = () => {
    overlay.querySelectorAll('.here, .column').forEach(mark => mark.remove());
    const chosen = run();
    if (!chosen.length) return;
    const box = boxOf(chosen);
    const column = shape('rect', { x: box.x, width: box.width, y: 0, height: svg.viewBox.baseVal.height }, 'column');
    overlay.prepend(column);
    if (cursor.day && chosen.length > 1) for (const cell of chosen) shape('rect', { x: cell.x, y: cell.y, width: cell.width, height: cell.height }, 'here');
    else shape('rect', { ...box, rx: 2 }, 'here');
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

  const daysOf = ({ first, last }) => Array.from({ length: daysFrom(first, last) + 1 }, (_, i) => addDays(first, i));

  let showing = false, shownNext = null;
  const show = async place => {
    shownNext = place;
    if (showing) return;
    showing = true;
    while (shownNext) { const next = shownNext; shownNext = null; try { await live.invokeMethodAsync('Show', next); } catch { /* the connection is away; the page comes back with its place */ } }
    showing = false;
  };

  const move = (to, { extend = false, panel = true, item = null, make = null } = {}) => {
    if (!to) return;
    if (!extend || to.track !== cursor?.track) anchor = to; else anchor ??= cursor;
    cursor = to;
    paintCursor();
    sessionStorage.setItem(placeKey, JSON.stringify({ track: to.track, week: to.week, day: to.day }));
    if (panel) tellPanel(item, make);
  };
  const tellPanel = (item = null, make = null) => {
    const [first, last] = weeksChosen();
    const { day, lastDay } = gaps();
    return show({ track: cursor.track, first, last, day, lastDay, item, make });
  };

  // The drawing is painted anew below the cursor; it stays on its week and track.
  new MutationObserver(() => {
    if (!cursor) return;
    const again = cell => cell && cells.find(cell.track, cell.week, cell.day);
    [cursor, anchor] = [again(cursor), again(anchor)];
    paintCursor();
  }).observe(page, { attributes: true, attributeFilter: ['data-number', 'data-layout'] });

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
    const form = menu.querySelector('form');
    form?.reset();
    const field = menu.querySelector('input, select, button');
    field.focus();
    if (first !== undefined && field.matches('input')) field.value = first;
    return true;
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

  const enter = fresh => {
    if (!cursor) return;
    const items = fresh ? [] : itemsAt(cursor);
    if (makes[cursor.track]) {
      if (items.length) tellPanel(items[0][0]).then(focusPanel);
      else tellPanel(null, makes[cursor.track]).then(focusPanel);
    } else if (!openMenu()) tellPanel().then(focusPanel);
  };

  const focusPanel = () => requestAnimationFrame(() => (page.querySelector('.panel [data-first]') ?? page.querySelector('.panel input, .panel select, .panel button'))?.focus());

  const pick = button => {
    const menu = button.closest('[popover]');
    if (button.dataset.edit) {
      send(fill(JSON.parse(button.dataset.edit), gaps(), newId), button.dataset.on);
      if (menu) ghost(button);
    }
    menu?.hidePopover();
    if (menu) svg.focus({ preventScroll: true });
  };

  const ghost = button => { const box = boxOf(run()); shape('rect', { ...box, rx: 2 }, `ghost ${button.dataset.look ?? ''}`); };

  page.addEventListener('click', event => {
    const act = event.target.closest('[data-act]');
    if (act) {
      const acts = { undo: () => gestures.undo(), redo: () => gestures.redo(), again: () => gestures.again(), drop: () => { gestures.drop(); status.dataset.state = 'rest'; },
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
    submit(form);
  });
  const submit = form => {
    send(editsOf(form, gaps(), newId), form.dataset.on, form.dataset.draft);
    const menu = form.closest('[popover]');
    if (menu) { menu.hidePopover(); svg.focus({ preventScroll: true }); }
  };
  page.addEventListener('change', event => { const form = event.target.closest('form[data-auto]'); if (form?.reportValidity()) submit(form); });
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
    if (event.key === 'Escape') { if (stroke) { cancel(); return; } if (event.target.closest?.('.panel')) { event.preventDefault(); svg.focus({ preventScroll: true }); } return; }
    if (event.key === '?' && !typing) { event.preventDefault(); live.invokeMethodAsync('Open', 'keys').then(focusPanel).catch(() => {}); }
  });

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

  svg.addEventListener('focus', () => { if (!cursor) move(cells.find('weeks', Number(page.dataset.here), null) ?? cells.all[0]); });

  svg.addEventListener('keydown', event => {
    if (!cursor || event.ctrlKey || event.metaKey) return;
    const arrow = arrows[event.key];
    if (arrow && event.altKey) { event.preventDefault(); shiftItem(arrow[0] * (event.shiftKey ? 7 : 1)); return; }
    if (arrow) { event.preventDefault(); move(cells.next(cursor, ...arrow), { extend: event.shiftKey && arrow[1] === 0 }); scrollTo(); return; }
    const row = cells.all.filter(cell => cell.track === cursor.track && Math.abs(cell.y - cursor.y) < 1);
    const done = {
      Home: () => move(row[0], { extend: event.shiftKey }), End: () => move(row.at(-1), { extend: event.shiftKey }),
      Enter: () => enter(false), ' ': () => menuOf(cursor.track)?.matches('[data-tick]') ? pick(menuOf(cursor.track).querySelector('button')) : enter(false),
      n: () => enter(true),
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
  const moveItem = (item, day, lastDay) => send(fill(item.move, { ...gaps(), day, lastDay: lastDay ?? addDays(item.lastDay, daysFrom(item.day, day)), lastDayOrNone: item.lastDay === item.day ? undefined : addDays(item.lastDay, daysFrom(item.day, day)) }, newId));

  const setLoads = levels => {
    const weeks = data('weeks'), reference = Number(page.dataset.reference);
    send(levels.map(([week, percent]) => ({ edit: 'setWeekLoad', first: weeks[week].id, last: weeks[week].id, load: Math.round(percent * reference / 100) })));
  };
  const percentOf = week => { const load = data('loads')[week]; return load === null ? null : load * 100 / Number(page.dataset.reference); };
  const stepLoad = by => { const [first, last] = weeksChosen(); const levels = []; for (let week = first; week <= last; week++) levels.push([week, between(0, Math.round((percentOf(week) ?? 0) + by), 200)]); setLoads(levels); };

  // ---- strokes of the pointer --------------------------------------------------------------------------------------

  const scale = () => JSON.parse(page.dataset.scale);

  svg.addEventListener('pointerdown', event => {
    if (event.button !== 0) return;
    const at = cells.place(event);
    const cell = cells.at(at);
    if (!cell) return;
    svg.focus({ preventScroll: true });
    const hit = event.target.closest('[data-item]')?.dataset.item ?? null;
    const item = hit && data('items')[hit];
    const edge = item && nearEdge(event, item);
    stroke = { from: cell, at, hit, item, moved: false, again: cursor?.id === cell.id && !event.shiftKey,
      kind: edge ? 'edge' : item?.move ? 'move' : cell.track === 'load' && scale().most ? 'load' : 'choose', side: edge };
    // A level drawn in one of several chosen weeks is for all of them, so they stay chosen until it turns out to be a tap.
    stroke.within = stroke.kind === 'load' && !event.shiftKey && run().some(chosen => chosen.id === cell.id);
    if (stroke.kind === 'choose' || (stroke.kind === 'load' && !stroke.within)) move(cell, { extend: event.shiftKey, panel: false });
    svg.setPointerCapture(event.pointerId);
  });

  // A run's ends can be taken hold of within a few pixels; a short run only at its right end.
  const nearEdge = (event, item) => {
    if (!item.stretch) return null;
    const box = event.target.closest('[data-item]').getBoundingClientRect();
    const reach = event.pointerType === 'touch' ? 14 : 7;
    if (box.right - event.clientX < reach) return 'last';
    return event.clientX - box.left < reach && box.width > reach * 3 ? 'first' : null;
  };

  svg.addEventListener('pointermove', event => {
    const at = cells.place(event);
    if (!stroke) { hover(event, at); return; }
    if (!stroke.moved && Math.hypot(at.x - stroke.at.x, at.y - stroke.at.y) < 4) return;
    if (!stroke.moved && stroke.kind === 'load' && Math.abs(at.x - stroke.at.x) > Math.abs(at.y - stroke.at.y)) { stroke.kind = 'choose'; if (stroke.within) move(stroke.from, { panel: false }); }
    stroke.moved = true;
    clearStroke();
    const target = cells.nearest(stroke.from.track, at);
    switch (stroke.kind) {
      case 'choose': move(target, { extend: true, panel: false }); break;
      case 'load': {
        const { top, bottom, most } = scale();
        stroke.percent = between(0, Math.round((stroke.from.top + bottom - at.y) / (bottom - top) * most), most);
        break;
      }
      case 'move': stroke.target = cells.at(at) ?? target; stroke.day = dropDay(stroke.target); shape('rect', { x: stroke.target.x, y: stroke.target.y, width: stroke.target.width, height: stroke.target.height, rx: 2 }, 'ghost aim'); label(at, spoken(stroke.day)); break;
      case 'edge': stroke.target = target; shape('rect', { ...boxOf(edgeRun(target)), rx: 2 }, 'ghost aim'); break;
    }
    if (stroke.kind === 'load') paintLevel(at);
  });

  const clearStroke = () => overlay.querySelectorAll('.aim').forEach(mark => mark.remove());

  const label = (at, words) => { const text = shape('text', { x: at.x + 12, y: at.y - 8, 'font-size': 12, 'font-weight': 600 }, 'ghost aim says'); text.textContent = words; };

  const paintLevel = at => {
    const { top, bottom, most } = scale();
    for (const cell of levelCells()) {
      const y = cell.top + top + (bottom - top) * (1 - stroke.percent / most);
      shape('rect', { x: cell.x + 1, width: Math.max(2, cell.width - 2), y, height: cell.top + bottom - y }, 'ghost aim');
    }
    label(at, `${stroke.percent} %`);
  };
  // The level goes to the chosen weeks when the stroke began in one of them.
  const levelCells = () => { const chosen = run(); return chosen.some(cell => cell.id === stroke.from.id) ? chosen : [stroke.from]; };

  const dropDay = cell => {
    if (cell.day) return cell.day;
    const week = data('weeks')[cell.week], grasped = stroke.from.day ?? stroke.item.day;
    const weekday = ((daysFrom(week.first, grasped) % 7) + 7) % 7;
    const day = addDays(week.first, weekday);
    return day <= week.last ? day : week.last;
  };

  const edgeRun = target => {
    const { item, side } = stroke;
    const fixed = cells.find(stroke.from.track, side === 'last' ? item.first : item.last, null);
    return cells.run(fixed, side === 'last' ? (target.week < item.first ? fixed : target) : (target.week > item.last ? fixed : target));
  };

  const hover = (event, at) => {
    const item = event.target.closest?.('[data-item]');
    const known = item && data('items')[item.dataset.item];
    svg.style.cursor = known && nearEdge(event, known) ? 'ew-resize' : known?.move ? 'grab' : cells.at(at)?.track === 'load' ? 'ns-resize' : 'cell';
  };

  const cancel = () => { clearStroke(); stroke = null; paintCursor(); };
  svg.addEventListener('pointercancel', cancel);

  svg.addEventListener('pointerup', event => {
    if (!stroke) return;
    const ended = stroke;
    const levels = ended.kind === 'load' && ended.moved ? levelCells() : [];
    stroke = null;
    if (!ended.moved) { tapped(ended); return; }
    overlay.querySelectorAll('.aim').forEach(mark => { mark.classList.remove('aim'); if (mark.matches('text')) mark.remove(); });
    switch (ended.kind) {
      case 'choose': tellPanel(); if (run().length > 1) afterRelease(() => openMenu() || (makes[cursor.track] && enter(true))); break;
      case 'load': setLoads(levels.map(cell => [cell.week, ended.percent])); tellPanel(); break;
      case 'move': if (ended.day !== ended.item.day) { const by = ended.from.day && ended.from.track !== 'dates' ? daysFrom(ended.from.day, ended.day) : daysFrom(ended.item.day, ended.day); if (by) moveItem(ended.item, addDays(ended.item.day, by)); } clearGhostsSoon(); move(ended.target, { item: ended.hit }); break;
      case 'edge': stretch(ended); break;
    }
  });
  // A menu opened while the pointer is still being released would be closed by the release.
  const afterRelease = act => setTimeout(act, 0);
  const clearGhostsSoon = () => { if (!gestures.waiting) clearGhosts(); };

  const tapped = ({ kind, hit, item, from, again, within }) => {
    if (kind === 'move') move(from, { item: hit });
    else if (again) afterRelease(() => enter(false));
    else { if (within) move(from, { panel: false }); tellPanel(item ? hit : null); }
  };

  // Longer: painted on; shorter: the weeks let go are cleared.
  const stretch = ended => {
    stroke = ended;
    const chosen = edgeRun(ended.target);
    stroke = null;
    const { item } = ended, weeks = data('weeks');
    const [first, last] = [chosen[0].week, chosen.at(-1).week];
    if (item.stretch === 'days') { send(fill(item.move, { day: ended.side === 'first' ? weeks[first].first : item.day, lastDay: ended.side === 'last' ? ended.target.day ?? weeks[last].last : item.lastDay }, newId)); return; }
    const edits = [];
    const over = (template, a, b) => edits.push(...fill(template, { first: weeks[a].id, last: weeks[b].id }, newId));
    if (first > item.first) over(item.erase, item.first, first - 1);
    if (last < item.last) over(item.erase, last + 1, item.last);
    if (first < item.first || last > item.last) over(item.paint, first, last);
    send(edits);
    if (!edits.length) clearGhosts();
  };

  // ---- width, and where the cursor was -----------------------------------------------------------------------------

  const fit = () => {
    const width = Math.round(chart.clientWidth);
    document.cookie = `seasonwright-width=${width}; path=/; SameSite=Strict; Max-Age=31536000`;
    live.invokeMethodAsync('Fit', width).catch(() => {});
  };
  let settle = null;
  new ResizeObserver(() => { clearTimeout(settle); settle = setTimeout(fit, 120); }).observe(chart);

  const place = JSON.parse(sessionStorage.getItem(placeKey) ?? 'null');
  if (place) move(cells.find(place.track, place.week, place.day));
  page.dataset.live = 'yes';
}

