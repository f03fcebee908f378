// One way back from the last thing that took something away: it stands at the thumb until something else is done.

import { at } from "./document.js";

const STANDS = 12_000; // milliseconds

export function undoing() {
  let back = null;
  let pause = 0;

  function hide() {
    clearTimeout(pause);
    back = null;
    at("undo").hidden = true;
  }

  at("undo-take").addEventListener("click", () => {
    const take = back;
    hide();
    take?.();
  });

  return {
    hide,
    offer(text, take) {
      back = take;
      at("undo-said").textContent = text;
      at("undo").hidden = false;
      clearTimeout(pause);
      pause = setTimeout(hide, STANDS);
    },
  };
}
