// A season begun: a few steps, what is still missing at each, and the season in sums as soon as it can be read.
import { ask, tell } from "/desk/server.js";
import { make, fill, attempt, problemList, say } from "/desk/make.js";
import { blankMap, position } from "/desk/beginMap.js";
import { fieldsStep } from "/desk/beginFields.js";

const steps = [["units", "Units", []], ["season", "Season", ["season"]], ["yard", "Yard", ["places"]], ["fields", "Fields", []],
  ["crops", "Crops and recipe", ["crops", "recipes"]], ["planters", "Planters", ["planters"]], ["rigs", "Rigs", ["rigs"]],
  ["water", "Water and compost", ["waterPoints", "compost"]], ["look", "Look it over", []]];
const NAMING = "id";
let main = null;
let known = null; // questions by units
let state = null;
let shown = 0;
let answer = null;
let turn = 0;
let waiting = null;

const sections = () => known.units[state.units];
const section = (key) => sections().find((one) => one.key === key);
const isNamed = (key) => section(key).naming !== "";

// What a thing is called in the file: as was answered last, or as it will be where nobody names it.
function idOf(key, i) {
  const { usualId } = section(key);
  if (key === "crops") {
    const { id } = state.entries.crops[i];
    return (answer && answer.crops[id]) || id;
  }
  return (answer && answer.ids[key] && answer.ids[key][i]) || (i === 0 ? usualId : `${usualId.replace(/1$/, "")}${i + 1}`);
}

const titleOf = (key, i) => (key === "crops" ? state.entries.crops[i].id : idOf(key, i));

// Where in the file an answer comes to stand.
function pathOf(key, i, name) {
  const id = idOf(key, i);
  return name === NAMING ? `${key}.${id}` : section(key).questions.find((one) => one.key === name).path.replace("?", id);
}

function fresh(units) {
  const entries = Object.fromEntries(known.units[units].map((one) => [one.key, one.key === "crops" ? [] : [{ id: "", typed: {} }]]));
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
    const [key, name, i] = help.dataset.usual.split(".");
    if (name === NAMING) {
      help.textContent = called(key, Number(i));
      help.parentElement.querySelector("input").placeholder = titleOf(key, Number(i));
      return;
    }
    const question = section(key).questions.find((one) => one.key === name);
    help.textContent = usual(question);
    const input = help.parentElement.querySelector("input[data-path]");
    if (input && question.usual) input.placeholder = question.usual;
  });
}

// Names change what things are called in the file.
function tellNames() {
  main.querySelectorAll("[data-of]").forEach(({ dataset }) => { dataset.path = pathOf(dataset.of, Number(dataset.i), dataset.name); });
  main.querySelectorAll("fieldset[data-entry]").forEach((each) => {
    const title = titleOf(each.dataset.section, Number(each.dataset.i));
    each.dataset.entry = title;
    each.querySelector("legend").textContent = title;
  });
  main.querySelectorAll("button[data-out]").forEach((button) => { button.textContent = outOf(button.dataset.out); });
}

// A problem of a whole thing is one of its name; what is wrong with a place is wrong with a part of it.
function isAt({ path }, { dataset }) {
  if (dataset.name === NAMING) return path === dataset.path;
  return (path === dataset.path && dataset.name !== "at") || path.startsWith(`${dataset.path}.`);
}

function tellState() {
  const { missing, problems, sums } = answer;
  tellNames();
  const places = Array.from(main.querySelectorAll("[data-path]"));
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

function days(entry, question, id, place) {
  const [first, last] = (entry.typed[question.key] || "").split(" to ");
  const [from, to] = [first, last].map((day, i) => make("input", { type: "date", id: `${id}-${i}`, "aria-label": `${entry.id}, ${i === 0 ? "first" : "last"} day` , value: day || "" }));
  const both = () => {
    entry.typed[question.key] = from.value || to.value ? `${from.value} to ${to.value}` : "";
    changed();
  };
  from.addEventListener("change", both);
  to.addEventListener("change", both);
  return make("span", { class: "window", ...place }, from, make("span", {}, "to"), to);
}

const usual = ({ usual: value, note }) => (value ? note.replace(/^default/, `Default ${value}`) : note);

const hereIs = (key, i, name) => ({ "data-of": key, "data-i": i, "data-name": name, "data-path": pathOf(key, i, name) });

function called(key, i) {
  const id = idOf(key, i);
  const name = state.entries[key][i].id.trim();
  if (name === "") return `Default ${id}`;
  return name === id ? "" : `Plans and sheets call it ${id}.`;
}

function naming(one, i) {
  const id = `answer-${one.key}.${i}.${NAMING}`;
  const entry = state.entries[one.key][i];
  const element = make("input", { id, ...hereIs(one.key, i, NAMING), type: "text", autocomplete: "off", placeholder: idOf(one.key, i), "aria-describedby": `${id}-help` });
  element.value = entry.id;
  element.addEventListener("input", () => { entry.id = element.value; changed(); });
  return make("div", { class: "entry" }, make("label", { for: id }, one.naming), element,
    make("p", { class: "problem", role: "alert" }), make("p", { class: "help", id: `${id}-help`, "data-usual": `${one.key}.${NAMING}.${i}` }, called(one.key, i)));
}

function input(key, i, question) {
  const entry = state.entries[key][i];
  const place = hereIs(key, i, question.key);
  const id = `answer-${key}.${key === "crops" ? entry.id : i}.${question.key}`;
  let element;
  if (question.form === "window") {
    element = days(entry, question, id, place);
  } else if (question.form === "choice") {
    element = make("select", { id, ...place }, ...["", "field", "water"].map((value) => make("option", { value, selected: (entry.typed[question.key] || "") === value }, value || `${question.usual} (default)`)));
    element.addEventListener("change", () => { entry.typed[question.key] = element.value; changed(); });
  } else {
    element = make("input", { id, ...place, type: question.form === "date" ? "date" : "text", autocomplete: "off", placeholder: question.usual || null });
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

function entry(one, i) {
  const form = make("div", { class: "form" }, one.naming ? naming(one, i) : null, ...one.questions.map((question) => input(one.key, i, question)));
  if (one.key !== "crops" && !one.naming) return form;
  const title = titleOf(one.key, i);
  return make("fieldset", { "data-entry": title, "data-section": one.key, "data-i": i }, make("legend", {}, title), form);
}

const outOf = (key) => `Take ${titleOf(key, state.entries[key].length - 1)} out`;

function more(one) {
  const all = state.entries[one.key];
  return make("div", { class: "tools" },
    make("button", { type: "button", "data-more": one.key, onclick: () => { all.push({ id: "", typed: {} }); changed(); draw(); } }, `Another ${one.noun}`),
    all.length > 1 ? make("button", { type: "button", "data-out": one.key, onclick: () => { all.pop(); changed(); draw(); } }, outOf(one.key)) : null);
}

function mapFor(key) {
  const each = state.entries[key][0];
  const yard = position(state.entries.places[0].typed.at);
  const centre = position(each.typed.at) || yard;
  if (!centre) return make("p", { class: "help" }, "Type it roughly, as any map gives it, and a blank map appears to click on.");
  const marks = [...(yard ? [{ name: "yard", ...yard }] : []),
    ...(key === "waterPoints" && position(each.typed.at) ? [{ name: idOf(key, 0), ...position(each.typed.at) }] : [])];
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
  return keys.flatMap((key) => [make("p", { class: "lead" }, section(key).about), ...state.entries[key].map((each, i) => entry(section(key), i)), isNamed(key) ? more(section(key)) : null,
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
