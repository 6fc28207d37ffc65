// The Year page comes as a picture of itself and is exchanged for a living one of the same looks a moment later. A button of
// the picture does nothing, and a press that began on the one and ended on the other is no click to the browser. What was
// meant is done here: a link at once, a button as soon as the page lives.

(() => {
  let pressed = null, meant = null;

  const control = event => event.target.closest?.('.year a, .year button');
  const sign = element => element?.outerHTML;
  const lives = () => document.querySelector('.year[data-live]');

  const mean = element => {
    if (element.matches('a')) { element.click(); return; }
    const waiting = meant;
    meant = sign(element);
    if (!waiting) requestAnimationFrame(look);
  };
  const look = () => {
    if (!lives()) { requestAnimationFrame(look); return; }
    const same = [...document.querySelectorAll('.year button')].find(button => sign(button) === meant);
    meant = null;
    same?.click();
  };

  addEventListener('pointerdown', event => { const element = control(event); pressed = element && event.button === 0 && { element, looks: sign(element) }; }, true);
  addEventListener('pointerup', event => {
    const before = pressed, now = control(event);
    pressed = null;
    if (before && !before.element.isConnected && sign(now) === before.looks) mean(now);
  }, true);
  addEventListener('click', event => {
    const button = control(event);
    if (!event.isTrusted || !button?.matches('button') || lives()) return;
    event.preventDefault();
    event.stopPropagation();
    mean(button);
  }, true);
})();
