// What is looked at is asked for and shown: one face at a time, and the numbers beside it on a desk.

import { at, form, write } from "./document.js";
import { showEchoes, showErrors, typed, values } from "./form.js";
import { replace, showMade } from "./made.js";

const MADE = ["stakes", "checks", "build", "paper", "why"]; // faces that Python makes whole, each in the place of its name
const LAST = "bowstring.2.face"; // which face was looked at last

export function looking({
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
  ask,
  papered,
  named,
  painted,
}) {
  let shown = null; // what the face on screen came with
  let paperFor = ""; // what the paper on the page was made for
  let got = {}; // what is typed in the panel of what was got, before it's used
  let warm = 0; // the part of what other faces need that is made ready next; -1 when all are
  let focus = false; // a card was turned: its heading is read out
  let row = ""; // of the build, whose page was left: it has the focus again
  let called = ""; // what Python calls the job where it has no title
  let reading = null; // the check that was read last, and which reading of it, until its verdict stands there
  let failing = false; // a panel couldn't be made: that stays told when its card stands there again
  let stands = false; // the face of the place and the numbers as they are was made

  const numbersShow = () => !at("face-numbers").hidden;
  const jobText = () => JSON.stringify(typed());
  const paperAsked = () => faceAsked({ face: "paper" });

  // The paper on the page is that of the numbers in the fields from now on: it may be printed.
  function paperThere() {
    paperFor = jobText();
    root.dataset.paper = "";
    papered();
  }

  function sign(result) {
    root.dataset.sheet = result.sign === "open" ? "computed" : result.sign;
    delete root.dataset.stale;
    if (!failing) at("trouble").hidden = true;
    failing = false;
    if (result.state) status(result.state.sign, result.state.text, result.state.panel);
    if (result.called !== undefined) {
      called = result.called;
      named();
    }
    if (result.shown_in !== undefined) unitTold(result.shown_in);
    for (const [face, text] of Object.entries(result.badges ?? {}))
      badged(document.querySelector(`[data-tab="${face}"] .badge`), text);
    performance.mark("bowstring-sheet"); // for whoever measures
  }

  function badged(badge, text) {
    badge.textContent = text;
    badge.hidden = !text;
  }

  // In which unit all is shown, where the job is in another: on a desk it stands in the bar, elsewhere over the face.
  function unitTold(text) {
    for (const place of document.querySelectorAll(".shown-in")) {
      place.hidden = !text;
      write(place, text);
    }
  }

  // --- questions

  function numbersQuestion({ numbers, unit, typedJob }) {
    return {
      call: "numbers",
      payload: typedJob,
      shown(result) {
        numbers.show(result);
        showEchoes(result.echoes);
        showErrors(result.errors);
        unit.told(result.unit_note);
        if (place.now.face === "numbers") sign(result);
        performance.mark("bowstring-numbers"); // for whoever measures
        announce(result.state.text);
      },
    };
  }

  // What takes longer is asked for piece by piece, so that the next key waits for one of them at most.
  function* thenSaid({ numbers, plan, typedJob }) {
    let more = true;
    while (more) {
      more = false;
      const shown = (result) => {
        if (result.more) more = true;
        else said(result);
      };
      yield { call: "numbers_later", payload: () => ({ ...typedJob(), in_pieces: true }), shown };
    }

    function said(result) {
      numbers.later(result);
      if (result.errors?.length) showErrors(result.errors);
      if (place.now.panel === "way") plan.show(result.site_plan);
      if (place.now.face === "numbers" && result.sign !== "refused")
        status(result.state.sign, result.state.text, result.state.panel);
    }
  }

  function faceQuestion() {
    const { now } = place;
    return { call: "face", payload: () => faceAsked(now), shown: (result) => showFace(now.face, result) };
  }

  // Whoever is asked for twice, of the same fields, is asked for by the same words: see answers.js.
  function faceAsked({ face, card = null, panel = "" }, fields = values()) {
    return { fields, face, card, panel, got, address: address() };
  }

  // The next card is made while nobody waits, of the fields as they'll be: a tap on Done then finds it, unless anything else
  // changes before.
  function* ahead() {
    const { face, panel } = place.now;
    if (face !== "stakes" || panel || shown?.sign !== "computed" || !(shown.card < shown.count) || !doneStands()) return;
    const asked = faceAsked({ face, card: shown.card + 1 }, steps.fieldsAt(shown.card, shown.fixed));
    yield { call: "face", payload: () => asked, shown() {} };
  }

  const doneStands = () => at("stakes").querySelector("[data-do=done]") !== null;

  function showFace(face, result) {
    if (face !== place.now.face) return;
    shown = result;
    stands = true;
    if (result.html !== undefined) {
      const read = face === "checks" ? reading : null;
      if (read) reading = null;
      replace(at(face), result.html, read ? `li[data-check="${CSS.escape(read.check)}"]` : "");
      // Who taped one again wants to know what is wrong: told over the rows, unless the next one is being typed.
      if (read?.nth && at(face).querySelector(".found") && !document.activeElement.matches("input")) toVerdict();
      if (face === "paper") paperThere();
    }
    showMade(at("stakes-list"), result.list ?? "");
    sign(result);
    if (result.sign === "computed") last.keep(typed(), place.now, result.html);
    const typing = form.contains(document.activeElement); // on a desk the numbers stand beside it
    if (focus && !typing) at(face).querySelector("[tabindex='-1'], #card-head")?.focus({ preventScroll: true });
    if (row && !typing) at(`build-${row}`)?.focus();
    focus = false;
    row = "";
    painted();
    speak();
    heads();
  }

  function toVerdict() {
    const head = at("checks").querySelector(".checks-head");
    if (!head) return;
    const face = at("checks").firstElementChild;
    face.scrollTop += head.getBoundingClientRect().top - face.getBoundingClientRect().top; // the padding is for rows
    head.focus({ preventScroll: true });
  }

  // Conclusions that take longer come one by one, once the face is there.
  async function heads() {
    const fold = document.querySelector("#why [data-later]");
    if (!fold) return; // what was begun is finished, even where somebody looks at another face by now
    const asking = ask("fold", { fields: values(), key: fold.dataset.fold, head: true });
    const { html, warns, error } = await asking.catch((reason) => ({ error: `${words.desk.ask_failed} ${reason.message}` }));
    if (!fold.isConnected) return;
    delete fold.dataset.later;
    const head = fold.querySelector("summary");
    if (html === "")
      fold.remove(); // the job has no such fold any more
    else if (html) head.innerHTML = html;
    else head.textContent = error;
    fold.classList.toggle("warn", Boolean(warns));
    heads();
  }

  // What other faces need is imported in small parts, so that a key waits for one of them at most.
  function* warming() {
    while (warm >= 0) {
      yield {
        call: "warm",
        payload: () => ({ part: warm }),
        shown: ({ more }) => (warm = more ? warm + 1 : -1),
      };
    }
  }

  // --- the voice

  let speaking = false;
  function speak() {
    if (speaking && place.now.face === "stakes" && shown?.say) voice.say(shown.say);
  }

  return {
    get called() {
      return called;
    },
    get shown() {
      return shown;
    },
    // `keyed`: after a key, more of which may follow; a tap waits for its face.
    *questions(parts, keyed) {
      const numbers = numbersShow();
      const saidFirst = keyed && place.now.face !== "build"; // which is made sooner than what is said
      if (numbers) yield numbersQuestion(parts);
      if (numbers && saidFirst) yield* thenSaid(parts);
      if (place.now.face !== "numbers") yield faceQuestion();
      if (numbers && !saidFirst) yield* thenSaid(parts);
    },
    ahead,
    // Made while nobody waits: what a printer, a message or a copy of the page needs at once.
    later({ work }) {
      const list = [
        { call: "link", payload: () => ({ fields: values(), address: address() }), shown: (result) => work.linked(result) },
      ];
      if (paperFor !== jobText()) {
        list.push({
          call: "face",
          payload: paperAsked,
          shown(result) {
            at("paper").innerHTML = result.html ?? "";
            paperThere();
          },
        });
      }
      return (function* () {
        yield* warming();
        yield* list;
      })();
    },
    // The job has changed: what stands on other faces is another job's. Whoever prints just now gets one sentence (print.css).
    stale() {
      stands = false;
      delete root.dataset.paper;
      paperFor = "";
      at("sheet").replaceChildren();
      at("appendix").open = false;
    },
    // Another face, card or panel came up.
    turned(now, before) {
      const same = before.face === now.face && before.card === now.card && before.panel === now.panel;
      if (before.panel !== now.panel || before.card !== now.card) got = {}; // of another stake
      if (same) return;
      stands = false;
      focus = now.face === "stakes" || Boolean(now.panel);
      row = now.face === "build" && before.face === "build" && !now.panel ? before.panel : "";
      if ((before.face !== now.face || now.face === "build") && MADE.includes(now.face))
        at(now.face).firstElementChild?.scrollTo(0, 0);
      try {
        if (job.id) localStorage.setItem(LAST, now.face);
      } catch {} // only where it comes up next time is lost
    },
    // What was asked for can't be made. A panel of the stakes goes, so that its card can be worked; a card that was turned to
    // goes back to the one that stands there. A panel that the page has by itself stays: somebody has his hands in it.
    failed() {
      const { face, card, panel } = place.now;
      if (face !== "stakes" || failing || stands || shown?.card === undefined) return;
      const own = at(`panel-${panel}`) ? panel : "";
      if (own === panel && (card ?? shown.card) === shown.card) return;
      failing = true;
      place.replace({ face, card: shown.card, panel: own });
    },
    // Another job's fields stand in the form: no badge is of them before its face is looked at.
    forget() {
      reading = null;
      called = "";
      for (const badge of document.querySelectorAll("[data-tab] .badge")) badged(badge, "");
    },
    readAt(check, nth) {
      reading = { check, nth };
    },
    toVerdict,
    gotTyped(name, text) {
      got = { ...got, [name]: text };
    },
    lastFace() {
      try {
        const face = localStorage.getItem(LAST) ?? "";
        return MADE.includes(face) ? face : "numbers";
      } catch {
        return "numbers";
      }
    },
    firstFace: (fields) => (fields.done || fields.received ? "stakes" : "numbers"),
    // What was shown for these very numbers last time stands there until Python has worked it out again.
    showLast() {
      const { face } = place.now;
      const nodes = MADE.includes(face) && last.of(typed(), place.now);
      if (!nodes) return false;
      at(face).replaceChildren(nodes);
      delete root.dataset.stale;
      if (face === "paper") paperThere();
      return true;
    },
    paperReady: () => paperFor === jobText(),
    // Somebody waits for the paper: it's made before anything else that isn't asked for yet.
    async paperNow() {
      const asked = jobText();
      if (paperFor === asked) return;
      const { html } = await ask("face", paperAsked());
      if (html === undefined || asked !== jobText()) return; // numbers were typed meanwhile
      at("paper").innerHTML = html;
      paperThere();
    },
    async appendix() {
      if (at("sheet").childElementCount) return;
      const asked = jobText();
      const asking = ask("sheet", { fields: values(), address: address() });
      const { sheet, error } = await asking.catch((reason) => ({ error: `${words.desk.ask_failed} ${reason.message}` }));
      if (asked !== jobText()) return; // it's another job's by now
      if (sheet) at("sheet").innerHTML = sheet;
      else at("sheet").textContent = error ?? "";
    },
    // What stands in a fold, asked for when it's opened: `place` is where it belongs.
    async fold(fold, place, call, payload) {
      if (place.childElementCount && !place.querySelector(".wrong")) return;
      const asking = ask(call, { fields: values(), ...payload });
      const { html, svg, error } = await asking.catch((reason) => ({ error: `${words.desk.ask_failed} ${reason.message}` }));
      if (!fold.isConnected || (!html && !svg && !error)) return;
      const said = document.createElement(svg ? "figure" : "div");
      if (svg) said.className = "drawing";
      if (error) said.className = "wrong";
      if (error) said.textContent = error;
      else said.innerHTML = html ?? svg;
      place.replaceChildren(said);
    },
    voice() {
      root.toggleAttribute("data-voice", voice.can);
    },
    hear(on) {
      speaking = on;
      at("aloud").ariaPressed = String(on);
      if (on) speak();
      else voice.hush();
    },
    get speaking() {
      return speaking;
    },
  };
}
