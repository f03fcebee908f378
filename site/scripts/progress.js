// How far the stakes are: which cards stand, kept with the job at each tap.

import { fill, typed, values } from "./form.js";

export function progress({ touched, undo, words, restore }) {
  const done = () => (values().done ?? "").split(" ").filter(Boolean).map(Number);

  const inOrder = (cards) => [...new Set(cards)].sort((one, other) => one - other).join(" ");

  function write(cards, more = {}) {
    fill({ ...more, done: inOrder(cards) });
    touched();
  }

  const without = (cards) => done().filter((one) => !cards.includes(one));

  return {
    done,
    // The card to work after one: the next that doesn't stand, or the last of all, where the checks are.
    after(card, count) {
      const cards = done();
      let next = card + 1;
      while (next < count && cards.includes(next)) next += 1;
      return Math.min(next, count);
    },
    // `fixed`: what is settled as long as no stake stands: the method, and what the stakes will stand on; `hanging`: the
    // cards of what was set from a stake that is set again: that doesn't stand any more.
    stands(card, fixed = {}, hanging = []) {
      const before = typed();
      write([...without(hanging), card], fixed);
      undo.offer(words.undo.done, () => restore(before));
    },
    // Something else was got at a card: `others`, those after it that have other numbers from now on, don't stand any more.
    gotAt(card, fields, others, fixed = {}) {
      const before = typed();
      write([...without(others), card], { ...fixed, ...fields });
      undo.offer(words.undo.done, () => restore(before));
    },
    // The fields as they'll be once that card is done too.
    fieldsAt: (card, fixed = {}) => ({ ...values(), ...fixed, done: inOrder([...done(), card]) }),
    undone: (card) => write(done().filter((one) => one < card)),
    theseUndone: (cards) => write(without(cards)),
  };
}
