// Measures one edit on the Year page, on the page's own clock (performance.now). It only looks; the one thing it does itself
// is what the page is compared with.
window.stopwatch = (() => {
  const page = document.querySelector('.year'), svg = document.querySelector('svg.drawing'), strokes = document.querySelector('#strokes');
  const number = () => Number(page.dataset.number);
  let run = null;

  // A frame is out when the task after its animation callbacks gets its turn: style, layout and paint lie between the two.
  const afterFrame = then => requestAnimationFrame(() => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => then(performance.now());
    port2.postMessage(0);
  });

  // Other pages hear of an edit when this one does, so the drawing may come before the answer.
  const finish = () => { if (run.frame && run.acknowledged) run.done(); };

  const rowsChanged = new Set();
  new MutationObserver(changes => {
    if (!run) return;
    for (const { target } of changes) {
      const row = target.closest?.('g.track, [data-top]');
      if (row) rowsChanged.add(row);
    }
    if (run.dom || number() <= run.before) return;
    run.dom = performance.now();
    run.rows = rowsChanged.size;
    afterFrame(at => { run.frame = at; run.seen ??= at; finish(); });
  }).observe(page, { attributes: true, attributeFilter: ['data-number'], childList: true, subtree: true });

  const send = window.fetch;
  window.fetch = async (...request) => {
    if (run) run.sent ??= performance.now();
    const answer = await send(...request);
    if (run) { run.acknowledged ??= performance.now(); finish(); }
    return answer;
  };

  // The last of the trusted events that make up an edit: a release, a click or a key. Its time is when the browser got it.
  const hear = event => {
    if (!run || run.input || event.type !== run.until || !event.isTrusted || event.key === 'Control') return;
    run.input = event.timeStamp;
    run.handled = performance.now();
    const look = () => afterFrame(at => { if (run?.seen == null && strokes.querySelector('.ghost')) run.seen = at; else if (run && run.seen == null && at - run.input < 1000) look(); });
    look();
  };
  for (const type of ['pointerup', 'click', 'keydown']) addEventListener(type, hear, true);

  const timesOf = run => ({ seen: run.seen - run.input, sent: run.sent - run.input, acknowledged: run.acknowledged - run.input, dom: run.dom - run.input, frame: run.frame - run.input, rows: run.rows });

  return {
    /** Gets ready for one edit that ends with an event of a type. */
    arm(until) {
      rowsChanged.clear();
      run = { until, before: number() };
      run.finished = new Promise(done => run.done = done);
    },
    /** Times in ms since the input, once the frame is out. */
    async times() {
      await run.finished;
      const times = timesOf(run);
      run = null;
      return times;
    },
    /** The least there is: from a key to the frame that shows a mark changed by a script, with no server asked. */
    floor() {
      return new Promise(done => addEventListener('keydown', event => {
        const mark = svg.querySelector('g.track rect:not(.cell)'), was = mark.getAttribute('y');
        mark.setAttribute('y', Number(was) + 1);
        afterFrame(at => { mark.setAttribute('y', was); done(at - event.timeStamp); });
      }, { capture: true, once: true }));
    },
    /** The plain way: the same edit posted, the whole page fetched, its drawing put in place of the old one. */
    plain(edits) {
      return new Promise(done => addEventListener('keydown', async event => {
        const id = crypto.randomUUID();
        await send(location.pathname + '/gestures', { method: 'POST', headers: { 'Content-Type': 'application/json' },
          body: JSON.stringify({ id, basedOn: Number.MAX_SAFE_INTEGER, knows: [], on: 'season', act: 'edit', edits }) });
        const acknowledged = performance.now();
        const text = await (await send(location.pathname)).text();
        const fresh = new DOMParser().parseFromString(text, 'text/html').querySelector('svg.drawing');
        svg.replaceChildren(...document.importNode(fresh, true).childNodes);
        const dom = performance.now();
        afterFrame(at => done({ acknowledged: acknowledged - event.timeStamp, dom: dom - event.timeStamp, frame: at - event.timeStamp }));
      }, { capture: true, once: true }));
    },
  };
})();
