// Drawing on the plan of the site: taps become corners; what they are on the ground, and in which field, is Python's to say.

import { at } from "./document.js";
import { fill, typed } from "./form.js";

const INK = "http://www.w3.org/2000/svg";
const DRAWN = ["tape", "feet", "round"]; // what can be drawn: by what it stops, or round

export function sitePlan({ tapping, ask, filled }) {
  const place = at("site-plan");
  let usable = false; // the plan is that of the fields as they are
  let drawing = null; // what is being drawn: {stops, points}, the points in the drawing's units
  let held = null; // the pointer that still holds the last corner
  let marks = null; // where the corners are shown

  const svg = () => place.querySelector("svg");

  function controls() {
    for (const stops of DRAWN) at(`draw-${stops}`).disabled = !usable;
    at("draw-adding").hidden = Boolean(drawing);
    at("draw-going").hidden = !drawing;
    at("draw-undo").disabled = at("draw-done").disabled = !drawing?.points.length;
    at("draw-cancel").disabled = false;
    at("draw-said").textContent = drawing ? `${tapping[drawing.stops]} ${drawing.points.length}` : "";
    place.toggleAttribute("data-drawing", Boolean(drawing));
  }

  function wrong(text) {
    at("draw-wrong").textContent = text;
    at("draw-wrong").hidden = !text;
  }

  function begin(stops) {
    drawing = { stops, points: [] };
    wrong("");
    marks = document.createElementNS(INK, "g");
    marks.setAttribute("class", "tapped");
    svg().append(marks);
    controls();
    place.parentElement.scrollIntoView({ behavior: "instant" }); // with the buttons over it: a tap is never on a plan that moves
    at("draw-cancel").focus({ preventScroll: true });
  }

  function end() {
    marks?.remove();
    drawing = held = marks = null;
    controls();
  }

  function spot(event) {
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg().getScreenCTM().inverse());
    return [x, y];
  }

  function show() {
    const line = document.createElementNS(INK, "polygon");
    line.setAttribute("points", drawing.points.map((point) => point.join()).join(" "));
    const dots = drawing.points.map(([x, y]) => {
      const dot = document.createElementNS(INK, "circle");
      for (const [name, value] of Object.entries({ cx: x, cy: y, r: 5 })) dot.setAttribute(name, value);
      return dot;
    });
    marks.replaceChildren(line, ...dots);
    controls();
  }

  place.addEventListener("pointerdown", (event) => {
    if (!drawing || held !== null || !event.isPrimary || event.button !== 0 || !svg().contains(event.target)) return;
    event.preventDefault();
    held = event.pointerId;
    place.setPointerCapture(held);
    drawing.points.push(spot(event));
    wrong("");
    show();
  });
  // Until the finger leaves, the corner goes with it.
  place.addEventListener("pointermove", (event) => {
    if (event.pointerId !== held) return;
    drawing.points.splice(-1, 1, spot(event));
    show();
  });
  for (const over of ["pointerup", "pointercancel"]) {
    place.addEventListener(over, (event) => {
      if (event.pointerId === held) held = null;
    });
  }

  for (const stops of DRAWN) at(`draw-${stops}`).addEventListener("click", () => begin(stops));
  at("draw-undo").addEventListener("click", () => {
    drawing.points.pop();
    show();
  });
  at("draw-cancel").addEventListener("click", () => leave());
  at("draw-done").addEventListener("click", done);
  addEventListener("keydown", (event) => {
    if (event.key === "Escape" && drawing) leave();
  });
  // Whoever leaves the panel with something drawn means it: it's taken first, or told why it can't be.
  place.closest(".panel").addEventListener(
    "click",
    async (event) => {
      const button = event.target.closest("[data-do=panel-close]");
      if (!button || !drawing?.points.length) return;
      event.stopPropagation();
      await done();
      if (drawing) place.parentElement.scrollIntoView({ behavior: "instant" });
      else button.click();
    },
    true,
  );

  function leave() {
    const { stops } = drawing;
    wrong("");
    end();
    at(`draw-${stops}`).focus({ preventScroll: true });
  }

  async function done() {
    const asked = drawing;
    const { scale, turn } = place.querySelector("[data-scale]").dataset;
    let result;
    try {
      result = await ask("outline", { fields: typed(), stops: asked.stops, points: asked.points, scale, turn });
    } catch (reason) {
      result = { error: reason.message };
    }
    if (drawing !== asked) return; // given up meanwhile
    if (result.error) return wrong(result.error);
    end();
    fill(result.fields);
    filled();
    at(`draw-${asked.stops}`).focus({ preventScroll: true });
  }

  return {
    // The fields are others now: what is being drawn would be on a plan of another job.
    stale() {
      usable = false;
      wrong("");
      if (drawing) end();
      else controls();
    },
    // `made`: HTML that Python made and escaped; empty where there is no plan.
    show(made) {
      if (drawing) end();
      place.innerHTML = made;
      usable = Boolean(made);
      at("site-none").hidden = usable;
      controls();
    },
  };
}
