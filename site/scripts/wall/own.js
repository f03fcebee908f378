// The class's own numbers: two fields over the picture, as large as a wall's one number. What they mean is the package's.

export function ownNumbers({ stage, ask, keep, made, changed }) {
  const form = made("form", "own", stage);
  form.hidden = true;
  form.noValidate = true;
  form.autocomplete = "off";
  const head = made("h2", "", form);
  const fields = Object.fromEntries(["chord", "out"].map((name) => [name, field(name)]));
  const wrong = made("p", "wrong", form);
  wrong.setAttribute("role", "alert");
  const told = made("p", "enter", form);
  const bar = made("div", "acts", form);
  const [show, store, back] = ["show", "keep", "back"].map((name) => {
    const button = made("button", "", bar);
    button.type = name === "show" ? "submit" : "button";
    button.dataset.act = name;
    return button;
  });
  let typed = null; // what the wall is shown on, as it was typed; the job's where there is none
  let shows = false;

  function field(name) {
    const label = made("label", "", form);
    const words = made("span", "", label);
    const input = made("input", "", label);
    input.type = "text";
    input.name = `wall-${name}`;
    input.spellcheck = false;
    return { words, input };
  }

  const read = () => Object.fromEntries(Object.entries(fields).map(([name, { input }]) => [name, input.value]));

  // The package reads them; what it can't use is told, and the picture stays.
  async function taken() {
    const own = read();
    const answered = await ask({ own, numbers: 1 });
    wrong.textContent = answered.error ?? "";
    form.classList.toggle("bad", Boolean(answered.error));
    return answered.error ? null : { own, answered };
  }

  function close() {
    shows = false;
    form.hidden = true;
    stage.classList.remove("owned");
  }

  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    const good = await taken();
    if (!good) return;
    typed = good.own;
    close();
    changed();
  });
  store.addEventListener("click", async () => {
    const good = await taken();
    if (!good) return;
    close();
    keep(good.answered.fields, null);
  });
  back.addEventListener("click", () => {
    typed = null;
    close();
    changed();
  });

  return {
    get typed() {
      return typed;
    },
    get shows() {
      return shows;
    },
    async show() {
      shows = true;
      const { chord, out, words } = await ask({ ...(typed && { own: typed }), numbers: 1 });
      if (!shows) return;
      head.textContent = words.own;
      fields.chord.words.textContent = words.chord;
      fields.out.words.textContent = words.mid_ordinate;
      told.textContent = words.own_enter;
      show.textContent = words.own_show;
      store.textContent = words.own_keep;
      back.textContent = words.own_back;
      back.hidden = !typed;
      wrong.textContent = "";
      form.classList.remove("bad");
      for (const [name, text] of Object.entries({ chord, out })) fields[name].input.value = typed?.[name] ?? text;
      stage.classList.add("owned");
      form.hidden = false;
      fields.chord.input.select();
    },
    keyed(event) {
      if (event.key !== "Escape") return; // all other keys are the fields' own
      event.preventDefault();
      close();
      stage.parentElement.focus({ preventScroll: true });
    },
    forget() {
      typed = null;
      close();
    },
  };
}
