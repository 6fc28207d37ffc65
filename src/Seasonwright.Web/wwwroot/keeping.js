// The line that says what becomes of what a person did: on its way, kept, waiting, refused.

import { Gestures } from './gestures.js';
import { dropDraft } from './forms.js';

/** @param hears what a page does besides: shown(told) once the page shows what was kept, failed() when nothing came of it. */
export function keeping(page, { shown = () => {}, failed = () => {} }) {
  const status = page.querySelector('#keeping');
  const words = JSON.parse(page.dataset.words);
  const numberOf = on => Number(on === 'team' ? page.dataset.teamNumber : page.dataset.number);
  const awaitShown = (number, on) => new Promise(seen => {
    const look = () => { if (numberOf(on) < number) requestAnimationFrame(look); else seen(); };
    look();
  });
  const say = (state, sentence) => { status.dataset.state = state; page.querySelector('#keeping-words').textContent = sentence ?? words[state]; };
  const gestures = new Gestures(page.dataset.season, numberOf, told => {
    const { state } = told;
    say(state, told.sentence ?? told.sentences?.join(' '));
    if (state === 'kept') { dropDraft(told.draft); awaitShown(told.number, told.on).then(() => shown(told)); }
    if (state === 'refused' || state === 'trouble') failed();
  }, page.dataset.address);
  return { gestures, words, say, rest: () => { gestures.drop(); status.dataset.state = 'rest'; } };
}
