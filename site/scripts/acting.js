// What the buttons of a face do: each carries its name in `data-do`, and what it needs beside it.

import { at } from "./document.js";
import { fill, sameFields, typed, values } from "./form.js";

// The row in which the nth reading of a check is kept: its own, or the next that is free.
function readingRow(check, nth) {
  const rows = Object.entries(values()).filter(([name]) => /^read-[0-9]+-check$/.test(name));
  const number = ([name]) => Number(name.split("-")[1]);
  const own = rows.filter(([, text]) => text === check).map(number);
  const free = Math.max(-1, ...rows.map(number)) + 1;
  return `read-${own.sort((one, other) => one - other)[nth] ?? free}`;
}

// The fields that clear what was read at some checks, or at all, and say that those are taped anew, whatever stands in them
// by then. What is still to be taped anew for another stake is told with it.
function cleared({ stake = "", checks } = {}) {
  const all = Object.entries(values()).filter(([name, check]) => /^read-[0-9]+-check$/.test(name) && check);
  const read = all.filter(([, check]) => checks?.includes(check) ?? true);
  if (!read.length) return {};
  const [other, ...keys] = (values().anew ?? "").split("|");
  const open = keys.filter((key) => !all.some(([, check]) => check === key));
  const rows = read.flatMap(([name]) => [
    [name, ""],
    [name.replace(/check$/, "value"), ""],
  ]);
  const anew = [open.length && other !== stake ? "" : stake, ...new Set([...open, ...read.map(([, check]) => check)])];
  return { ...Object.fromEntries(rows), anew: anew.join("|") };
}

const TURNS = ["done", "use-got", "skip"];
const REST = 700; // milliseconds

const root = document.documentElement;

