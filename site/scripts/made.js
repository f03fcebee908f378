// What Python made is put in its place, without taking the field that somebody is typing in away from under the fingers.

// `html`: made and escaped by Python, or nodes that were built here.
export function replace(place, html) {
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
  if (typeof html === "string") place.innerHTML = html;
  else place.replaceChildren(html);
  for (const id of open) place.querySelector(`#${CSS.escape(id)}`)?.setAttribute("open", "");
  if (!was?.id) return;
  const again = document.getElementById(was.id);
  if (!again || !place.contains(again)) return;
  again.value = was.value;
  again.focus({ preventScroll: true });
  if (was.from !== null) again.setSelectionRange(was.from, was.to); // a day has no caret
}
