// Under Node: start the browser's Python from a site's own files, with its prepared library, and answer jobs.
// Usage: node answering.mjs RUNTIME LIBRARY REST LOCK JOBS     (prints a JSON list)
// JOBS: {"jobs": [a job's text], "questions": {a call, and what else belongs to it: what is asked beside the fields}}

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const [runtime, library, rest, lock, jobs] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(join(runtime, "pyodide.mjs")));
const lockFileContents = JSON.parse(lock);
const pyodide = await loadPyodide({ indexURL: runtime, stdLibURL: library, lockFileContents });
pyodide.pyimport("held").begin()(pyodide.toPy(new Uint8Array(readFileSync(rest))));
const told = pyodide.runPython(`
import json
from bowstring import BadJob, answer
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job

def told(text, questions):
    job = json.loads(text)
    try:
        found = answer(job)
    except BadJob as refusal:
        return json.dumps({"refused": [refusal.field, refusal.wrong, refusal.remedy]})
    shown = {}
    for call, question in json.loads(questions).items():
        asked = json.dumps({"fields": fields_of_job(job), **question})
        shown[call] = json.loads(handle(call.split()[0], asked))
    return json.dumps({"answer": found, "shown": shown})

told
`);
const asked = JSON.parse(readFileSync(jobs, "utf8"));
const questions = JSON.stringify(asked.questions);
console.log(JSON.stringify(asked.jobs.map((text) => told(text, questions))));
