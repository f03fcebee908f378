// Two windows on one job: what each has changed since both were alike, field by field.

// Return what both changes give together, and the fields in which they can't be: {fields, both}, with `both` a list of
// [name, own text, other text]. `base`: what both windows began with.
export function merged(base, own, other) {
  const fields = {};
  const both = [];
  for (const name of new Set([...Object.keys(base), ...Object.keys(own), ...Object.keys(other)])) {
    const was = base[name] ?? "";
    const mine = own[name] ?? "";
    const theirs = other[name] ?? "";
    if (mine !== theirs && mine !== was && theirs !== was) both.push([name, mine, theirs]);
    const text = mine === was ? theirs : mine;
    if (text) fields[name] = text;
  }
  return { fields, both };
}
