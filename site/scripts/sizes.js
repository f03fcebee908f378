// What the page's Python takes at most, and what jobs of the first version meant: told by the build, so that both sides agree.

import { at } from "./document.js";

export const { sizes, meant } = JSON.parse(at("words").textContent);
