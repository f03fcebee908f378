// The sheet on paper: every level open, and the job's name on each page, for a loose page of another job is another curve.

import { at } from "./document.js";

export function onPaper(sheet) {
  const running = "adoptedStyleSheets" in document ? new CSSStyleSheet() : null;
  if (running) document.adoptedStyleSheets.push(running);

  at("print").addEventListener("click", () => window.print());

  // A level that isn't there would be a stake that isn't set.
  let shut = [];
  addEventListener("beforeprint", () => {
    shut = [...sheet.querySelectorAll("details:not([open])")];
    for (const fold of shut) fold.open = true;
  });
  addEventListener("afterprint", () => {
    for (const fold of shut) fold.open = false;
  });

  return {
    named() {
      const name = sheet.querySelector("h2")?.textContent ?? "";
      running?.replaceSync(`@page { @bottom-left { content: ${styleText(name)}; font: 9pt sans-serif; } }`);
    },
  };
}

// A text as a style's string: every sign but letters and digits by its number, so that none can end it.
function styleText(text) {
  const signs = [...text].map((sign) => (/[A-Za-z0-9]/.test(sign) ? sign : `\\${sign.codePointAt(0).toString(16)} `));
  return `"${signs.join("")}"`;
}
