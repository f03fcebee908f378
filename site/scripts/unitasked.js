// A unit changed under bare numbers: nothing is converted, so it's asked which one holds.

import { at, form } from "./document.js";
import { typed, values } from "./form.js";

export function unitAsked({ words, settled, kept }) {
  let before = null; // the unit that bare numbers were typed in, until somebody says which one holds
  let shown = values().unit;

  function settle(unit) {
    before = null;
    shown = unit;
    settled({ ...typed(), unit });
    kept();
    at("unit").focus?.();
  }

  at("unit-keep").addEventListener("click", () => settle(values().unit));
  at("unit-back").addEventListener("click", () => settle(before));

  return {
    asked: () => ({ unit_before: before }),
    changed() {
      const unit = values().unit;
      if (unit !== shown) before = before === unit ? null : (before ?? shown);
      shown = unit;
    },
    // Another job stands in the form.
    forget() {
      before = null;
      shown = values().unit;
    },
    shown() {
      for (const place of form.querySelectorAll("[data-unit]")) place.textContent = words.units[values().unit] ?? "";
    },
    // `note`: HTML that Python made and escaped.
    told(note) {
      at("unit-note").hidden = !note;
      at("unit-note").firstElementChild.innerHTML = note;
      if (!note) before = null; // nothing hangs on the unit
    },
  };
}
