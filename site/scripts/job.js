// The job that is open: kept at every change, and held together with what another window does to it.

import { at } from "./document.js";
import { put, sameFields, typed, values } from "./form.js";
import { newId } from "./kept.js";
import { merged } from "./merging.js";

// `changed` is called when other fields stand in the form; `listed` when the list of jobs is another one.
export function openJob({ keep, words, undo, changed, listed }) {
  let id = null; // the id that the present job is kept under; none while nothing was typed
  let base = {}; // what both this window and any other one have of it
  let example = false; // it is the example, as it was offered

  function write() {
    // What another window wrote since is read first: one that slept for an hour has heard of nothing.
    const there = id && keep.read(id);
    if (there && !sameFields(there, base) && !together(there)) return;
    id ??= newId();
    base = typed();
    const done = keep.write(id, base);
    const name = values().title?.trim() || words.desk.untitled;
    at("kept").textContent = done ? `${words.kept.kept} ${name}` : words.kept[keep.works ? "full" : "none"];
    at("kept").classList.toggle("alarm", !done);
    at("full").hidden = done || !keep.works;
    listed();
  }

  function fill(fields, own) {
    put(fields);
    id = own;
    base = typed();
    at("elsewhere").hidden = true;
    changed();
  }

  // The id itself, or a new one where another job is kept under it: what was changed since stays as it is.
  function freeId(wanted, fields) {
    const before = wanted && keep.read(wanted);
    const same = !before || sameFields(before, fields);
    return wanted && same ? wanted : newId();
  }

  function fresh() {
    const unit = values().unit;
    example = false;
    fill(unit ? { unit } : {}, null); // the tape stays the one in hand
    listed();
  }

  // --- another window

  function elsewhere(told) {
    if (id === null || (told !== null && told !== id)) return;
    const other = keep.read(id);
    if (!other) return keep.has(id) ? undefined : gone();
    if (!together(other)) return;
    if (!sameFields(typed(), other)) write();
  }

  // Put what both windows changed together into the fields, and tell whether that goes: otherwise it's asked.
  function together(other) {
    const own = typed();
    const { fields, both } = merged(base, own, other);
    if (both.length) {
      choosing(fields, both, other);
      return false;
    }
    if (!sameFields(fields, own)) fill(fields, id);
    base = other;
    return true;
  }

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
  function choosing(fields, both, other) {
    const rows = both.map(([name, mine, theirs]) => {
      const row = document.createElement("li");
      row.textContent = `${label(name)}: `;
      const take = (text) => {
        fields = { ...fields, [name]: text };
        both = both.filter(([one]) => one !== name);
        row.remove();
        if (both.length) return;
        fill(fields, id);
        base = other;
        write();
      };
      row.append(...[mine, theirs].map((text) => button(text || words.nothing, () => take(text))));
      return row;
    });
    ask(words.elsewhere_both, rows, []);
  }

  function gone() {
    const stay = button(words.elsewhere_keep, () => {
      at("elsewhere").hidden = true;
      write();
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
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") elsewhere(id);
  });

  return {
    get id() {
      return id;
    },
    get untouched() {
      return id === null || example;
    },
    get isExample() {
      return example;
    },
    write,
    fill,
    fresh,
    // Something was typed or done.
    touched() {
      example = false;
      write();
      changed();
    },
    open(fields, wanted) {
      example = false;
      fill(fields, freeId(wanted, fields));
      write();
    },
    // A job from elsewhere that nobody has chosen yet: it isn't kept before something is typed.
    show(fields, wanted) {
      fill(fields, freeId(wanted, fields));
    },
    showExample(fields) {
      fill(fields, null);
      example = true;
    },
    clear() {
      const before = { fields: typed(), id, example };
      fresh();
      undo.offer(words.undo.clear, () => {
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
