// Asks Python for what is looked at, and for nothing else: only the newest edition of the job is ever shown.

const QUIET = 500; // milliseconds without a keystroke before somebody is told that a half typed number is none
const PATIENCE = 60_000; // milliseconds before the page says that something takes too long
const IDLE = 400; // milliseconds without a change before what nobody waits for is made

// `questions`: what is to be asked just now, a list of {call, payload, shown}, the most urgent first; `ahead`: the same, of what
// will be asked next, most likely; `later`: once nothing has changed for a while.
export function asking({ questions, ahead, later, waiting, fault, slow, first }) {
  let edition = 0; // counts changes; an answer to an older one is dropped
  let busy = false;
  let ask = null;
  let delay = 0;
  let keyed = false; // the last change was a key
  let touched = 0; // when something was typed last
  let patience = 0;
  let idle = 0;
  let answered = false;

  function wait(kind) {
    clearTimeout(patience);
    patience = setTimeout(() => slow(kind), PATIENCE);
  }

  async function each(list, asked) {
    for (const { call, payload, shown } of list) {
      const result = await ask(call, payload());
      if (asked !== edition) return false;
      tell(result, shown, asked);
      if (!answered) first();
      answered = true;
    }
    return true;
  }

  async function now() {
    clearTimeout(idle);
    if (!ask || busy) return; // asked again when Python is free
    busy = true;
    const asked = edition;
    wait("slow");
    try {
      if (!(await each(questions(keyed), asked))) return;
      clearTimeout(patience);
      await each(ahead(), asked).catch(() => {}); // asked again when somebody waits for it
      if (asked === edition) idle = setTimeout(afterwards, IDLE, asked);
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

  async function afterwards(asked) {
    if (busy || asked !== edition) return;
    busy = true;
    try {
      await each(later(), asked);
    } catch {
      // nobody waits for it: asked again at the next change
    } finally {
      busy = false;
      if (asked !== edition) now();
    }
  }

  function tell(result, shown, asked) {
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
    // `typed`: by a key, so that a half typed number isn't called wrong at once.
    changed(typed = true) {
      edition += 1;
      keyed = typed;
      if (typed) touched = performance.now();
      clearTimeout(delay);
      delay = setTimeout(now); // several changes in one go are one question
    },
  };
}
