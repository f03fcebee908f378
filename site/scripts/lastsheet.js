// The last face of a job that was looked at, kept so that it's on screen before Python is up: never taken as it stands, but
// built anew from what a face is made of, and shown only for the very numbers that are in the fields.

import { sameFields } from "./form.js";

const PLACE = "bowstring.2.last";
const LONGEST = 2_000_000;
const PAUSE_KEPT = 1000; // milliseconds without a newer one before it's kept
const HTML = "http://www.w3.org/1999/xhtml";
const SVG = "http://www.w3.org/2000/svg";
const listed = (names) => new Set(names.split(","));
const ELEMENTS = listed(
  "a,article,b,button,caption,circle,dd,defs,desc,details,div,dl,dt,ellipse,figure,footer,g,h1,h2,h3,h4,header,i,input,label,li," +
    "line,marker,ol,p,path,polygon,polyline,rect,section,small,span,strong,style,summary,svg,table,tbody,td,text,th,thead,title,tr," +
    "tspan,ul",
);
const ATTRIBUTES = listed(
  "aria-current,aria-describedby,aria-hidden,aria-label,aria-labelledby,autocomplete,class,cx,cy,d,data-check,data-do,data-face," +
    "data-fill,data-fold,data-for,data-head,data-least-width,data-mistake,data-open,data-panel,data-read,data-stake,data-step,for," +
    "height,href,id,inputmode,name,open,points,r,role,rx,ry,scope,start,tabindex,text-anchor,transform,type,value,viewBox,width,x," +
    "x1,x2,y,y1,y2",
);

export function lastFace(version) {
  let pause = 0;
  return {
    keep(fields, { face, card }, html) {
      clearTimeout(pause);
      pause = setTimeout(() => {
        try {
          localStorage.setItem(PLACE, JSON.stringify({ version, fields, face, card, html }));
        } catch {
          forget(); // no room, or no storage: then the next visit waits for Python
        }
      }, PAUSE_KEPT);
    },

    // The nodes of that face for these fields, or null.
    of(fields, { face, card }) {
      try {
        const text = localStorage.getItem(PLACE) ?? "";
        if (!text || text.length > LONGEST) return null;
        const kept = JSON.parse(text);
        if (kept.version !== version || kept.face !== face || (kept.card ?? null) !== (card ?? null)) return null;
        if (typeof kept.html !== "string" || !sameFields(kept.fields, fields)) return null;
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

// Only elements and attributes of a face are made; a link leads to a place on this page.
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
