// The slider: bends the arc on its string. Every number and text is a row of the package's table; between two rows only the
// drawing is put halfway.

const SVG = "http://www.w3.org/2000/svg";
const SWEEP = 9000; // milliseconds from flat to past a half circle

function drawn(name, className, parent, attributes = {}) {
  const element = document.createElementNS(SVG, name);
  if (className) element.setAttribute("class", className);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  parent.append(element);
  return element;
}

export function bending({ stage, ask }) {
  let table = null;
  let parts = null;
  let bend = 0; // which row, with the part of the way to the next one
  let on = false;
  let playing = 0;

  function build() {
    const svg = drawn("svg", "wall-drawing bend", stage, { viewBox: "0 0 1280 720", "aria-hidden": "true" });
    const square = (className, half) => drawn("rect", className, svg, { width: 2 * half, height: 2 * half });
    const { ends, track, texts } = table;
    drawn("path", "w-string", svg, { d: `M${ends[0]},${ends[2]}H${ends[1]}` });
    const made = {
      svg,
      arc: drawn("path", "w-arc", svg),
      strings: drawn("path", "w-dash", svg),
      next: drawn("path", "w-shaft", svg),
    };
    for (const x of ends.slice(0, 2)) {
      const end = square("w-stands", 11);
      end.setAttribute("x", x - 11);
      end.setAttribute("y", ends[2] - 11);
    }
    made.m = square("w-stands", 11);
    made.q = square("w-now", 13);
    made.rule = drawn("circle", "w-rule", svg, { r: 9 });
    made.texts = texts.map(([x, y, size, anchor, kind]) =>
      drawn("text", kind, svg, { x, y, "font-size": size, "text-anchor": anchor }),
    );
    made.knob = drawn("circle", "w-stands", svg, { cy: track[2], r: 26, "data-knob": "" });
    made.dot = drawn("circle", "w-fill", svg, { cy: track[2], r: 11, "data-knob": "" });
    made.knob.addEventListener("pointerdown", grab);
    made.dot.addEventListener("pointerdown", grab);
    return made;
  }

  function grab(event) {
    playing = 0;
    const move = ({ clientX }) => {
      const box = stage.getBoundingClientRect();
      const x = ((clientX - box.left) / box.width) * 1280;
      const [from, to] = table.track;
      set(((x - from) / (to - from)) * (table.rows.length - 1));
    };
    event.target.setPointerCapture(event.pointerId);
    event.target.addEventListener("pointermove", move);
    event.target.addEventListener("lostpointercapture", () => event.target.removeEventListener("pointermove", move), {
      once: true,
    });
  }

  let waits = 0;
  function set(value) {
    bend = Math.max(0, Math.min(table.rows.length - 1, value));
    if (!waits) waits = requestAnimationFrame(paint);
  }

  function paint() {
    waits = 0;
    if (!parts) return;
    const { rows, ends, track } = table;
    const low = Math.min(Math.floor(bend), rows.length - 2);
    const part = bend - low;
    const between = (name, index) => rows[low][name][index] + part * (rows[low + 1][name][index] - rows[low][name][index]);
    const point = (name) => [between(name, 0), between(name, 1)];
    const { texts, large } = rows[Math.round(bend)]; // what is read is never put between two rows
    const [radius, m, q, foot, rule] = [between("radius", 0), point("m"), point("q"), point("foot"), point("rule")];
    parts.arc.setAttribute("d", `M${ends[0]},${ends[2]}A${radius},${radius} 0 ${large} 1 ${ends[1]},${ends[2]}`);
    parts.strings.setAttribute("d", `M${ends[0]},${ends[2]}L${m}L${ends[1]},${ends[2]}`);
    parts.next.setAttribute("d", `M${foot}L${q}`);
    for (const [element, [x, y], half] of [
      [parts.m, m, 11],
      [parts.q, q, 13],
    ]) {
      element.setAttribute("x", x - half);
      element.setAttribute("y", y - half);
    }
    parts.rule.setAttribute("cx", rule[0]);
    parts.rule.setAttribute("cy", rule[1]);
    for (const [index, text] of texts.entries())
      if (parts.texts[index].textContent !== text) parts.texts[index].textContent = text;
    const x = track[0] + (bend / (rows.length - 1)) * (track[1] - track[0]);
    for (const one of [parts.knob, parts.dot]) one.setAttribute("cx", x);
  }

  // From flat to the last row, as long as nothing else is pressed.
  function sweep() {
    if (matchMedia("(prefers-reduced-motion: reduce)").matches) return set(table.rows.length - 1);
    const began = performance.now();
    playing = began;
    const step = (now) => {
      if (playing !== began || !parts) return;
      const part = Math.min(1, Math.max(0, now - began) / SWEEP);
      set(part * (table.rows.length - 1));
      if (part < 1) requestAnimationFrame(step);
    };
    requestAnimationFrame(step);
  }

  const STEPS = { "[": -1, "]": 1, "{": -10, "}": 10, ",": -1, "-": -10, "+": 10, "=": 10 };

  return {
    // Whether the picture on the wall has the slider now.
    async turned(shows) {
      on = shows;
      playing = 0;
      if (!shows) {
        parts?.svg.remove();
        parts = null;
        return;
      }
      table ??= await ask({ slider: 1 });
      if (!on || parts) return;
      parts = build();
      set(table.job);
    },
    forget() {
      table = null;
    },
    keyed(key) {
      if (!parts) return false;
      if (key === "s" || key === "S") sweep();
      else if (key in STEPS) {
        playing = 0;
        set(Math.round(bend) + STEPS[key]);
      } else return false;
      return true;
    },
  };
}
