// Python's worker is started before the rest of the page is read, for it takes longest: python.js takes it over.
// A script of its own, not a module, that stands in the head of a served page: it waits for nothing.

let earlyWorker;
const earlySaid = []; // what it said before anybody listened
try {
  earlyWorker = new Worker("@AT@/worker.js", { type: "module" });
  earlyWorker.onmessage = (event) => earlySaid.push(event);
  earlyWorker.onerror = (event) => earlySaid.push(event);
} catch {} // python.js tries once more, and knows what else to do
