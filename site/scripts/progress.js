// How far the work is: which cards stand, kept with the job at each tap: those of the layout by their numbers, those of the
// forms by marks that say what they are of and by which numbers they were done.

import { fill, typed, values } from "./form.js";

// `marks`: the forms' cards on screen, mark by number; a mark that isn't among them is of numbers that the job has no more.
// `renumbered`: what of that is done by the cards' numbers of now, where the job has other cards than the one that the
// stakes were set by: the next card that is turned keeps it, with the job that counts so.
export function progress({ touched, undo, words, restore, marks = () => ({}), renumbered = () => undefined }) {
  const anew = () => (renumbered() && renumbered().of === values().done ? renumbered() : undefined);
  const kept = () => (anew()?.done ?? values().done ?? "").split(" ").filter(Boolean);
  const numberOf = (text) => Number(Object.entries(marks()).find(([, mark]) => mark === text)?.[0] ?? text);
  const done = () => kept().map(numberOf).filter(Boolean);

  // What stands with one card more: a mark takes the place of an older one of the same card.
  function withCard(texts, card) {
    const text = marks()[card] ?? `${card}`;
    const [kind] = text.split("-");
    return [...texts.filter((one) => one.split("-")[0] !== kind), text];
  }

  const place = (text) => Number(text) || Infinity; // marks stand after the numbers, as they came
  const inOrder = (texts) => [...new Set(texts)].sort((one, other) => place(one) - place(other) || 0).join(" ");

  function write(texts, more = {}) {
    const stood = anew()?.stood;
    fill({ ...(stood === undefined ? {} : { stood }), ...more, done: inOrder(texts) });
    touched();
  }

  const without = (cards) => kept().filter((text) => !cards.includes(numberOf(text)));

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
      write(withCard(without(hanging), card), fixed);
      undo.offer(words.undo.done, () => restore(before));
    },
    // Something else was got at a card: `others`, those after it that have other numbers from now on, don't stand any more.
    gotAt(card, fields, others, fixed = {}) {
      const before = typed();
      write(withCard(without(others), card), { ...fixed, ...fields });
      undo.offer(words.undo.done, () => restore(before));
    },
    // The fields as they'll be once that card is done too.
    fieldsAt: (card, fixed = {}) => ({ ...values(), ...fixed, done: inOrder(withCard(kept(), card)) }),
    // Every stake is set again; `fields`: those that say what else doesn't hold any more.
    restarted(fields) {
      const before = typed();
      fill({ ...fields, done: "", stood: "", built: "", edged: "" });
      touched();
      undo.offer(words.undo.again, () => restore(before));
    },
    undone: (card) => write(kept().filter((text) => numberOf(text) < card)),
    theseUndone: (cards) => write(without(cards)),
  };
}
