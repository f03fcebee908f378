// The job that is open: kept at every change, and held together with what another window does to it.

import { at } from "./document.js";
import { fill as fillIn, nameOf, put, sameFields, typed, unitNow } from "./form.js";
import { newId } from "./kept.js";
import { merged, wholeOf } from "./merging.js";
import { sameWork } from "./sent.js";

const [MINE, THEIRS] = [1, 2]; // places in what is to be chosen, see merging.js
const NEITHER = "\0"; // no field's text: neither value is the one that both windows had

// `changed` is called when other fields stand in the form; `switched` when they are another job's; `listed` when the list of jobs is another one.
export function openJob({ keep, words, undo, changed, switched, listed }) {
  let id = null; // the id that the present job is kept under; none while nothing was typed
  let base = {}; // what both this window and any other one have of it
  let kept = false; // it stands in the storage, unless another window has removed it
  let example = false; // it is the example, as it was offered
  let copied = false; // it was made of one that came by a link, in this window

  // What another window has written since isn't overwritten, even where this one hasn't heard of it: its tab was asleep.
  function write() {
    id ??= newId();
    if (base.received && !sameWork(base, typed())) copy();
    if (kept && !keep.has(id) && keep.open !== null) return gone(); // a storage emptied as a whole is filled again
    const other = kept ? keep.read(id) : null;
    if (other && !sameFields(other, base)) {
      if (!meet(other)) return;
    }
    store(typed());
  }

  // What came by a link, or in a saved page, stays as it was sent, beside its copy.
  function copy() {
    if (!kept) keep.write(id, base);
    fillIn({ parent: base.received, received: "" });
    id = newId();
    base = {};
    kept = false;
    copied = true;
  }

  // To read first: until its first step is done.
  function tellSent({ received, done }) {
    const text = received ? words.sent : copied ? words.copied : "";
    at("sent-said").textContent = text;
    at("sent-read").hidden = !received;
    at("sent").hidden = !text || Boolean(done);
  }

  function store(fields) {
    base = fields;
    const done = keep.write(id, base);
    kept = keep.has(id);
    at("kept").textContent = done
      ? `${words.kept.kept} ${nameOf(fields, words.desk.untitled)}`
      : words.kept[keep.works ? "full" : "none"];
    at("kept").classList.toggle("alarm", !done);
    at("full").hidden = done || !keep.works;
    tellSent(fields);
    listed();
  }

  function fill(fields, own) {
    const another = own === null || own !== id;
    put(fields);
    if (another) {
      switched();
      copied = false;
    }
    id = own;
    if (another) base = (own !== null && keep.read(own)) || {};
    kept = own !== null && keep.has(own);
    at("elsewhere").hidden = true;
    tellSent(fields);
    changed();
  }

  // The id itself, or a new one where another job is kept under it: what was changed since stays as it is.
  function freeId(wanted, fields) {
    const before = wanted && keep.read(wanted);
    const same = !before || sameFields(before, fields);
    return wanted && same ? wanted : newId();
  }

  // What came from elsewhere and is opened once more: with what was done and read since.
  function withSince(fields, wanted) {
    const before = fields.received ? keep.read(wanted) : null;
    // What has this mark is as it was sent, but for which arc of its line is staked: whatever else changes makes a copy.
    return before?.received === fields.received ? (before ?? fields) : fields;
  }

  function fresh() {
    const unit = unitNow();
    example = false;
    fill(unit ? { unit } : {}, null); // the tape stays the one in hand
    at("kept").textContent = "";
    listed();
  }

  // --- another window

  function elsewhere(told) {
    if (id === null || (told !== null && told !== id)) return;
    const other = keep.read(id);
    if (!other) return keep.has(id) ? undefined : gone();
    if (sameFields(typed(), other)) return settled(other);
    if (meet(other) && !sameFields(typed(), other)) store(typed());
  }

  function settled(other) {
    base = other;
    at("elsewhere").hidden = true;
  }

  // Take in what another window has written; tell whether both go together. Where both changed one field, the other's value
  // stays in the storage until somebody has chosen.
  function meet(other) {
    const { fields, both } = merged(base, typed(), other);
    if (!sameFields(fields, typed())) fill(fields, id);
    if (!both.length) {
      settled(other);
      return true;
    }
    const theirs = Object.fromEntries(both.map(([name, , text]) => [name, text]));
    const stored = Object.fromEntries(Object.entries({ ...fields, ...theirs }).filter(([, text]) => text));
    if (!sameFields(stored, other)) store(stored);
    base = apart(stored, both);
    choosing(both);
    return false;
  }

  // What both windows have, but for the fields that are still to be chosen.
  const apart = (fields, both) => ({ ...fields, ...Object.fromEntries(both.map(([name]) => [name, NEITHER])) });

  function button(text, pressed) {
    const made = document.createElement("button");
    made.type = "button";
    made.className = "btn";
    made.textContent = text;
    made.addEventListener("click", pressed);
    return made;
  }

  function label(name) {
    return document.querySelector(`label[for="${CSS.escape(name)}"]`)?.textContent.trim() || words.other_part;
  }

  // Both windows changed one field: both values stand there to choose from.
  function choosing(both) {
    const wholes = [...new Set(both.map(([name]) => wholeOf(name)))];
    const rows = wholes.map((whole) => {
      const choice = both.filter(([name]) => wholeOf(name) === whole);
      const row = document.createElement("li");
      row.textContent = `${label(whole)}: `;
      const take = (side) => {
        const rest = both.filter((one) => !choice.includes(one));
        const chosen = Object.fromEntries(choice.map((one) => [one[0], one[side]]));
        if (whole === "unit") chosen.unit_before = choice[0][side === MINE ? THEIRS : MINE]; // its numbers are asked about
        fill({ ...typed(), ...chosen }, id);
        base = apart(keep.read(id) ?? {}, rest);
        write();
      };
      const told = (side) =>
        choice
          .map((one) => one[side])
          .filter(Boolean)
          .join(" · ") || words.nothing;
      row.append(...[MINE, THEIRS].map((side) => button(told(side), () => take(side))));
      return row;
    });
    ask(words.elsewhere_both, rows, []);
  }

  function gone() {
    const stay = button(words.elsewhere_keep, () => {
      at("elsewhere").hidden = true;
      store(typed());
    });
    ask(words.elsewhere_gone, [], [stay, button(words.elsewhere_leave, fresh)]);
  }

  function ask(text, rows, buttons) {
    at("elsewhere-said").textContent = text;
    at("elsewhere-both").replaceChildren(...rows);
    at("elsewhere-do").replaceChildren(...buttons);
    at("elsewhere").hidden = false;
  }

  keep.watch((told) => {
    listed();
    elsewhere(told);
  });

  return {
    get id() {
      return id;
    },
    get untouched() {
      return id === null || example;
    },
    // Whence this job came stays with it: what was undone may have made a copy, and only one of both is as it was sent.
    restore(fields) {
      const { parent = "", received = "" } = typed();
      fill({ ...fields, parent, received }, id);
      write();
    },
    write,
    fill,
    fresh,
    // Another arc of the line is staked from now on: no number of it changed, so what came by a link is no copy for it.
    restaked(fields) {
      const same = base.received && sameWork(base, typed());
      fill(fields, id);
      if (same) store(typed());
    },
    // Something was typed or done.
    touched() {
      example = false;
      write();
      changed();
    },
    open(fields, wanted) {
      example = false;
      const all = withSince(fields, wanted);
      fill(all, freeId(wanted, all));
      write();
    },
    // A job from elsewhere that nobody has chosen yet: it isn't kept before something is typed or done.
    show(fields, wanted) {
      const all = withSince(fields, wanted);
      fill(all, freeId(wanted, all));
      if (!kept) base = all;
    },
    showExample(fields) {
      fill(fields, null);
      example = true;
    },
    clear() {
      const before = { fields: typed(), id, example };
      fresh();
      undo.offer(words.undo[keep.has(before.id) ? "clear" : "empty"], () => {
        fill(before.fields, before.id);
        example = before.example;
        listed();
      });
    },
    remove(one) {
      const text = keep.take(one);
      if (one === id) fresh();
      listed();
      undo.offer(words.undo.remove, () => {
        keep.bring(one, text);
        listed();
      });
    },
  };
}
