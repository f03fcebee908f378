// How far the stakes are: which cards stand, kept with the job at each tap.

import { fill, values } from "./form.js";

export function progress({ touched, undo, words }) {
  const done = () => (values().done ?? "").split(" ").filter(Boolean).map(Number);

  function write(cards, more = {}) {
    fill({ ...more, done: [...new Set(cards)].sort((one, other) => one - other).join(" ") });
    touched();
  }

  return {
    done,
    // `fixed`: what is settled once somebody has begun: the method, and what the stakes stand on.
    stands(card, fixed = {}) {
      const before = done();
      const first = before.length === 0;
      write([...before, card], first ? fixed : {});
      undo.offer(words.undo.done, () =>
        write(before, first ? Object.fromEntries(Object.keys(fixed).map((name) => [name, ""])) : {}),
      );
    },
    undone: (card) => write(done().filter((one) => one < card)),
  };
}
