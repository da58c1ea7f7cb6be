// A season begun: a few steps, what is still missing at each, and the season in sums as soon as it can be read.
import { ask, tell } from "/desk/server.js";
import { make, fill, attempt, problemList, say } from "/desk/make.js";
import { blankMap, position } from "/desk/beginMap.js";
import { fieldsStep } from "/desk/beginFields.js";

const steps = [["units", "Units", []], ["season", "Season", ["season"]], ["yard", "Yard", ["places"]], ["fields", "Fields", []],
  ["crops", "Crops and recipe", ["crops", "recipes"]], ["planters", "Planters", ["planters"]], ["rigs", "Rigs", ["rigs"]],
  ["water", "Water and compost", ["waterPoints", "compost"]], ["look", "Look it over", []]];
let main = null;
let known = null; // questions by units
let state = null;
let shown = 0;
let answer = null;
let turn = 0;
let waiting = null;

const sections = () => known.units[state.units];
const section = (key) => sections().find((one) => one.key === key);
const isMany = (key) => ["planters", "rigs", "waterPoints", "compost"].includes(key);

function fresh(units) {
  const entries = Object.fromEntries(known.units[units].map((one) => [one.key, one.key === "crops" ? [] : [{ id: one.usualId, typed: {} }]]));
  return { units, entries, fields: [], map: null };
}

// One crop for each that a field names; what was typed of it stays.
function crops() {
  const same = (one, other) => one.toLowerCase() === other.toLowerCase();
  const named = state.fields.map((field) => field.crop.trim()).filter((crop, i, all) => crop && all.findIndex((each) => same(each, crop)) === i);
  const all = named.length > 0 ? named : [state.units === "us" ? "corn" : "maize"];
  state.entries.crops = all.map((id) => state.entries.crops.find((entry) => same(entry.id, id)) || { id, typed: {} });
}

function changed() {
  clearTimeout(waiting);
  waiting = setTimeout(look, 250);
}

async function look() {
  clearTimeout(waiting);
  crops();
  const mine = ++turn;
  const next = await tell("/api/begin/look", state);
  if (mine !== turn || !main) return;
  answer = next;
  known.units[state.units] = answer.questions;
  tellState();
}

