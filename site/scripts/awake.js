// The screen stays on while somebody stakes, and a step is read aloud where the device can do that by itself.

export function awake(wanted) {
  let lock = null;

  async function look() {
    const want = wanted() && document.visibilityState === "visible";
    if (!want) {
      lock?.release().catch(() => {});
      lock = null;
      return;
    }
    if (lock && !lock.released) return;
    try {
      lock = (await navigator.wakeLock?.request("screen")) ?? null;
    } catch {
      lock = null; // a device that saves its battery says no
    }
  }

  document.addEventListener("visibilitychange", look);
  return look;
}

// A voice that needs no network, in the page's language; null where there is none.
function voice() {
  const own = document.documentElement.lang;
  return globalThis.speechSynthesis?.getVoices().find((one) => one.localService && one.lang.startsWith(own)) ?? null;
}

export function aloud({ changed }) {
  const speech = globalThis.speechSynthesis;
  speech?.addEventListener?.("voiceschanged", changed);
  return {
    get can() {
      return voice() !== null;
    },
    say(text) {
      const one = voice();
      if (!one || !text) return;
      speech.cancel();
      const spoken = new SpeechSynthesisUtterance(text);
      spoken.voice = one;
      spoken.lang = one.lang;
      speech.speak(spoken);
    },
    hush: () => speech?.cancel(),
  };
}
