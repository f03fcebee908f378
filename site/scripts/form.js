// The form: what stands in its fields, and what is said beside them. Nothing is read or worded here.

import { at, form } from "./document.js";

export function values() {
  const fields = {};
  for (const control of form.elements) {
    if (!control.name) continue;
    const silent = (control.type === "radio" || control.type === "checkbox") && !control.checked;
    if (!silent) fields[control.name] = control.value;
  }
  return fields;
}

// Return what was really typed or chosen: what an empty form holds anyway is left out.
export function typed() {
  return Object.fromEntries(Object.entries(values()).filter(([, text]) => text.trim()));
}

export function put(fields) {
  rowsFor(fields);
  for (const control of form.elements) {
    if (control.type === "radio") control.checked = (fields[control.name] ?? blankOf(control)) === control.value;
    else if (control.type === "checkbox") control.checked = control.name in fields;
    else if (control.name) control.value = fields[control.name] ?? "";
  }
  for (const fold of form.querySelectorAll("details.fold")) {
    if ([...fold.querySelectorAll("input, select, textarea")].some((control) => fields[control.name])) fold.open = true;
  }
}

export function sameFields(one, other) {
  const inOrder = (fields) => JSON.stringify(Object.entries(fields).sort());
  return inOrder(one) === inOrder(other);
}

// The answer that stands for none: its button is marked in the form.
function blankOf(control) {
  return form.querySelector(`[name="${control.name}"][data-blank]`)?.value;
}

// A job can hold more rows of what was got than the form shows at first: the last row is copied.
function rowsFor(fields) {
  const wanted = Math.max(-1, ...Object.keys(fields).map((name) => Number(/^got-([0-9]{1,3})-/.exec(name)?.[1] ?? -1)));
  for (;;) {
    const rows = form.querySelectorAll("#form-got fieldset.row");
    if (rows.length > wanted || rows.length === 0) return;
    const last = rows.length - 1;
    const copy = rows[last].cloneNode(true);
    const renamed = (text) => text.replaceAll(`got-${last}-`, `got-${last + 1}-`);
    for (const part of copy.querySelectorAll("*")) {
      for (const name of ["id", "name", "for", "aria-describedby", "data-field"]) {
        if (part.hasAttribute(name)) part.setAttribute(name, renamed(part.getAttribute(name)));
      }
    }
    const legend = copy.querySelector("legend");
    legend.textContent = legend.textContent.replace(String(last + 1), String(last + 2));
    rows[last].after(copy);
  }
}

export function showEchoes(echoes) {
  for (const place of form.querySelectorAll(".echo")) place.innerHTML = echoes[place.id.slice(0, -"-echo".length)] ?? "";
}

export function showErrors(errors) {
  for (const place of form.querySelectorAll(".wrong:not(:empty)")) mark(place.id.slice(0, -"-wrong".length), "");
  at("errors").replaceChildren(
    ...errors.map(({ id, text, line }) => {
      const item = document.createElement("li");
      if (!id || !at(id)) {
        item.textContent = line;
        return item;
      }
      mark(id, text);
      const link = document.createElement("a");
      link.href = `#${id}`;
      link.textContent = line;
      link.addEventListener("click", (event) => {
        event.preventDefault();
        goTo(id);
      });
      item.append(link);
      return item;
    }),
  );
}

function mark(id, text) {
  const field = at(id);
  at(`${id}-wrong`).textContent = text;
  field.closest("[data-field]").toggleAttribute("data-bad", Boolean(text));
  if (!field.matches("fieldset")) field.ariaInvalid = text ? "true" : "false";
  if (text) {
    for (let fold = field.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
  }
}

function goTo(id) {
  const field = at(id);
  field.closest("[data-field]").scrollIntoView({ block: "center" });
  (field.matches("fieldset") ? field.querySelector("input") : field).focus({ preventScroll: true });
}
