// What is wrong where the page doesn't start: which of the files that a start needs isn't there, is of a wrong type, or isn't
// what was published. It stands in the page's head behind early.js, for it has to speak where no other file has come, and
// in older syntax than the page's, where a browser is too old for that.

const START = "@START@"; // put in by the build: the files that a start needs, with their hashes
const SCRIPT_TYPE = /^(text|application)\/(x-)?(java|ecma)script\b/i;
const ATTEMPT = "bowstring.1.attempt"; // guards against reloading again and again
const PATIENCE_HOST = 4000; // milliseconds before something is said at any rate
const page = document.documentElement;
if ("up" in page.dataset) {
  page.dataset.copied = ""; // by a browser, with all that was true of the page then
  for (const name of ["up", "script", "offline"]) delete page.dataset[name];
}

// Fetch one file past the browser's own store, which has the new one then; return what is wrong with it, or null.
async function hostFile([path, integrity]) {
  const wrong = (kind, told) => ({ kind, told: told ? `${path}: ${told}` : path });
  try {
    const response = await fetch(path, { cache: "reload" });
    if (!response.ok) return wrong("missing", response.status);
    const type = response.headers.get("content-type") || "";
    if (/\.m?js$/.test(path) && !SCRIPT_TYPE.test(type)) return wrong("type", type || "-");
    const bytes = await response.arrayBuffer();
    if (!crypto.subtle) return null; // a page without a secure address
    const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
    return `sha256-${btoa(String.fromCharCode(...digest))}` === integrity ? null : wrong("damaged");
  } catch {
    return wrong("unreachable");
  }
}

// What the device holds is what the page gets: let the service worker look at it first, and mend it.
function mendDevice() {
  const worker = navigator.serviceWorker && navigator.serviceWorker.controller;
  if (!worker) return null;
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = resolve;
    setTimeout(resolve, PATIENCE_HOST);
    worker.postMessage({ ask: "whole" }, [port2]);
  });
}

// The first fault that is found, as soon as it is: {kind, told}; null when every file is right by now.
async function hostFault() {
  await mendDevice();
  const looks = Object.entries(START).map(hostFile);
  return new Promise((resolve) => {
    for (const look of looks) look.then((fault) => fault && resolve(fault));
    Promise.all(looks).then(() => resolve(null));
  });
}

async function hostSay(kind, told) {
  if (document.readyState === "loading") await new Promise((resolve) => addEventListener("DOMContentLoaded", resolve));
  if ("up" in page.dataset) return; // the page speaks for itself
  const words = JSON.parse(document.getElementById("words").textContent);
  const place = document.getElementById("trouble");
  document.querySelector("main").prepend(place); // on a phone the sheet, where it stands otherwise, is far below
  place.hidden = false;
  place.firstElementChild.textContent = words.trouble[kind];
  place.lastElementChild.textContent = told;
  document.getElementById("status").textContent = words.status.failed;
  document.getElementById("status").parentElement.dataset.state = "failed";
  page.dataset.told = "";
}

// The files may be right by now: then the page is loaded anew, once. Nothing that was typed is lost, for none of it was kept.
function triedAgain() {
  try {
    const last = Number(sessionStorage.getItem(ATTEMPT));
    sessionStorage.setItem(ATTEMPT, String(Date.now()));
    if (Math.abs(Date.now() - last) < 60000) return false;
  } catch {
    return false;
  }
  location.reload();
  return true;
}

let pageFailing = false;
async function pageFailed() {
  if (pageFailing || "up" in page.dataset) return;
  pageFailing = true;
  const fault = await hostFault();
  if (fault) hostSay(`host_${fault.kind}`, fault.told);
  else if (!triedAgain()) hostSay("old", "");
}

// Where the job of this page can be opened.
function jobOfCopy() {
  const said = (name) => document.querySelector(`meta[name=bowstring-${name}]`).content;
  return said("job") ? `${said("address")}#${said("job")}` : said("address");
}

addEventListener(
  "error",
  ({ target, filename }) => {
    const script = target.localName === "script" ? target.src : filename;
    if (script && script.endsWith("/page.js")) pageFailed();
  },
  true,
);
setTimeout(() => !("script" in page.dataset) && !pageFailing && hostSay("host_late", ""), PATIENCE_HOST);
if (location.protocol === "file:") {
  pageFailing = true; // what a browser saves of a served page can't start
  addEventListener("DOMContentLoaded", () => {
    document.getElementById("offline").textContent = "";
    hostSay("host_copy", jobOfCopy());
  });
}
