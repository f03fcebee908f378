// The page's script: hands what is typed to Python's worker, puts back what comes, and keeps the work.
// Nothing is laid out, computed, rounded or worded here; the words shown before Python is up stand in the page.

import { address, desk } from "./desk.js";
import { asking } from "./asking.js";
import { at, form } from "./document.js";
import { put, rowsFor, sameFields, showEchoes, showErrors, typed, values } from "./form.js";
import { signKeys } from "./keys.js";
import { keeper, newId } from "./kept.js";
import { lastSheet } from "./lastsheet.js";
import { copyHolds, linkInAddress, wasCopied } from "./copy.js";
import { workOffline } from "./offline.js";
import { onPaper } from "./paper.js";
import { partsOf } from "./parts.js";
import { sitePlan } from "./siteplan.js";
import { starting } from "./starting.js";

const SPOKEN_AFTER = 700; // milliseconds: nobody wants to hear of each keystroke

const root = document.documentElement;
const sheet = at("sheet");
const words = JSON.parse(at("words").textContent);

root.dataset.script = "";

// --- the job in the fields

const inside = document.querySelector("meta[name=bowstring-job]")?.content ?? ""; // the job that a page was saved with
const copied = wasCopied(root);
const keep = keeper(inside.slice(-14));
let here = null; // the id that the present job is kept under; none while it's the example or nothing was typed
let untouched = true; // nothing was typed since the example or an empty form came up
let fingers = false; // something was typed, chosen or opened in this window
let unitBefore = null; // the unit that bare numbers were typed in, until somebody says which one holds
let unitShown = values().unit;
let otherMark = ""; // what the tape was read to in another unit: it stands again where the unit is put back
let cleared = null; // what stood in the fields before they were emptied
let settle = null;
const settled = new Promise((resolve) => (settle = resolve)); // Python has answered once, or can't
let dead = false; // Python couldn't be started
let up = false; // Python has started: a link that comes into the address from now on is opened at once
let taking = ""; // the link that is being opened
let ask = () => Promise.reject(new Error(words.trouble.start));

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

let announcing = 0;
function announce(text) {
  clearTimeout(announcing);
  at("live").textContent = "";
  announcing = setTimeout(() => (at("live").textContent = text), SPOKEN_AFTER);
}

function kept() {
  here ??= newId();
  const done = keep.write(here, typed());
  const name = values().title?.trim() || words.desk.untitled;
  at("kept").textContent = done ? `${words.kept.kept} ${name}` : words.kept[keep.works ? "full" : "none"];
  at("kept").classList.toggle("alarm", !done);
  work.list();
}

function changed() {
  root.dataset.stale = "";
  if (root.dataset.sheet === "computed") root.dataset.sheet = "prebuilt"; // what stands there is an older answer
  status(dead ? "failed" : "waiting");
  work.showLink(""); // what stands there is another job's by now
  copyHolds(linkInAddress(), address());
  const unit = values().unit;
  for (const place of form.querySelectorAll("[data-unit]")) place.textContent = words.units[unit] ?? "";
  keys.unit();
  plan.stale();
  asked.changed();
}

function filled(fields, id) {
  put(fields);
  here = id;
  unitBefore = null;
  unitShown = values().unit;
  otherMark = "";
  at("elsewhere").hidden = true;
  changed();
}

function open(fields, id) {
  fingers = true;
  filled(fields, freeId(id, fields));
  untouched = false;
  cleared = null;
  at("restore").hidden = true;
  kept();
  at("numbers").scrollIntoView();
}

// The id itself, or a new one where another job is kept under it: what was changed since stays as it is.
function freeId(id, fields) {
  const before = id && keep.read(id);
  const same = !before || sameFields(before, fields);
  return id && same ? id : newId();
}

function fresh() {
  filled({ unit: values().unit }, null); // the tape stays the one in hand
  untouched = true;
  work.list();
}

// --- asking and showing

const asked = asking({
  question: () => ({ fields: values(), unit_before: unitBefore, address: address() }),
  waiting: () => status("waiting"),
  advised({ advice, text }) {
    if (at("sheet-advice")) at("sheet-advice").outerHTML = advice;
    if (at("site-advice")) at("site-advice").innerHTML = text;
    performance.mark("bowstring-advice"); // for whoever measures
  },
  slow(kind) {
    settle();
    trouble(kind);
  },
  shown(result) {
    settle();
    trouble(null);
    show(result);
  },
  fault(told) {
    settle();
    delete root.dataset.stale;
    root.dataset.sheet = "refused";
    at("refusal").hidden = true;
    trouble("fault", told);
  },
});

