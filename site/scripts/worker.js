// Python's side of the page: starts the browser's Python from this site's own files and passes questions to the package.
// In a worker; where none can be had the page loads this same file into its own thread and gives it a port.
//
// In:  {language, shownIn} once: in which everything is said, and the unit in which every length is shown (empty: the job's own)
//      then {id, call, payload}    payload is JSON text
// Out: {ready: true, version} once; then {id, result} (JSON text) or {id, error} for each question
//      {failed: message} when Python can't be started; questions are not answered then
//      {lacked: name} when a module was missing and the whole library has been fetched for it
//
// Nothing is laid out, computed or worded here. How long to wait before giving up is the page's business.

const VERSION = "@VERSION@"; // put in by the build, as is the runtime's lock
const LOCK = "@LOCK@";
const WORKER = "WorkerGlobalScope" in self;
const SAVED = import.meta.url.startsWith("data:"); // of a page that was opened from a disk
const NOWHERE = "https://packed.invalid/"; // an address that no network has: what is asked there is given
const LIBRARY = "library.zip"; // compiled, and cut to what the first face of the page imports
const REST = "rest.bin"; // what other faces import: fetched once there is an answer, or when it's asked for
const WHOLE = "python_stdlib.zip"; // as the runtime brings it: fetched only when something is missing
const TYPES = { wasm: "application/wasm", zip: "application/zip", bin: "application/octet-stream" };
const AT_ONCE = ["numbers", "example"]; // questions that seldom need the rest
const beside = (path) => new URL(path, import.meta.url).href;

const networkFetch = self.fetch.bind(self);

// The library is checked against its hash: a harmed byte in it could be another number on the sheet.
const HASHES = { [`./python/${LIBRARY}`]: "@LIBRARY@", [`./python/${REST}`]: "@REST@" };

async function fetched(path) {
  const response = await networkFetch(beside(path), { integrity: HASHES[path] ?? "" });
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  return rightlyTyped(response, path);
}

// A server that gives the runtime under a wrong type would have it refused, or the start hang.
function rightlyTyped(response, name) {
  return response.headers.get("content-type") === typeOf(name) ? response : typed(response.body, name);
}

const typeOf = (name) => TYPES[name.split(".").pop()];
const typed = (body, name) => new Response(body, { headers: { "content-type": typeOf(name) } });

// What the runtime asks for is on its way before it asks.
async function served() {
  const files = { "pyodide.asm.wasm": fetched("./pyodide/pyodide.asm.wasm"), [LIBRARY]: fetched(`./python/${LIBRARY}`) };
  for (const file of Object.values(files)) file.catch(() => {}); // a failure is told where it's awaited
  const runtime = import(beside("./pyodide/pyodide.asm.mjs"));
  runtime.catch(() => {});
  const { loadPyodide } = await import(beside("./pyodide/pyodide.mjs"));
  return { loadPyodide, createPyodideModule: (await runtime).default, files };
}

// In a saved page nothing can be fetched: the page gives every byte.
async function given() {
  const { contents, scripts } = await packed;
  const files = {};
  for (const name of ["pyodide.asm.wasm", LIBRARY]) files[name] = typed(contents[name], name); // bytes: of a stream Firefox compiles slowly
  const { loadPyodide } = await brought(scripts["pyodide.mjs"]);
  const { default: createPyodideModule } = await brought(scripts["pyodide.asm.mjs"]);
  return { loadPyodide, createPyodideModule, files };
}

// Import a script of which there are only the bytes: by a short address where that is allowed, otherwise by one that holds
// the text. Each fault that the runtime meets on its way carries its script's address, and a long one costs seconds.
async function brought(bytes) {
  const short = URL.createObjectURL(new Blob([bytes], { type: "text/javascript" }));
  try {
    return await imported(short);
  } catch {
    return await imported(longAddress(bytes));
  } finally {
    URL.revokeObjectURL(short);
  }
}

// By hand: a worker of such a page may be refused its own blobs, as WebKit does.
function longAddress(bytes) {
  const signs = new Uint8Array(bytes);
  let text = "";
  for (let at = 0; at < signs.length; at += 8192) text += String.fromCharCode(...signs.subarray(at, at + 8192));
  return `data:text/javascript;base64,${btoa(text)}`;
}

// On a page's own thread the policy lets in only a script element that was made.
async function imported(address) {
  if (WORKER) return import(address);
  const text = `import * as all from ${JSON.stringify(address)}; globalThis.bowstringBrought = all;`;
  await new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.type = "module";
    script.onload = resolve;
    script.onerror = () => reject(new Error("a part of this file couldn't be read"));
    script.src = `data:text/javascript,${encodeURIComponent(text)}`;
    document.head.append(script);
  });
  return globalThis.bowstringBrought;
}

