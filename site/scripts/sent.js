// A job that came by a link is kept as it was sent: what changes it goes on as a copy.

import { ofTheDay } from "./sizes.js";

const OF_THE_DAY = new RegExp(`^(?:${ofTheDay})$`);
const SETTLED = ["method", "halve_first"]; // said by the first step that is done, where the link doesn't

// Tell whether nothing but what was done, read and noted differs from the fields that were sent.
export function sameWork(sent, own) {
  const settled = (name) => SETTLED.includes(name) && own.done && !(name in sent);
  const names = new Set([...Object.keys(sent), ...Object.keys(own)]);
  return [...names].every((name) => OF_THE_DAY.test(name) || sent[name] === own[name] || settled(name));
}
