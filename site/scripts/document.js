// The page's parts by their ids.

export const at = (id) => document.getElementById(id);
export const form = at("form");

// What stands there already isn't put there again: nothing is laid out anew for it.
export function write(place, text) {
  if (place.textContent !== text) place.textContent = text;
}
