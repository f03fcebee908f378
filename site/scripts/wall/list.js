// The list of figures, a number key on each picture; under a lesson its handout.

export function listing({ stage, ask, open, print, made, acts }) {
  const grid = made("div", "pick", stage);
  grid.hidden = true;
  let shows = false;

  function card({ figure, name, svg }, words) {
    const item = made("div", "card", grid);
    const button = made("button", "figure", item);
    button.type = "button";
    button.dataset.figure = figure;
    if (svg) {
      const thumb = made("span", "thumb", button);
      thumb.innerHTML = svg;
      thumb.ariaHidden = "true";
    }
    made("b", "key", button).textContent = figure > 6 ? "" : figure;
    made("span", "name", button).textContent = name;
    button.addEventListener("click", () => (figure > 6 ? print(figure) : open(figure)));
    if (figure < 1 || figure > 6) return;
    const paper = made("button", "paper-of", item);
    paper.type = "button";
    paper.textContent = words.handout;
    paper.setAttribute("aria-label", `${words.handout}: ${name}`);
    paper.addEventListener("click", () => print(figure));
  }

  async function fill() {
    const { figures, words } = await ask({ list: 1 });
    grid.replaceChildren();
    made("h2", "", grid).textContent = words.list;
    for (const row of figures) card(row, words);
    card({ figure: 7, name: words.try_it, svg: "" }, words);
    made("p", "keys", grid).textContent = words.keys;
    const bar = made("div", "acts", grid);
    for (const [name, act] of Object.entries(acts)) {
      if (name === "full_screen" && !document.fullscreenEnabled) continue; // a phone may have none
      const button = made("button", "", bar);
      button.type = "button";
      button.textContent = words[name];
      button.dataset.act = name;
      button.addEventListener("click", () => {
        hide();
        act();
      });
    }
  }

  function hide() {
    shows = false;
    stage.classList.remove("listed");
    grid.hidden = true;
  }

  return {
    get shows() {
      return shows;
    },
    async show(figure) {
      shows = true;
      stage.classList.add("listed");
      grid.hidden = false;
      await fill();
      grid.querySelector(`[data-figure="${Math.max(figure, 0)}"]`)?.focus();
    },
    hide,
    // Tell whether a key was the list's own.
    keyed(key, event) {
      if (key === "Escape" || key === "l") hide();
      else if (key.startsWith("Arrow")) {
        const all = [...grid.querySelectorAll("button.figure")];
        const step = { ArrowRight: 1, ArrowLeft: -1, ArrowDown: 4, ArrowUp: -4 }[key];
        all[Math.max(0, Math.min(all.length - 1, all.indexOf(document.activeElement) + step))].focus();
      } else return false;
      event.preventDefault();
      return true;
    },
  };
}
