// Prepare Python's library for the page, here under Node: what the list names, and what the wheels install, compiled.
// Usage: node prepare.mjs RUNTIME LIST RESULT WHEEL...
//        RESULT: a folder for library.zip and rest.bin; with LIST "-" a file for the names of what the page imports
//        (micropip's own wheel is among the wheels and does the installing)

import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

process.on("uncaughtException", (reason) => {
  console.error(reason?.message ?? reason);
  process.exit(1);
});

const [runtime, list, result, ...wheels] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(join(runtime, "pyodide.mjs")));
// A lock without packages: nothing can be fetched from anywhere, by intent or by mistake.
const { info } = JSON.parse(readFileSync(join(runtime, "pyodide-lock.json"), "utf8"));
const lockFileContents = JSON.stringify({ info, packages: {} });
const bytesOf = (file) => new Uint8Array(readFileSync(file)); // the runtime doesn't know Node's own kind
const STAND_INS = fileURLToPath(new URL("stand_ins/", import.meta.url));
const INSIDE = fileURLToPath(new URL("inside/", import.meta.url)); // the package of the builder that runs in there
const STANDARD = "python_stdlib.zip";

const bare = (settings) => loadPyodide({ indexURL: runtime, lockFileContents, ...settings });

// An interpreter whose builder.inside is this one's.
async function started(settings) {
  const pyodide = await bare(settings);
  pyodide.FS.mkdirTree("/programs/builder/inside");
  for (const name of readdirSync(INSIDE).filter((name) => name.endsWith(".py"))) {
    pyodide.FS.writeFile(`/programs/builder/inside/${name}`, bytesOf(join(INSIDE, name)));
  }
  pyodide.runPython('import sys; sys.path.append("/programs")');
  return pyodide;
}

function standIns() {
  const files = readdirSync(STAND_INS, { recursive: true }).filter((name) => name.endsWith(".py"));
  return Object.fromEntries(files.map((name) => [name.replaceAll("\\", "/"), readFileSync(join(STAND_INS, name), "utf8")]));
}

// Install the wheels; return their modules' sources, made lean, as Python's bytes.
async function packages(pyodide) {
  const tool = wheels.find((wheel) => basename(wheel).startsWith("micropip-"));
  pyodide.unpackArchive(bytesOf(tool), "wheel");
  pyodide.FS.mkdir("/wheels");
  const others = wheels.filter((wheel) => wheel !== tool).map((wheel) => [`/wheels/${basename(wheel)}`, wheel]);
  for (const [place, wheel] of others) pyodide.FS.writeFile(place, bytesOf(wheel));
  const names = pyodide.toPy(others.map(([place]) => place));
  return pyodide.pyimport("builder.inside.install").installed(names, pyodide.toPy(standIns()));
}

// Python's own modules, made lean: as sources, for all that is compiled or traced comes from them.
function standard(pyodide) {
  const stock = pyodide.globals.get("bytes")(pyodide.toPy(bytesOf(join(runtime, STANDARD))));
  return pyodide.pyimport("builder.inside.lean").lean_library(stock, pyodide.toPy(standIns()));
}

// Do something in an interpreter of its own, with a library that is none of this one's.
async function elsewhere(content, start, task) {
  const folder = mkdtempSync(join(tmpdir(), "library-"));
  try {
    const stdLibURL = join(folder, STANDARD);
    writeFileSync(stdLibURL, content);
    return task(await start({ stdLibURL }));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

// With the lean library: installing has imported much that a page never needs.
function traced(whole, packed) {
  return elsewhere(whole, started, (fresh) => {
    fresh.FS.writeFile("/packages.zip", packed);
    return fresh.pyimport("builder.inside.trace").traced("/packages.zip");
  });
}

// What the runtime imports by itself, and what is there once the first face has been answered, asked as the page asks it.
function imported(all) {
  return elsewhere(all, bare, (fresh) => {
    const there = () => Array.from(fresh.pyimport("sys").modules);
    const byItself = there();
    const question = JSON.stringify({ fields: {}, focus: "", drawn: true });
    fresh.pyimport("bowstring.page.calls").handle("numbers", question);
    return { byItself, first: there() };
  });
}

const pyodide = await started({});
const packed = await packages(pyodide);
const whole = standard(pyodide);
if (list === "-") {
  writeFileSync(result, await traced(whole.toJs(), packed.toJs()));
} else {
  const library = pyodide.pyimport("builder.inside.compile").Library(readFileSync(list, "utf8"), whole, packed);
  const { byItself, first } = await imported(library.archive_of_all().toJs());
  const names = (list) => pyodide.globals.get("set")(pyodide.toPy(list));
  writeFileSync(join(result, "library.zip"), library.archive(names(byItself), names(first)).toJs());
  writeFileSync(join(result, "rest.bin"), library.rest(names([...byItself, ...first])).toJs());
}
