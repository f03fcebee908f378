// The form: what stands in its fields, and what is said beside them. Nothing is read or worded here.

import { at, form, write } from "./document.js";
import { showMade } from "./made.js";
import { pieces } from "./pieces.js";
import { keptBeside } from "./sizes.js";

const BESIDE = new RegExp(`^(?:${keptBeside})$`);

let beside = {}; // what is kept with a job and stands in no field of the form: steps done, readings, who and when

let held = null; // what stands in the fields, while a task goes on that asks for it several times

// Do a task in which the fields are changed by what is here and by nothing else: they are read once.
export function reading(task) {
  held = {};
  try {
    return task();
  } finally {
    held = null;
  }
}

function changes() {
  if (held) held = {};
}

export function values() {
  if (!held) return valuesNow();
  held.values ??= valuesNow();
  return { ...held.values };
}

function valuesNow() {
  const fields = { ...beside };
  for (const control of form.elements) {
    if (!control.name) continue;
    const silent = (control.type === "radio" || control.type === "checkbox") && !control.checked;
    if (!silent) fields[control.name] = control.value;
  }
  return fields;
}

// The unit alone: asked for at every keystroke.
export const unitNow = () => form.elements.unit.value;

// Return what was really typed or chosen: what an empty form holds anyway is left out.
export function typed() {
  if (!held) return typedNow();
  held.typed ??= typedNow();
  return { ...held.typed };
}

function typedNow() {
  const said = values();
  for (const control of form.querySelectorAll("[data-blank]:checked")) delete said[control.name];
  return Object.fromEntries(Object.entries(said).filter(([, text]) => text.trim()));
}

// What was read at a stake goes with its name: it stands in no field of its row.
form.addEventListener("change", ({ target: { name, value } }) => {
  if (!/^got-.*stake$/.test(name) || value) return;
  for (const held in beside) if (held.startsWith(name.slice(0, -5))) delete beside[held];
});

// Put texts into some fields and leave the others as they are; an empty one empties its field.
export function fill(fields) {
  rowsFor({ ...typed(), ...fields });
  besides(fields);
  for (const control of form.elements) {
    if (!(control.name in fields)) continue;
    if (control.type === "radio") control.checked = control.value === fields[control.name];
    else control.value = fields[control.name];
  }
  pieces();
  changes();
}

export function put(given) {
  const fields = inRows(given);
  rowsFor(fields, true);
  beside = {};
  besides(fields);
  for (const control of form.elements) {
    if (control.type === "radio") control.checked = (fields[control.name] ?? blankOf(control)) === control.value;
    else if (control.type === "checkbox") control.checked = control.name in fields;
    else if (control.name) control.value = fields[control.name] ?? "";
  }
  pieces(true);
  changes();
}

function besides(fields) {
  const own = new Set([...form.elements].map((control) => control.name));
  for (const [name, text] of Object.entries(fields)) {
    if (own.has(name)) continue;
    if (text && BESIDE.test(name)) beside[name] = text;
    else delete beside[name];
  }
  changes();
}

// What a job is called: its title, otherwise the first numbers that were given; those of one arc say nothing of a line.
export function nameOf(fields, untitled) {
  if (/(before|after)-[0-9]/.test(Object.keys(fields))) return fields.title || untitled;
  const given = [...form.querySelectorAll("[data-row] input")].filter(({ id }) => fields[id]?.trim()).slice(0, 2);
  const numbers = given.map(({ id, labels }) => `${labels[0].textContent} ${fields[id].trim()}`);
  return fields.title?.trim() || numbers.join(", ") || untitled;
}

export function sameFields(one, other) {
  const inOrder = (fields) => JSON.stringify(Object.entries(fields).sort());
  return inOrder(one) === inOrder(other);
}

// The answer that stands for none: its button is marked in the form.
function blankOf(control) {
  return form.querySelector(`[name="${control.name}"][data-blank]`)?.value;
}

