// Python's worker is started before the rest of the page is read, for it takes longest: python.js takes it over.
// A script of its own, not a module: it runs where it stands, at the head of a served page.

const earlyWorker = new Worker(new URL("worker.js", document.currentScript.src), { type: "module" });
const earlySaid = []; // what it said before anybody listened
earlyWorker.onmessage = (event) => earlySaid.push(event);
earlyWorker.onerror = (event) => earlySaid.push(event);
