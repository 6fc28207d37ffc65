// The room under the hand: sessions moved with the pointer, a finger or keys. Where a session can begin is judged by the
// server before it is moved: the script only shows the sentence of the half hour under the pointer.

import { keeping } from './keeping.js';
import { addDays } from './days.js';

const HALF = 30;

export function start(page, live) {
  let focuses = null;
  const { gestures, rest } = keeping(page, { shown: () => {
    // A session that was moved is drawn anew elsewhere, and keeps the focus.
    if (focuses) page.querySelector(`[data-session="${CSS.escape(focuses)}"]`)?.focus();
    focuses = null;
  } });
  const send = moves => moves.length && gestures.edit(moves, 'room');
  const put = (id, day, start) => { focuses = id; live.invokeMethodAsync('Put', id, day, start).then(send).catch(() => {}); };

  page.addEventListener('click', event => {
    const { act } = event.target.closest('[data-act]')?.dataset ?? {};
    if (act) { ({ undo: () => gestures.undo('room'), again: () => gestures.again(), drop: rest })[act]?.(); return; }
    const moves = event.target.closest('button[data-moves]');
    if (moves) { focuses = moves.dataset.shows ?? null; send(JSON.parse(moves.dataset.moves)); return; }
    const puts = event.target.closest('button[data-puts]');
    if (puts) { put(puts.dataset.puts, puts.dataset.day, puts.dataset.start); return; }
    // A session that was pressed goes to the half hour pressed next.
    const half = page.dataset.chosen && event.target.closest('.half.can, .half.cannot');
    if (half) put(page.dataset.chosen, half.parentElement.dataset.day, half.dataset.start);
  });

  // ---- keys: a session that has the focus goes half an hour or a day with Alt and an arrow ---------------------------------

  const timeOf = minutes => `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
  const minutesOf = time => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));

  const keys = event => {
    if (!page.isConnected) { document.removeEventListener('keydown', keys); return; }
    if (event.key === 'Escape') { if (!drag) live.invokeMethodAsync('Close').catch(() => {}); end(); }
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z' && !event.target.closest?.('input, textarea, select')) { event.preventDefault(); gestures.undo('room'); return; }
    const session = event.target.closest?.('.room-session');
    const hours = session?.closest('.room-hours, .lane-hours');
    const [days, halves] = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key] ?? [];
    if (!hours || days === undefined || !event.altKey || session.dataset.fixed) return;
    event.preventDefault();
    const across = hours.dataset.across ? [halves, days] : [days, halves];
    const begins = minutesOf(session.dataset.begins) + across[1] * HALF;
    if (begins >= 0 && begins < 24 * 60) put(session.dataset.session, addDays(hours.dataset.day, across[0]), timeOf(begins - begins % HALF));
  };
  document.addEventListener('keydown', keys);

  // ---- pointer: a mouse drags at once; a finger first presses a session, then drags it ---------------------------------------

  let drag = null;
  const says = document.createElement('p');
  says.className = 'drag-says';
  says.setAttribute('role', 'status');
  const place = event => {
    const hours = document.elementsFromPoint(event.clientX, event.clientY).map(one => one.closest('.room-hours[data-day], .lane-hours[data-day]')).find(one => one);
    if (!hours) return null;
    const box = hours.getBoundingClientRect(), count = Number(page.dataset.halves);
    // The upper edge of what is held, not the finger, says when it begins.
    const part = hours.dataset.across ? (event.clientX - drag.x + drag.box.left - box.left) / box.width : (event.clientY - drag.y + drag.box.top - box.top) / box.height;
    const half = Math.min(count - 1, Math.max(0, Math.round(part * count)));
    return { hours, half, day: hours.dataset.day, start: timeOf((Number(page.dataset.first) + half) * HALF) };
  };
  const end = () => {
    page.querySelectorAll('.aimed, .held').forEach(one => one.classList.remove('aimed', 'aimed-no', 'held'));
    says.remove();
    drag = null;
  };

  page.addEventListener('pointerdown', event => {
    const session = event.button === 0 && event.target.closest('.room-session');
    if (!session || session.dataset.fixed || event.pointerType === 'touch' && session.getAttribute('aria-pressed') !== 'true') return;
    const box = session.getBoundingClientRect();
    // What waits below the picture is held at its middle.
    drag = { id: session.dataset.session, session, x: event.clientX, y: event.clientY, box: session.closest('.room-hours, .lane-hours') ? box : { left: event.clientX, top: event.clientY }, moved: false, table: null };
  });
  const move = event => {
    if (!drag) return;
    if (!drag.moved && Math.hypot(event.clientX - drag.x, event.clientY - drag.y) < 6) return;
    if (!drag.moved) {
      const held = drag;
      held.moved = true;
      document.body.append(says);
      live.invokeMethodAsync('Judge', held.id).then(table => { held.table = table; }).catch(() => {});
    }
    drag.session.classList.add('held');
    page.querySelectorAll('.aimed').forEach(one => one.classList.remove('aimed', 'aimed-no'));
    const at = place(event);
    const why = at && drag.table?.[`${at.day} ${at.start}`];
    const half = at?.hours.querySelector(`.half.n${at.half}`);
    half?.classList.add('aimed');
    half?.classList.toggle('aimed-no', Boolean(why));
    says.classList.toggle('no', Boolean(why));
    says.textContent = !at ? '' : why ? `${at.start} ✕ ${why}` : drag.table ? `${at.start} ✓` : at.start;
    says.style.left = `${Math.min(event.clientX + 14, innerWidth - 270)}px`;
    says.style.top = `${event.clientY + 16}px`;
  };
  addEventListener('pointermove', move);
  addEventListener('pointerup', event => {
    if (drag?.moved) {
      const at = place(event), { id } = drag;
      // The release is no press of what lies beneath.
      addEventListener('click', click => { click.stopPropagation(); click.preventDefault(); }, { capture: true, once: true });
      setTimeout(() => dispatchEvent(new MouseEvent('click', { cancelable: true })), 0);
      if (at) put(id, at.day, at.start);
    }
    end();
  });
  addEventListener('pointercancel', end);
  // On a narrow window a day begins where somebody is in the room.
  page.querySelector('.lane-hours .room-session')?.scrollIntoView({ block: 'nearest', inline: 'center' });
  page.dataset.live = 'yes';
}
