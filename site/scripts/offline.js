// Working without a network: the site's files are put on the device, and a newer version is offered, never forced.

import { isSaved } from "./packed.js";

const TURNING = "turning"; // said to the service worker by a page that is about to be loaded anew
const TURNED = "bowstring.1.turned"; // guards against reloading again and again
const PATIENCE_OFFLINE = 120_000; // milliseconds: what was emptied is fetched again on the way
let turning = false;

// `works` promises whether the page can compute: one that can't doesn't work without a network either.
export async function workOffline(root, { told, offered, works }) {
  async function ready(state) {
    if (!(await works())) return told("dead");
    root.dataset.offline = "ready";
    told(state);
  }

  if (isSaved()) return ready("saved"); // this file is all there is
  const workers = navigator.serviceWorker;
  if (!workers) return told("never");
  let registration;
  try {
    registration = await workers.register(new URL("./sw.js", document.baseURI), { updateViaCache: "none" });
  } catch {
    return told("failed");
  }
  if (!registration) return told("failed"); // some protections answer with nothing at all
  workers.addEventListener("message", ({ data, ports }) => {
    if (data?.ask === "version") ports[0].postMessage(turning ? TURNING : root.dataset.version);
  });
  watchForUpdates(registration, workers, offered);
  const waited = registration.installing ?? registration.active;
  if (!registration.active) {
    told("fetching");
    waited?.addEventListener("statechange", () => {
      if (waited.state === "redundant") told("failed");
    });
  }
  const { active } = await workers.ready; // not always the one that was asked for: a device's data can be cleared meanwhile
  if (!active || !(await whole(active))) return told("failed");
  await ready("ready");
}

// Ask the service worker whether every file of its version is there and is what was published.
function whole(worker) {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data === true);
    setTimeout(() => resolve(false), PATIENCE_OFFLINE);
    worker.postMessage({ ask: "whole" }, [port2]);
  });
}

function watchForUpdates(registration, workers, offered) {
  const offer = () => {
    if (registration.waiting && workers.controller) offered(() => change(registration, workers));
  };
  offer();
  registration.addEventListener("updatefound", () => registration.installing?.addEventListener("statechange", offer));
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") registration.update().catch(() => {}); // no network: next time
  });
}

function change(registration, workers) {
  turning = !turnedJustNow();
  if (turning) workers.addEventListener("controllerchange", () => location.reload(), { once: true });
  registration.waiting?.postMessage({ ask: "take over" });
}

function turnedJustNow() {
  try {
    const last = Number(sessionStorage.getItem(TURNED));
    sessionStorage.setItem(TURNED, String(Date.now()));
    return Date.now() - last < 10_000;
  } catch {
    return false;
  }
}
