// The way to the wall: its script, with its look, is fetched when somebody asks for it.

import { values } from "./form.js";
import { isSaved, plainAddress } from "./packed.js";

export function wallDoor({ place, ask, ready, starting, wrong, keep }) {
  let coming = null;

  function load() {
    const script = document.createElement("script");
    script.type = "module";
    script.src = isSaved() ? plainAddress("wall") : new URL("./wall.js", import.meta.url).href;
    return new Promise((resolve, reject) => {
      script.onload = () => resolve(globalThis.bowstringWall);
      script.onerror = () => reject(new Error(script.src.slice(0, 80)));
      document.head.append(script);
    }).then((made) => {
      script.remove(); // a copy that the browser saves would have it
      const asked = (payload) => ready.then(() => ask("wall", { fields: values(), ...payload }));
      return made({ ask: asked, starting, note: place.note, leave: place.leave, keep });
    });
  }

  return {
    // Another place came up: the wall over it, or none.
    turned({ wall }) {
      if (!wall) return coming?.then((made) => made.close());
      coming ??= load();
      coming
        .then((made) => place.now.wall && made.show(place.now.wall))
        .catch((reason) => {
          coming?.then((made) => made.close()).catch(() => {}); // what lies under it can be reached again
          coming = null;
          place.leave();
          wrong(reason.message);
        });
    },
  };
}
