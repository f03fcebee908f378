// Handing the job over: what Python makes of it (a code, texts, files) is put here, copied and saved.

import { at } from "./document.js";

// Of a PNG: how many of its dots are to the meter (300 to the inch), with its length before it and its check behind.
const DENSITY = [0, 0, 0, 9, 112, 72, 89, 115, 0, 0, 46, 35, 0, 0, 46, 35, 1, 120, 165, 63, 118];
const HEAD = 33; // bytes of a PNG before its second part

export function handing({ ask, question, copy, give, wrong, words }) {
  let wanted = 0; // only what was asked for last is shown

  function stale() {
    wanted += 1;
    at("handed").replaceChildren();
  }

  async function show(what) {
    stale();
    const mine = wanted;
    const asking = ask("hand_over", { ...question(), what });
    const { html, error } = await asking.catch((reason) => ({ error: `${words.ask_failed} ${reason.message}` }));
    if (mine !== wanted) return; // the job has changed, or something else was asked for
    if (error) at("handed").textContent = error;
    else at("handed").innerHTML = html;
    at("handed").focus({ preventScroll: true });
    at("handed").scrollIntoView({ block: "start" });
  }

  async function file(kind) {
    const asking = ask("hand_file", { ...question(), kind });
    const { error, name, type, text, pixels } = await asking.catch((reason) => ({
      error: `${words.ask_failed} ${reason.message}`,
    }));
    if (error) return wrong(error);
    give(pixels ? await picture(text, pixels) : new Blob([text], { type }), name);
  }

  at("hand-over").addEventListener("click", ({ target }) => {
    const button = target.closest("button");
    if (!button) return;
    if (button.dataset.hand) show(button.dataset.hand);
    if (button.dataset.file) file(button.dataset.file);
    if ("copy" in button.dataset) copy(button.previousElementSibling.textContent, button.previousElementSibling);
  });

  return { stale };
}

// A drawing painted here, without a network.
async function picture(svg, [width, height]) {
  const image = new Image();
  image.src = `data:image/svg+xml,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = Object.assign(document.createElement("canvas"), { width, height });
  canvas.getContext("2d").drawImage(image, 0, 0, width, height);
  const blob = await new Promise((resolve) => canvas.toBlob(resolve, "image/png"));
  const bytes = new Uint8Array(await blob.arrayBuffer());
  return new Blob([bytes.slice(0, HEAD), new Uint8Array(DENSITY), bytes.slice(HEAD)], { type: "image/png" });
}
