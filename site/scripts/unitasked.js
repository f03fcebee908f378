// A unit changed under bare numbers: nothing is converted, so it's asked which one holds.

import { at, form, write } from "./document.js";
import { typed, unitNow } from "./form.js";

export function unitAsked({ words, settled, kept }) {
  let before = null; // the unit that bare numbers were typed in, until somebody says which one holds
  let shown = unitNow();
  const metric = new Set(words.metric);
  let otherMark = ""; // what the tape was read to in another unit: it stands again where the unit is put back

  // The mark that stands in a unit: the one chosen where it's on that unit's tape, otherwise the usual one.
  function markIn(unit) {
    const on = (mark) => [...at("mark").querySelectorAll(`[data-marks="${unit}"] option`)].some(({ value }) => value === mark);
    const chosen = at("mark").value;
    const mark = [chosen, otherMark].find(on) ?? "";
    otherMark = on(chosen) ? "" : chosen || (mark ? "" : otherMark);
    return mark;
  }

  function settle(unit) {
    before = null;
    shown = unit;
    settled({ ...typed(), unit, mark: markIn(unit) });
    kept();
    at("unit").focus?.();
  }

  at("unit-keep").addEventListener("click", () => settle(unitNow()));
  at("unit-back").addEventListener("click", () => settle(before));

  return {
    asked: () => ({ unit_before: before }),
    changed() {
      const unit = unitNow();
      if (unit !== shown) {
        before = before === unit ? null : (before ?? shown);
        at("mark").value = markIn(unit);
      }
      shown = unit;
    },
    // Another job stands in the form.
    forget() {
      before = null;
      otherMark = "";
      shown = unitNow();
    },
    shown() {
      const said = words.units[unitNow()] ?? "";
      for (const place of form.querySelectorAll("[data-unit]")) write(place, said);
      form.toggleAttribute("data-metric", metric.has(unitNow())); // which of two hints is shown
    },
    // `note`: HTML that Python made and escaped.
    told(note) {
      at("unit-note").hidden = !note;
      at("unit-note").firstElementChild.innerHTML = note;
      if (!note) before = null; // nothing hangs on the unit
    },
  };
}
