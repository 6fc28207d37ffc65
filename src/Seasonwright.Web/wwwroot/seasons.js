// The year below a question follows the answers: the form is sent with "draw", which changes nothing, and the drawing is taken from the answer.

import { dropDraft, keepDraft, restoreDrafts } from './forms.js';

const isFilledIn = field => ['checkbox', 'radio'].includes(field.type) ? field.checked !== field.defaultChecked : field.defaultValue !== undefined && field.value !== field.defaultValue;

const PAUSE = 350; // ms without a key before a list that is being typed is read
const BEFORE_MARKED = 60; // px of a drawing that stay in sight before what is marked in it

for (const form of document.querySelectorAll('form[data-draws]')) {
  const box = form.querySelector('textarea'), drawn = document.getElementById('drawn'), file = form.querySelector('input[type=file]');
  let latest = 0, pause = 0;

  async function send(act) {
    const asked = new FormData(form);
    asked.set('act', act);
    // A file takes the place of the one that the form keeps.
    if (file?.files.length) asked.delete('kept');
    const answer = await fetch(location.href, { method: 'POST', body: asked });
    return { answer, page: new DOMParser().parseFromString(await answer.text(), 'text/html') };
  }

  async function draw() {
    const mine = ++latest;
    clearTimeout(pause);
    drawn.ariaBusy = 'true';
    try {
      const { answer, page } = await send('draw');
      if (mine === latest) (answer.ok ? show(page) : trouble());
    } catch { /* The workspace does not answer; sending the form will say so. */ }
    if (mine === latest) drawn.ariaBusy = null;
  }

  const trouble = () => { for (const words of form.querySelectorAll('.trouble')) words.hidden = false; };

  // The workspace does not take it in at all, so it could not say so.
  function isTooLarge() {
    const isLarge = file.files[0]?.size > file.dataset.most;
    form.querySelector('.too-large').hidden = !isLarge;
    return isLarge;
  }

  function show(page) {
    const [here, opened] = [document.activeElement?.id, [...drawn.querySelectorAll('details[open] > summary')].map(summary => summary.textContent)];
    drawn.replaceChildren(...page.getElementById('drawn').childNodes);
    for (const summary of drawn.querySelectorAll('details > summary')) summary.parentElement.open ||= opened.includes(summary.textContent);
    if (here && document.activeElement?.id !== here) document.getElementById(here)?.focus({ preventScroll: true });
    for (const field of form.querySelectorAll('input[placeholder]')) field.placeholder = page.getElementById(field.id)?.placeholder ?? field.placeholder;
    if (!file?.files.length || drawn.querySelector('.problems')) return;
    // What could be read stays in the form: a copied table in the box, as if it had been typed, a file as the form keeps it.
    if (box) box.value = page.getElementById(box.id).value;
    file.value = '';
    keepDraft(form);
  }

  // Joined cells of a copied table are only in its HTML: that is read as a saved page is, in place of the text.
  box?.addEventListener('paste', event => {
    const html = event.clipboardData.getData('text/html');
    if (!/<t[dh][^>]*(row|col)span/i.test(html) || box.selectionEnd - box.selectionStart < box.value.length) return;
    event.preventDefault();
    const copied = new DataTransfer();
    copied.items.add(new File([html], box.dataset.pasted, { type: 'text/html' }));
    file.files = copied.files;
    draw();
  });

  // What was filled in before this script was alive has not been read yet.
  if ([...form.elements].some(isFilledIn)) draw();

  // What is typed into the box has been read already when it is left.
  form.addEventListener('change', event => {
    if (event.target === file && isTooLarge()) file.value = '';
    else if (event.target !== box) draw();
  });
  if (!box) continue;

  form.addEventListener('input', event => {
    if (event.target.matches('[data-free]')) event.target.parentElement.querySelector('[type=radio]').checked = true;
    if (event.target !== box) return;
    keepDraft(form);
    clearTimeout(pause);
    pause = setTimeout(draw, PAUSE);
  });

  // Sent from here, so that a workspace that does not answer costs nothing of what was typed.
  form.addEventListener('submit', async event => {
    event.preventDefault();
    const button = event.submitter;
    button.disabled = true;
    latest++;
    clearTimeout(pause);
    try {
      const { answer, page } = await send('take');
      if (answer.redirected) {
        dropDraft(form.dataset.draft);
        location.assign(answer.url);
      } else if (answer.ok) show(page);
      else throw new Error(answer.status);
    } catch {
      trouble();
      button.disabled = false;
    }
  });

  if (box.value !== '') continue;
  restoreDrafts(form.parentElement);
  if (box.value !== '') draw();
}

// The picture beside the choices of a poster shows what they make of it.
for (const picture of document.querySelectorAll('img[data-shows]')) {
  const form = picture.closest('form');
  const show = () => {
    const asked = new URLSearchParams(new FormData(form));
    asked.set('shown', '1');
    picture.src = `${picture.dataset.shows}?${asked}`;
  };
  form.addEventListener('change', show);
}

// A search box over rules that stand on the page: those without the words go while they are typed.
for (const box of document.querySelectorAll('input[data-narrows]')) {
  const rules = [...document.querySelectorAll('.rule')].map(rule => [rule, [...rule.querySelectorAll('.rule-name, .rule-says, label')].map(part => part.textContent).join(' ').toLowerCase()]);
  box.addEventListener('input', () => {
    const words = box.value.toLowerCase().split(/\s+/).filter(word => word);
    for (const [rule, text] of rules) rule.hidden = !words.every(word => text.includes(word));
    for (const scope of document.querySelectorAll('.scope')) scope.hidden = !scope.querySelector('.rule:not([hidden])');
    document.getElementById('none-found').hidden = rules.some(([rule]) => !rule.hidden);
  });
}

// A drawing wider than its frame opens at the first week that is marked in it.
const found = document.getElementById('found');
if (found) {
  const seen = new WeakMap();
  const look = () => {
    for (const frame of found.querySelectorAll('.picture')) {
      const marked = frame.querySelector('.marked-week'), at = marked?.getAttribute('x');
      if (!marked || seen.get(frame) === at) continue;
      seen.set(frame, at);
      frame.scrollLeft += marked.getBoundingClientRect().left - frame.getBoundingClientRect().left - BEFORE_MARKED;
    }
  };
  new MutationObserver(look).observe(found, { childList: true, subtree: true });
  look();
}

// A button that copies what stands elsewhere on the page; without this script it is not there.
for (const button of document.querySelectorAll('button[data-copies]')) button.hidden = false;
document.addEventListener('click', async event => {
  const button = event.target.closest('button[data-copies]');
  if (!button) return;
  const words = button.textContent, text = document.getElementById(button.dataset.copies);
  try {
    await navigator.clipboard.writeText(text.textContent);
    button.textContent = button.dataset.copied;
    setTimeout(() => { button.textContent = words; }, 2000);
  } catch { getSelection().selectAllChildren(text); /* The browser does not let us: it stands marked, to be copied by hand. */ }
});