export function acting({ place, job, steps, look, undo, ask, touched, changed, wrong, shownIn }) {
  const asked = (call, payload) => ask(call, payload).catch((reason) => ({ error: reason.message }));

  const card = () => look.shown?.card ?? place.now.card;
  // The card on screen, as a step is done at it: none while what stands there is from last time, or of older numbers.
  const standing = () => (root.dataset.sheet === "computed" && !("stale" in root.dataset) && look.shown?.card) || 0;

  // On a desk the numbers and their panels stand at the left, whatever is at the right.
  function open(face, panel) {
    const { now, wide } = place;
    const stays = panel === "jobs" || (wide && face === "numbers");
    // From one panel to another nothing is put between them: Back leads to what was there before both.
    const go = now.panel && panel ? place.replace : place.go;
    go({ face: stays ? now.face : face, card: stays ? now.card : null, panel });
  }

  function into(face, panel, field) {
    open(face, panel);
    lead(panel, field);
  }

  let again = 0; // the card that the checks sent back to, a stake to be set again, as long as nobody looks at anything else
  let suspect = null; // that stake, and the checks that touch it
  let later = []; // the cards of what was set from it: it stood wrong, too, so they come again before the checks
  // The next card; from one that the checks asked for on to those after it and back to them, from the last one to the
  // face that it names.
  function onward(from, face = "") {
    rest();
    const healing = from === again;
    const [next = 0, ...more] = healing ? later : [];
    again = next;
    later = more;
    if (next) return place.go({ face: "stakes", card: next });
    const to = healing ? "checks" : face;
    place.go(to ? { face: to } : { face: "stakes", card: steps.after(from, look.shown?.count ?? from + 1) });
  }

  // What was read before the stake was set again says nothing of where it stands now, however somebody came to its card: a
  // suspect's, or one that isn't done, or isn't any more.
  function setAnew(card) {
    const open = steps.done().includes(card) ? null : look.shown?.touched;
    const set = (card === again && suspect) || look.shown?.suspect || open;
    return set ? cleared(set) : {};
  }
  // However somebody came to its card, what was set from it comes after it.
  function hanging(card) {
    if (card !== again && look.shown?.suspect?.then.length) {
      again = card;
      later = look.shown.suspect.then;
    }
    return card === again ? later : [];
  }

  // A gloved finger taps twice: from the tap until a moment after the next card is painted, however long that takes, what
  // turns the one after it is deaf (face-stakes.css).
  let rested = 0;
  let frame = 0;
  let out = false; // the first check that is out, or waits, is led to once its face is there
  function rest() {
    root.dataset.turned = "";
    clearTimeout(rested);
    cancelAnimationFrame(frame);
  }
  const awake = () => delete root.dataset.turned;
  function painted() {
    if (out && place.now.face === "checks") {
      out = false;
      acts.focus({ for: "check-out" });
    }
    if (!("turned" in root.dataset)) return;
    rest();
    frame = requestAnimationFrame(() => (rested = setTimeout(awake, REST)));
  }

  // To the question itself in a panel that opens at its top: a field by its id, else the first that something is wrong with,
  // and into it.
  function lead(name, field) {
    setTimeout(() => {
      const panel = document.getElementById(`panel-${name}`);
      const wrong = () => [...panel.querySelectorAll(".wrong")].find((one) => one.textContent.trim())?.closest("[data-field]");
      const where = panel && (field ? panel.querySelector(`[data-field="${field}"], #${field}`) : wrong());
      for (let fold = where?.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
      where?.scrollIntoView({ block: "center" });
      where?.matches("[data-bad]") && where.querySelector(".entry > *")?.focus();
    });
  }

  // To what a panel tells, with the buttons that settle it: as soon as it's there.
  function leadTold(name) {
    const told = at("slab-told");
    if (!told.hidden) return lead(name, told.id);
    const seen = new MutationObserver(() => {
      if (told.hidden && place.now.panel === name) return;
      seen.disconnect();
      if (place.now.panel === name) lead(name, told.id);
    });
    seen.observe(told, { attributes: true, attributeFilter: ["hidden"] });
  }

  const acts = {
    panel: ({ panel }) => open("numbers", panel),
    answer: ({ panel }) => into("numbers", panel),
    "panel-close": () => place.leave(),
    face: ({ face, open: panel = "", field }) => into(face, panel, field),
    // What the bar at the top says is to be answered, or stops: the first of it.
    asked({ open: answers }) {
      if (answers === "checks") {
        out = true;
        return place.now.face === answers && !place.now.panel ? painted() : place.go({ face: answers });
      }
      if (answers) {
        open("numbers", answers);
        return leadTold(answers);
      }
      const building = (one) => place.now.face === "build" && document.querySelector(one);
      const bar = building("#build .ask.open") || at("ask-open");
      const stopped = bar.hidden && building("#build .build-rows .stop[data-open]");
      if (stopped) return open("build", stopped.dataset.open);
      const panel = bar.hidden ? "" : (bar.dataset.open ?? bar.dataset.panel);
      into("numbers", panel, bar.dataset.field);
    },
    go({ step, stake, checks, then }) {
      again = stake === undefined ? 0 : Number(step);
      later = then ? JSON.parse(then) : [];
      suspect = checks === undefined ? null : { stake, checks: JSON.parse(checks) };
      place.go({ face: "stakes", card: Number(step) });
    },
    list: () => place.go({ face: "stakes", card: card(), panel: "list" }),
    done({ face }) {
      const one = standing();
      if (!one) return;
      steps.stands(one, { ...look.shown?.fixed, ...setAnew(one) }, hanging(one));
      onward(one, face);
    },
    // Past the checks with none of them read: their card isn't done.
    skip: ({ face }) => standing() && onward(card(), face),
    back() {
      // From a card that can't be made there's a way back all the same.
      if (!standing() && root.dataset.sheet !== "refused") return;
      awake();
      const before = Math.max(1, card() - 1);
      if (steps.done().includes(before)) steps.undone(before);
      place.go({ face: "stakes", card: before });
    },
    got: ({ step }) => place.go({ face: "stakes", card: Number(step) || card(), panel: "got" }),
    "got-sure"({ sure }) {
      look.gotTyped("sure", sure);
      changed();
    },
    keep: () => place.leave(),
    move: () => place.leave(),
    "use-got"() {
      const one = standing();
      if (!one) return;
      const others = [...(look.shown?.undone ?? []), ...hanging(one)];
      steps.gotAt(one, { ...look.shown?.fill, ...setAnew(one) }, others, look.shown?.fixed);
      onward(one);
    },
    fill({ fill: text, undone, then }) {
      const from = place.now.panel === "got" ? card() : 0;
      fill(JSON.parse(text));
      // What was got, or found, is another thing now: the cards that have other numbers for it don't stand any more, all from
      // here on where nothing says which.
      if (undone !== undefined) steps.theseUndone(undone.split(" ").map(Number));
      else if (from) steps.undone(from);
      else touched();
      if (then) place.go({ face: then });
    },
    async example() {
      const { fields, error } = await asked("example", {});
      if (error) return wrong(error);
      job.showExample(fields);
      place.go({ face: "numbers" });
    },
    // The stakes stand on other numbers: those of them that move a stake go back, or all stakes are set again.
    async stood() {
      const before = typed();
      const result = await asked("set_back", { fields: before });
      if (result.error) return wrong(result.error);
      if (!sameFields(before, typed())) return; // somebody typed on meanwhile
      job.fill(result.fields, job.id);
      touched();
      undo.offer(result.said, () => job.restore(before));
    },
    restart() {
      steps.restarted(cleared());
      place.go({ face: "stakes", card: 1 });
    },
    // Another arc of the line is staked: what was said and done of this one is kept with it.
    async "line-at"({ at: piece }) {
      const result = await asked("line_at", { fields: typed(), at: Number(piece) });
      if (result.error) return wrong(result.error);
      job.restaked(result.fields);
      touched();
      place.go({ face: "stakes", card: null });
    },
    focus({ for: id }) {
      for (let fold = at(id)?.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
      at(id)?.focus();
      at(id)?.scrollIntoView({ block: "center" });
    },
    verdict: () => look.toVerdict(),
    // Whoever leaves the wall by Back or Escape comes back to where this button stands.
    wall: ({ open: wall }) => place.go({ face: "why", wall, from: true }),
    aloud: () => look.hear(!look.speaking),
  };

  document.addEventListener("click", (event) => {
    const tab = event.target.closest("[data-tab]");
    if (tab) {
      event.preventDefault();
      // Tapped while it is looked at, it leads to the top.
      if (tab.dataset.tab === place.now.face && !place.now.panel) at(tab.dataset.tab)?.firstElementChild?.scrollTo(0, 0);
      place.go({ face: tab.dataset.tab, card: tab.dataset.tab === "stakes" ? null : undefined });
      return;
    }
    const button = event.target.closest("[data-do]");
    if (!button || !acts[button.dataset.do]) return;
    event.preventDefault();
    if (TURNS.includes(button.dataset.do) && "turned" in root.dataset) return;
    if (button.dataset.do !== "done" && button.dataset.do !== "use-got") undo.hide();
    acts[button.dataset.do](button.dataset);
  });

  addEventListener("keydown", (event) => {
    if (event.key === "Escape" && place.now.panel) place.leave();
    // A key that is held presses once.
    if (event.repeat && TURNS.includes(event.target.dataset?.do)) event.preventDefault();
  });

  // What stands in a field of readings is typed over: a tap takes all of it, and the next tap puts the caret.
  let entered = null;
  for (const face of [at("stakes"), at("checks")]) {
    face.addEventListener("pointerdown", ({ target }) => (entered = target === document.activeElement ? null : target));
    face.addEventListener("click", ({ target }) => {
      if (target === entered && target.matches("input[data-keys]")) target.select();
      entered = null;
    });
    face.addEventListener("focusin", ({ target }) => target.matches("input[data-keys]") && target.select());
  }

  // What was got, what was read, and the ticket: kept where it's typed.
  const keep = ({ target }) => {
    fill({ [target.name]: target.value.trim() });
    touched();
  };
  at("stakes").addEventListener("input", (event) => {
    const { target } = event;
    if (!target.name) return;
    if ("kept" in target.dataset) return keep(event); // at each key: who taps Done next isn't made to wait
    look.gotTyped(target.name, target.value);
    changed();
  });
  // A verdict of a reading that is typed over says nothing of the one that is being typed.
  at("checks").addEventListener("input", ({ target }) => {
    target.closest("li")?.classList.toggle("typed", target.defaultValue !== "" && target.value !== target.defaultValue);
  });
  at("checks").addEventListener("change", (event) => {
    const { check, nth } = event.target.dataset;
    if (!event.target.name) return;
    if (!check) return keep(event);
    const text = event.target.value.trim();
    read(check, Number(nth), text, event.target);
  });

  // What was read at a check. A device that shows another unit than the job's keeps it with its unit, which only Python knows
  // how to put there: nothing is kept before it has.
  async function read(check, nth, text, target) {
    let kept = text;
    if (shownIn && text) {
      const must = target.closest("li").querySelector(".must b").textContent;
      const told = await asked("spelled", { fields: values(), text, must });
      if (told.error) return wrong(told.error);
      kept = told.text;
    }
    const row = readingRow(check, nth);
    look.readAt(check, nth);
    fill({ [`${row}-check`]: text ? check : "", [`${row}-value`]: kept });
    touched();
  }

  // What stands in a fold is made when somebody opens it.
  document.addEventListener(
    "toggle",
    ({ target: fold }) => {
      if (!fold.open || !fold.dataset) return;
      if (fold.id === "appendix") look.appendix();
      if (fold.dataset.fold) look.fold(fold, fold.querySelector(".in"), "fold", { key: fold.dataset.fold });
      if (!fold.dataset.mistake) return;
      const drawn = fold.querySelector(".drawn") ?? fold.appendChild(document.createElement("div"));
      drawn.className = "drawn";
      look.fold(fold, drawn, "mistake", { kind: fold.dataset.mistake });
    },
    true,
  );

  return {
    painted,
    // Another face, card or panel came up: who went elsewhere isn't sent back to the checks any more.
    turned({ face, card: now }) {
      if (face === "numbers") awake(); // which nobody makes, so that it's painted already
      if (face !== "stakes" || now !== again) again = 0;
    },
  };
}