function failed(kind, told) {
  dead = true;
  settle();
  asked.stop();
  root.dataset.dead = "";
  document.querySelector("main").prepend(at("trouble")); // on a phone the sheet is far below
  trouble(kind, told);
}

function ready() {
  if (dead) trouble(null);
  at("refusal").before(at("trouble"));
  dead = false;
  delete root.dataset.dead;
  up = true;
  back
    .then(takeLink)
    .catch((reason) => work.wrong(reason.message))
    .finally(() => asked.begin(ask));
}

function show(result) {
  showEchoes(result.echoes);
  showErrors(result.errors);
  plan.show(result.site_plan);
  at("refusal").hidden = result.sign !== "refused";
  at("example-note").hidden = !result.example;
  if (result.sign === "computed") {
    replaceSheet(result.sheet);
    if (!result.example && !result.unit_note) last.keep(typed(), result.sheet);
  }
  root.dataset.sheet = result.sign;
  delete root.dataset.stale;
  performance.mark("bowstring-sheet"); // for whoever measures
  at("unit-note").hidden = !result.unit_note;
  at("unit-note").firstElementChild.innerHTML = result.unit_note;
  if (!result.unit_note) unitBefore = null; // nothing hangs on the unit
  work.showLink(result.link ?? "", result.link_note);
  copyHolds(result.example ? "" : (result.link ?? ""), address());
  const state = result.example ? "example" : result.stop ? "stop" : result.sign;
  status(state);
  announce(words.live[state] ?? words.live[result.sign]);
}

// `made`: HTML that Python made and escaped, or nodes that were built here.
function replaceSheet(made) {
  const shut = [...sheet.querySelectorAll("details:not([open])")].map((fold) => fold.id);
  const contents = at("sheet-contents")?.open;
  if (typeof made === "string") sheet.innerHTML = made;
  else sheet.replaceChildren(made);
  if (contents) at("sheet-contents").open = true;
  for (const id of shut) at(id)?.removeAttribute("open");
  parts.refresh();
  paper.named();
}

const last = lastSheet(root.dataset.version);
const keys = signKeys(at("keys"), () => words.decimal.includes(values().unit));
const paper = onPaper(sheet);
const parts = partsOf(root, sheet, at);
const plan = sitePlan({
  tapping: words.tapping,
  ask: (call, payload) => ask(call, payload),
  filled: () => form.dispatchEvent(new Event("input", { bubbles: true })),
});
const work = desk({
  keep,
  words: words.desk,
  ask: (call, payload) => ask(call, payload),
  open,
  fresh,
  present: () => ({ id: here, untouched, fields: typed() }),
});

// --- what the form's buttons and fields do

form.addEventListener("input", () => {
  const unit = values().unit;
  if (unit !== unitShown) {
    unitBefore = unitBefore === unit ? null : (unitBefore ?? unitShown);
    at("mark").value = markIn(unit);
  }
  unitShown = unit;
  untouched = false;
  fingers = true;
  rowsFor(typed());
  kept();
  changed();
});
// On the sheet: to where what was really got is told.
sheet.addEventListener("click", ({ target }) => {
  if (!target.closest('a[href="#form-got"]')) return;
  if (root.dataset.view === "parts") at("parts-close").click();
  at("form-got").open = true;
});

// What a blunder would look like is drawn when somebody opens its fold.
sheet.addEventListener("toggle", async ({ target: fold }) => {
  if (!fold.open || !fold.dataset?.mistake || fold.querySelector("figure")) return;
  const asking = ask("mistake", { fields: values(), kind: fold.dataset.mistake });
  const { svg, error } = await asking.catch((reason) => ({ error: `${words.desk.ask_failed} ${reason.message}` }));
  if (fold.querySelector("figure") || (!svg && !error)) return;
  const said = document.createElement(svg ? "figure" : "p");
  said.className = svg ? "drawing" : "wrong";
  if (svg) said.innerHTML = svg;
  else said.textContent = error;
  fold.querySelector("p.wrong")?.remove(); // what went wrong when it was opened before
  fold.append(said);
}, true);

