// The service worker of version 0.1, before the faces, as it was: a device that has it gets the page of today by it.

const VERSION = "@VERSION@"; // put in by the build, as are the files with their hashes
const FILES = "@FILES@";
const PREFIX = "bowstring-";
const CACHE = PREFIX + VERSION;
const TURNING = "turning"; // what an old page says that is about to be loaded anew
const PAGE = "./";
const at = (path) => new URL(path, self.registration.scope).href;

self.addEventListener("install", (event) => event.waitUntil(takeAll()));

async function takeAll() {
  await caches.delete(CACHE); // what a broken-off try has left
  const cache = await caches.open(CACHE);
  try {
    await Promise.all(
      Object.entries(FILES).map(async ([path, integrity]) => {
        const response = await fetch(at(path), { integrity, cache: "no-cache", credentials: "same-origin" });
        if (!response.ok) throw new Error(`${path}: ${response.status}`);
        await cache.put(at(path), response);
      }),
    );
  } catch (reason) {
    await caches.delete(CACHE);
    throw reason; // the version that was there stays whole
  }
}

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
  else if (event.data?.ask === "whole") event.waitUntil(mended().then((answer) => event.ports[0].postMessage(answer)));
});

// Tell whether every file is there, after fetching them again where they were not: a storage can be emptied under a page.
async function mended() {
  if (await whole()) return true;
  return takeAll().then(() => true, () => false);
}

async function whole() {
  const cache = await caches.open(CACHE);
  const kept = new Set((await cache.keys()).map((request) => request.url));
  return Object.keys(FILES).every((path) => kept.has(at(path)));
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(self.registration.scope)) return;
  event.respondWith(answer(request));
});

async function answer(request) {
  const url = request.url.split(/[?#]/)[0];
  const page = request.mode === "navigate" && (url === at(PAGE) || url === at("index.html"));
  const cache = await caches.open(CACHE);
  const kept = await cache.match(page ? at(PAGE) : url);
  // A page of an older version asks for its own files, whose names carry that version.
  return kept ?? (await caches.match(url)) ?? fetch(request);
}
