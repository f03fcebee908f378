// The last sheet of a job, kept so that it's on screen before Python is up: never taken as it stands, but built anew from
// what a sheet is made of, and shown only for the very numbers that are in the fields.

import { sameFields } from "./form.js";

const PLACE = "bowstring.1.sheet";
const LONGEST = 2_000_000;
const PAUSE_SHEET = 1000; // milliseconds without a newer sheet before it's kept
const HTML = "http://www.w3.org/1999/xhtml";
const SVG = "http://www.w3.org/2000/svg";
const listed = (names) => new Set(names.split(","));
const ELEMENTS = listed(
  "a,caption,circle,defs,desc,details,div,figure,footer,h2,h3,h4,header,li,ol,p,path,rect,section,span,style,summary,svg," +
    "table,tbody,td,text,th,thead,title,tr,ul",
);
const ATTRIBUTES = listed(
  "aria-hidden,aria-label,aria-labelledby,class,cx,cy,d,data-for,data-head,data-least-width,data-stake,height,href,id,open," +
    "r,role,scope,start,tabindex,text-anchor,viewBox,width,x,y",
);

export function lastSheet(version) {
  let pause = 0;
  return {
    keep(fields, html) {
      clearTimeout(pause);
      pause = setTimeout(() => {
        try {
          localStorage.setItem(PLACE, JSON.stringify({ version, fields, html }));
        } catch {
          forget(); // no room, or no storage: then the next visit waits for Python
        }
      }, PAUSE_SHEET);
    },

    // The sheet's nodes for these fields, or null.
    of(fields) {
      try {
        const text = localStorage.getItem(PLACE) ?? "";
        if (!text || text.length > LONGEST) return null;
        const kept = JSON.parse(text);
        if (kept.version !== version || typeof kept.html !== "string" || !sameFields(kept.fields, fields)) return null;
        return rebuilt(new DOMParser().parseFromString(kept.html, "text/html").body);
      } catch {
        return null;
      }
    },
  };
}

function forget() {
  try {
    localStorage.removeItem(PLACE);
  } catch {} // there is none
}

// Only elements and attributes of a sheet are made; a link leads to a place on this page.
function rebuilt(node) {
  const made = document.createDocumentFragment();
  for (const child of node.childNodes) {
    if (child.nodeType === Node.TEXT_NODE) made.append(child.data);
    if (child.nodeType !== Node.ELEMENT_NODE) continue;
    const name = child.localName;
    if (!ELEMENTS.has(name) || ![HTML, SVG].includes(child.namespaceURI)) continue;
    const copy = document.createElementNS(child.namespaceURI, name);
    for (const { name: attribute, value } of child.attributes) {
      if (!ATTRIBUTES.has(attribute) || (attribute === "href" && !value.startsWith("#"))) continue;
      copy.setAttribute(attribute, value);
    }
    copy.append(rebuilt(child));
    made.append(copy);
  }
  return made;
}
