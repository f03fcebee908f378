// Python's side of the page: starts the browser's Python from this site's own files and passes questions to the package.
//
// In:  {id, call, payload}    payload is JSON text
// Out: {ready: true, version} once; then {id, result} (JSON text) or {id, error} for each question
//      {failed: message} when Python can't be started; questions are not answered then
//
// Nothing is laid out, computed or worded here. How long to wait before giving up is the page's business.

const VERSION = "@VERSION@"; // put in by the build
const SAVED = self.location.protocol === "data:"; // a worker of a page that was opened from a disk
const NOWHERE = "https://packed.invalid/"; // an address that no network has: what is asked there is given
const beside = (path) => new URL(path, import.meta.url).href;

async function fetched(path) {
  const response = await fetch(beside(path));
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  return response.arrayBuffer();
}

async function served() {
  const packages = fetched("./python/packages.zip"); // on its way while the runtime loads
  packages.catch(() => {}); // a failure is told below, where it's awaited
  const { loadPyodide } = await import(beside("./pyodide/pyodide.mjs"));
  return { pyodide: await loadPyodide({ indexURL: beside("./pyodide/") }), packages: await packages };
}

// In a saved page nothing can be fetched: the page gives every byte, and scripts as addresses that hold their own text.
async function given() {
  const { files, scripts } = await packed;
  const types = { wasm: "application/wasm", zip: "application/zip" };
  self.fetch = async (address) => {
    const name = String(address).split("/").pop();
    return new Response(files[name], { headers: { "content-type": types[name.split(".").pop()] } });
  };
  const { loadPyodide } = await import(scripts["pyodide.mjs"]);
  const { default: createPyodideModule } = await import(scripts["pyodide.asm.mjs"]);
  const lockFileContents = JSON.parse(new TextDecoder().decode(files["pyodide-lock.json"]));
  const pyodide = await loadPyodide({ indexURL: NOWHERE, lockFileContents, createPyodideModule });
  return { pyodide, packages: files["packages.zip"] };
}

async function start() {
  const { pyodide, packages } = await (SAVED ? given() : served());
  const extractDir = pyodide.runPython("import site; site.getsitepackages()[0]");
  pyodide.unpackArchive(packages, "zip", { extractDir });
  return pyodide.pyimport("bowstring.views.asked").handle;
}

let give;
const packed = new Promise((resolve) => (give = resolve));
const handler = start();

handler.then(
  () => self.postMessage({ ready: true, version: VERSION }),
  (reason) => self.postMessage({ failed: String(reason?.message ?? reason) }),
);

self.addEventListener("message", async ({ data }) => {
  if (data.files) return give(data);
  const { id, call, payload } = data;
  let handle;
  try {
    handle = await handler;
  } catch {
    return; // already told: {failed}
  }
  try {
    self.postMessage({ id, result: handle(call, payload) });
  } catch (reason) {
    self.postMessage({ id, error: String(reason?.message ?? reason) });
  }
});
