// The service worker: every file of one version on the device, all or none, so that the page works without a network.

const VERSION = "@VERSION@"; // put in by the build, as are the files with their hashes
const FILES = "@FILES@";
const PREFIX = "bowstring-";
const CACHE = PREFIX + VERSION;
const TURNING = "turning"; // what an old page says that is about to be loaded anew
const PAGE = "./";
const TYPES = {
  bin: "application/octet-stream",
  html: "text/html; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  json: "application/json",
  mjs: "text/javascript; charset=utf-8",
  png: "image/png",
  svg: "image/svg+xml",
  wasm: "application/wasm",
  webmanifest: "application/manifest+json",
  zip: "application/zip",
};
const at = (path) => new URL(path, self.registration.scope).href;

self.addEventListener("install", (event) => event.waitUntil(takeAll()));

async function takeAll() {
  await caches.delete(CACHE); // what a broken-off try has left
  const cache = await caches.open(CACHE);
  try {
    await Promise.all(Object.keys(FILES).map((path) => take(cache, path)));
  } catch (reason) {
    await caches.delete(CACHE);
    throw reason; // the version that was there stays whole
  }
}

async function take(cache, path) {
  const asked = (how) => fetch(at(path), { integrity: FILES[path], cache: how, credentials: "same-origin" });
  const response = await asked("no-cache").catch(() => asked("reload")); // the browser's own store may hold a damaged one
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  // A host's wrong type would be kept for good: a script of it is refused, wherever it comes from.
  await cache.put(at(path), new Response(response.body, { headers: { "content-type": typeOf(path) } }));
}

const typeOf = (path) => (path === PAGE ? TYPES.html : TYPES[path.split(".").pop()]);

// The page that brought this worker is taken in charge at once: only then does a newer version wait until it's let in.
self.addEventListener("activate", (event) => event.waitUntil(sweep().then(() => self.clients.claim())));

// Remove this page's own older versions, and none while a page of one is open that stays so: then the next version does it.
// Only when this version takes over, for at any other time a newer one could be on its way into a place that looks like a
// stranger's.
async function sweep() {
  const pages = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  const versions = await Promise.all(pages.map(versionOf));
  if (versions.some((version) => version !== VERSION && version !== TURNING)) return; // an old page, or one that doesn't say
  for (const name of await caches.keys()) {
    if (name.startsWith(PREFIX) && name !== CACHE) await caches.delete(name);
  }
}

function versionOf(page) {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data);
    setTimeout(() => resolve(null), 1000);
    page.postMessage({ ask: "version" }, [port2]);
  });
}

self.addEventListener("message", (event) => {
  if (event.data?.ask === "take over") self.skipWaiting();
  else if (event.data?.ask === "whole") event.waitUntil(whole().then((answer) => event.ports[0].postMessage(answer)));
});

// Tell whether every file is there and is what was published, after fetching anew those that aren't: a storage can be emptied
// under a page, and bytes in it can be harmed.
async function whole() {
  const cache = await caches.open(CACHE);
  let all = true;
  for (const path of Object.keys(FILES)) all = (await mended(cache, path)) && all;
  return all;
}

async function mended(cache, path) {
  if (await right(cache, path)) return true;
  await cache.delete(at(path));
  return take(cache, path).then(
    () => true,
    () => false,
  );
}

async function right(cache, path) {
  const kept = await cache.match(at(path));
  if (kept?.headers.get("content-type") !== typeOf(path)) return false;
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", await kept.arrayBuffer()));
  return `sha256-${btoa(String.fromCharCode(...digest))}` === FILES[path];
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(self.registration.scope)) return;
  event.respondWith(answer(request));
  // A harmed page may not even get as far as asking: it is looked at whenever it was given.
  if (request.mode === "navigate") event.waitUntil(caches.open(CACHE).then((cache) => mended(cache, PAGE)));
});

async function answer(request) {
  const url = request.url.split(/[?#]/)[0];
  const page = request.mode === "navigate" && (url === at(PAGE) || url === at("index.html"));
  const cache = await caches.open(CACHE);
  const kept = await cache.match(page ? at(PAGE) : url);
  // A page of an older version asks for its own files, whose names carry that version.
  return kept ?? (await caches.match(url)) ?? fetch(request);
}
