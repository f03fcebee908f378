// Python in a worker: started from the site's own files, or from what is packed in a saved page.
//
// Asked by name with JSON text, it answers with JSON text; an answer that fails is a rejected promise. A worker that doesn't
// answer any more is replaced and asked again, once; where no worker can be had, Python works on the page's own thread.

import { isSaved, plainAddress, unpacked } from "./packed.js";

// What the worker of a saved page is given.
const GIVEN = ["pyodide.asm.wasm", "library.zip"];
const GIVEN_SCRIPTS = ["pyodide.mjs", "pyodide.asm.mjs"];
const PATIENCE_ANSWER = 45_000; // milliseconds: twelve levels take three seconds on a desk, and a phone is slower

export function startPython({ ready, failed, lacked, replaced }) {
  const waiting = new Map();
  let last = 0;
  let up = false; // whether Python has ever been ready
  let worker = null;

  function heard(event) {
    if (event.type === "error") {
      event.preventDefault?.();
      return gone(event.message ?? "");
    }
    const { data } = event;
    if (data.failed !== undefined) return failed(data.failed);
    if (data.lacked !== undefined) return lacked(data.lacked);
    if (data.ready) return come();
    const asked = waiting.get(data.id);
    if (!asked) return;
    forget(data.id);
    if (data.error !== undefined) asked.reject(new Error(data.error));
    else asked.resolve(JSON.parse(data.result));
  }

  function come() {
    if (up) return waiting.forEach(send); // the new one has heard nothing yet
    up = true;
    ready();
  }

  function listen({ worker: next, said }) {
    worker = next;
    worker.onmessage = heard;
    worker.onerror = heard;
    queueMicrotask(() => said.forEach(heard)); // when whoever called has what is returned
  }

  function forget(id) {
    clearTimeout(waiting.get(id)?.timer);
    waiting.delete(id);
  }

  function send(asked) {
    worker.postMessage({ id: asked.id, call: asked.call, payload: asked.payload });
    clearTimeout(asked.timer);
    asked.timer = setTimeout(() => silent(asked), PATIENCE_ANSWER);
  }

  // No answer for long: the worker hangs, or was killed, which nobody tells.
  function silent(asked) {
    if (asked.again || !worker.terminate) {
      forget(asked.id);
      return asked.reject(new Error(`no answer in ${PATIENCE_ANSWER / 1000} s`));
    }
    waiting.forEach((one) => {
      one.again = true;
      clearTimeout(one.timer);
    });
    worker.terminate();
    replaced();
    listen(newWorker(failed));
  }

  // A worker that never came up isn't to be had here: Python can work on the page's own thread, which then stands still now
  // and then. One that broke later is replaced like one that hangs.
  function gone(told) {
    if (up && worker.terminate) {
      const [asked] = waiting.values();
      if (asked) silent(asked);
      return;
    }
    worker.terminate?.();
    listen(ownThread(failed, told));
  }

  try {
    listen(isSaved() || typeof earlyWorker === "undefined" ? newWorker(failed) : { worker: earlyWorker, said: earlySaid });
  } catch (reason) {
    listen(ownThread(failed, String(reason?.message ?? reason)));
  }

  return function ask(call, payload) {
    last += 1;
    const id = last;
    return new Promise((resolve, reject) => {
      const asked = { id, call, payload: JSON.stringify(payload), resolve, reject, timer: 0, again: false };
      waiting.set(id, asked);
      send(asked);
    });
  };
}

// A worker of a file that was opened from a disk can't fetch: it is given every byte that it needs.
function newWorker(failed) {
  const worker = new Worker(pythonScript(), { type: "module" });
  if (isSaved()) giveParts(worker, failed);
  return { worker, said: [] };
}

function pythonScript() {
  return isSaved() ? plainAddress("worker") : new URL("./worker.js", import.meta.url).href;
}

async function giveParts(port, failed) {
  try {
    const bytes = await Promise.all([...GIVEN, ...GIVEN_SCRIPTS].map(unpacked));
    const named = (names, from) => Object.fromEntries(names.map((name, place) => [name, bytes[from + place]]));
    port.postMessage({ contents: named(GIVEN, 0), scripts: named(GIVEN_SCRIPTS, GIVEN.length) }, bytes);
  } catch (reason) {
    failed(String(reason?.message ?? reason));
  }
}

// The worker's own script on the page's thread, with a port in the worker's place.
function ownThread(failed, told) {
  const { port1, port2 } = new MessageChannel();
  const script = document.createElement("script");
  script.type = "module";
  script.src = pythonScript();
  script.onerror = () => failed(told);
  script.onload = () => {
    globalThis.bowstringServe(port2);
    if (isSaved()) giveParts(port1, failed);
  };
  document.head.append(script);
  return { worker: port1, said: [] };
}
