// What the page's Python takes at most, what no stake hangs on, and what jobs of the first version meant: told by the build, so
// that both sides agree.

import { at } from "./document.js";

export const { sizes, meant, kept_beside: keptBeside, of_the_day: ofTheDay } = JSON.parse(at("words").textContent);
