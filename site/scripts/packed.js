// What is packed in a saved page, and how such a page is made: the same bytes whether the build or a browser makes it.

const MARK = /\[\[packed:([a-z_.-]+)\]\]/g;

export const PACKED = [
  "worker",
  "wall",
  "pyodide.mjs",
  "pyodide.asm.mjs",
  "pyodide.asm.wasm",
  "library.zip",
  "rest.bin",
  "words-en-gb.json",
  "words-es.json",
  "shell",
];
const PLAIN = ["worker", "wall"]; // not squeezed: their text becomes their address

export function isSaved() {
  return document.getElementById("packed-worker") !== null;
}

export async function unpacked(name) {
  const bytes = decoded(document.getElementById(`packed-${name}`).textContent.trim());
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"))).arrayBuffer();
}

function decoded(text) {
  if (Uint8Array.fromBase64) return Uint8Array.fromBase64(text);
  const letters = atob(text);
  const bytes = new Uint8Array(letters.length);
  for (let place = 0; place < letters.length; place += 1) bytes[place] = letters.charCodeAt(place);
  return bytes;
}

// The address of a plain script, which holds its text.
export function plainAddress(name) {
  return `data:text/javascript;base64,${document.getElementById(`packed-${name}`).textContent.trim()}`;
}

function encoded(bytes) {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(reader.result.slice(reader.result.indexOf(",") + 1));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(new Blob([bytes]));
  });
}

// Return the text of one packed part, from a saved page itself or from the site's own file.
async function part(name, file) {
  if (isSaved()) return document.getElementById(`packed-${name}`).textContent.trim();
  const response = await fetch(file);
  if (!response.ok) throw new Error(`${file}: ${response.status}`);
  const bytes = await response.arrayBuffer();
  if (PLAIN.includes(name)) return encoded(bytes);
  const squeezed = new Blob([bytes]).stream().pipeThrough(new CompressionStream("gzip"));
  return encoded(await new Response(squeezed).arrayBuffer());
}

// Return the whole saved page with a job's link in it; `files` tells where each part lies on the site.
export async function savedPage(files, link, address) {
  const parts = await Promise.all(PACKED.map((name) => part(name, files[name])));
  const texts = Object.fromEntries(PACKED.map((name, place) => [name, parts[place]]));
  const shell = isSaved() ? new TextDecoder().decode(await unpacked("shell")) : await (await fetch(files.shell)).text();
  return shell.replace(MARK, (whole, name) => ({ ...texts, link, address: escaped(address) })[name] ?? whole);
}

function escaped(text) {
  return text.replace(/[&"<>]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
