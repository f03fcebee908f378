// Python's start as the page sees it: one that fails is looked into, and tried again where that can help.

import { startPython } from "./python.js";

const PATIENCE_LOOK = 3000; // milliseconds until it's told that the start failed, whatever is found out about it

// `failed` is told the kind of trouble and what was said of it; it may be called once more, and `ready` after it. Give back
// `ask`, and `works`: it promises whether Python works, to be asked when every file is on the device.
export function starting({ language, shownIn, ready, failed, looking, replaced, lacked }) {
  let tell;
  let works = new Promise((resolve) => (tell = resolve));
  let fault = null; // what is wrong with the site's files, where that is known

  if (typeof WebAssembly !== "object") {
    queueMicrotask(() => failed("no_wasm", ""));
    return { ask: () => Promise.reject(new Error("no WebAssembly")), works: async () => false };
  }

  // Where every file is right by now it's worth another try.
  async function mended() {
    if (typeof hostFault === "undefined") return false; // a saved page has no host
    const patience = setTimeout(looking, PATIENCE_LOOK);
    fault = await hostFault();
    clearTimeout(patience);
    return fault === null;
  }

  const { ask, again } = startPython({
    language,
    shownIn,
    ready() {
      tell(true);
      ready();
    },
    failed(told) {
      tell(false);
      if (fault) failed(`host_${fault.kind}`, fault.told);
      else failed("start", told);
    },
    mended,
    replaced,
    lacked,
  });

  return {
    ask,
    // The device has every file with its right type: a start that failed is tried again from there.
    async works() {
      if (await works) return true;
      works = new Promise((resolve) => (tell = resolve));
      again();
      return works;
    },
  };
}
