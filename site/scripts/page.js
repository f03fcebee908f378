// The page's script: hands what is typed to Python's worker, puts back what comes, and keeps the work.
// Nothing is laid out, computed, rounded or worded here; the words shown before Python is up stand in the page.

import { acting } from "./acting.js";
import { remembering } from "./answers.js";
import { asking } from "./asking.js";
import { aloud, awake } from "./awake.js";
import { copyHolds, linkInAddress, wasCopied } from "./copy.js";
import { address, desk } from "./desk.js";
import { at, form, write } from "./document.js";
import { dressed, languageList } from "./dressed.js";
import { faces } from "./faces.js";
import { nameOf, reading, rowsFor, typed, values } from "./form.js";
import { openJob } from "./job.js";
import { keeper } from "./kept.js";
import { lastFace } from "./lastsheet.js";
import { looking } from "./looking.js";
import { numbersFace } from "./numbers.js";
import { workOffline } from "./offline.js";
import { onPaper } from "./paper.js";
import { progress } from "./progress.js";
import { shownList, shownUnit } from "./shownin.js";
import { sitePlan } from "./siteplan.js";
import { starting } from "./starting.js";
import { undoing } from "./undo.js";
import { unitAsked } from "./unitasked.js";
import { wallDoor } from "./walldoor.js";

const SPOKEN_AFTER = 700; // milliseconds: nobody wants to hear of each keystroke

const root = document.documentElement;
root.dataset.script = "";

const inside = document.querySelector("meta[name=bowstring-job]")?.content ?? ""; // the job that a page was saved with
const copied = wasCopied(root);
const { words, language } = await dressed(copied);
languageList(at("language"), words, language);
const shownIn = copied ? "" : shownUnit(at("shown"));
shownList(at("shown"), shownIn);
const keep = keeper(inside.slice(-14));
let fingers = false; // something was typed, chosen or opened in this window
let settle = null;
const settled = new Promise((resolve) => (settle = resolve)); // Python has answered once, or can't
let link = null;
const linked = new Promise((resolve) => (link = resolve)); // Python is up, and a link's job is open
let dead = false; // Python couldn't be started
let up = false; // Python has started: a link that comes into the address from now on is opened at once
let taking = ""; // the link that is being opened
let python = null;
const ask = remembering((call, payload) => python.ask(call, payload));

// --- what the bar and the notices say

function status(state, text = words.status[state], panel = "") {
  write(at("status"), text);
  at("status").dataset.open = panel;
  at("status").parentElement.dataset.state = state;
  at("status").disabled = !["ask", "stop"].includes(state);
}

function trouble(kind, told = "") {
  const [sentence, detail] = at("trouble").children;
  at("trouble").hidden = !kind;
  sentence.textContent = kind ? words.trouble[kind] : "";
  detail.textContent = told;
  if (kind) status("failed");
}

// Python's name of a job without a title stays there while another number is typed.
function jobName() {
  const title = at("title").value.trim();
  write(at("job-name"), title || look.called || nameOf(typed(), words.new_job));
  at("job-name").classList.toggle("numbers", !title);
}

let announcing = 0;
function announce(text) {
  clearTimeout(announcing);
  at("announced").textContent = "";
  announcing = setTimeout(() => (at("announced").textContent = text), SPOKEN_AFTER);
}

function changed(byKey = true) {
  root.dataset.stale = "";
  if (root.dataset.sheet === "computed") root.dataset.sheet = "prebuilt"; // what stands there is an older answer
  status(dead ? "failed" : "waiting");
  jobName();
  work.showLink(""); // what stands there is another job's by now
  copyHolds(linkInAddress(), address());
  unit.shown();
  plan.stale();
  look.stale();
  asked.changed(byKey);
}

// Another job's fields come into the form: what was told of the one before goes at once.
function switched() {
  unit.forget();
  look.forget();
}

// --- the job, the faces, and what is looked at

function opened(fields, id) {
  fingers = true;
  job.open(fields, id);
  place.go({ face: look.firstFace(fields) });
}

const undo = undoing();
const job = openJob({
  keep,
  words: words.job,
  undo,
  changed: () => changed(false),
  switched: () => switched(),
  listed: () => work.list(),
});
const marks = () => look.shown?.marks ?? {};
const renumbered = () => look.shown?.renumbered;
const steps = progress({ touched: job.touched, undo, words: words.job, restore: job.restore, marks, renumbered });
const voice = aloud({ changed: () => look.voice() });
const last = lastFace(`${root.dataset.version} ${language} ${shownIn}`);
const place = faces({
  shown(now, before) {
    root.dataset.sheet = "prebuilt"; // what was computed stood on another face
    look.turned(now, before);
    acts.turned(now);
    door.turned(now);
    if (now.panel === "jobs") work.list();
    staysOn();
    asked.changed(false);
  },
});
const staysOn = awake(() => place.now.face === "stakes" && steps.done().length > 0);
const look = looking({
  root,
  place,
  job,
  steps,
  voice,
  last,
  address,
  status,
  announce,
  words,
  ask: (...call) => ask(...call),
  papered: () => paper.named(),
  named: () => jobName(),
  painted: () => acts.painted(),
});
const door = wallDoor({
  place,
  ask: (...call) => ask(...call),
  ready: linked,
  starting: () => words.status.starting,
  wrong: (told) => work.wrong(`${words.desk.ask_failed} ${told}`),
  keep: opened,
});
const numbers = numbersFace({ ask: (...call) => ask(...call), leave: () => place.leave(), decimal: words.decimal, shownIn });
const unit = unitAsked({ words, settled: (fields) => job.fill(fields, job.id), kept: job.write });
const plan = sitePlan({
  tapping: words.tapping,
  ask: (...call) => ask(...call),
  filled: () => form.dispatchEvent(new Event("input", { bubbles: true })),
});
const paper = onPaper({ ready: () => look.paperReady(), make: () => look.paperNow() });
const work = desk({
  keep,
  words: words.desk,
  ask: (...call) => ask(...call),
  open: opened,
  remove: job.remove,
  present: () => ({ id: job.id, untouched: job.untouched, fields: typed() }),
  show: () => place.go({ face: "numbers", panel: "jobs" }),
});

