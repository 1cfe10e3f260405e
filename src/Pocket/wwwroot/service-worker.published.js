// Keeps the desk itself on the device, whole and checked, so that it opens with no signal. One store for each version; the old
// one goes when the new one takes over, which it does only when a person says so or no page of the old one is open.
'use strict';
self.importScripts('./service-worker-assets.js');

const store = 'watersown-' + self.assetsManifest.version;
const wanted = [/\.dll$/, /\.wasm$/, /\.html$/, /\.js$/, /\.css$/, /\.json$/, /\.webmanifest$/, /\.svg$/, /\.png$/, /\.dat$/, /\.blat$/, /\.woff2$/];
const unwanted = [/^service-worker(-assets)?(\.published)?\.js$/, /\.map$/, /\.pdb$/];
// What the host answers itself, and nothing kept may stand in for.
const host = [/^\/api(\/|$)/, /^\/l(\/|$)/, /^\/text$/, /^\/sign-/];

self.addEventListener('install', event => event.waitUntil(install()));
self.addEventListener('activate', event => event.waitUntil(activate()));
self.addEventListener('message', event => { if (event.data === 'take-over') self.skipWaiting(); });
self.addEventListener('fetch', event => {
  const address = new URL(event.request.url);
  if (event.request.method !== 'GET' || address.origin !== self.location.origin || host.some(h => h.test(address.pathname))) return;
  event.respondWith(answer(event.request));
});

async function install() {
  const cache = await caches.open(store);
  const assets = self.assetsManifest.assets.filter(a => wanted.some(w => w.test(a.url)) && !unwanted.some(u => u.test(a.url)));
  await cache.addAll(assets.map(a => new Request(a.url, { integrity: a.hash, cache: 'no-cache' })));
}

async function activate() {
  for (const name of await caches.keys()) if (name.startsWith('watersown-') && name !== store) await caches.delete(name);
  await self.clients.claim();
}

async function answer(request) {
  const cache = await caches.open(store);
  const kept = request.mode === 'navigate' ? await cache.match('index.html') : await cache.match(request, { ignoreSearch: true });
  return kept ?? fetch(request);
}
