// The job on paper: whatever face is looked at, it's the paper that is printed, with the job's name on each page. It's made
// while nobody waits; who prints before it's there waits for it, but for the browser's own menu, which waits for nothing:
// there one sentence is printed, and never the paper of other numbers.

import { at } from "./document.js";

const PATIENCE = 8000; // milliseconds that somebody waits for a printer at most
const AGAIN = 100; // milliseconds before it's asked for anew, where numbers were typed meanwhile

const pause = (time) => new Promise((resolve) => setTimeout(resolve, time));

// `ready()`: the paper is that of the numbers in the fields; `make()`: make it, and nothing else first.
export function onPaper({ ready, make }) {
  const running = "adoptedStyleSheets" in document ? new CSSStyleSheet() : null;
  if (running) document.adoptedStyleSheets.push(running);

  const made = () => make().catch(() => {}); // where there's no Python, the sentence says so

  let waits = false; // somebody has asked for it: a second tap asks for nothing more
  async function print() {
    if (waits) return;
    waits = true;
    const until = performance.now() + PATIENCE;
    while (!ready() && performance.now() < until) {
      await Promise.race([made(), pause(until - performance.now())]);
      if (!ready()) await pause(AGAIN);
    }
    waits = false;
    window.print();
  }

  at("print").addEventListener("click", print);
  addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey || event.key.toLowerCase() !== "p") return;
    event.preventDefault();
    print();
  });
  addEventListener("beforeprint", () => ready() || made()); // who prints once more gets it

  return {
    named() {
      const name = at("paper").querySelector("h1, h2")?.textContent ?? "";
      running?.replaceSync(`@page { @bottom-left { content: ${styleText(name)}; font: 9pt sans-serif; } }`);
    },
  };
}

// A text as a style's string: every sign but letters and digits by its number, so that none can end it.
function styleText(text) {
  const signs = [...text].map((sign) => (/[A-Za-z0-9]/.test(sign) ? sign : `\\${sign.codePointAt(0).toString(16)} `));
  return `"${signs.join("")}"`;
}