async function start() {
  const { loadPyodide, createPyodideModule, files } = await (SAVED ? given() : served());
  await Promise.all(Object.values(files)); // the runtime would wait for ever for one that doesn't come
  const before = self.fetch;
  self.fetch = (address, ...rest) => files[String(address).split("/").pop()] ?? before(address, ...rest);
  const { instantiateStreaming } = WebAssembly;
  try {
    // The runtime only warns of a core that can't be compiled, and waits for ever.
    const broken = new Promise((_resolve, reject) => {
      WebAssembly.instantiateStreaming = (...given) => {
        const made = instantiateStreaming.apply(WebAssembly, given);
        made.catch(reject);
        return made;
      };
    });
    const started = loadPyodide({
      indexURL: NOWHERE,
      stdLibURL: NOWHERE + LIBRARY,
      lockFileContents: LOCK,
      createPyodideModule: async (settings) => createPyodideModule(settings),
      packages: [],
    });
    return await Promise.race([started, broken]);
  } finally {
    self.fetch = before; // on a page's own thread others need it
    WebAssembly.instantiateStreaming = instantiateStreaming;
  }
}

// The whole library stands before the cut one, and behind what was imported from that; code is good for either.
const COMPLETE = `
import importlib, sys
whole, cut = "/lib/whole.zip", "/lib/python314.zip"
sys.path.insert(0, whole)
for module in list(sys.modules.values()):
    places = getattr(module, "__path__", None)
    if isinstance(places, list) and len(places) == 1 and str(places[0]).startswith(cut):
        places.append(whole + places[0][len(cut):])
importlib.invalidate_caches()
`;

// Fetch the whole of Python's library where a module is in neither part, and tell it.
async function fetchWhole(pyodide) {
  const whole = await fetched(`./pyodide/${WHOLE}`);
  pyodide.FS.writeFile("/lib/whole.zip", new Uint8Array(await whole.arrayBuffer()));
  pyodide.runPython(COMPLETE);
}

// Answer what comes to a port: the worker's own, or one that the page has made.
function serve(port) {
  let complete = false;
  let fetching = null; // the rest, on its way or there
  let held = false; // it is there
  let lost = false; // it didn't come, which was told
  let give;
  let giveRest;
  let speak;
  packed = new Promise((resolve) => (give = resolve));
  const spoken = new Promise((resolve) => (speak = resolve));
  const packedRest = new Promise((resolve) => (giveRest = resolve));

  const tell = (reason) => port.postMessage({ failed: String(reason?.message ?? reason) });
  const python = start().then((pyodide) => ({ pyodide, take: pyodide.pyimport("held").begin() }));
  const handler = Promise.all([python, spoken]).then(([, { language, shownIn }]) =>
    trying(({ pyodide }) => {
      pyodide.pyimport("bowstring.words").speak(language);
      if (shownIn) pyodide.pyimport("bowstring.page.shown").show_in(shownIn);
      return pyodide.pyimport("bowstring.page.calls").Calls().handle;
    }),
  );
  handler.then(() => port.postMessage({ ready: true, version: VERSION }), tell);

  async function fetchRest() {
    const content = SAVED ? await packedRest : await (await fetched(`./python/${REST}`)).arrayBuffer();
    const { pyodide, take } = await python;
    take(pyodide.toPy(new Uint8Array(content)));
    held = true;
  }

  // A rest that doesn't come is a start that failed: the page looks into it, and tries it anew.
  function rest() {
    fetching ??= fetchRest().catch((reason) => {
      lost = true;
      tell(reason);
      throw reason;
    });
    return fetching;
  }

  // Do `task`; where it lacks a module, fetch the rest, then the whole library, and do it once more.
  async function trying(task) {
    const there = await python;
    while (true) {
      try {
        return task(there);
      } catch (reason) {
        if (reason?.type !== "ModuleNotFoundError" || complete) throw reason;
        if (!held) {
          await rest(); // on its way for another question, maybe
        } else {
          if (SAVED) throw reason;
          await fetchWhole(there.pyodide);
          complete = true;
          port.postMessage({ lacked: /'([\w.]+)'/.exec(reason.message)?.[1] ?? "" });
        }
      }
    }
  }

  port.onmessage = async ({ data }) => {
    if (data.contents) return give(data);
    if (data.rest) return giveRest(data.rest);
    if (data.language) return speak(data);
    const { id, call, payload } = data;
    let handle;
    try {
      [handle] = await Promise.all([handler, AT_ONCE.includes(call) ? null : rest()]);
    } catch {
      return; // already told: {failed}
    }
    try {
      port.postMessage({ id, result: await trying(() => handle(call, payload)) });
      if (!fetching) await rest();
    } catch (reason) {
      // A question that lacked the rest stays open: who is started in this one's place is asked it again.
      if (!lost) port.postMessage({ id, error: String(reason?.message ?? reason) });
    }
  };
}

let packed; // what a saved page gives
if (WORKER) serve(self);
else globalThis.bowstringServe = serve;
