// The page's script: hands what is typed to Python's worker and puts back what comes.
// Nothing is laid out, computed, rounded or worded here; the words shown before Python is up stand in the page.

import { partsOf } from "./parts.js";

const DELAY = 120; // milliseconds without a keystroke before Python is asked
const PATIENCE = 60_000; // milliseconds before the page says that something takes too long

const root = document.documentElement;
const at = (id) => document.getElementById(id);
const form = at("form");
const sheet = at("sheet");
const words = JSON.parse(at("words").textContent);

let edition = 0; // counts changes of the form; an answer to an older one is dropped
let asked = null; // the edition that Python is working on
let ready = false;
let delay = 0;
let patience = 0;
let dead = false; // Python couldn't be started
let unitBefore = null; // the unit that bare numbers were typed in, until somebody says which one holds
let unitShown = values().unit;
let cleared = null; // what stood in the fields before they were emptied

function values() {
  const fields = {};
  for (const control of form.elements) {
    if (!control.name) continue;
    const silent = (control.type === "radio" || control.type === "checkbox") && !control.checked;
    if (!silent) fields[control.name] = control.value;
  }
  return fields;
}

function status(state) {
  at("status").textContent = words.status[state];
  at("status").parentElement.dataset.state = state;
}

function trouble(kind, told = "") {
  const [sentence, detail] = at("trouble").children;
  at("trouble").hidden = !kind;
  sentence.textContent = kind ? words.trouble[kind] : "";
  detail.textContent = told;
  if (kind) status("failed");
}

function wait(kind) {
  clearTimeout(patience);
  patience = setTimeout(() => trouble(kind), PATIENCE);
}

function announce(text) {
  at("live").textContent = "";
  requestAnimationFrame(() => (at("live").textContent = text));
}

// --- asking

function changed() {
  edition += 1;
  root.dataset.stale = "";
  if (root.dataset.sheet === "computed") root.dataset.sheet = "prebuilt"; // what stands there is an older answer
  status(dead ? "failed" : "waiting");
  const unit = new FormData(form).get("unit");
  for (const place of form.querySelectorAll("[data-unit]")) place.textContent = words.units[unit] ?? "";
  for (const input of form.querySelectorAll("[data-keys]")) input.inputMode = words.decimal.includes(unit) ? "decimal" : "";
  clearTimeout(delay);
  delay = setTimeout(ask, DELAY);
}

function ask() {
  if (!ready || asked !== null) return; // asked again when Python is free
  asked = edition;
  wait("slow");
  worker.postMessage({ id: edition, call: "sheet", payload: JSON.stringify({ fields: values(), unit_before: unitBefore }) });
}

const worker = new Worker(new URL("./worker.js", import.meta.url), { type: "module" });
wait("slow_start");

worker.addEventListener("error", (event) => {
  event.preventDefault();
  fail(event.message ?? "");
});

worker.addEventListener("message", ({ data }) => {
  if (data.failed !== undefined) return fail(data.failed);
  clearTimeout(patience);
  trouble(null);
  if (data.ready) {
    ready = true;
    return ask();
  }
  asked = null;
  if (data.id !== edition) {
    status("waiting"); // something was typed since
    return ask();
  }
  if (data.error !== undefined) return fault(data.error);
  show(JSON.parse(data.result));
});

// --- showing

function fail(told) {
  dead = true;
  clearTimeout(patience);
  root.dataset.dead = "";
  trouble("start", told);
}

function fault(told) {
  delete root.dataset.stale;
  root.dataset.sheet = "refused";
  at("refusal").hidden = true;
  trouble("fault", told);
}

function show(result) {
  for (const place of form.querySelectorAll(".echo")) place.innerHTML = result.echoes[place.id.slice(0, -"-echo".length)] ?? "";
  showErrors(result.errors);
  at("refusal").hidden = result.sign !== "refused";
  at("example-note").hidden = !result.example;
  if (result.sign === "computed") replaceSheet(result.sheet);
  root.dataset.sheet = result.sign;
  delete root.dataset.stale;
  at("unit-note").hidden = !result.unit_note;
  at("unit-note").firstElementChild.innerHTML = result.unit_note;
  if (!result.unit_note) unitBefore = null; // nothing hangs on the unit
  const state = result.example ? "example" : result.stop ? "stop" : result.sign;
  status(state);
  announce(words.live[state] ?? words.live[result.sign]);
}

function replaceSheet(html) {
  const shut = [...sheet.querySelectorAll("details:not([open])")].map((fold) => fold.id);
  sheet.innerHTML = html; // made and escaped by Python
  for (const id of shut) at(id)?.removeAttribute("open");
  parts.refresh();
}

function showErrors(errors) {
  for (const place of form.querySelectorAll(".wrong:not(:empty)")) mark(place.id.slice(0, -"-wrong".length), "");
  at("errors").replaceChildren(
    ...errors.map(({ id, text, line }) => {
      const item = document.createElement("li");
      if (!id) {
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

// --- clearing, and bringing back

function put(fields) {
  unitBefore = null;
  for (const control of form.elements) {
    if (control.type === "radio") control.checked = fields[control.name] === control.value;
    else if (control.type === "checkbox") control.checked = control.name in fields;
    else if (control.name) control.value = fields[control.name] ?? "";
  }
  unitShown = values().unit;
}

at("clear").addEventListener("click", () => {
  cleared = values();
  const blank = { unit: cleared.unit }; // the tape stays the one in hand
  for (const control of form.querySelectorAll("[data-blank]")) blank[control.name] = control.value;
  put(blank);
  at("restore").hidden = false;
  changed();
});

at("restore").addEventListener("click", () => {
  put(cleared);
  at("restore").hidden = true;
  at("clear").focus();
  changed();
});

at("print").addEventListener("click", () => window.print());

// On paper every level stands open: a level that isn't there would be a stake that isn't set.
let shutForPrint = [];
addEventListener("beforeprint", () => {
  shutForPrint = [...sheet.querySelectorAll("details:not([open])")];
  for (const fold of shutForPrint) fold.open = true;
});
addEventListener("afterprint", () => {
  for (const fold of shutForPrint) fold.open = false;
});

// --- a unit changed under bare numbers

form.addEventListener("input", () => {
  const unit = values().unit;
  if (unit !== unitShown) unitBefore = unitBefore === unit ? null : (unitBefore ?? unitShown);
  unitShown = unit;
});

at("unit-keep").addEventListener("click", () => settleUnit(values().unit));
at("unit-back").addEventListener("click", () => settleUnit(unitBefore));

function settleUnit(unit) {
  put({ ...values(), unit });
  at("unit").focus();
  changed();
}

const parts = partsOf(root, sheet, at);

form.addEventListener("input", changed);
form.addEventListener("submit", (event) => event.preventDefault());
