// A text as it is kept twice, in the simple storage and in the second copy: where the first can't be used for any reason at
// all, the second is. Nothing here throws but `setItem`, which says that there's no room.

// `edited`: when a text was written, 0 where that can't be so. `sound`: whether a text is one that the page writes.
export function twofold(box, { sound, edited }) {
  const second = new Map(); // texts of the second copy that are better than the first's

  function first(key) {
    try {
      return box?.getItem(key) ?? null;
    } catch {
      return null; // there, and can't be read
    }
  }

  function better(text, key) {
    const before = first(key);
    if (!sound(before)) return true;
    const when = edited(before);
    return when > 0 && edited(text) > when; // a clock that went wrong says nothing
  }

  function keys() {
    try {
      const places = Array.from({ length: box?.length ?? 0 }, (_none, place) => box.key(place));
      return new Set([...places, ...second.keys()]);
    } catch {
      return new Set(second.keys());
    }
  }

  return {
    keys,
    getItem: (key) => second.get(key) ?? first(key),

    setItem(key, text) {
      second.set(key, text); // of a first copy that can't be written the older text isn't the newest
      if (!box) throw new Error("no storage");
      box.setItem(key, text);
      if (first(key) === text) second.delete(key);
    },

    removeItem(key) {
      second.delete(key);
      try {
        box?.removeItem(key);
      } catch {} // what can't be removed stays in the list
    },

    // Use a text of the second copy where it's better, and mend the first with it where that goes; tell whether it's used.
    rescue(key, text) {
      if (!sound(text) || !better(text, key)) return false;
      try {
        this.setItem(key, text);
      } catch {} // it stands in the second copy
      return true;
    },
  };
}
