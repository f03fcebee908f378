// The panel of a line's pieces: which kind each row is and its number; a row put in, or taken out. Nothing is read or worded here.

import { at, form, write } from "./document.js";
import { fill } from "./form.js";

const panel = at("panel-pieces");
const rowsOf = (group) => panel.querySelector(`[data-rows="${group}"]`);
const textsOf = (row) => [...row.querySelectorAll("input")].filter((one) => (one.type === "radio" ? one.checked : true));
const endOf = (name) => name.split("-").slice(2).join("-");

// A row is what stands in it; one that was only just put in, what it is to be. `anew`: another job's fields were put in.
export function pieces(anew) {
  let [shown, number] = [0, 0];
  const before = [...panel.querySelectorAll('[data-rows="before"] input')].some(
    ({ type, value }) => type !== "radio" && value.trim(),
  );
  if (anew) at("line-start").open = !before; // there it's looked for first
  for (const row of panel.querySelectorAll(".pc")) {
    const said = textsOf(row).filter(({ value }) => value.trim());
    const own = row.matches(".own");
    if (!own) {
      const names = said.map(({ name }) => endOf(name)).filter((name) => name !== "kink");
      const kinds = [
        names.includes("straight") && "straight",
        names.some((name) => !["straight", "turn"].includes(name)) && "arc",
      ];
      const kind =
        kinds.filter(Boolean).join(" ") || (names.length && "arc") || (!anew && row.dataset.kind) || (said.length && "arc") || "";
      if (row.dataset.kind !== kind) row.dataset.kind = kind;
      if (!kind) continue;
    }
    shown += 1;
    const blank = !own && !said.length; // no piece of the line yet
    if (!blank) number += 1;
    row.toggleAttribute("data-first", shown === 1 && !row.querySelector('.jn [name$="kink"]').value);
    write(row.querySelector(".no"), blank ? "+" : `${number}`);
    const legend = row.querySelector("legend");
    if (legend) write(legend, legend.textContent.replace(/[0-9]+/, blank ? number + 1 : number));
    row.querySelector(".take").dataset.at = blank ? 0 : number;
  }
}

const changed = () => form.dispatchEvent(new InputEvent("input", { bubbles: true }));

// The rows of a group with one put in before the nth, or that one taken out.
function moved(group, nth, kind) {
  const place = rowsOf(group);
  const rows = [...place.children].map((row) => ({
    kind: row.dataset.kind,
    texts: Object.fromEntries(textsOf(row).map(({ name, value }) => [endOf(name), value])),
  }));
  const before = [...rows];
  const full = rows.at(-1).kind && rows.length >= Number(place.dataset.most);
  if (kind && full) return;
  if (kind) rows.splice(nth, rows.slice(nth).some((row) => row.kind) ? 0 : 1, { kind, texts: {} });
  else rows.splice(nth, 1);
  const fields = {};
  for (const [number, { texts }] of before.entries())
    for (const [name, text] of Object.entries(texts)) {
      const now = rows[number]?.texts[name] ?? "";
      if (now !== text) fields[`${group}-${number}-${name}`] = now;
    }
  fill(fields);
  for (const [number, row] of [...place.children].entries()) row.dataset.kind = rows[number]?.kind ?? "";
  const kept = kind && place.children[nth].querySelector(".jn details"); // who put it in may say its kink next
  for (const fold of place.querySelectorAll("details")) if (fold !== kept) fold.open = false;
  changed();
  if (kind) place.children[nth].querySelector(`[name$="-${kind === "arc" ? "radius" : kind}"]`).focus();
}

panel.addEventListener("click", ({ target }) => {
  if (target.closest(".own > .take")) at("numbers-face").scrollTop = 0; // the arc's numbers stand there
  const put = target.closest("[data-put]")?.dataset.put;
  if (!put) return;
  const row = target.closest(".pc");
  if (put === "tangent") {
    row.querySelector('.jn [name$="kink"]').value = "";
    return changed();
  }
  if (target.closest("[data-at=start]")) {
    at("line-start").open = false;
    return moved("before", 0, put);
  }
  // Before the staked arc, and at the line's end: after the last row of the group that is used.
  const group = !row ? "after" : row.matches(".own") ? "before" : row.parentElement.dataset.rows;
  const used = [...rowsOf(group).children].findLastIndex((one) => one.dataset.kind) + 1;
  const nth =
    row && !row.matches(".own") ? [...rowsOf(group).children].indexOf(row) : Math.min(used, rowsOf(group).children.length - 1);
  moved(group, nth, put === "out" ? "" : put);
});
form.addEventListener("input", () => pieces());