const asked = asking({
  questions: (keyed) =>
    look.questions(
      { numbers, plan, unit, typedJob: () => ({ fields: values(), panel: place.now.panel, ...numbers.asked() }) },
      keyed,
    ),
  ahead: look.ahead,
  later: () => look.later({ work }),
  waiting: () => status("waiting"),
  slow(kind) {
    settle();
    trouble(kind);
  },
  first: settle,
  fault(told) {
    settle();
    if (dead) return; // what is wrong is told already
    delete root.dataset.stale;
    root.dataset.sheet = "refused";
    trouble("fault", told);
    look.failed();
  },
});

const acts = acting({
  shownIn,
  place,
  job,
  steps,
  look,
  undo,
  ask: (...call) => ask(...call),
  wrong: (told) => work.wrong(`${words.desk.ask_failed} ${told}`),
  changed,
  touched() {
    fingers = true;
    job.touched();
  },
});

form.addEventListener("input", () => {
  fingers = true;
  unit.changed();
  reading(() => {
    rowsFor(typed());
    undo.hide();
    job.write();
    changed();
  });
});
form.addEventListener("submit", (event) => event.preventDefault());
at("clear").addEventListener("click", () => {
  fingers = true;
  job.clear();
  place.go({ face: "numbers" });
  at("numbers-face").scrollTop = 0;
});

// --- coming up

function failed(kind, told) {
  dead = true;
  settle();
  asked.stop();
  root.dataset.dead = "";
  trouble(kind, told);
}

function ready() {
  if (dead) trouble(null);
  dead = false;
  delete root.dataset.dead;
  up = true;
  back
    .then(takeLink)
    .catch((reason) => work.wrong(reason.message))
    .finally(() => {
      link();
      asked.begin(ask);
    });
}

function begin() {
  const lastOpen = keep.open;
  const fields = keep.read(lastOpen);
  work.list();
  work.showLink("");
  if (!keep.works) {
    at("kept").textContent = words.job.kept.none;
    at("kept").classList.add("alarm");
  }
  if (copied) changed(false); // what stands there isn't that of the fields yet
  if (fields) job.fill(fields, lastOpen);
  place.begin({ face: fields ? look.lastFace() : "numbers" });
  if (fields && look.showLast()) status("last");
}

// A browser that was killed may have lost the last minute: it stands in the second copy.
async function comeBack() {
  if (!(await keep.restore())) return;
  work.list();
  const fields = keep.read(keep.open);
  if (!fingers && fields) job.fill(fields, keep.open); // under somebody's hands nothing changes; it's in the list
}

// A link in the address, or the job that this file was saved with.
async function takeLink() {
  const text = linkInAddress();
  if (text && text === taking) return;
  if (text) {
    taking = text;
    return work.openText("open_link", text, linkTaken).finally(() => (taking = ""));
  }
  if (!inside || !job.untouched) return;
  const result = await ask("open_link", { text: inside });
  if (result.error) return work.wrong(result.error);
  if (!job.untouched) return; // something was typed meanwhile
  const fields = { ...result.fields, received: result.parent };
  job.show(fields, result.id);
  if (place.now.face === "numbers") place.replace({ face: look.firstFace(fields) });
}

// The link leaves the address only when its job is open, or was left: kept work is found again after a reload. Where nothing
// is kept it stays for that.
function linkTaken(text) {
  if (!keep.works || location.hash !== text) return;
  history.replaceState(history.state, "", location.pathname + location.search);
  place.replace({ face: place.now.face });
}

addEventListener("hashchange", () => {
  if (linkInAddress() && up) takeLink();
});

begin();
unit.shown();
if (job.untouched) copyHolds(linkInAddress() || inside, address());
const back = Promise.race([comeBack(), new Promise((resolve) => setTimeout(resolve, 3000))]); // some databases never answer
python = starting({
  language,
  shownIn,
  ready,
  failed,
  looking: () => trouble("start"),
  replaced: () => status("waiting"),
  lacked(name) {
    at("lacked").hidden = false;
    at("lacked").firstElementChild.textContent = name;
  },
});
root.dataset.up = ""; // this script has come through

// Not before the first answer, or what would tell that there'll be none: both would want the same network and processor.
settled.then(() =>
  workOffline(root, {
    works: python.works,
    told: (state) => (at("offline").textContent = words.offline[dead && state === "failed" ? "dead" : state]),
    offered(take) {
      at("update").hidden = false;
      at("update-take").addEventListener("click", take, { once: true });
      at("update-later").addEventListener("click", () => (at("update").hidden = true), { once: true });
    },
  }),
);
