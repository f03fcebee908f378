// Python in a worker: started from the site's own files, or from what is packed in a saved page.
//
// Asked by name with JSON text, it answers with JSON text; an answer that fails is a rejected promise.

import { isSaved, unpacked } from "./packed.js";

export function startPython({ ready, failed }) {
  const waiting = new Map();
  let last = 0;
  const worker = isSaved() ? packedWorker(failed) : new Worker(new URL("./worker.js", import.meta.url), { type: "module" });

  worker.addEventListener("error", (event) => {
    event.preventDefault();
    failed(event.message ?? "");
  });

  worker.addEventListener("message", ({ data }) => {
    if (data.failed !== undefined) return failed(data.failed);
    if (data.ready) return ready();
    const asked = waiting.get(data.id);
    waiting.delete(data.id);
    if (data.error !== undefined) asked?.reject(new Error(data.error));
    else asked?.resolve(JSON.parse(data.result));
  });

  return function ask(call, payload) {
    last += 1;
    const id = last;
    return new Promise((resolve, reject) => {
      waiting.set(id, { resolve, reject });
      worker.postMessage({ id, call, payload: JSON.stringify(payload) });
    });
  };
}

// A worker of a file that was opened from a disk can't fetch: it is given every byte that it needs.
function packedWorker(failed) {
  const address = (bytes) => "data:text/javascript;base64," + document.getElementById(`packed-${bytes}`).textContent.trim();
  const worker = new Worker(address("worker"), { type: "module" });
  const names = ["pyodide.asm.wasm", "python_stdlib.zip", "packages.zip", "pyodide-lock.json"];
  Promise.all(names.map(unpacked)).then((contents) => {
    const files = Object.fromEntries(names.map((name, place) => [name, contents[place]]));
    const scripts = { "pyodide.mjs": address("pyodide.mjs"), "pyodide.asm.mjs": address("pyodide.asm.mjs") };
    worker.postMessage({ files, scripts }, contents);
  }, (reason) => failed(String(reason?.message ?? reason)));
  return worker;
}
