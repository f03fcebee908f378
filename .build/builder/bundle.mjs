// Install wheels into the browser's Python, here under Node, and write what was installed as one archive.
// Usage: node bundle.mjs RUNTIME ARCHIVE WHEEL...     (micropip's own wheel is among them and does the installing)

import { readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";

process.on("uncaughtException", (reason) => {
  console.error(reason?.message ?? reason);
  process.exit(1);
});

const [runtime, archive, ...wheels] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(join(runtime, "pyodide.mjs")));
// A lock without packages: nothing can be fetched from anywhere, by intent or by mistake.
const { info } = JSON.parse(readFileSync(join(runtime, "pyodide-lock.json"), "utf8"));
const lockFileContents = JSON.stringify({ info, packages: {} });
const pyodide = await loadPyodide({ indexURL: runtime, lockFileContents });

const bytesOf = (file) => new Uint8Array(readFileSync(file)); // the runtime doesn't know Node's own kind
const tool = wheels.find((wheel) => basename(wheel).startsWith("micropip-"));
const others = wheels.filter((wheel) => wheel !== tool);
pyodide.unpackArchive(bytesOf(tool), "wheel");
pyodide.FS.mkdir("/wheels");
for (const wheel of others) pyodide.FS.writeFile(`/wheels/${basename(wheel)}`, bytesOf(wheel));
pyodide.globals.set("names", pyodide.toPy(others.map((wheel) => basename(wheel))));
const bytes = await pyodide.runPythonAsync(readFileSync(new URL("bundle.py", import.meta.url), "utf8"));
writeFileSync(archive, bytes.toJs());
