// Python in a worker: started from the site's own files, or from what is packed in a saved page.
//
// Asked by name with JSON text, it answers with JSON text; an answer that fails is a rejected promise. A worker that doesn't
// answer any more is replaced and asked again, once; where no worker can be had, Python works on the page's own thread.

import { isSaved, plainAddress, unpacked } from "./packed.js";

// What the worker of a saved page is given.
const GIVEN = ["pyodide.asm.wasm", "library.zip"];
const GIVEN_LATER = "rest.bin";
const GIVEN_SCRIPTS = ["pyodide.mjs", "pyodide.asm.mjs"];
const PATIENCE_ANSWER = 45_000; // milliseconds: twelve levels take three seconds on a desk, and a phone is slower

// `mended` is asked when a start has failed: it tells whether it's worth another try. Give back `ask`, and `again`, which tries
// once more when all is given up.
export function startPython({ language, shownIn, ready, failed, lacked, replaced, mended }) {
  const waiting = new Map();
  let last = 0;
  let up = false; // whether Python has ever been ready
  let worker = null;
  let mending = false; // a start has failed, and is being looked into
  let tried = false; // and has been tried once more, since Python has answered last
  let over = null; // why there'll be no answer any more

  function heard(event) {
    if (event.type === "error") {
      event.preventDefault?.();
      return gone(event.message ?? "");
    }
    const { data } = event;
    if (data.failed !== undefined) return startFailed(data.failed);
    if (data.lacked !== undefined) return lacked(data.lacked);
    if (data.ready) return come();
    const asked = waiting.get(data.id);
    if (!asked) return;
    tried = false;
    forget(data.id);
    if (data.error !== undefined) asked.reject(new Error(data.error));
    else asked.resolve(JSON.parse(data.result));
  }

  async function startFailed(told) {
    if (mending || over !== null) return; // told twice of one failure
    mending = true;
    const another = !tried && (await mended());
    mending = false;
    tried = true;
    if (another) return begin();
    over = told;
    for (const { id, reject } of [...waiting.values()]) {
      forget(id);
      reject(new Error(told));
    }
    failed(told);
  }

  function begin() {
    worker?.terminate?.();
    try {
      listen(newWorker(startFailed));
    } catch (reason) {
      listen(ownThread(startFailed, String(reason?.message ?? reason)));
    }
    resend();
  }

  // What was asked of a worker that never came up.
  function resend() {
    if (!up) unheard();
  }

  // What this worker hasn't been asked yet; for what it has, it's waited as long from now on.
  function unheard() {
    for (const asked of waiting.values()) {
      if (asked.of === worker) wait(asked);
      else send(asked);
    }
  }

  function come() {
    if (up) return unheard();
    up = true;
    ready();
  }

  function listen({ worker: next, said }) {
    worker = next;
    worker.postMessage({ language, shownIn });
    worker.onmessage = worker.onerror = (event) => worker === next && heard(event);
    queueMicrotask(() => said.forEach(heard)); // when whoever called has what is returned
  }

  function forget(id) {
    clearTimeout(waiting.get(id)?.timer);
    waiting.delete(id);
  }

  function send(asked) {
    asked.of = worker;
    worker.postMessage({ id: asked.id, call: asked.call, payload: asked.payload });
    wait(asked);
  }

  function wait(asked) {
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
    listen(newWorker(startFailed));
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
    listen(ownThread(startFailed, told));
    resend();
  }

  if (isSaved() || typeof earlyWorker === "undefined") begin();
  else listen({ worker: earlyWorker, said: earlySaid });

  function ask(call, payload) {
    if (over !== null) return Promise.reject(new Error(over));
    last += 1;
    const id = last;
    return new Promise((resolve, reject) => {
      const asked = { id, call, payload: JSON.stringify(payload), resolve, reject, timer: 0, again: false, of: null };
      waiting.set(id, asked);
      send(asked);
    });
  }

  function again() {
    if (over === null) return;
    over = null;
    begin();
  }

  return { ask, again };
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
    const rest = await unpacked(GIVEN_LATER);
    port.postMessage({ rest }, [rest]);
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
    script.remove(); // a copy that the browser saves would have it
    if (!globalThis.bowstringServe) return failed(told); // it came, and wasn't what it should be
    globalThis.bowstringServe(port2);
    if (isSaved()) giveParts(port1, failed);
  };
  document.head.append(script);
  return { worker: port1, said: [] };
}
