// Python's worker is started before the rest of the page is read, for it takes longest: python.js takes it over.
// A script of its own, not a module, that stands in the head of a served page: it waits for nothing.

const earlyWorker = new Worker("@AT@/worker.js", { type: "module" });
const earlySaid = []; // what it said before anybody listened
earlyWorker.onmessage = (event) => earlySaid.push(event);
earlyWorker.onerror = (event) => earlySaid.push(event);
