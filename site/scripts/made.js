// What Python made is put in its place, without taking the field that somebody is typing in away from under the fingers.

const WHOLE = "input, textarea, details"; // what has a state that its HTML doesn't tell: made anew

// What is on the page already stays as it is, and only the rest is made, styled and laid out. `html`: made and escaped by Python.
export function showMade(place, html) {
  if (!html && !place.firstChild) return;
  const made = document.createElement("template");
  made.innerHTML = html;
  if (place.querySelector(WHOLE) || made.content.querySelector(WHOLE)) place.replaceChildren(made.content);
  else meet(place, made.content);
}

function meet(place, made) {
  const before = [...place.childNodes];
  const after = [...made.childNodes];
  for (const [number, node] of after.entries()) {
    const there = before[number];
    if (!there) place.append(node);
    else if (there.nodeType !== Node.ELEMENT_NODE || there.nodeName !== node.nodeName) there.replaceWith(node);
    else if (!there.isEqualNode(node)) {
      sameAttributes(there, node);
      meet(there, node);
    }
  }
  for (const left of before.slice(after.length)) left.remove();
}

function sameAttributes(there, made) {
  for (const name of there.getAttributeNames()) if (!made.hasAttribute(name)) there.removeAttribute(name);
  for (const { name, value } of made.attributes) if (there.getAttribute(name) !== value) there.setAttribute(name, value);
}

// `html`: made and escaped by Python, or nodes that were built here; `held`: a selector of what stays as far from the top of
// the screen as it is, whatever grows or shrinks above it.
export function replace(place, html, held = "") {
  const { activeElement: field } = document;
  const inside = field && place.contains(field) && field.matches("input, textarea") ? field : null;
  const was = inside && {
    id: inside.id,
    value: inside.value,
    mode: inside.inputMode,
    from: inside.selectionStart,
    to: inside.selectionEnd,
  };
  const open = [...place.querySelectorAll("details[open]")].map((fold) => fold.id).filter(Boolean);
  const before = place.firstElementChild;
  const top = before?.scrollTop ?? 0;
  const height = () => (held && place.querySelector(held)?.getBoundingClientRect().top) || 0;
  const from = height();
  if (typeof html === "string") showMade(place, html);
  else place.replaceChildren(html);
  for (const id of open) place.querySelector(`#${CSS.escape(id)}`)?.setAttribute("open", "");
  const now = place.firstElementChild; // what scrolls: the same face, or the same card, stays where it was read
  if (top && now?.dataset.card === before.dataset.card) now.scrollTop = top;
  if (from && height()) now.scrollTop += height() - from;
  if (!was?.id) return;
  const again = document.getElementById(was.id);
  if (!again || !place.contains(again)) return;
  again.value = was.value;
  again.focus({ preventScroll: true });
  if (was.from !== null) again.setSelectionRange(was.from, was.to); // a day has no caret
}
