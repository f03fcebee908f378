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

// Two signs of 91 from "!" on stand for thirteen bits, the last one alone for six: an eighteenth less than base64 takes.
// "|" is for "<", so that no part can end the element in which it stands.
function decoded(text) {
  const signs = new TextEncoder().encode(text);
  const whole = signs.length & ~1;
  const bytes = new Uint8Array(((whole / 2) * 13 + (signs.length - whole) * 6) >> 3);
  let held = 0;
  let bits = 0;
  let to = 0;
  for (let from = 0; from < whole; from += 2) {
    held = (held << 13) | (of(signs[from]) * 91 + of(signs[from + 1]));
    bits += 13;
    for (; bits >= 8; to += 1) {
      bits -= 8;
      bytes[to] = held >>> bits;
    }
    held &= 255; // fewer than eight are left, and the rest would overflow
  }
  if (signs.length > whole && to < bytes.length) bytes[to] = ((held << 6) | of(signs[whole])) >>> (bits - 2);
  return bytes;
}

const of = (code) => (code === 124 ? 27 : code - 33);
const sign = (value) => (value === 27 ? 124 : value + 33);

function packedText(bytes) {
  const codes = new Uint8Array(Math.ceil(bytes.length / 13) * 16 + 2);
  let held = 0;
  let bits = 0;
  let to = 0;
  const put = (number) => {
    codes[to] = sign(Math.floor(number / 91));
    codes[to + 1] = sign(number % 91);
    to += 2;
  };
  for (const byte of bytes) {
    held = ((held << 8) | byte) & 1048575;
    bits += 8;
    if (bits < 13) continue;
    bits -= 13;
    put((held >>> bits) & 8191);
  }
  if (bits > 6) put((held << (13 - bits)) & 8191);
  else if (bits > 0) codes[to++] = sign((held << (6 - bits)) & 63);
  return new TextDecoder().decode(codes.subarray(0, to));
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