form.addEventListener("submit", (event) => event.preventDefault());

at("unit-keep").addEventListener("click", () => settleUnit(values().unit));
at("unit-back").addEventListener("click", () => settleUnit(unitBefore));

// The mark that stands in a unit: the one chosen where it's on that unit's tape, otherwise the usual one.
function markIn(unit) {
  const on = (mark) => [...at("mark").querySelectorAll(`[data-marks="${unit}"] option`)].some(({ value }) => value === mark);
  const chosen = at("mark").value;
  const mark = [chosen, otherMark].find(on) ?? "";
  otherMark = on(chosen) ? "" : chosen || (mark ? "" : otherMark);
  return mark;
}

function settleUnit(unit) {
  filled({ ...typed(), unit, mark: markIn(unit) }, here);
  kept();
  at("unit").focus();
}

at("clear").addEventListener("click", () => {
  fingers = true;
  cleared = { fields: typed(), id: here, untouched };
  fresh();
  at("restore").hidden = false;
});

at("restore").addEventListener("click", () => {
  filled(cleared.fields, cleared.id);
  untouched = cleared.untouched;
  at("restore").hidden = true;
  at("clear").focus();
  work.list();
});

at("elsewhere-take").addEventListener("click", () => {
  const fields = keep.read(here);
  if (fields) filled(fields, here);
  at("elsewhere").hidden = true;
});

// --- coming up

at("unit").after(at("unit-note")); // where the hand is that has just changed the unit

function begin() {
  const lastOpen = keep.open;
  const fields = keep.read(lastOpen);
  work.list();
  work.showLink("");
  if (!keep.works) {
    at("kept").textContent = words.kept.none;
    at("kept").classList.add("alarm");
  }
  if (copied) changed(); // the sheet that stands there isn't that of the fields yet
  if (!fields) return;
  filled(fields, lastOpen);
  untouched = false;
  showLast();
}

// What was shown for these very numbers last time stands there until Python has worked them out again.
function showLast() {
  const nodes = last.of(typed());
  if (!nodes) return;
  replaceSheet(nodes);
  delete root.dataset.stale;
  status("last");
}

// A browser that was killed may have lost the last minute: it stands in the second copy.
async function comeBack() {
  if (!(await keep.restore())) return;
  work.list();
  const fields = keep.read(keep.open);
  if (fingers || !fields) return; // under somebody's hands nothing changes; it's in the list
  filled(fields, keep.open);
  untouched = false;
}

// A link in the address, or the job that this file was saved with.
async function takeLink() {
  const text = linkInAddress();
  if (text && text === taking) return;
  if (text) {
    taking = text;
    return work.openText("open_link", text, linkTaken).finally(() => (taking = ""));
  }
  if (!inside || !untouched) return;
  const result = await ask("open_link", { text: inside });
  if (result.error) return work.wrong(result.error);
  filled(result.fields, freeId(result.id, result.fields));
  untouched = false;
}

// The link leaves the address only when its job is open, or was left: kept work is found again after a reload. Where nothing
// is kept it stays for that.
function linkTaken(text) {
  if (keep.works && location.hash === text) history.replaceState(null, "", location.pathname + location.search);
}

addEventListener("hashchange", () => {
  if (linkInAddress() && up) takeLink();
});

paper.named();
keys.unit();
begin();
if (untouched) copyHolds(linkInAddress() || inside, address());
parts.comeBack();
const back = Promise.race([comeBack(), new Promise((resolve) => setTimeout(resolve, 3000))]); // some databases never answer
const python = starting({
  ready,
  failed,
  looking: () => trouble("start"),
  replaced: () => status("waiting"),
  lacked(name) {
    at("lacked").hidden = false;
    at("lacked").firstElementChild.textContent = name;
  },
});
ask = python.ask;
root.dataset.up = ""; // this script has come through

// Not before the first answer, or what would tell that there'll be none: both would want the same network and processor.
settled.then(() => workOffline(root, {
  works: python.works,
  told: (state) => (at("offline").textContent = words.offline[dead && state === "failed" ? "dead" : state]),
  offered(take) {
    at("update").hidden = false;
    at("update-take").addEventListener("click", take, { once: true });
    at("update-later").addEventListener("click", () => (at("update").hidden = true), { once: true });
  },
}));