const ROW = /^([a-z]+)-([0-9]{1,3})-/;
const MOST_BLANK = 20; // rows left blank between those that are used

// The fields with their rows close together: one that claims to stand in the thousandth row would have a thousand made.
function inRows(fields) {
  const close = { ...fields };
  for (const group of form.querySelectorAll("[data-rows]")) {
    const name = group.dataset.rows;
    const own = Object.keys(fields).filter((field) => ROW.exec(field)?.[1] === name);
    const used = [...new Set(own.map((field) => Number(ROW.exec(field)[2])))].sort((one, other) => one - other);
    if ((used.at(-1) ?? 0) < used.length + MOST_BLANK) continue;
    for (const field of own) delete close[field];
    for (const field of own) {
      const [head, , row] = ROW.exec(field);
      close[`${name}-${used.indexOf(Number(row))}-${field.slice(head.length)}`] = fields[field];
    }
  }
  return close;
}

// Rows that grow, each group in its element: after the last one that is used stands an empty one, a copy. `all`: the fields
// are a whole job's, so that rows which another job had left behind go.
export function rowsFor(fields, all = false) {
  for (const group of form.querySelectorAll("[data-rows]")) {
    const name = group.dataset.rows;
    const row = new RegExp(`^${name}-([0-9]{1,3})-`);
    const used = Math.max(-1, ...Object.keys(fields).map((field) => Number(row.exec(field)?.[1] ?? -1)));
    const wanted = Math.max(group.dataset.least, Math.min(used + 2, group.dataset.most), used + 1);
    if (group.children.length !== wanted) changes();
    while (group.children.length < wanted) group.append(nextRow(group.lastElementChild, name, group.children.length));
    while (all && group.children.length > wanted) group.lastElementChild.remove();
  }
}

function nextRow(row, group, number) {
  const copy = row.cloneNode(true);
  copy.querySelector("#keys")?.remove();
  copy.removeAttribute("data-kind");
  const renamed = (text) => text.replaceAll(`${group}-${number - 1}-`, `${group}-${number}-`);
  for (const part of copy.querySelectorAll("*")) {
    for (const name of ["id", "name", "for", "aria-describedby", "data-field"]) {
      if (part.hasAttribute(name)) part.setAttribute(name, renamed(part.getAttribute(name)));
    }
    part.removeAttribute("aria-invalid");
    part.removeAttribute("data-bad");
    part.removeAttribute("open");
    if (part.matches(".echo, .wrong")) part.textContent = "";
    else if (part.type === "radio") part.checked = part.hasAttribute("data-blank");
    else if (part.matches("input, textarea")) part.value = part.defaultValue = "";
  }
  const legend = copy.querySelector("legend");
  legend.textContent = legend.textContent.replace(String(number), String(number + 1));
  return copy;
}

export function showEchoes(echoes) {
  // While one of its pieces is half typed a line stays drawn as it was: nothing moves under the fingers.
  const old = "line-long" in echoes && !("line-drawn" in echoes);
  at("line-drawn-echo").toggleAttribute("data-old", old);
  for (const place of form.querySelectorAll(`.panel .echo${old ? ":not([data-old])" : ""}`))
    showMade(place, echoes[place.id.slice(0, -"-echo".length)] ?? "");
}

// Only in panels: what is told of a measure stands in its row.
export function showErrors(errors) {
  for (const place of form.querySelectorAll(".panel .wrong:not(:empty)")) mark(place.id.slice(0, -"-wrong".length), "");
  for (const { id, text } of errors) if (id && at(id)) mark(id, text);
}

function mark(id, text) {
  const field = at(id);
  const place = at(`${id}-wrong`);
  if (!field || !place) return;
  write(place, text);
  field.closest("[data-field]")?.toggleAttribute("data-bad", Boolean(text));
  if (!field.matches("fieldset")) field.ariaInvalid = text ? "true" : "false";
  if (text) {
    for (let fold = field.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
  }
}
