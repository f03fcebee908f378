// The face of the numbers: shows what Python says of each measure and each question. Nothing is read or worded here.

import { at, form, write } from "./document.js";
import { unitNow, values } from "./form.js";
import { thumbKeys } from "./keys.js";
import { showMade } from "./made.js";

const HOWS = ["empty", "read"]; // states of a row with a word of their own for who can't see it
const STRONG = ["wrong", "differs"];
const LOW = matchMedia("(max-height: 690px) and (max-width: 1099px)"); // a low screen gives less to the drawing
const LET_GO_FROM = 3; // so many given, and each can be let go

// `ask(call, payload)`: a question to Python; `leave()`: shut the panel that is open; `decimal`: the units of decimals; `shownIn`: the
// unit that the device shows, empty for the job's: what is read on a face is typed in it.
export function numbersFace({ ask, leave, decimal, shownIn }) {
  const face = at("numbers-face");
  let last = null; // what was shown last
  let method = ""; // what the layout said of the method, until it says something else
  let focus = ""; // the measure in focus
  let wall = false; // whether a wall was poured when it was shown last
  let opener = null; // what opened the panel

  const keys = thumbKeys({
    isDecimal: (field) => decimal.includes((!field.closest("#form") && shownIn) || unitNow()),
    shown: () => redraw(),
  });
  // `drawn`: nothing was shown yet, so that the drawing of an empty form stands there from the build.
  const asked = () => ({ focus, short: keys.up || LOW.matches, drawn: last === null });

  // Another measure is in focus, or there is less room: only the drawing changes.
  async function redraw() {
    if (!last) return;
    const fields = values();
    const { drawing } = await ask("numbers", { fields, ...asked() }).catch(() => ({}));
    if (drawing && JSON.stringify(fields) === JSON.stringify(values())) showMade(at("live-drawing"), drawing);
    if (keys.up && focus) at(focus).closest("[data-row]").scrollIntoView({ block: "nearest" });
  }

  function row(id, { out, beside, state, told }, many) {
    const place = form.querySelector(`[data-row="${id}"]`);
    const input = at(id);
    place.dataset.state = state;
    if (input.placeholder !== out) input.placeholder = out;
    write(at(`${id}-beside`), beside);
    write(at(`${id}-wrong`), told);
    input.setAttribute("aria-describedby", `how-${HOWS.includes(state) ? state : "given"} ${id}-beside ${id}-wrong`);
    if (state === "wrong") input.ariaInvalid = "true";
    else input.removeAttribute("aria-invalid");
    place.querySelector(".letgo").hidden = !many || !input.value.trim();
  }

  function lines(told) {
    const isWall = Boolean(form.querySelector('[name="slab-poured"][value="wall"]:checked'));
    if (isWall && !wall) at("form-footing").open = true; // a wall stands on one
    wall = isWall;
    for (const [key, { text, state }] of Object.entries(told)) {
      const line = at(`ask-${key}`);
      line.dataset.state = state;
      if ("late" in line.dataset) line.hidden = last?.sign !== "computed" && state === "usual"; // asked for once there is an arc
      write(at(`ask-${key}-said`), text);
    }
  }

  function bar(sign, key, told) {
    face.dataset.ask = key;
    for (const line of face.querySelectorAll(".asks [data-panel]")) {
      line.toggleAttribute("data-asked", sign === "computed" && line.dataset.panel === key);
    }
    const apart = Object.values(last.rows).some(({ state }) => state === "differs"); // nobody goes on before that is settled
    at("ask-bar").hidden = sign !== "computed" || apart;
    at("ask-open").hidden = !key;
    at("to-step").hidden = Boolean(key);
    if (!key) return;
    at("ask-open").dataset.panel = key;
    write(at("ask-open-said"), told[key].asked);
  }

  function tell() {
    if (!last) return;
    showMade(at("tell"), last.tell[focus] ?? last.tell[""]);
    const strong = focus ? STRONG.includes(last.rows[focus].state) : false;
    at("tell").toggleAttribute("data-tint", strong || Object.values(last.rows).some(({ state }) => STRONG.includes(state)));
  }

  function line(id, html) {
    at(id).innerHTML = html;
    at(id).hidden = !html;
  }

  function names() {
    for (const place of form.querySelectorAll("[data-of]")) {
      const name = at(place.dataset.of).value.trim();
      write(place, name && ` ${name}`); // its blank goes with it
    }
  }

  // --- what fingers do

  form.addEventListener("focusin", ({ target }) => {
    const now = target.closest("[data-row]") && target.matches("input") ? target.id : "";
    if (now === focus || target.closest("#keys, #tell")) return;
    focus = now;
    tell();
    redraw();
  });
  form.addEventListener("focusout", ({ relatedTarget }) => {
    if (!focus || relatedTarget?.closest("#form")) return;
    focus = "";
    tell();
    redraw();
  });
  at("tell").addEventListener("pointerdown", (event) => event.preventDefault()); // the field that it is about stays in focus
  form.addEventListener("input", names);
  form.addEventListener("click", ({ target }) => {
    const button = target.closest("[data-let-go]");
    if (button) {
      const input = at(button.dataset.letGo);
      input.value = "";
      input.dispatchEvent(new InputEvent("input", { bubbles: true, inputType: "deleteContent" }));
    }
    // Touched is answered: the pictures lead back by themselves. By keys somebody may still look around.
    if (target.closest("label.hand") && !target.matches("input")) setTimeout(leave, 0);
  });
  document.addEventListener("click", ({ target }) => (opener = target.closest?.("button[data-panel]") ?? opener), true);

  // A panel that opens takes the focus to its heading, and gives it back to what opened it.
  const seen = new MutationObserver((changes) => {
    for (const { target: panel, oldValue } of changes) {
      if (!panel.matches(".panel") || panel.hidden === (oldValue !== null)) continue;
      keys.hide();
      if (!panel.hidden) {
        panel.querySelector(".scroll").scrollTop = 0;
        panel.querySelector("h2").focus({ preventScroll: true });
      } else if (
        !form.querySelector(".panel:not([hidden])") &&
        (document.activeElement === document.body || panel.contains(document.activeElement))
      ) {
        const bar = [at("ask-open"), at("to-step")];
        const line = at(`ask-${panel.id.slice("panel-".length)}`);
        const back = bar.includes(opener) ? [...bar, line] : [opener, line, ...bar];
        back.find((one) => one?.offsetParent)?.focus({ preventScroll: true });
      }
    }
  });
  for (const panel of form.querySelectorAll(".panel"))
    seen.observe(panel, { attributes: true, attributeFilter: ["hidden"], attributeOldValue: true });
  names();

  return {
    asked, // what a question about the fields has beside them
    show(result) {
      last = result;
      face.dataset.sign = result.sign;
      document.documentElement.toggleAttribute("data-lined", result.lined);
      const many = Object.keys(result.rows).filter((id) => at(id).value.trim()).length >= LET_GO_FROM;
      for (const [id, told] of Object.entries(result.rows)) row(id, told, many);
      lines(result.lines);
      if (method && result.sign === "computed" && result.lines.method.state === "usual") write(at("ask-method-said"), method);
      bar(result.sign, result.ask, result.lines);
      if (result.drawing) showMade(at("live-drawing"), result.drawing);
      keys.ready();
      tell();
      line("of-example", result.of_example);
      line("slab-told", result.slab);
      for (const [id, told] of Object.entries(result.beside)) line(id, told);
      if (result.sign !== "computed") line("follows", "");
      names();
    },
    later(result) {
      lines(result.lines);
      method = result.lines.method?.state === "usual" ? result.lines.method.text : "";
      showMade(at("method-advice"), result.advice);
      line("follows", result.follows);
      line("slab-told", result.slab);
      for (const [id, told] of Object.entries(result.beside)) line(id, told);
      write(at("to-step-said"), result.go);
      if (last) bar(last.sign, last.sign === "computed" ? result.ask : "", { ...last.lines, ...result.lines });
    },
  };
}
