// Work kept on this device: every job under a key of its own, checked when it is read back.

import { secondCopy } from "./durable.js";
import { sizes } from "./sizes.js";
import { keyBefore, OPEN_BEFORE, takeOver } from "./takeover.js";
import { twofold } from "./twofold.js";

const PREFIX = "bowstring.2.";
const JOB = `${PREFIX}job.`;
const OPEN = `${PREFIX}open`; // which job was in the fields; a saved page with a job in it has a place of its own
const FIELD = /^[A-Za-z][A-Za-z0-9_-]{0,40}$/;
const DAY = 86_400_000; // milliseconds that a clock may have been ahead when something was kept
const ID = /^[a-z0-9]{8,20}$/;

export function newId() {
  return [...crypto.getRandomValues(new Uint8Array(10))].map((byte) => (byte % 36).toString(36)).join("");
}

// Return the fields of a kept text, or null when it isn't what this page writes.
function fieldsOf(text) {
  if (typeof text !== "string" || text.length > sizes.text) return null;
  let kept;
  try {
    kept = JSON.parse(text);
  } catch {
    return null;
  }
  const fields = kept?.fields;
  if (typeof fields !== "object" || fields === null || Array.isArray(fields)) return null;
  const rows = Object.entries(fields);
  const sound = rows.every(([name, value]) => FIELD.test(name) && typeof value === "string");
  return sound && rows.length <= sizes.fields ? Object.fromEntries(rows) : null;
}

// The storage, or null where there is none: a page can be opened where none is allowed.
function storage() {
  try {
    const box = window.localStorage;
    box.getItem(PREFIX);
    return box;
  } catch {
    return null;
  }
}

// `own`: a name for a saved page's place, since all files that a browser opens share one storage.
export function keeper(own = "") {
  const first = storage();
  const box = twofold(first, { sound: (text) => fieldsOf(text) !== null, edited: editedOf });
  const last = own ? `${OPEN}.${own}` : OPEN;
  const copy = secondCopy();
  const reading = { read: fieldsOf, edited: editedOf, isId: (id) => ID.test(id), fresh: newId };
  const over = (texts) => takeOver(box, texts, (id) => JOB + id, reading);
  let openBefore = null; // which job was open, where only the second copy says so
  if (first) begin();

  function begin() {
    try {
      over([...box.keys()].map((key) => [key, box.getItem(key)]));
      const open = box.getItem(OPEN_BEFORE);
      if (box.getItem(OPEN) === null && ID.test(open ?? "")) box.setItem(OPEN, open);
    } catch {
      // no room: what version 0.1 kept stays where it is
    }
  }

  return {
    works: first !== null,

    // Tell whether it was kept: a full storage says no, and then somebody must be told.
    write(id, fields) {
      const text = JSON.stringify({ fields, edited: Date.now() });
      if (text.length > sizes.text) return false; // what couldn't be read back isn't kept
      copy.change(JOB + id, text);
      copy.change(last, id);
      openBefore = id;
      try {
        box.setItem(JOB + id, text);
        box.setItem(last, id);
        openBefore = null;
        return true;
      } catch {
        return false;
      }
    },

    read(id) {
      return ID.test(id ?? "") ? fieldsOf(box.getItem(JOB + id)) : null;
    },

    // Whether anything is kept under an id, readable or not.
    has: (id) => box.getItem(JOB + id) !== null,

    // Take a job away and return its text, which `bring` puts back.
    take(id) {
      const text = box.getItem(JOB + id);
      this.remove(id);
      return text;
    },

    bring(id, text) {
      copy.change(JOB + id, text);
      try {
        box.setItem(JOB + id, text);
      } catch {} // no room: it stands in the second copy
    },

    remove(id) {
      for (const key of [JOB + id, keyBefore(id)]) {
        copy.change(key, null);
        box.removeItem(key);
      }
    },

    get open() {
      return openBefore ?? box.getItem(last);
    },

    set open(id) {
      try {
        box.setItem(last, id);
      } catch {
        // only which job comes up first is lost
      }
    },

    // Bring back from the second copy what the storage has lost or can't give; tell whether anything came back.
    async restore() {
      let back = false;
      try {
        const texts = await copy.all();
        back = over(texts);
        for (const [key, text] of texts) {
          if (key.startsWith(JOB) && ID.test(key.slice(JOB.length)) && box.rescue(key, text)) back = true;
        }
        const open = texts.get(last) ?? texts.get(OPEN_BEFORE);
        back ||= !ID.test(box.getItem(last) ?? "");
        if (!back || !ID.test(open ?? "")) return back;
        openBefore = open;
        box.setItem(last, open);
        openBefore = null;
      } catch {
        // no second copy, or no room in the first: what can't be kept is told elsewhere
      }
      return back;
    },

    // Every kept job, newest first; `fields` is null where what was kept can't be used.
    list() {
      const jobs = [];
      for (const key of box.keys()) {
        if (!key?.startsWith(JOB) || !ID.test(key.slice(JOB.length))) continue;
        const text = box.getItem(key);
        jobs.push({ id: key.slice(JOB.length), fields: fieldsOf(text), edited: editedOf(text) });
      }
      return jobs.sort((one, other) => other.edited - one.edited);
    },

    // Call back when another window has changed a job.
    watch(told) {
      addEventListener("storage", (event) => {
        if (event.key === null || event.key.startsWith(JOB)) told(event.key === null ? null : event.key.slice(JOB.length));
      });
    },
  };
}

// When a text was kept; 0 where it doesn't say so, or says what can't be: no date is made of that.
function editedOf(text) {
  try {
    const { edited } = JSON.parse(text);
    return Number.isFinite(edited) && edited > 0 && edited < Date.now() + DAY ? edited : 0;
  } catch {
    return 0;
  }
}
