// The job on paper: whatever face is looked at, it's the paper that is printed, with the job's name on each page.

import { at } from "./document.js";

const PATIENCE = 8000; // milliseconds that somebody waits for a printer at most

export function onPaper({ ready, show }) {
  const running = "adoptedStyleSheets" in document ? new CSSStyleSheet() : null;
  if (running) document.adoptedStyleSheets.push(running);

  at("print").addEventListener("click", async () => {
    if (!ready()) show();
    const until = performance.now() + PATIENCE;
    while (!ready() && performance.now() < until) await new Promise((resolve) => setTimeout(resolve, 50));
    window.print();
  });

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
