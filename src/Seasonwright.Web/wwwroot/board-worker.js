// The board opens without a connection: everything it is made of comes from the workspace while that answers soon, else as it last came.

const name = 'seasonwright-board', patience = 4000;

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', event => event.waitUntil(self.clients.claim()));
self.addEventListener('fetch', event => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith((async () => {
    const kept = await caches.open(name);
    const answering = fetch(request).then(async answer => {
      // Nothing but what was asked for is kept: some networks answer everything with a page of their own.
      const isPage = /^\/board\/[^/]+\/[^/]+$/.test(new URL(request.url).pathname);
      if (answer.ok && !answer.redirected && Boolean(answer.headers.get('Content-Type')?.includes('text/html')) === isPage) await kept.put(request, answer.clone()).catch(() => {});
      return answer;
    });
    const old = await kept.match(request, { ignoreVary: true });
    if (!old) return answering;
    const late = new Promise(resolve => setTimeout(() => resolve(null), patience));
    return await Promise.race([answering.catch(() => null), late]) ?? old;
  })());
});
