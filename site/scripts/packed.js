// What is packed in a saved page, and how such a page is made: the same parts whether the build or a browser packs them.

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

// Five signs from "!" on stand for four bytes, a sixteenth less than base64 takes; "v" is for "<", so that no part can end
// the element in which it stands.
function decoded(text) {
  const signs = new TextEncoder().encode(text.padEnd(Math.ceil(text.length / 5) * 5, "u"));
  const bytes = new Uint8Array((signs.length / 5) * 4);
  for (let from = 0, to = 0; from < signs.length; from += 5, to += 4) {
    const a = of(signs[from]);
    const b = of(signs[from + 1]);
    const c = of(signs[from + 2]);
    const d = of(signs[from + 3]);
    const number = (((a * 85 + b) * 85 + c) * 85 + d) * 85 + of(signs[from + 4]);
    bytes[to] = number / 16777216;
    bytes[to + 1] = number >>> 16;
    bytes[to + 2] = number >>> 8;
    bytes[to + 3] = number;
  }
  return bytes.subarray(0, Math.floor((text.length * 4) / 5));
}

const of = (code) => (code === 118 ? 27 : code - 33);

function packedText(bytes) {
  const codes = new Uint8Array(Math.ceil(bytes.length / 4) * 5);
  for (let from = 0, to = 0; from < bytes.length; from += 4, to += 5) {
    let number = 0;
    for (let byte = from; byte < from + 4; byte += 1) number = number * 256 + (bytes[byte] ?? 0);
    for (let place = to + 4; place >= to; place -= 1) {
      const code = (number % 85) + 33;
      codes[place] = code === 60 ? 118 : code;
      number = Math.floor(number / 85);
    }
  }
  return new TextDecoder().decode(codes.subarray(0, Math.ceil((bytes.length * 5) / 4)));
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
  return packedText(new Uint8Array(await new Response(squeezed).arrayBuffer()));
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
