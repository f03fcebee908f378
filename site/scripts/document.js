// The page's parts by their ids.

export const at = (id) => document.getElementById(id);
export const form = at("form");
