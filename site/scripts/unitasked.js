// A unit changed under bare numbers: nothing is converted, so it's asked which one holds.

import { at, form, write } from "./document.js";
import { fill, typed, unitNow, values } from "./form.js";

export function unitAsked({ words, settled, kept }) {
  // The unit that bare numbers were typed in, until somebody says which one holds: kept with the job, so that the question
  // survives the window, is asked in every window, and goes with every question to Python.
  const before = () => values().unit_before ?? "";
  const asks = (unit) => fill({ unit_before: unit });
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
    const { unit_before: _settled, ...fields } = typed();
    shown = unit;
    settled({ ...fields, unit, mark: markIn(unit) });
    kept();
    at("unit").focus?.();
  }

  at("unit-keep").addEventListener("click", () => settle(unitNow()));
  at("unit-back").addEventListener("click", () => settle(before() || unitNow()));

  return {
    changed() {
      const unit = unitNow();
      if (unit !== shown) {
        asks(before() === unit ? "" : before() || shown);
        at("mark").value = markIn(unit);
      }
      shown = unit;
    },
    // Another job stands in the form.
    forget() {
      otherMark = "";
      shown = unitNow();
    },
    shown() {
      shown = unitNow();
      const said = words.units[unitNow()] ?? "";
      for (const place of form.querySelectorAll("[data-unit]")) write(place, said);
      form.toggleAttribute("data-metric", metric.has(unitNow())); // which of two hints is shown
    },
    // `note`: HTML that Python made and escaped.
    told(note) {
      at("unit-note").hidden = !note;
      at("unit-note").firstElementChild.innerHTML = note;
      if (note || !before()) return;
      asks(""); // nothing hangs on the unit
      kept();
    },
  };
}