// The step at which a problem can be mended.
function stepOf({ field, file, path }) {
  const key = field !== "" || file !== "season.yaml" ? "fields" : path.split(/[.[]/)[0];
  return steps.find(([id, , keys]) => id === key || keys.includes(key)) || steps.find(([id]) => id === "season");
}

const atItsStep = (problem) => `${[stepOf(problem)[1], problem.field, problem.path].filter((part) => part !== "").join(": ")}: ${problem.reason}; ${problem.remedy}`;

function tellUnusable(unusable) {
  const steps = new Map();
  unusable.forEach((problem) => steps.set(stepOf(problem), (steps.get(stepOf(problem)) || 0) + 1));
  main.querySelectorAll("button[data-step] .wrong").forEach((place) => { place.textContent = ""; });
  steps.forEach((count, [id]) => { main.querySelector(`button[data-step=${id}] .wrong`).textContent = ` (${count} wrong)`; });
  const where = Array.from(steps, ([[, title], count]) => `${count} at ${title}`).join(", ");
  return unusable.length === 0 ? null : make("p", { id: "begin-unusable", class: "readout telling" },
    `${unusable.length === 1 ? "1 answer cannot be used" : `${unusable.length} answers cannot be used`}: ${where}.`);
}

// What is usual changes with the answers: dates follow those of the season.
function tellUsual() {
  main.querySelectorAll("[data-usual]").forEach((help) => {
    const [key, name] = help.dataset.usual.split(".");
    const question = section(key).questions.find((one) => one.key === name);
    help.textContent = usual(question);
    const input = help.parentElement.querySelector("input[data-path]");
    if (input && question.usual) input.placeholder = question.usual;
  });
}

function tellState() {
  const { missing, problems, sums } = answer;
  const places = Array.from(main.querySelectorAll("[data-path]"));
  const path = (element) => (element.dataset.crop ? `crops.${answer.crops[element.dataset.crop] || element.dataset.crop}.window` : element.dataset.path);
  const isAt = (problem, element) => problem.path === path(element) || problem.path.startsWith(`${path(element)}.`);
  const unusable = problems.filter((problem) => problem.unusable);
  const rest = (missing.length > 0 ? unusable : problems).filter((problem) => !places.some((element) => isAt(problem, element)));
  tellUsual();
  places.forEach((element) => {
    const its = element.value === "" ? [] : unusable.filter((problem) => isAt(problem, element));
    element.parentElement.querySelector(".problem").textContent = its.map((problem) => `${problem.reason}; ${problem.remedy}`).join(" ");
    if (its.length > 0) element.setAttribute("aria-invalid", "true"); else element.removeAttribute("aria-invalid");
  });
  fill(main.querySelector("#begin-missing"),
    missing.length > 0 ? make("p", { class: "readout telling" }, `Still missing: ${missing.join("; ")}.`) : null,
    missing.length === 0 && problems.length === 0 ? make("p", { class: "aside" }, "Nothing is missing.") : null,
    tellUnusable(unusable),
    problemList(rest.map(atItsStep)));
  fill(main.querySelector("#begin-sums"), sums ? make("details", {}, make("summary", {}, "The season in sums"),
    make("pre", { class: "wide", tabindex: 0, role: "region", "aria-label": "The season in sums" }, sums.join("\n"))) : null);
  const text = main.querySelector("#begin-text");
  if (text) text.textContent = answer.text;
  main.dataset.problems = String(problems.length);
}

function days(entry, question, id) {
  const [first, last] = (entry.typed[question.key] || "").split(" to ");
  const [from, to] = [first, last].map((day, i) => make("input", { type: "date", id: `${id}-${i}`, "aria-label": `${entry.id}, ${i === 0 ? "first" : "last"} day` , value: day || "" }));
  const both = () => {
    entry.typed[question.key] = from.value || to.value ? `${from.value} to ${to.value}` : "";
    changed();
  };
  from.addEventListener("change", both);
  to.addEventListener("change", both);
  return make("span", { class: "window", "data-path": question.path.replace("?", entry.id), "data-crop": entry.id }, from, make("span", {}, "to"), to);
}

const usual = ({ usual: value, note }) => (value ? note.replace(/^default/, `Default ${value}`) : note);

function input(key, entry, question) {
  const path = question.path.replace("?", entry.id);
  const id = `answer-${path}${question.form === "position" ? ".at" : ""}`;
  let element;
  if (question.form === "window") {
    element = days(entry, question, id);
  } else if (question.form === "choice") {
    element = make("select", { id, "data-path": path }, ...["", "field", "water"].map((value) => make("option", { value, selected: (entry.typed[question.key] || "") === value }, value || `${question.usual} (default)`)));
    element.addEventListener("change", () => { entry.typed[question.key] = element.value; changed(); });
  } else {
    element = make("input", { id, "data-path": path, type: question.form === "date" ? "date" : "text", autocomplete: "off", placeholder: question.usual || null });
    element.value = entry.typed[question.key] || "";
    element.addEventListener("input", () => {
      entry.typed[question.key] = element.value;
      changed();
      if (question.form === "position") fill(main.querySelector(`#around-${key}`), mapFor(key));
    });
  }
  element.setAttribute("aria-describedby", `${id}-help`);
  return make("div", { class: "entry" }, make("label", { for: question.form === "window" ? `${id}-0` : id }, question.words), element,
    make("p", { class: "problem", role: "alert" }), make("p", { class: "help", id: `${id}-help`, "data-usual": `${key}.${question.key}` }, usual(question)));
}

function entry(one, each) {
  const form = make("div", { class: "form" }, ...one.questions.map((question) => input(one.key, each, question)));
  if (one.key === "crops" || isMany(one.key)) return make("fieldset", { "data-entry": each.id }, make("legend", {}, each.id), form);
  return form;
}

function more(one) {
  const all = state.entries[one.key];
  const base = one.usualId.replace(/1$/, "");
  const next = () => { let i = 2; while (all.some((each) => each.id === `${base}${i}`)) i += 1; return `${base}${i}`; };
  return make("div", { class: "tools" },
    make("button", { type: "button", "data-more": one.key, onclick: () => { all.push({ id: next(), typed: {} }); changed(); draw(); } }, `Another ${one.noun}`),
    all.length > 1 ? make("button", { type: "button", onclick: () => { all.pop(); changed(); draw(); } }, `Take ${all[all.length - 1].id} out`) : null);
}

function mapFor(key) {
  const each = state.entries[key][0];
  const yard = position(state.entries.places[0].typed.at);
  const centre = position(each.typed.at) || yard;
  if (!centre) return make("p", { class: "help" }, "Type it roughly, as any map gives it, and a blank map appears to click on.");
  const marks = [...(yard ? [{ name: "yard", ...yard }] : []),
    ...(key === "waterPoints" && position(each.typed.at) ? [{ name: each.id, ...position(each.typed.at) }] : [])];
  return blankMap({ id: `map-${key}`, centre, marks, units: state.units, picked: ({ lat, lon }) => { each.typed.at = `${lat}, ${lon}`; changed(); draw(); } });
}

function units() {
  const choose = (system) => {
    if (state.units !== system) {
      const { season, places } = state.entries;
      const next = fresh(system);
      state = { ...next, entries: { ...next.entries, season, places }, fields: state.fields, map: state.map };
    }
    changed();
    go(1);
  };
  return [make("p", { class: "lead" }, "There is no season here yet. A few plain questions make one; whatever you leave empty gets a default, and the file says that it is one."),
    make("div", { class: "tools" },
      make("button", { type: "button", id: "units-us", class: "chief", onclick: () => choose("us") }, "Acres, gallons, pounds"),
      make("button", { type: "button", id: "units-metric", class: "chief", onclick: () => choose("metric") }, "Hectares, litres, kilograms"))];
}

function lookOver() {
  const write = make("button", { type: "button", id: "begin-write", class: "chief", onclick: () => attempt(write, async () => {
    crops();
    await tell("/api/begin", state);
    say("Written. These are the season's forms; the next step is Plan.");
    document.dispatchEvent(new Event("begun"));
  }) }, "Write the season");
  return [make("p", { class: "lead" }, "This is the file. It can be changed in forms afterwards, or with any editor."),
    make("pre", { class: "wide", id: "begin-text", tabindex: 0, role: "region", "aria-label": "The season file" }, answer ? answer.text : ""), write];
}

function content() {
  const [id, , keys] = steps[shown];
  if (id === "units") return units();
  if (id === "fields") return fieldsStep({ state, changed, redraw: draw });
  if (id === "look") return lookOver();
  if (id === "crops") crops(); // fields may have been typed this very moment
  return keys.flatMap((key) => [make("p", { class: "lead" }, section(key).about), ...state.entries[key].map((each) => entry(section(key), each)), isMany(key) ? more(section(key)) : null,
    key === "places" || key === "waterPoints" ? make("div", { id: `around-${key}` }, mapFor(key)) : null]);
}

function go(to) {
  say("");
  shown = to;
  say("");
  draw();
  main.querySelector("h3").focus();
}

function draw() {
  const [id, title] = steps[shown];
  fill(main, make("h2", {}, "Begin a season"),
    make("div", { class: "chips", role: "group", "aria-label": "Steps" }, ...steps.map(([key, name], i) => make("button",
      { type: "button", "data-step": key, "aria-pressed": String(i === shown), onclick: () => go(i) }, `${i + 1} ${name}`, make("span", { class: "wrong" })))),
    make("h3", { tabindex: -1 }, title), ...content(),
    make("div", { class: "tools" },
      shown > 0 ? make("button", { type: "button", id: "step-back", onclick: () => go(shown - 1) }, "Back") : null,
      shown > 0 && shown < steps.length - 1 ? make("button", { type: "button", id: "step-next", onclick: () => go(shown + 1) }, "Next") : null),
    make("div", { id: "begin-missing", role: "status" }), make("div", { id: "begin-sums" }));
  main.dataset.step = id;
  if (answer) tellState();
}

export const begin = {
  id: "begin",
  title: "Begin",
  async show(place) {
    main = place;
    known = await ask("/api/begin");
    if (!state) state = fresh("us");
    draw();
    await look();
  },
  leave() {
    clearTimeout(waiting);
    main = null;
  },
};
