// One part of the sheet at a time, large: for a wall, or for a hand that holds a stake in the other.

export function partsOf(root, sheet, at) {
  let here = 0;
  const NOTE = "bowstring.part"; // in this window only: a reload in the middle of the work goes on at the same part
  const all = () => [...sheet.querySelectorAll(".part")];
  const open = () => root.dataset.view === "parts";

  function show(number) {
    const parts = all();
    here = Math.max(0, Math.min(number, parts.length - 1));
    for (const [place, part] of parts.entries()) part.classList.toggle("now", place === here);
    for (const fold of parts[here]?.querySelectorAll("details.level") ?? []) fold.open = true;
    note(here);
    at("part-number").textContent = `${here + 1} / ${parts.length}`;
    at("part-previous").disabled = here === 0;
    at("part-next").disabled = here === parts.length - 1;
  }

  function note(number) {
    try {
      if (number === null) sessionStorage.removeItem(NOTE);
      else sessionStorage.setItem(NOTE, String(number));
    } catch {} // without storage a reload shows the whole sheet
  }

  function noted() {
    try {
      return sessionStorage.getItem(NOTE);
    } catch {
      return null;
    }
  }

  function enter(number) {
    root.dataset.view = "parts";
    at("parts-bar").hidden = false;
    show(number);
    scrollTo({ top: 0, behavior: "instant" });
  }

  function turn(by) {
    show(here + by);
    scrollTo({ top: 0, behavior: "instant" });
  }

  at("parts").addEventListener("click", () => {
    enter(0);
    at("part-next").focus();
  });

  at("parts-close").addEventListener("click", () => {
    note(null);
    delete root.dataset.view;
    at("parts-bar").hidden = true;
    at("parts").focus();
    all()[here]?.scrollIntoView();
  });

  at("part-previous").addEventListener("click", () => turn(-1));
  at("part-next").addEventListener("click", () => turn(1));

  addEventListener("keydown", (event) => {
    if (!open() || event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === "ArrowRight" || event.key === "PageDown") turn(1);
    else if (event.key === "ArrowLeft" || event.key === "PageUp") turn(-1);
    else if (event.key === "Escape") at("parts-close").click();
    else return;
    event.preventDefault();
  });

  return {
    comeBack() {
      const last = noted();
      if (last !== null) enter(Number(last) || 0);
    },
    // A new sheet has new parts: the same one stays in sight.
    refresh() {
      if (open()) show(here);
    },
  };
}
