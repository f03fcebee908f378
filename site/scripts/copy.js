// A copy that a browser makes by itself (Ctrl+S) is the page as it stands: what has to be in it is put into the page.

const meta = (name) => document.querySelector(`meta[name=bowstring-${name}]`);

const LONGEST_PLACE = 30; // of a place on this page: what is longer may be a link with something before it

// Keep the job's link, and the address that it belongs to, where a copy has them.
export function copyHolds(link, address) {
  meta("job").content = link.replace(/^#/, "");
  meta("address").content = address;
}

// Tell whether this page is such a copy, and take back what was true of the page that it was made from.
export function wasCopied(root) {
  if (!("up" in root.dataset) && !("copied" in root.dataset)) return false;
  for (const name of ["up", "copied", "stale", "dead", "told", "panel", "voice", "offline", "turned"]) delete root.dataset[name];
  root.dataset.sheet = "prebuilt";
  for (const id of ["offer", "elsewhere", "undo", "update", "unit-note", "trouble", "lacked"]) {
    document.getElementById(id).hidden = true;
  }
  return true;
}

// The fragment of the address where it holds a job's link, otherwise nothing: other fragments are places on this page. A
// messenger may have put signs before it or written its letters as numbers; Python looks for the link in what is left.
export function linkInAddress() {
  let text = location.hash.slice(1);
  try {
    text = decodeURIComponent(text);
  } catch {} // a stray percent sign: as it stands
  const like = /^[^A-Za-z0-9]*b[0-9]/.test(text) || text.length > LONGEST_PLACE;
  return like && !document.getElementById(text) ? location.hash : "";
}
