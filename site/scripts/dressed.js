// The page's own words in the language of the device. The page is American English as it comes; for another language the
// build has told what stands in the place of each text (builder/dressing.py). Whose language it is, this device says:
// no job and no link does.

import { at } from "./document.js";
import { isSaved, unpacked } from "./packed.js";

const CHOSEN = "bowstring.2.language";
const PATIENCE = 4000; // milliseconds: a page in English is better than one that waits
const UNREAD = "script, style, noscript";
const root = document.documentElement;

// What was chosen here, or what the device speaks.
function ofDevice(languages) {
  const chosen = stored();
  if (languages.some(({ name }) => name === chosen)) return chosen;
  for (const spoken of navigator.languages ?? [navigator.language]) {
    const fitting = ({ calls }) =>
      Math.max(0, ...calls.filter((call) => `${spoken.toLowerCase()}-`.startsWith(`${call}-`)).map((call) => call.length));
    const [best] = [...languages].sort((one, other) => fitting(other) - fitting(one));
    if (fitting(best)) return best.name;
  }
  return languages[0].name;
}

function stored() {
  try {
    return localStorage.getItem(CHOSEN);
  } catch {
    return null; // no storage is allowed: the device's own language, each time
  }
}

// Choose a language for this device; the page starts anew in it, at the place where it is.
export function choose(name) {
  try {
    localStorage.setItem(CHOSEN, name);
  } catch {
    return;
  }
  location.reload();
}

async function told(tag) {
  const file = `words-${tag.toLowerCase()}.json`;
  if (isSaved()) return JSON.parse(new TextDecoder().decode(await unpacked(file)));
  const response = await fetch(new URL(`./${file}`, import.meta.url));
  if (!response.ok) throw new Error(`${file}: ${response.status}`);
  return response.json();
}

const late = () => new Promise((_, reject) => setTimeout(reject, PATIENCE, new Error("no answer")));

// The next text for one that stands in the page; null for one that stays. Equal texts may differ elsewhere: they come in order.
function nextOf(there) {
  const left = structuredClone(there);
  return (text) => {
    const texts = Object.hasOwn(left, text) ? left[text] : null;
    return texts && (texts.length > 1 ? texts.shift() : texts[0]);
  };
}

function dress({ texts, attributes }) {
  const text = nextOf(texts);
  const attribute = nextOf(attributes);
  const nodes = document.createTreeWalker(root, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT);
  for (let node = nodes.nextNode(); node; node = nodes.nextNode()) {
    if (node.parentElement?.closest(UNREAD)) continue;
    if (node.nodeType === Node.TEXT_NODE) {
      const now = node.data.trim();
      const next = now && text(now);
      if (next) node.data = node.data.replace(now, () => next);
    } else if (!node.matches(UNREAD)) {
      for (const { name, value } of node.attributes) {
        const next = value && attribute(`${name}=${value}`);
        if (next) node.setAttribute(name, next);
      }
    }
  }
}

// Put the device's language into the page; return it with the script's words. `stays`: a copy that a browser has saved says
// what it said then.
export async function dressed(stays) {
  const words = JSON.parse(at("words").textContent);
  const { languages } = words;
  const own = languages[0].name; // what the page says as it comes
  const name = stays ? own : ofDevice(languages);
  if (name === own) return { language: own, words };
  const { tag } = languages.find((language) => language.name === name);
  try {
    const there = await Promise.race([told(tag), late()]);
    dress(there);
    root.lang = tag;
    return { language: name, words: there.words };
  } catch {
    return { language: own, words }; // not to be had just now: the next start tries again
  }
}

// The list from which a language is chosen.
export function languageList(place, { languages }, language) {
  place.replaceChildren(...languages.map(({ name, called, tag }) => option(name, called, tag, name === language)));
  place.addEventListener("change", () => choose(place.value));
}

function option(value, called, lang, selected) {
  const made = new Option(called, value, selected, selected);
  made.lang = lang;
  return made;
}
