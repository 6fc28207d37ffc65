// Brings a page back after its live connection broke. Nothing is lost meanwhile: gestures wait in the tab (gestures.js).

document.getElementById('components-reconnect-modal')?.addEventListener('components-reconnect-state-changed', async event => {
  if (event.detail.state === 'rejected') location.reload();
  if (event.detail.state !== 'failed') return;
  // The workspace is down. Ask until it answers again; then it no longer knows this page, and a fresh one is needed.
  for (;;) {
    await new Promise(wake => setTimeout(wake, 1000));
    try {
      if ((await fetch('/look.css', { cache: 'no-store' })).ok) { location.reload(); return; }
    } catch { /* not yet */ }
  }
});
