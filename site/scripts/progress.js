// How far the stakes are: which cards stand, kept with the job at each tap.

import { fill, typed, values } from "./form.js";

export function progress({ touched, undo, words, restore }) {
  const done = () => (values().done ?? "").split(" ").filter(Boolean).map(Number);

  const inOrder = (cards) => [...new Set(cards)].sort((one, other) => one - other).join(" ");

  function write(cards, more = {}) {
    fill({ ...more, done: inOrder(cards) });
    touched();
  }

  return {
    done,
    // `fixed`: what is settled as long as no stake stands: the method, and what the stakes will stand on; `hanging`: the
    // cards of what was set from a stake that is set again: that doesn't stand any more.
    stands(card, fixed = {}, hanging = []) {
      const before = typed();
      write([...done().filter((one) => !hanging.includes(one)), card], fixed);
      undo.offer(words.undo.done, () => restore(before));
    },
    // Something else was got at a card: those after it have other numbers from now on, and don't stand any more.
    gotAt(card, fields, fixed = {}) {
      const before = typed();
      const cards = done().filter((one) => one < card);
      write([...cards, card], { ...fixed, ...fields });
      undo.offer(words.undo.done, () => restore(before));
    },
    // The fields as they'll be once that card is done too.
    fieldsAt: (card, fixed = {}) => ({ ...values(), ...fixed, done: inOrder([...done(), card]) }),
    undone: (card) => write(done().filter((one) => one < card)),
  };
}
