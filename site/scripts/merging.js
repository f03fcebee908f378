// Two windows on one job: what each has changed since both were alike, field by field, and rows that grow as wholes.

import { ofTheDay } from "./sizes.js";

const ROW = /^(read|got|ground|known)-([0-9]+)-/;
const KEY = { read: "check", got: "stake", ground: "name", known: "name" }; // what says whether two rows tell of one thing
const NO_LENGTH = new RegExp(`^(?:title|note|mark|unit|unit_before|${ofTheDay})$`);

// What is chosen as one where both windows changed it: a stake's readings belong together.
export const wholeOf = (name) => (name.startsWith("got-") ? ROW.exec(name)?.[0] : null) ?? name;

// Return what both changes give together, and the fields in which they can't be: {fields, both}, with `both` a list of
// [name, own text, other text]. `base`: what both windows began with.
export function merged(base, own, other) {
  const fields = {};
  const both = [];
  const names = [...new Set([...Object.keys(base), ...Object.keys(own), ...Object.keys(other)])];
  const three = (name) => [base, own, other].map((one) => one[name] ?? "");
  const put = (name) => {
    const [was, mine, theirs] = three(name);
    if (mine !== theirs && mine !== was && theirs !== was) both.push([name, mine, theirs]);
    const text = mine === was ? theirs : mine;
    if (text) fields[name] = text;
  };

  // Put a row of both windows, and give back the other's where it tells of something else.
  function together(row) {
    const group = ROW.exec(row)[1];
    const inRow = names.filter((name) => name.startsWith(row));
    const [was, mine, theirs] = [base, own, other].map((one) => part(one, inRow, row));
    const stands = standing(was, mine, theirs);
    if (stands) {
      Object.assign(fields, named(row, stands));
      return null;
    }
    const oneThing = mine[KEY[group]] === theirs[KEY[group]] && !(group === "read" && empty(was));
    if (oneThing && group !== "got") {
      inRow.forEach(put);
      return null;
    }
    Object.assign(fields, named(row, mine));
    if (!oneThing) return [group, theirs];
    for (const [name, mine, theirs] of inRow.map((name) => [name, ...three(name).slice(1)])) {
      if (mine !== theirs) both.push([name, mine, theirs]);
    }
    return null;
  }

  function append(group, row) {
    const used = Object.keys(fields)
      .map((name) => ROW.exec(name))
      .filter((found) => found?.[1] === group);
    const free = Math.max(-1, ...used.map((found) => Number(found[2]))) + 1;
    Object.assign(fields, named(`${group}-${free}-`, row));
  }

  // A number that was typed under another unit than the one that stands now is taken for the other by nobody unasked.
  function askUnit() {
    const [was, mine, theirs] = three("unit_before");
    const late = fields.unit === own.unit ? other : own; // the window that may have another unit
    const typed = names.some((name) => !NO_LENGTH.test(name) && /[0-9]/.test(late[name] ?? "") && late[name] !== base[name]);
    const asked =
      (mine === was ? theirs : theirs === was ? mine : mine || theirs) || (typed && late.unit !== fields.unit && late.unit);
    if (asked) fields.unit_before = asked;
  }

  for (const name of names) if (!ROW.test(name) && name !== "unit_before") put(name);
  const rows = new Set(names.map((name) => ROW.exec(name)?.[0]).filter(Boolean));
  for (const behind of [...rows].map(together)) if (behind) append(...behind);
  askUnit();
  return { fields, both };
}

// Which of two rows holds; null where both were changed, and neither was emptied.
function standing(was, mine, theirs) {
  if (same(mine, was)) return theirs;
  if (same(theirs, was) || same(mine, theirs)) return mine;
  if (empty(mine)) return theirs;
  return empty(theirs) ? mine : null;
}

const named = (row, texts) => Object.fromEntries(Object.entries(texts).map(([rest, text]) => [row + rest, text]));

function part(fields, inRow, row) {
  return Object.fromEntries(inRow.filter((name) => fields[name]).map((name) => [name.slice(row.length), fields[name]]));
}

const empty = (row) => Object.keys(row).length === 0;
const same = (one, other) => JSON.stringify(Object.entries(one).sort()) === JSON.stringify(Object.entries(other).sort());
