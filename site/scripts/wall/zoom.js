// Into one half of the picture before it, and out again: the same stakes grow into their new places. With reduced motion it is
// a cut.

const LASTS = 400; // milliseconds

// `zoom` of a sheet, [scale, x, y], brings its picture into the one before it.
export function zoomed({ picture, sheets, before, index }) {
  const into = index === before + 1;
  const zoom = into ? sheets[index].zoom : index === before - 1 ? sheets[before].zoom : null;
  if (!zoom || matchMedia("(prefers-reduced-motion: reduce)").matches) return;
  const [scale, x, y] = into ? zoom : [1 / zoom[0], -zoom[1] / zoom[0], -zoom[2] / zoom[0]];
  for (const part of picture.querySelectorAll("g:not(.off):not([data-head]) > *")) {
    const title = part.parentElement.dataset.s === "0" && part.matches("text, .w-box");
    if (!title)
      part.animate([{ transform: `translate(${x}px, ${y}px) scale(${scale})` }, { transform: "none" }], {
        duration: LASTS,
        easing: "ease-in-out",
      });
  }
}
