// The year below a question follows the answers: the form is sent with "draw", which changes nothing, and the drawing is taken from the answer.

for (const form of document.querySelectorAll('form[data-draws]')) {
  let latest = 0;
  form.addEventListener('change', async () => {
    const mine = ++latest;
    const asked = new FormData(form);
    asked.set('act', 'draw');
    try {
      const answer = await fetch(location.href, { method: 'POST', body: asked });
      const drawn = new DOMParser().parseFromString(await answer.text(), 'text/html');
      if (mine !== latest || !answer.ok) return;
      document.getElementById('drawn').replaceChildren(...drawn.getElementById('drawn').childNodes);
      for (const field of form.querySelectorAll('input[placeholder]')) field.placeholder = drawn.getElementById(field.id)?.placeholder ?? field.placeholder;
    } catch { /* The workspace does not answer; sending the form will say so. */ }
  });
}
