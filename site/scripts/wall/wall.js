// On the wall: the package's pictures, stroke by stroke, by keys, a presenter, touch or a mouse. Nothing is computed here.

import look from "../../wall.css";
import { bending } from "./bend.js";
import { listing } from "./list.js";
import { ownNumbers } from "./own.js";
import { handingOut } from "./paper.js";
import { zoomed } from "./zoom.js";

const HOLD = 600; // milliseconds that a finger stays for the list
const BRUSH = 12; // pixels that a finger goes astray and still taps; farther than that it does nothing
const LAST = 6;

const sheet = new CSSStyleSheet();
sheet.replaceSync(look);
document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];

function made(name, className = "", parent = null) {
  const element = document.createElement(name);
  if (className) element.className = className;
  parent?.append(element);
  return element;
}

globalThis.bowstringWall = function wall({ ask: askPage, starting, note, leave, keep }) {
  const root = made("div");
  root.id = "wall";
  root.tabIndex = -1;
  root.setAttribute("role", "region");
  const stage = made("div", "stage", root);
  const picture = made("div", "picture", stage);
  const edge = made("div", "edge", stage);
  edge.setAttribute("role", "progressbar");
  const spoken = made("p", "spoken", stage);
  spoken.hidden = true;
  const heard = made("p", "unseen", root);
  heard.setAttribute("role", "status");

  let shown = null; // the figure on the wall, as Python made it
  let figure = -1;
  let stroke = 0;
  let at = -1; // the sheet that is in the picture
  let last = 0; // the stroke before
  let wanted = ""; // the figure that is asked for, while it comes
  const ask = (payload) => askPage(own.typed ? { own: own.typed, ...payload } : payload);
  const own = ownNumbers({ stage, ask: askPage, keep, made, changed: () => again() });
  const bend = bending({ stage, ask });
  const paper = handingOut({ ask });
  const list = listing({
    stage,
    ask,
    open: (number) => go(number, 0),
    print: paper.print,
    made,
    acts: { numbers: () => own.show(), full_screen: full, to_job: leave },
  });

  const counts = () => shown.sheets.map(({ strokes }) => strokes.length);
  const whole = () => counts().reduce((sum, one) => sum + one, 0);

  // The sheet in which a stroke stands, and the stroke's place in it.
  function place(number) {
    let before = 0;
    for (const [index, count] of counts().entries()) {
      if (number <= before + count) return { index, local: number - before };
      before += count;
    }
    return { index: shown.sheets.length - 1, local: counts().at(-1) };
  }

  function paint() {
    const { index, local } = place(stroke);
    const { svg, strokes } = shown.sheets[index];
    const before = at;
    if (index !== at) picture.innerHTML = svg;
    for (const group of picture.querySelectorAll("[data-s]")) {
      const { s, to = 999 } = group.dataset;
      const start = "head" in group.dataset && s === "1" ? 0 : Number(s); // before the first stroke its sentence stands there
      const off = start > local || Number(to) < local;
      group.classList.toggle("fresh", !off && Number(s) === local && group.classList.contains("off"));
      group.classList.toggle("off", off);
    }
    at = index;
    if (Math.abs(stroke - last) === 1) zoomed({ picture, sheets: shown.sheets, before, index });
    last = stroke;
    marks();
    const said = local ? strokes[local - 1].said : strokes[0].sentence;
    spoken.textContent = said;
    heard.textContent = said;
    root.setAttribute("aria-label", `${shown.words.title}: ${shown.name}`);
    bend.turned(shown.slider === index && local === strokes.length);
    note(`${figure}-${stroke}`);
  }

  function marks() {
    const { words } = shown;
    if (edge.childElementCount !== whole() || edge.dataset.figure !== String(figure)) {
      edge.replaceChildren();
      edge.dataset.figure = figure;
      for (const count of counts()) {
        for (let one = 0; one < count; one += 1) made("i", one ? "" : "sheet", edge);
      }
    }
    for (const [index, mark] of [...edge.children].entries()) {
      mark.classList.toggle("shown", index + 1 < stroke);
      mark.classList.toggle("now", index + 1 === stroke);
    }
    edge.ariaLabel = words.progress;
    edge.ariaValueMin = 0;
    edge.ariaValueMax = whole();
    edge.ariaValueNow = stroke;
    edge.ariaValueText = words.stroke_of.replace("{stroke}", stroke).replace("{count}", whole());
  }

  // `wantedStroke`: a number, or -1 for the finished figure.
  async function go(number, wantedStroke) {
    list.hide();
    if (number !== figure || !shown) {
      const asked = String(number);
      wanted = asked;
      if (!shown) made("p", "waits", picture).textContent = starting();
      const came = await ask({ figure: number });
      if (wanted !== asked) return; // somebody went on
      shown = came;
      figure = number;
      at = -1;
      bend.forget();
    }
    wanted = "";
    stroke = wantedStroke < 0 ? whole() : Math.min(wantedStroke, whole());
    paint();
  }

  // The same place, made of other numbers.
  function again() {
    const [number, before] = [figure, stroke];
    shown = null;
    root.focus({ preventScroll: true });
    return go(Math.max(number, 0), before);
  }

  function next() {
    if (!shown) return;
    if (stroke < whole()) go(figure, stroke + 1);
    else if (figure < LAST) go(figure + 1, 0);
  }

  function back() {
    if (!shown) return;
    if (stroke > 0) go(figure, stroke - 1);
    else if (figure > 0) go(figure - 1, -1);
  }

  function full() {
    list.hide();
    if (document.fullscreenElement) document.exitFullscreen();
    else document.documentElement.requestFullscreen?.().catch(() => {}); // where it isn't allowed the window does
  }

  const blank = () => root.classList.toggle("blank");
  const KEYS = {
    ArrowRight: next,
    " ": next,
    PageDown: next,
    Enter: next,
    ArrowLeft: back,
    PageUp: back,
    Backspace: back,
    ArrowDown: () => figure < LAST && go(figure + 1, -1),
    ArrowUp: () => figure > 0 && go(figure - 1, -1),
    Home: () => go(figure, 0),
    End: () => go(figure, -1),
    l: () => list.show(figure),
    n: () => own.show(),
    f: full,
    b: blank,
    ".": blank,
    h: () => paper.print(figure),
    p: () => (spoken.hidden = !spoken.hidden),
    Escape: () => leave(),
  };

  function keyed(event) {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    event.stopPropagation();
    if (own.shows) return own.keyed(event);
    const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
    if (root.classList.contains("blank")) {
      event.preventDefault();
      return blank(); // any key brings the picture back
    }
    if (list.shows ? list.keyed(key, event) : bend.keyed(event.key)) return event.preventDefault();
    if (list.shows && !/^[0-6]$/.test(key)) return;
    const act = /^[0-6]$/.test(key) ? () => go(Number(key), 0) : KEYS[key];
    if (!act) return;
    event.preventDefault();
    act();
  }

  let held = 0;
  let down = null; // where the finger came down
  root.addEventListener("pointerdown", (event) => {
    clearTimeout(held);
    held = 0;
    down = event;
    if (list.shows || own.shows || event.target.closest("[data-knob]")) return;
    held = setTimeout(() => {
      held = -1;
      list.show(figure);
    }, HOLD);
  });
  const far = ({ clientX, clientY }) => down && Math.hypot(clientX - down.clientX, clientY - down.clientY) > BRUSH;
  root.addEventListener("pointermove", (event) => {
    if (far(event) && held > 0) clearTimeout(held);
  });
  root.addEventListener("pointercancel", () => clearTimeout(held));
  root.addEventListener("pointerup", () => held === -1 && setTimeout(() => (held = 0), 100)); // its click has come by then
  root.addEventListener("contextmenu", (event) => event.preventDefault()); // a long touch is the list
  // A finger that was held comes up again over the list: that is no choice of what lies under it.
  root.addEventListener("click", (event) => held === -1 && event.stopPropagation(), true);
  root.addEventListener("click", (event) => {
    clearTimeout(held);
    held = 0;
    if (list.shows || own.shows || far(event) || event.target.closest("[data-knob], button")) return;
    if (root.classList.contains("blank")) return blank();
    if (framed(event)) return own.show();
    if (event.clientX < innerWidth / 3) back();
    else next();
  });

  // Whether somebody points at one of the two given numbers over the picture.
  const framed = ({ clientX, clientY }) =>
    document.elementsFromPoint(clientX, clientY).some((one) => one.matches('#wall .picture [data-s="0"] .w-box'));

  const others = () => [...document.body.children].filter((one) => one !== root && one.nodeName !== "SCRIPT");

  return {
    show(place) {
      const [number, wantedStroke] = place.split("-").map(Number);
      if (!root.isConnected) {
        for (const one of others()) one.inert = true;
        document.body.append(root);
        document.addEventListener("keydown", keyed, true);
        shown = null; // the job may have changed since, and its picture is another one's
        picture.replaceChildren();
        own.forget();
        root.focus({ preventScroll: true });
      }
      if (number !== figure || wantedStroke !== stroke || !shown) return go(Math.min(number, LAST), wantedStroke);
    },
    close() {
      if (!root.isConnected) return;
      root.remove();
      document.removeEventListener("keydown", keyed, true);
      for (const one of others()) one.inert = false;
      if (document.fullscreenElement) document.exitFullscreen();
    },
  };
};
