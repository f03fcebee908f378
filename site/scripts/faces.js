// Which face of the job is on the screen, which card and which panel: each has its address in the history, so that Back works.

import { linkInAddress } from "./copy.js";
import { at } from "./document.js";

export const FACES = ["numbers", "stakes", "checks", "build", "paper", "why"];
const PLACE = /^#(numbers|stakes|checks|build|paper|why)(?:-([a-z]+|[0-9]+))?$/;
const WALL = /^#wall-([0-9]-[0-9]+)$/; // a figure and its stroke, over the face that tells why
const LATE = 1000; // milliseconds
const WIDE = matchMedia("(min-width: 1100px)"); // a desk: the numbers never leave the left

const rootOf = document.documentElement;

// What an address of this page means, or null where it means something else.
function placeOf(hash) {
  const [, wall] = WALL.exec(hash) ?? [];
  if (wall) return { face: "why", card: null, panel: "", wall };
  const [, face, more] = PLACE.exec(hash) ?? [];
  if (!face) return null;
  const card = /^[0-9]+$/.test(more ?? "") ? Number(more) : null;
  return { face, card, panel: card === null ? (more ?? "") : "" };
}

function hashOf({ face, card, panel, wall }) {
  if (wall) return `#wall-${wall}`;
  return `#${face}${panel ? `-${panel}` : card ? `-${card}` : ""}`;
}

// `shown` is called whenever another face, card or panel comes up, with the place before.
export function faces({ shown }) {
  let now = { face: "numbers", card: null, panel: "" };
  let late = 0;

  // On a desk the numbers stand at the left of every other face.
  const right = (face) => (WIDE.matches && face === "numbers" ? "stakes" : face);

  function paint(before) {
    const face = right(now.face);
    rootOf.dataset.face = face;
    for (const name of FACES) {
      const open = name === face || (WIDE.matches && name === "numbers");
      at(`face-${name}`).hidden = !open;
      for (const tab of document.querySelectorAll(`[data-tab="${name}"]`)) {
        if (name === face) tab.setAttribute("aria-current", "page");
        else tab.removeAttribute("aria-current");
      }
    }
    for (const panel of document.querySelectorAll(".panel")) {
      panel.hidden = panel.id !== `panel-${now.panel}`;
    }
    rootOf.toggleAttribute("data-panel", Boolean(now.panel));
    shown({ ...now, face }, before);
  }

  // A browser may allow a hundred changes of the address in half a minute: then it follows later.
  function noted() {
    clearTimeout(late);
    if (linkInAddress()) return;
    try {
      history.replaceState({ place: now }, "", hashOf(now));
    } catch {
      late = setTimeout(noted, LATE);
    }
  }

  function move(place, step) {
    clearTimeout(late);
    const before = now;
    now = { face: now.face, card: null, panel: "", wall: "", ...place };
    // A link that waits in the address stays there: its job isn't open yet, or is kept nowhere.
    const hash = linkInAddress() ? undefined : hashOf(now);
    if (step === "push") history.pushState({ place: now }, "", hash);
    if (step === "replace") history.replaceState({ place: now }, "", hash);
    paint(before);
  }

  addEventListener("popstate", ({ state }) => {
    const place = state?.place ?? placeOf(location.hash);
    if (place) move(place, "");
  });
  WIDE.addEventListener("change", () => paint(now));

  return {
    get wide() {
      return WIDE.matches;
    },
    get now() {
      return { ...now, face: right(now.face) };
    },
    go: (place) => move(place, "push"),
    replace: (place) => move(place, "replace"),
    // Leave a panel by the way that it was opened: the history stays as short as what was done.
    leave() {
      const { panel, from } = history.state?.place ?? {};
      if ((panel || from) && !linkInAddress()) history.back();
      else move({ face: now.face, card: now.card }, "replace");
    },
    // Another stroke on the wall: the same place in the history, with another address.
    note(wall) {
      now = { ...now, wall };
      noted();
    },
    begin(place) {
      move(placeOf(location.hash) ?? place ?? now, "replace");
    },
  };
}
