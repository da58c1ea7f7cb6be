// What the schema of the season file says of a place in it.

let whole = null;

export function use(schema) {
  whole = schema;
}

// A part with what it refers to joined in; "kind" is the name of the last definition it refers to.
export function resolved(part) {
  let node = part;
  let kind = part.kind;
  while (node.$ref) {
    const name = node.$ref.replace("#/$defs/", "");
    const { $ref, ...own } = node;
    node = { ...whole.$defs[name], ...own };
    kind = name;
  }
  return { ...node, kind };
}

// The part at a path, or null where the schema knows none.
export function at(path) {
  let node = resolved(whole);
  for (const key of path) {
    const choices = [node, ...(node.oneOf || []).map(resolved)];
    const next = choices.map((choice) => (choice.properties && choice.properties[key])
      || (typeof choice.additionalProperties === "object" ? choice.additionalProperties : null) || choice.items).find((found) => found);
    if (!next) return null;
    node = resolved(next);
  }
  return node;
}

// A key as a label: "fieldEfficiency" is "Field efficiency".
export function label(key) {
  const spaced = key.replace(/([a-z])([A-Z])/g, (both, end, start) => `${end} ${start.toLowerCase()}`);
  return spaced.charAt(0).toUpperCase() + spaced.slice(1);
}
