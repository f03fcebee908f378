// Prepare Python's library for the page, here under Node: what the list names, and what the wheels install, compiled.
// Usage: node prepare.mjs RUNTIME LIST ARCHIVE WHEEL...     LIST "-": write the modules that the page imports instead
//        (micropip's own wheel is among the wheels and does the installing)

import { readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";

process.on("uncaughtException", (reason) => {
  console.error(reason?.message ?? reason);
  process.exit(1);
});

const [runtime, list, archive, ...wheels] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(join(runtime, "pyodide.mjs")));
// A lock without packages: nothing can be fetched from anywhere, by intent or by mistake.
const { info } = JSON.parse(readFileSync(join(runtime, "pyodide-lock.json"), "utf8"));
const lockFileContents = JSON.stringify({ info, packages: {} });
const bytesOf = (file) => new Uint8Array(readFileSync(file)); // the runtime doesn't know Node's own kind
const program = (name) => readFileSync(new URL(name, import.meta.url), "utf8");

async function withWheels() {
  const pyodide = await loadPyodide({ indexURL: runtime, lockFileContents });
  const tool = wheels.find((wheel) => basename(wheel).startsWith("micropip-"));
  const others = wheels.filter((wheel) => wheel !== tool);
  pyodide.unpackArchive(bytesOf(tool), "wheel");
  pyodide.FS.mkdir("/wheels");
  for (const wheel of others) pyodide.FS.writeFile(`/wheels/${basename(wheel)}`, bytesOf(wheel));
  pyodide.globals.set("names", pyodide.toPy(others.map((wheel) => basename(wheel))));
  // No index: a wheel that wants something which isn't among these fails here and not in somebody's browser.
  await pyodide.runPythonAsync(program("install.py"));
  return pyodide;
}

const installed = await withWheels();
if (list === "-") {
  // In an interpreter of its own: installing has imported much that a page never needs.
  const fresh = await loadPyodide({ indexURL: runtime, lockFileContents });
  fresh.unpackArchive(installed.globals.get("packed").toJs(), "zip", { extractDir: "/packages" });
  writeFileSync(archive, fresh.runPython(program("trace.py")));
} else {
  installed.FS.writeFile("/library.zip", bytesOf(join(runtime, "python_stdlib.zip")));
  installed.globals.set("listed", readFileSync(list, "utf8"));
  writeFileSync(archive, installed.runPython(program("compile.py")).toJs());
}
