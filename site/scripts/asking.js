// Asks Python for the sheet of what is typed: only the newest edition of the form is ever shown.

const QUIET = 500; // milliseconds without a keystroke before somebody is told that a half typed number is none
const PATIENCE = 60_000; // milliseconds before the page says that something takes too long

export function asking({ question, advised, shown, waiting, fault, slow }) {
  let edition = 0; // counts changes of the form; an answer to an older one is dropped
  let busy = false;
  let ask = null;
  let delay = 0;
  let touched = 0; // when the form last changed
  let patience = 0;

  function wait(kind) {
    clearTimeout(patience);
    patience = setTimeout(() => slow(kind), PATIENCE);
  }

  async function now() {
    if (!ask || busy) return; // asked again when Python is free
    busy = true;
    const asked = edition;
    wait("slow");
    try {
      const put = question();
      // Which way to take is worked out long before every drawing is made.
      const found = touched ? await ask("advice", put) : { advice: "" };
      if (asked === edition && found.advice) advised(found);
      if (asked !== edition) return;
      const result = await ask("sheet", put);
      if (asked === edition) tell(result, asked);
    } catch (reason) {
      if (asked === edition) fault(reason.message);
    } finally {
      busy = false;
      clearTimeout(patience);
      if (asked !== edition) {
        waiting();
        now();
      }
    }
  }

  function tell(result, asked) {
    const left = result.sign === "refused" && touched ? touched + QUIET - performance.now() : 0;
    if (left <= 0) return shown(result);
    setTimeout(() => asked === edition && shown(result), left);
  }

  wait("slow_start");
  return {
    begin(python) {
      clearTimeout(patience);
      ask = python;
      now();
    },
    stop: () => clearTimeout(patience),
    changed() {
      edition += 1;
      touched = performance.now();
      clearTimeout(delay);
      delay = setTimeout(now); // several changes in one go are one question
    },
  };
}
