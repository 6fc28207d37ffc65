// The Week page under the hand: buttons and forms that say which edit they make, sessions moved with the pointer or keys.

import { newId } from './gestures.js';
import { editsOf, fill, keepDraft, restoreDrafts } from './forms.js';
import { addDays } from './days.js';
import { keeping } from './keeping.js';

const slots = ['morning', 'afternoon', 'evening'];

export function start(page, live) {
  // What was made, or moved to where it was pressed, is looked at.
  let shows = null, focuses = null;
  // A second press on what makes something, before the first is seen, makes nothing.
  let making = false;
  const { gestures, rest } = keeping(page, { failed: () => { making = false; }, shown: ({ edits }) => {
    making = false;
    const made = shows === '$made' ? edits[0].session.id : shows;
    if (made) live.invokeMethodAsync('Show', made).catch(() => {});
    // A session that was moved by key is drawn anew elsewhere, and keeps the focus.
    if (focuses) page.querySelector(`[data-session="${CSS.escape(focuses)}"]`)?.focus();
    shows = focuses = null;
  } });

  const send = (edits, on, draft) => edits.length && gestures.edit(edits, on ?? 'season', draft);

  page.addEventListener('click', event => {
    const { act, on } = event.target.closest('[data-act]')?.dataset ?? {};
    if (act) { ({ undo: () => gestures.undo(on), redo: () => gestures.redo(on), again: () => gestures.again(), drop: rest })[act]?.(); return; }
    const moves = event.target.closest('button[data-moves]');
    if (moves) { shows = moves.dataset.shows ?? null; move(moves.dataset.moves, moves.dataset.day, moves.dataset.slot); return; }
    const button = event.target.closest('button[data-edit]');
    if (!button || making) return;
    making = button.dataset.edit.includes('"$new"');
    shows = making ? '$made' : button.dataset.shows ?? null;
    send(fill(JSON.parse(button.dataset.edit), {}, newId), button.dataset.on);
  });

  page.addEventListener('submit', event => {
    const form = event.target.closest('form[data-edit]');
    if (!form) return;
    event.preventDefault();
    if (form.reportValidity()) send(editsOf(form, {}, newId), form.dataset.on, form.dataset.draft);
  });
  page.addEventListener('input', event => keepDraft(event.target.closest('form[data-draft]')));
  new MutationObserver(() => restoreDrafts(page)).observe(page.querySelector('.panel'), { childList: true, subtree: true });
  restoreDrafts(page);

  const move = (id, day, slot) => live.invokeMethodAsync('Move', id, day, slot).then(edits => { if (!edits.length) shows = focuses = null; send(edits); }).catch(() => {});

  // ---- keys: a session that has the focus goes a day or a part of the day with Alt and an arrow, and away with Delete -----

  document.addEventListener('keydown', event => {
    if (!page.isConnected) return;
    if (event.key === 'Escape') { if (!drag) live.invokeMethodAsync('Close').catch(() => {}); end(); }
    if ((event.ctrlKey || event.metaKey) && !event.target.closest?.('input, textarea, select')) {
      const key = event.key.toLowerCase();
      if (key === 'z') { event.preventDefault(); event.shiftKey ? gestures.redo() : gestures.undo(); }
      if (key === 'y') { event.preventDefault(); gestures.redo(); }
      return;
    }
    const session = event.target.closest?.('.session');
    if (!session) return;
    const { day, slot } = session.closest('.slot').dataset;
    const [days, parts] = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key] ?? [];
    if (days !== undefined && event.altKey) {
      event.preventDefault();
      const to = slots[slots.indexOf(slot) + parts];
      if (to) { focuses = session.dataset.session; move(focuses, addDays(day, days), to); }
    }
    if (event.key === 'Delete') { event.preventDefault(); send([{ edit: 'removeSession', session: session.dataset.session }]); }
  });

  // ---- pointer: mouse and pen drag; a finger scrolls, and moves by pressing the session and then the place -----------------

  let drag = null;
  const under = event => document.elementFromPoint(event.clientX, event.clientY)?.closest('.slot');
  const end = () => { page.querySelectorAll('.aimed, .held').forEach(one => one.classList.remove('aimed', 'held')); drag = null; };

  page.addEventListener('pointerdown', event => {
    const session = event.button === 0 && event.pointerType !== 'touch' && event.target.closest('.session');
    if (session) drag = { id: session.dataset.session, session, x: event.clientX, y: event.clientY, moved: false };
  });
  addEventListener('pointermove', event => {
    if (!drag) return;
    if (!drag.moved && Math.hypot(event.clientX - drag.x, event.clientY - drag.y) < 6) return;
    drag.moved = true;
    drag.session.classList.add('held');
    page.querySelectorAll('.aimed').forEach(slot => slot.classList.remove('aimed'));
    under(event)?.classList.add('aimed');
  });
  addEventListener('pointerup', event => {
    if (drag?.moved) {
      const slot = under(event), { id } = drag;
      // The release is no press of what lies beneath.
      addEventListener('click', click => { click.stopPropagation(); click.preventDefault(); }, { capture: true, once: true });
      setTimeout(() => dispatchEvent(new MouseEvent('click', { cancelable: true })), 0);
      if (slot) move(id, slot.dataset.day, slot.dataset.slot);
    }
    end();
  });
  addEventListener('pointercancel', end);
  page.dataset.live = 'yes';
}
