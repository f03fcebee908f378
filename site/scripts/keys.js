// The keys at the thumb: what a tape and a drawing carry, for a finger. The field keeps the focus, and the phone's own
// keyboard stays one key away.

import { at, form } from "./document.js";

const TOUCHED = matchMedia("(pointer: coarse)");
const FIELDS = ":is(#form,#stakes,#checks) input[data-keys]";
const FRACTION = /^\d+\/\d+$/;

// What stands before the caret, with a fraction of an inch put on: helps typing, and reads nothing.
function withFraction(before, fraction) {
  const text = before.trimEnd().replace(/"$/, "");
  if (/-?\d+\/\d+$/.test(text)) return `${text.replace(/\d+\/\d+$/, "")}${fraction}"`; // another one in its place
  if (/'$/.test(text)) return `${text} 0-${fraction}"`;
  if (/\d$/.test(text)) return `${text}-${fraction}"`;
  return `${text === "" || /-$/.test(text) ? text : `${text} `}${fraction}"`;
}

// What stands before the caret, with a digit or a sign put on: inches stand apart from the feet before them.
function withSign(before, sign) {
  if (sign === '"' && before.endsWith('"')) return before; // a fraction brings its own
  return /'$/.test(before) && /^\d$/.test(sign) ? `${before} ${sign}` : before + sign;
}

// `isDecimal`: whether lengths in a field are typed in decimals, for what is read on a face by the unit that is shown; `shown`: called when the keys come up or go.
export function thumbKeys({ isDecimal, shown }) {
  const keys = at("keys");
  let field = null;
  let letters = false; // the phone's own keyboard was asked for
  let typed = false; // keys were put into the field since it was entered

  const takes = (target) => TOUCHED.matches && target.matches?.(FIELDS);

  function ready() {
    for (const input of document.querySelectorAll(FIELDS)) {
      const mode = TOUCHED.matches ? "none" : isDecimal(input) ? "decimal" : "";
      if ((input !== field || !letters) && input.inputMode !== mode) input.inputMode = mode;
    }
  }

  function pad() {
    const name = field.dataset.keys === "angle" ? "angle" : isDecimal(field) ? "decimal" : "feet";
    for (const one of keys.querySelectorAll(".pad")) one.hidden = one.dataset.pad !== name;
    const below = Number(/\/(\d+)/.exec(at("mark").value)?.[1] ?? 8);
    for (const one of keys.querySelectorAll(".finer")) one.hidden = name !== "feet" || below < Number(one.dataset.finer);
  }

  function show(on) {
    if (keys.hidden === !on) return;
    keys.hidden = !on;
    document.documentElement.toggleAttribute("data-keys", on);
    if (form.contains(keys)) shown(on);
  }

  function put(text, from = field.selectionStart) {
    typed = true;
    field.setRangeText(text, from, field.selectionEnd, "end");
    field.dispatchEvent(new InputEvent("input", { bubbles: true, data: text, inputType: "insertText" }));
  }

  function type(sign) {
    const before = field.value.slice(0, field.selectionStart);
    const after = FRACTION.test(sign) ? withFraction(before, sign) : withSign(before, sign);
    put(after, 0);
  }

  // The next field: an empty measure before one that is given; in a panel the one below.
  function next(from = field) {
    const panel = from.closest(".panel, .made");
    const all = [...(panel ?? at("numbers-face")).querySelectorAll('input[type="text"], input[data-keys]')].filter(
      (one) => one.offsetParent,
    );
    const after = [...all.slice(all.indexOf(from) + 1), ...(panel ? [] : all.slice(0, all.indexOf(from)))];
    const other = panel ? after[0] : (after.find((one) => !one.value.trim()) ?? after[0]);
    if (!other) return done();
    other.focus();
    seen(other);
  }

  function seen(input) {
    const row = input.closest("[data-field]") ?? input.closest(".checks > li");
    (row ?? input).scrollIntoView({ block: row ? "nearest" : "center" });
  }

  // The keys stand under what is typed in: the form, or the face of a reading.
  function under(input) {
    const place = input.closest("#form") ?? input.closest(".face");
    if (keys.parentElement !== place) place.append(keys);
  }

  function done() {
    show(false);
    field?.blur();
  }

  const acts = {
    delete: () => put("", Math.max(0, field.selectionEnd - Math.max(1, field.selectionEnd - field.selectionStart))),
    clear() {
      field.select();
      put("");
    },
    next: () => next(),
    done,
    // Another keyboard comes up only for a field that is entered anew.
    letters() {
      letters = true;
      show(false);
      field.inputMode = "text";
      field.blur();
      field.focus({ preventScroll: true });
    },
  };

  document.addEventListener("focusin", ({ target }) => {
    if (keys.contains(target)) return;
    if (!takes(target)) return show(false);
    if (target.id !== field?.id) letters = typed = false; // made anew under the fingers it's the same field
    field = target;
    under(field);
    ready();
    if (letters) return;
    pad();
    show(true);
    seen(field);
  });
  // What keys put in counts as typed for who listens to a change.
  document.addEventListener("focusout", ({ target }) => {
    if (target !== field || !typed) return;
    typed = false;
    if (!form.contains(target)) target.dispatchEvent(new Event("change", { bubbles: true }));
  });
  document.addEventListener("pointerdown", ({ target }) => takes(target) && ready(), true); // before the phone's own comes up
  addEventListener("popstate", () => show(false));
  keys.addEventListener("pointerdown", (event) => event.preventDefault()); // the field keeps its caret
  keys.addEventListener("click", ({ target }) => {
    const key = target.closest("button");
    if (!key || !field) return;
    if (document.activeElement !== field) field.focus({ preventScroll: true });
    if (key.dataset.key) acts[key.dataset.key]();
    else type(key.value);
  });
  // What is hit first stays where it was: the keys go when the finger has left, and the field too.
  document.addEventListener("click", ({ target }) => {
    if (!keys.contains(target) && document.activeElement !== field) show(false);
  });
  form.addEventListener("keydown", (event) => {
    const { target, key } = event;
    if (!target.matches("input[type=text]") || event.isComposing) return;
    const rows = [...form.querySelectorAll("[data-row] input")];
    const place = rows.indexOf(target);
    if (key === "Enter") {
      event.preventDefault();
      next(target);
    } else if (place >= 0 && (key === "ArrowDown" || key === "ArrowUp")) {
      event.preventDefault();
      rows[(place + (key === "ArrowDown" ? 1 : rows.length - 1)) % rows.length].focus();
    }
  });
  TOUCHED.addEventListener("change", ready);
  ready();

  return {
    get up() {
      return !keys.hidden;
    },
    ready, // the unit may have changed
    hide: () => show(false),
  };
}
