// Prepare Python's library for the page, here under Node: what the list names, and what the wheels install, compiled.
// Usage: node prepare.mjs RUNTIME LIST ARCHIVE WHEEL...     LIST "-": write the modules that the page imports instead
//        (micropip's own wheel is among the wheels and does the installing)

import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

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
const STAND_INS = fileURLToPath(new URL("stand_ins/", import.meta.url));
const STANDARD = "python_stdlib.zip";
const program = (name) => readFileSync(new URL(name, import.meta.url), "utf8");

async function withWheels() {
  const pyodide = await loadPyodide({ indexURL: runtime, lockFileContents });
  const tool = wheels.find((wheel) => basename(wheel).startsWith("micropip-"));
  const others = wheels.filter((wheel) => wheel !== tool);
  pyodide.unpackArchive(bytesOf(tool), "wheel");
  pyodide.FS.mkdir("/wheels");
  for (const wheel of others) pyodide.FS.writeFile(`/wheels/${basename(wheel)}`, bytesOf(wheel));
  pyodide.runPython(program("lean.py"));
  pyodide.globals.set("stand_ins", pyodide.toPy(standIns()));
  pyodide.globals.set("names", pyodide.toPy(others.map((wheel) => basename(wheel))));
  // No index: a wheel that wants something which isn't among these fails here and not in somebody's browser.
  await pyodide.runPythonAsync(program("install.py"));
  return pyodide;
}

function standIns() {
  const files = readdirSync(STAND_INS, { recursive: true }).filter((name) => name.endsWith(".py"));
  return Object.fromEntries(files.map((name) => [name.replaceAll("\\", "/"), readFileSync(join(STAND_INS, name), "utf8")]));
}

// Python's own modules, made lean: as sources, for all that is compiled or traced comes from them.
function standard(pyodide) {
  pyodide.globals.set("stock", pyodide.toPy(bytesOf(join(runtime, STANDARD))));
  return pyodide.runPython("whole = lean_library(bytes(stock), stand_ins); whole").toJs();
}

// In an interpreter of its own, with the lean library: installing has imported much that a page never needs.
async function freshOne() {
  const folder = mkdtempSync(join(tmpdir(), "lean-"));
  try {
    const stdLibURL = join(folder, STANDARD);
    writeFileSync(stdLibURL, standard(installed));
    return await loadPyodide({ indexURL: runtime, stdLibURL, lockFileContents });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const installed = await withWheels();
if (list === "-") {
  const fresh = await freshOne();
  fresh.FS.writeFile("/packages.zip", installed.globals.get("packed").toJs());
  writeFileSync(archive, fresh.runPython(program("trace.py")));
} else {
  standard(installed);
  installed.runPython(program("unfold.py"));
  installed.globals.set("listed", readFileSync(list, "utf8"));
  writeFileSync(archive, installed.runPython(program("compile.py")).toJs());
}
