// Strokes of the pointer over the chart: choosing a run of cells, drawing a level, moving a thing, stretching a run. What a
// stroke would do is drawn while it runs; when it ends, the hand (year.js) is asked to do it.

import { newId } from './gestures.js';
import { fill } from './forms.js';
import { addDays, daysFrom, spoken } from './days.js';
import { boxOf } from './overlay.js';

const between = (low, value, high) => Math.min(high, Math.max(low, value));

// A menu opened while the pointer is still being released would be closed by the release.
const afterRelease = act => setTimeout(act, 0);

/** Starts listening. @returns whether a stroke runs, and how to give it up. */
export function listen(svg, cells, overlay, hand) {
  let stroke = null;
  const scale = () => hand.data('scale');

  svg.addEventListener('pointerdown', event => {
    if (event.button !== 0) return;
    const at = cells.place(event);
    const cell = cells.at(at);
    if (!cell) return;
    svg.focus({ preventScroll: true });
    const hit = event.target.closest('[data-item]')?.dataset.item ?? null;
    const item = hit && hand.data('items')[hit];
    const side = item && nearEdge(event, item);
    const kind = side ? 'edge' : item?.move ? 'move' : cell.track === 'load' && scale().most ? 'load' : 'choose';
    // A level drawn in one of several chosen weeks is for all of them, so they stay chosen until it turns out to be a tap.
    const within = kind === 'load' && !event.shiftKey && hand.run().some(chosen => chosen.id === cell.id);
    stroke = { kind, from: cell, at, hit, item, side, within, moved: false, again: hand.isHere(cell) && !event.shiftKey };
    if (kind === 'choose' || (kind === 'load' && !within)) hand.move(cell, { extend: event.shiftKey, panel: false });
    svg.setPointerCapture(event.pointerId);
  });

  svg.addEventListener('pointermove', event => {
    const at = cells.place(event);
    if (!stroke) { hover(event, at); return; }
    if (!stroke.moved) {
      const [across, down] = [Math.abs(at.x - stroke.at.x), Math.abs(at.y - stroke.at.y)];
      if (Math.hypot(across, down) < 4) return;
      if (stroke.kind === 'load' && across > down) { stroke.kind = 'choose'; if (stroke.within) hand.move(stroke.from, { panel: false }); }
      stroke.moved = true;
    }
    overlay.clear('.aim');
    aims[stroke.kind](at, cells.nearest(stroke.from.track, at));
  });

  // What a running stroke shows.
  const aims = {
    choose: (at, nearest) => hand.move(nearest, { extend: true, panel: false }),
    load: at => {
      const { top, bottom, most } = scale();
      stroke.percent = between(0, Math.round((stroke.from.top + bottom - at.y) / (bottom - top) * most), most);
      for (const cell of levelCells(stroke)) {
        const y = cell.top + top + (bottom - top) * (1 - stroke.percent / most);
        overlay.add('rect', { x: cell.x + 1, width: Math.max(2, cell.width - 2), y, height: cell.top + bottom - y }, 'ghost aim');
      }
      overlay.say(at, `${stroke.percent} %`);
    },
    move: (at, nearest) => {
      stroke.target = cells.at(at) ?? nearest;
      stroke.day = dropDay(stroke);
      overlay.add('rect', { ...boxOf([stroke.target]), rx: 2 }, 'ghost aim');
      overlay.say(at, spoken(stroke.day));
    },
    edge: (at, nearest) => {
      stroke.target = nearest;
      overlay.add('rect', { ...boxOf(edgeRun(stroke)), rx: 2 }, 'ghost aim');
    },
  };

  svg.addEventListener('pointerup', () => {
    if (!stroke) return;
    const ended = stroke;
    stroke = null;
    if (!ended.moved) { tapped(ended); return; }
    overlay.keepAim();
    ends[ended.kind](ended);
  });

  // What an ended stroke does.
  const ends = {
    choose: () => { hand.tellPanel(); if (hand.run().length > 1) afterRelease(hand.choose); },
    load: ended => { hand.setLoads(levelCells(ended).map(cell => [cell.week, ended.percent])); hand.tellPanel(); },
    move: ended => {
      const by = daysFrom(ended.from.day && ended.from.track !== 'dates' ? ended.from.day : ended.item.day, ended.day);
      if (ended.day !== ended.item.day && by) hand.moveItem(ended.item, addDays(ended.item.day, by));
      hand.settle();
      hand.move(ended.target, { item: ended.hit });
    },
    edge: stretch,
  };

  const tapped = ({ kind, hit, item, from, again, within }) => {
    if (kind === 'move') hand.move(from, { item: hit });
    else if (again) afterRelease(hand.enter);
    else { if (within) hand.move(from, { panel: false }); hand.tellPanel(item ? hit : null); }
  };

  // A run's ends can be taken hold of within a few pixels; a short run only at its right end.
  const nearEdge = (event, item) => {
    if (!item.stretch) return null;
    const box = event.target.closest('[data-item]').getBoundingClientRect();
    const reach = event.pointerType === 'touch' ? 14 : 7;
    // An end that lies beyond the weeks in sight is not there to be taken.
    const [firstSeen, lastSeen] = cells.weeksSeen;
    if (box.right - event.clientX < reach && item.last <= lastSeen) return 'last';
    return event.clientX - box.left < reach && box.width > reach * 3 && item.first >= firstSeen ? 'first' : null;
  };

  const hover = (event, at) => {
    const item = event.target.closest?.('[data-item]');
    const known = item && hand.data('items')[item.dataset.item];
    svg.style.cursor = known && nearEdge(event, known) ? 'ew-resize' : known?.move ? 'grab' : cells.at(at)?.track === 'load' ? 'ns-resize' : 'cell';
  };

  const levelCells = ({ from }) => { const chosen = hand.run(); return chosen.some(cell => cell.id === from.id) ? chosen : [from]; };

  // Dropped on a whole week, a thing keeps its weekday.
  const dropDay = ({ target, from, item }) => {
    if (target.day) return target.day;
    const week = hand.data('weeks')[target.week];
    const day = addDays(week.first, ((daysFrom(week.first, from.day ?? item.day) % 7) + 7) % 7);
    return day <= week.last ? day : week.last;
  };

  // The weeks a thing would have, in sight or not; its other end stays.
  const stretched = ({ item, side, target }) => side === 'last' ? [item.first, Math.max(item.first, target.week)] : [Math.min(item.last, target.week), item.last];

  const edgeRun = ended => {
    const [first, last] = stretched(ended);
    return cells.all.filter(cell => cell.track === ended.from.track && first <= cell.week && cell.week <= last);
  };

  // Longer: painted on; shorter: the weeks let go are cleared.
  function stretch(ended) {
    const { item, side, target } = ended, weeks = hand.data('weeks');
    const [first, last] = stretched(ended);
    const edits = [];
    const over = (template, a, b) => edits.push(...fill(template, { first: weeks[a].id, last: weeks[b].id }, newId));
    if (item.stretch === 'days') {
      edits.push(...fill(item.move, { day: side === 'first' ? weeks[first].first : item.day, lastDay: side === 'last' ? target.day ?? weeks[last].last : item.lastDay }, newId));
    } else {
      if (first > item.first) over(item.erase, item.first, first - 1);
      if (last < item.last) over(item.erase, last + 1, item.last);
      if (first < item.first || last > item.last) over(item.paint, first, last);
    }
    hand.send(edits);
    hand.settle();
  }

  const cancel = () => { overlay.clear('.aim'); stroke = null; };
  svg.addEventListener('pointercancel', cancel);
  return { get runs() { return stroke !== null; }, cancel };
}
