// The unit in which this device shows lengths, whatever a job is in: no job and no link says it. Python turns them; nothing
// is converted here.

const CHOSEN = "bowstring.2.shown";

// What was chosen here; empty for each job's own unit.
export function shownUnit(list) {
  let chosen = null;
  try {
    chosen = localStorage.getItem(CHOSEN);
  } catch {
    return ""; // no storage is allowed: each job's own
  }
  return [...list.options].some(({ value }) => value === chosen) ? chosen : "";
}

// The list from which it is chosen; the page starts anew in it, at the place where it is.
export function shownList(list, unit) {
  list.value = unit;
  list.addEventListener("change", () => {
    try {
      localStorage.setItem(CHOSEN, list.value);
    } catch {
      return;
    }
    location.reload();
  });
}
