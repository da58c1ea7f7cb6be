// One input for one value of the season file: its label, what it means, its problems.
import { make } from "/desk/make.js";
import { label } from "/desk/schema.js";

const spanOfDay = /^(\d{1,2})(?::(\d{2}))? ?(am|pm)?$/i;

function clock(text) {
  if (/^noon$/i.test(text)) return "12:00";
  if (/^midnight$/i.test(text)) return "24:00";
  const match = spanOfDay.exec(text);
  if (!match) return text;
  let hour = Number(match[1]);
  if (match[3]) hour = (hour % 12) + (match[3].toLowerCase() === "pm" ? 12 : 0);
  return `${String(hour).padStart(2, "0")}:${match[2] || "00"}`;
}

// "7-12, 12:30 to 8 pm" as ["07:00/12:00", "12:30/20:00"]; what is none of that stays as it is, for the reader to say so.
export function hours(text) {
  return text.split(/[,;]/).map((part) => part.trim()).filter((part) => part).map((part) => {
    const ends = part.split(/\s*(?:\/|–|-| to )\s*/).map((end) => end.trim());
    return ends.length === 2 ? ends.map(clock).join("/") : part;
  });
}

const list = (text) => text.split(/[,;\s]+/).filter((part) => part);
const spoken = (value) => (Array.isArray(value) ? value.join(", ") : value === undefined ? "" : String(value));

// Ids that a key may name.
function ids(key, tree) {
  const of = (...sections) => sections.flatMap((section) => Object.keys(typeof tree[section] === "object" ? tree[section] : {}));
  switch (key) {
    case "recipe": return of("recipes");
    case "crop": return of("crops");
    case "planter": return of("planters");
    case "sprayer": return of("sprayers");
    case "on": return of("rigs");
    case "at": return of("places", "waterPoints");
    default: return null;
  }
}

function select(options, value, attributes) {
  const all = value && !options.includes(value) ? [value, ...options] : options;
  return make("select", attributes, make("option", { value: "" }, ""),
    ...all.map((option) => make("option", { value: option, selected: option === value }, option)));
}

function control(key, part, value, tree, attributes) {
  if (part.enum) return select(part.enum, value, attributes);
  const known = part.kind === "date" ? null : ids(key, tree);
  if (known) return select(known, value, attributes);
  if (part.kind === "date") return make("input", { ...attributes, type: "date", value: spoken(value) });
  const example = part.default !== undefined ? part.default : (part.examples || [])[0];
  return make("input", { ...attributes, type: "text", value: spoken(value), placeholder: example === undefined ? null : `like ${spoken(example)}`, autocomplete: "off" });
}

function window(part, value, attributes, changed) {
  const [first, last] = spoken(value).split("/");
  const from = make("input", { ...attributes, type: "date", value: first || "", "aria-label": `${attributes["aria-label"]}, first day` });
  const to = make("input", { ...attributes, id: `${attributes.id}-last`, type: "date", value: last || "", "aria-label": `${attributes["aria-label"]}, last day` });
  const both = () => {
    if (from.value && to.value) changed(`${from.value}/${to.value}`);
    else if (!from.value && !to.value) changed(null);
  };
  from.addEventListener("change", both);
  to.addEventListener("change", both);
  return make("span", { class: "window" }, from, " to ", to);
}

// What is to stand in the file for what was typed; null where nothing is to stand there.
function meant(key, part, text) {
  if (text.trim() === "") return null;
  if (part.kind === "hours") return hours(text);
  if (key === "closed" || key === "planters" || key === "sprayers") return list(text);
  return text.trim();
}

// "changed" is called with a path and what is to stand there.
export function input(path, part, value, tree, required, changed) {
  const key = path[path.length - 1];
  const id = `value-${path.join(".")}`;
  const name = label(key);
  const attributes = { id, "data-path": path.join("."), "aria-describedby": `${id}-help ${id}-problem`, "aria-label": name };
  const done = (next) => changed(path, next);
  let element;
  if (part.kind === "window") {
    element = window(part, value, attributes, done);
  } else {
    element = control(key, part, value, tree, attributes);
    element.addEventListener("change", () => done(meant(key, part, element.value)));
  }
  return make("div", { class: "entry" },
    make("label", { for: id }, name, required ? make("span", { class: "needed" }, " needed") : null),
    element,
    make("p", { class: "problem", id: `${id}-problem`, role: "alert" }),
    make("p", { class: "help", id: `${id}-help` }, part.description || ""));
}
