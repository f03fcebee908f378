// Jobs that version 0.1 kept are taken over once, with their meaning. They stay where they were: a page of that version may
// still be open, and would write back without what it doesn't know.

import { sameFields } from "./form.js";
import { meant } from "./sizes.js";

const BEFORE = "bowstring.1.";
const TAKEN = "bowstring.2.taken"; // when each job that was taken over had been edited, by its id there

export const OPEN_BEFORE = `${BEFORE}open`; // for a page that has had no job open since
export const keyBefore = (id) => `${BEFORE}job.${id}`;

// Take over what's new among `texts`, pairs of a key and a text; tell whether anything was. `read` gives a text's fields or null,
// `edited` when it was edited, `isId` whether a name is a job's, `fresh` a new id.
export function takeOver(box, texts, key, { read, edited, isId, fresh }) {
  const taken = takenBefore(box);
  let any = false;
  for (const [name, text] of texts) {
    const id = name.startsWith(keyBefore("")) ? name.slice(keyBefore("").length) : "";
    if (!isId(id) || edited(text) <= (taken[id] ?? -1)) continue;
    const fields = read(text);
    const kept = fields ? JSON.stringify({ fields: asMeant(fields), edited: edited(text) }) : text;
    const there = box.getItem(key(id));
    const same =
      there === null || edited(there) === taken[id] || (fields && read(there) && sameFields(read(there), asMeant(fields)));
    if (!placed(box, key(same ? id : fresh()), kept, name)) continue;
    taken[id] = edited(text);
    any = true;
  }
  if (any) box.setItem(TAKEN, JSON.stringify(taken));
  return any;
}

function asMeant(fields) {
  const said = { method: meant.method, ...fields };
  const placed = meant.placed.some((key) => key in said);
  const beside = Object.entries(meant.beside[said.method] ?? {}).filter(([key]) => !(placed && meant.placed.includes(key)));
  return { ...Object.fromEntries(beside), ...said };
}

function takenBefore(box) {
  try {
    const taken = JSON.parse(box.getItem(TAKEN));
    return typeof taken === "object" && taken !== null && !Array.isArray(taken) ? taken : {};
  } catch {
    return {};
  }
}

// Where there's no room for both, the job moves.
function placed(box, place, text, before) {
  try {
    box.setItem(place, text);
    return true;
  } catch {
    const old = box.getItem(before);
    if (old === null) return false;
    box.removeItem(before);
    try {
      box.setItem(place, text);
      return true;
    } catch {
      box.setItem(before, old);
      return false;
    }
  }
}
