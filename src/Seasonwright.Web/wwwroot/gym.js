// The Gym page under the hand: a field that says where it writes is sent as it is left, and the page answers with the edits that do it.

import { newId } from './gestures.js';
import { editsOf, fill } from './forms.js';
import { keeping } from './keeping.js';

export function start(page, live) {
  // What was pressed leads elsewhere once it is kept.
  let goes = null;
  const { gestures, rest } = keeping(page, { failed: () => { goes = null; }, shown: ({ edits }) => {
    if (goes) location.href = goes.replace('$made', edits[0].workout?.id ?? '');
    goes = null;
  } });
  const send = (edits, on) => edits.length && gestures.edit(edits, on ?? 'season');
  const write = (field, text) => live.invokeMethodAsync('Write', field, text).then(edits => { send(edits, page.dataset.writesOn); return edits.length > 0; }).catch(() => false);

  page.addEventListener('change', event => {
    const field = event.target.closest('[data-writes]');
    if (!field) return;
    write(field.dataset.writes, field.type === 'checkbox' ? field.checked ? 'yes' : '' : field.value).then(taken => { if (taken && 'clears' in field.dataset) { field.value = ''; } });
  });
  page.addEventListener('keydown', event => {
    const field = event.target.closest?.('input[data-writes]');
    if (event.key === 'Enter' && field) { event.preventDefault(); field.blur(); field.focus(); }
    if ((event.ctrlKey || event.metaKey) && !event.target.closest?.('input, textarea, select')) {
      const key = event.key.toLowerCase();
      if (key === 'z') { event.preventDefault(); event.shiftKey ? gestures.redo() : gestures.undo(); }
      if (key === 'y') { event.preventDefault(); gestures.redo(); }
    }
    // As in a table: up and down the weeks' column.
    const cell = event.target.closest?.('.weeks td');
    if (cell && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
      const row = event.key === 'ArrowUp' ? cell.parentElement.previousElementSibling : cell.parentElement.nextElementSibling;
      const to = row?.cells[cell.cellIndex]?.querySelector('input');
      if (to) { event.preventDefault(); to.focus(); to.select(); }
    }
  });
  page.addEventListener('click', event => {
    const { act, on } = event.target.closest('[data-act]')?.dataset ?? {};
    if (act) { ({ undo: () => gestures.undo(on), redo: () => gestures.redo(on), again: () => gestures.again(), drop: rest })[act]?.(); return; }
    const press = event.target.closest('button[data-press]');
    if (press) { write(press.dataset.press, ''); return; }
    const button = event.target.closest('button[data-edit]');
    if (!button || goes) return;
    goes = button.dataset.goes ?? null;
    send(fill(JSON.parse(button.dataset.edit), {}, newId), button.dataset.on);
  });
  page.addEventListener('submit', event => {
    const form = event.target.closest('form[data-edit]');
    if (!form) return;
    event.preventDefault();
    if (form.reportValidity()) send(editsOf(form, {}, newId), form.dataset.on);
  });
  page.dataset.live = 'yes';
}
