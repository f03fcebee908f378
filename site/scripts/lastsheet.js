// The last face of a job that was looked at, kept so that it's on screen before Python is up: never taken as it stands, but
// built anew from what a face is made of, and shown only for the very numbers that are in the fields. Of a panel there is none.

import { sameFields } from "./form.js";

const PLACE = "bowstring.2.last";
const BEFORE = "bowstring.1.sheet"; // the whole sheet, as it was kept before the faces: it only takes room
const LONGEST = 2_000_000;
const PAUSE_KEPT = 1000; // milliseconds without a newer one before it's kept
const HTML = "http://www.w3.org/1999/xhtml";
const SVG = "http://www.w3.org/2000/svg";
const listed = (names) => new Set(names.split(","));
const ELEMENTS = listed(
  "article,b,button,circle,dd,defs,desc,details,div,dl,dt,em,figure,h2,h3,i,input,label,li,p,path,progress,rect," +
    "section,small,span,strong,style,summary,svg,table,tbody,td,text,th,thead,title,tr,ul",
);
const ATTRIBUTES = listed(
  "aria-hidden,aria-label,aria-labelledby,autocapitalize,autocomplete,class,colspan,cx,cy,d,data-card,data-check," +
    "data-at,data-do,data-face,data-field,data-fill,data-fold,data-for,data-keys,data-kept,data-kind,data-later,data-least-width,data-nth,data-open," +
    "data-stake,data-step,data-steps,disabled,fill,for,height,id,max,maxlength,name,r,role,scope,shape-rendering,spellcheck,tabindex," +
    "text-anchor,type,value,viewBox,width,x,y",
);

export function lastFace(version) {
  let pause = 0;
  forget(BEFORE);
  return {
    keep(fields, { face, card, panel }, html) {
      if (panel) return;
      clearTimeout(pause);
      pause = setTimeout(() => {
        try {
          localStorage.setItem(PLACE, JSON.stringify({ version, fields, face, card, html }));
        } catch {
          forget(PLACE); // no room, or no storage: then the next visit waits for Python
        }
      }, PAUSE_KEPT);
    },

    // The nodes of that face for these fields, or null.
    of(fields, { face, card, panel }) {
      if (panel) return null;
      try {
        const text = localStorage.getItem(PLACE) ?? "";
        if (!text || text.length > LONGEST) return null;
        const kept = JSON.parse(text);
        if (kept.version !== version || kept.face !== face || (card && kept.card !== card)) return null;
        if (typeof kept.html !== "string" || !sameFields(kept.fields, fields)) return null;
        return rebuilt(new DOMParser().parseFromString(kept.html, "text/html").body);
      } catch {
        return null;
      }
    },
  };
}

function forget(place) {
  try {
    localStorage.removeItem(place);
  } catch {} // there is none
}

// Only elements and attributes of a face are made: no link is among them.
function rebuilt(node) {
  const made = document.createDocumentFragment();
  for (const child of node.childNodes) {
    if (child.nodeType === Node.TEXT_NODE) made.append(child.data);
    if (child.nodeType !== Node.ELEMENT_NODE) continue;
    const name = child.localName;
    if (!ELEMENTS.has(name) || ![HTML, SVG].includes(child.namespaceURI)) continue;
    const copy = document.createElementNS(child.namespaceURI, name);
    for (const { name: attribute, value } of child.attributes) {
      if (ATTRIBUTES.has(attribute)) copy.setAttribute(attribute, value);
    }
    copy.append(rebuilt(child));
    made.append(copy);
  }
  return made;
}
