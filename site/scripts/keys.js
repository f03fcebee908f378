// The signs of feet and inches under a finger: a phone's number keys have none, and its letters hide them.

import { form } from "./document.js";

const TOUCHED = matchMedia("(pointer: coarse)").matches;

export function signKeys(row, isDecimal) {
  const takesSigns = (field) => field.matches?.("input[data-keys]") && !isDecimal();
  let field = null;
  let decimal = null; // whether the unit was one of decimals when the keyboards were last chosen

  function put(sign) {
    field.focus({ preventScroll: true });
    field.setRangeText(sign, field.selectionStart, field.selectionEnd, "end");
    field.dispatchEvent(new InputEvent("input", { bubbles: true, data: sign, inputType: "insertText" }));
  }

  // Another keyboard comes up only for a field that is entered anew.
  function letters() {
    field.inputMode = field.inputMode === "text" ? "decimal" : "text";
    field.blur();
    field.focus({ preventScroll: true });
  }

  // The row stays until another field is entered: if it went when this one is left, what is being hit would jump away.
  if (TOUCHED) {
    form.addEventListener("focusin", ({ target }) => {
      if (row.contains(target)) return;
      if (target.matches("input, select, textarea")) row.hidden = !takesSigns(target);
      if (!takesSigns(target) || field === target) return;
      field = target;
      field.closest(".entry").nextElementSibling.prepend(row);
    });
    row.addEventListener("pointerdown", (event) => event.preventDefault()); // the field keeps its caret
    row.addEventListener("click", ({ target }) => {
      const key = target.closest("button");
      if (!key || !field) return;
      if (key.value) put(key.value);
      else letters();
    });
  }

  return {
    // Number keys come up where every sign that they lack is at hand.
    // Only when the unit has changed: called at each keystroke, it would take back the letters that somebody asked for.
    unit() {
      if (isDecimal() === decimal) return;
      decimal = isDecimal();
      for (const input of form.querySelectorAll("[data-keys]")) input.inputMode = TOUCHED || decimal ? "decimal" : "";
      if (decimal) row.hidden = true;
    },
  };
}
