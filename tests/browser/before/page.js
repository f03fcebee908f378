// What the page of version 0.1 did that matters to whoever comes after it: it kept jobs twice, had its files put on the device,
// and turned to a newer version when somebody said so.

const TURNING = "turning";
const root = document.documentElement;
const workers = navigator.serviceWorker;
let turning = false;

const done = (request) => new Promise((resolve) => (request.onsuccess = () => resolve(request.result)));

// Keep texts by their keys, in the simple storage and in the browser's database.
globalThis.keep = async (texts) => {
  const request = indexedDB.open("bowstring.1", 1);
  request.onupgradeneeded = () => request.result.createObjectStore("kept");
  const database = await done(request);
  const change = database.transaction("kept", "readwrite");
  for (const [key, text] of Object.entries(texts)) {
    localStorage.setItem(key, text);
    change.objectStore("kept").put(text, key);
  }
  await new Promise((resolve) => (change.oncomplete = resolve));
  database.close();
};

workers.addEventListener("message", ({ data, ports }) => {
  if (data?.ask === "version") ports[0].postMessage(turning ? TURNING : root.dataset.version);
});
const registration = await workers.register(new URL("./sw.js", document.baseURI), { updateViaCache: "none" });
const offer = () => {
  if (registration.waiting && workers.controller) document.getElementById("update").hidden = false;
};
offer();
registration.addEventListener("updatefound", () => registration.installing?.addEventListener("statechange", offer));
document.addEventListener("visibilitychange", () => registration.update().catch(() => {}));
document.getElementById("update-take").addEventListener("click", () => {
  turning = true;
  workers.addEventListener("controllerchange", () => location.reload(), { once: true });
  registration.waiting?.postMessage({ ask: "take over" });
});
const { active } = await workers.ready;
const { port1, port2 } = new MessageChannel();
port1.onmessage = ({ data }) => data === true && (root.dataset.offline = "ready");
active.postMessage({ ask: "whole" }, [port2]);
