// Python's side of the page: starts the browser's Python from this site's own files and passes questions to the package.
//
// In:  {id, call, payload}    payload is JSON text
// Out: {ready: true, version} once; then {id, result} (JSON text) or {id, error} for each question
//      {failed: message} when Python can't be started; questions are not answered then
//
// Nothing is laid out, computed or worded here. How long to wait before giving up is the page's business.

const VERSION = "@VERSION@"; // put in by the build
const beside = (path) => new URL(path, import.meta.url).href;

async function fetched(path) {
  const response = await fetch(beside(path));
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  return response.arrayBuffer();
}

async function start() {
  const packages = fetched("./python/packages.zip"); // on its way while the runtime loads
  packages.catch(() => {}); // a failure is told below, where it's awaited
  const { loadPyodide } = await import(beside("./pyodide/pyodide.mjs"));
  const pyodide = await loadPyodide({ indexURL: beside("./pyodide/") });
  const extractDir = pyodide.runPython("import site; site.getsitepackages()[0]");
  pyodide.unpackArchive(await packages, "zip", { extractDir });
  return pyodide.pyimport("bowstring.views.page").handle;
}

const handler = start();

handler.then(
  () => self.postMessage({ ready: true, version: VERSION }),
  (reason) => self.postMessage({ failed: String(reason?.message ?? reason) }),
);

self.addEventListener("message", async ({ data: { id, call, payload } }) => {
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
