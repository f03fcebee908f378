// What the page's Python takes at most, and what jobs of the first version meant: told by the build, so that both sides agree.

import { at } from "./document.js";

export const { sizes, meant, kept_beside: keptBeside } = JSON.parse(at("words").textContent);
