// Python in a worker: started from the site's own files, or from what is packed in a saved page.
//
// Asked by name with JSON text, it answers with JSON text; an answer that fails is a rejected promise.

import { isSaved, unpacked } from "./packed.js";

const GIVEN = ["pyodide.asm.wasm", "library.zip"]; // to the worker of a saved page

export function startPython({ ready, failed, lacked }) {
  const waiting = new Map();
  let last = 0;
  const { worker, said } = isSaved() ? packedWorker(failed) : servedWorker();

  function heard(event) {
    if (event.type === "error") {
      event.preventDefault();
      return failed(event.message ?? "");
    }
    const { data } = event;
    if (data.failed !== undefined) return failed(data.failed);
    if (data.lacked !== undefined) return lacked(data.lacked);
    if (data.ready) return ready();
    const asked = waiting.get(data.id);
    waiting.delete(data.id);
    if (data.error !== undefined) asked?.reject(new Error(data.error));
    else asked?.resolve(JSON.parse(data.result));
  }

  worker.onmessage = heard;
  worker.onerror = heard;
  queueMicrotask(() => said.forEach(heard)); // when whoever called has what is returned

  return function ask(call, payload) {
    last += 1;
    const id = last;
    return new Promise((resolve, reject) => {
      waiting.set(id, { resolve, reject });
      worker.postMessage({ id, call, payload: JSON.stringify(payload) });
    });
  };
}

// The one that the head of the page has started; `typeof`, for its script may not have come.
function servedWorker() {
  if (typeof earlyWorker !== "undefined") return { worker: earlyWorker, said: earlySaid };
  return { worker: new Worker(new URL("./worker.js", import.meta.url), { type: "module" }), said: [] };
}

// A worker of a file that was opened from a disk can't fetch: it is given every byte that it needs.
function packedWorker(failed) {
  const address = (name) => "data:text/javascript;base64," + document.getElementById(`packed-${name}`).textContent.trim();
  const worker = new Worker(address("worker"), { type: "module" });
  Promise.all(GIVEN.map(unpacked)).then((bytes) => {
    const contents = Object.fromEntries(GIVEN.map((name, place) => [name, bytes[place]]));
    const scripts = { "pyodide.mjs": address("pyodide.mjs"), "pyodide.asm.mjs": address("pyodide.asm.mjs") };
    worker.postMessage({ contents, scripts }, bytes);
  }, (reason) => failed(String(reason?.message ?? reason)));
  return { worker, said: [] };
}
