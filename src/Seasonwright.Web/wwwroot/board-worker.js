// The board opens without a connection: everything it is made of comes from the workspace while that answers, else as it last came.

const name = 'seasonwright-board';

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', event => event.waitUntil(self.clients.claim()));
self.addEventListener('fetch', event => {
  if (event.request.method !== 'GET' || new URL(event.request.url).origin !== self.location.origin) return;
  event.respondWith((async () => {
    const kept = await caches.open(name);
    try {
      const answer = await fetch(event.request);
      if (answer.ok) await kept.put(event.request, answer.clone());
      return answer;
    } catch {
      return await kept.match(event.request) ?? Response.error();
    }
  })());
});
