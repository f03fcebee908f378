// Under Node: start the browser's Python from a site's own files, with its prepared library, and answer jobs.
// Usage: node answering.mjs RUNTIME LIBRARY LOCK JOBS     (JOBS: a JSON list of job texts; prints a JSON list of answers)

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const [runtime, library, lock, jobs] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(join(runtime, "pyodide.mjs")));
const lockFileContents = JSON.parse(lock);
const pyodide = await loadPyodide({ indexURL: runtime, stdLibURL: library, lockFileContents });
const told = pyodide.runPython(`
import json
from bowstring import BadJob, answer
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job

def told(text):
    job = json.loads(text)
    try:
        found = answer(job)
    except BadJob as refusal:
        return json.dumps({"refused": [refusal.field, refusal.wrong, refusal.remedy]})
    question = {"fields": fields_of_job(job), "unit_before": None, "address": ""}
    return json.dumps({"answer": found, "shown": json.loads(handle("sheet", json.dumps(question)))})

told
`);
console.log(JSON.stringify(JSON.parse(readFileSync(jobs, "utf8")).map((text) => told(text))));
