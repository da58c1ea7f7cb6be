// The season in forms. A change is saved at once, and can be undone.
import { ask, tell, follow } from "/desk/server.js";
import { callSeason, make, fill, say, attempt } from "/desk/make.js";
import { use, at, label } from "/desk/schema.js";
import { input } from "/desk/inputs.js";

const sections = [
  ["season", "Season"], ["fields", "Fields"], ["crops", "Crops"], ["recipes", "Recipes"], ["planters", "Planters"], ["sprayers", "Sprayers"],
  ["rigs", "Rigs"], ["waterPoints", "Water"], ["compost", "Compost"], ["places", "Places"], ["rain", "Rain"], ["fixed", "Fixed"],
  ["goals", "Goals"], ["drying", "Drying"], ["weather", "Weather"], ["travel", "Travel"], ["costs", "Costs"],
  ["spread", "Times that vary"],
];
const whole = ["season", "goals", "drying", "weather", "travel", "costs"];
let state = null;
let section = "season";
let opened = new Set();
let unfollow = null;
let main = null;
let before = Promise.resolve();
let sums = [];

function valueAt(path) {
  return path.reduce((node, key) => (node === undefined || node === null ? undefined : Array.isArray(node) ? node[key - 1] : node[key]), state.tree);
}

// Problems beside the values they are about, and the others above.
function showProblems() {
  const places = new Map(Array.from(main.querySelectorAll("[data-path]"), (element) => [element.dataset.path, element]));
  places.forEach((element) => {
    element.removeAttribute("aria-invalid");
    const beside = document.getElementById(`${element.id}-problem`);
    if (beside) beside.textContent = "";
  });
  const rest = [];
  for (const problem of state.problems) {
    const element = places.get(problem.path);
    const beside = element && document.getElementById(`${element.id}-problem`);
    if (beside) {
      element.setAttribute("aria-invalid", "true");
      beside.textContent = `${problem.reason}; ${problem.remedy}`;
    } else {
      rest.push(problem);
    }
  }
  fill(main.querySelector("#missing"), ...(rest.length === 0 ? [] : [
    make("h3", {}, "What is still missing or wrong"),
    make("ul", { class: "problems" }, ...rest.map((problem) => make("li", {}, problem.text)))]));
  // not disabled: whoever has just undone the last change by keyboard would be nowhere then
  main.querySelector("#undo").setAttribute("aria-disabled", String(!state.canUndo));
  main.querySelector("#redo").setAttribute("aria-disabled", String(!state.canRedo));
}

function showSums() {
  const place = main.querySelector("#sums");
  const isOpen = place.querySelector("details[open]") !== null;
  fill(place, sums.length === 0 ? null : make("details", { open: isOpen }, make("summary", {}, "The season in sums"),
    make("pre", { class: "wide", tabindex: 0, role: "region", "aria-label": "The season in sums" }, sums.join("\n"))));
}

// They take longer than the forms do, which do not wait for them.
async function sumUp() {
  const of = state;
  try {
    const answer = await ask("/api/season/sums");
    if (of !== state || !main.querySelector("#sums")) return;
    sums = answer.sums;
    showSums();
  } catch (failure) {
    if (!failure.problems) throw failure;
  }
}

function conflict(answer) {
  return make("div", { class: "problems", role: "alert" },
    make("p", {}, answer.problems.join(" ")),
    make("div", { class: "both" },
      make("figure", {}, make("figcaption", {}, `${answer.changed.file} as it is now`), make("pre", { tabindex: 0 }, answer.changed.now || "It is no longer there.")),
      make("figure", {}, make("figcaption", {}, "With your change"), make("pre", { tabindex: 0 }, answer.changed.yours))),
    make("button", { type: "button", id: "see-now", onclick: (event) => attempt(event.currentTarget, load) }, "Go on with the file as it is now"));
}

// One after the other: each goes out from what the one before it has left.
function change(path, edits, redraw) {
  before = before.then(() => send(path, edits, redraw));
  return before;
}

async function send(path, edits, redraw) {
  try {
    const answer = await tell("/api/season/change", { files: state.files, edits });
    accept(answer);
    say(state.problems.length > 0 ? "Saved. Something is still missing or wrong." : "Saved.");
    if (redraw) draw(); else settle(path);
  } catch (failure) {
    refused(failure);
  }
}

function refused(failure) {
  if (!failure.answer) throw failure;
  if (failure.answer.changed) fill(main.querySelector("#missing"), conflict(failure.answer));
  else say(failure.problems.join(" "));
}

function accept(answer) {
  state = answer;
  callSeason(state.tree.season && state.tree.season.name);
  sumUp();
}

// Shows a value as it stands in the file now, which may be written otherwise than it was typed.
function settle(path) {
  showProblems();
  const element = main.querySelector(`[data-path="${path.join(".")}"]`);
  const now = valueAt(path);
  if (element && element.type === "text" && now !== undefined) element.value = Array.isArray(now) ? now.join(", ") : now;
}

const put = (path, value) => change(path, [value === null ? { do: "remove", path } : { do: "set", path, value }], false);

function form(path, schema, value, leaveOut) {
  const rows = [];
  for (const [key, part] of Object.entries(schema.properties || {})) {
    const inner = [...path, key];
    const known = at(inner);
    if ((leaveOut || []).includes(key) || key === "yearly") continue;
    if (known.type === "object" && known.properties) {
      rows.push(make("fieldset", {}, make("legend", {}, label(key)), form(inner, known, (value || {})[key])));
    } else {
      rows.push(input(inner, { ...known, description: part.description || known.description }, (value || {})[key], state.tree, (schema.required || []).includes(key), put));
    }
  }
  return make("div", { class: "form" }, ...rows);
}

function brief(entry) {
  if (typeof entry !== "object") return String(entry);
  return Object.entries(entry).filter(([, value]) => typeof value !== "object").slice(0, 4).map(([, value]) => value).join(", ");
}

// A new entry has a name and nothing else, and its form says what it needs.
function adding(name) {
  const id = make("input", { type: "text", id: "new-id", autocomplete: "off" });
  const add = async () => {
    const typed = id.value.trim();
    if (!/^[A-Za-z0-9][A-Za-z0-9_-]{0,39}$/.test(typed)) {
      say("An id is 1 to 40 letters, digits, - and _, and starts with a letter or digit.");
      return;
    }
    if (valueAt([name, typed]) !== undefined) {
      say(`There is a ${typed} already.`);
      return;
    }
    opened.add(`${name}.${typed}`);
    await change([name, typed], [{ do: "set", path: [name, typed], value: {} }], true);
  };
  return make("div", { class: "tools" }, make("label", {}, "New id ", id), make("button", { type: "button", id: "add-entry", onclick: add }, "Add"));
}

function entry(name, id, value, schema) {
  const path = [name, id];
  const key = path.join(".");
  const details = make("details", { open: opened.has(key), "data-entry": id }, make("summary", {}, make("strong", {}, id), ` ${brief(value)}`));
  const content = () => details.append(form(path, schema, value),
    make("button", { type: "button", class: "take-out", onclick: () => change(path, [{ do: "remove", path }], true) }, `Take ${id} out`));
  details.addEventListener("toggle", () => {
    if (details.open) {
      opened.add(key);
      if (!details.querySelector(".form")) {
        content();
        showProblems();
      }
    } else {
      opened.delete(key);
    }
  });
  if (details.open) content();
  return details;
}

function entries(name) {
  const schema = at([name, "x"]);
  const now = state.tree[name];
  if (typeof now === "string") {
    return [make("p", { class: "aside" }, `The fields are named by ${now}, which cannot be read.`)];
  }
  return [...Object.entries(now || {}).map(([id, value]) => entry(name, id, value, schema)), adding(name)];
}

function rains() {
  const schema = at(["rain", "1"]);
  return [...(state.tree.rain || []).map((rain, i) => {
    const path = ["rain", String(i + 1)];
    return make("fieldset", {}, make("legend", {}, `Rain ${i + 1}`), form(path, schema, rain),
      make("button", { type: "button", onclick: () => change(path, [{ do: "remove", path }], true) }, `Take rain ${i + 1} out`));
  }), make("div", { class: "tools" },
    make("label", {}, "Day ", make("input", { type: "date", id: "rain-date" })),
    make("label", {}, "Amount ", make("input", { type: "text", id: "rain-amount", placeholder: "like 0.8 in" })),
    make("button", { type: "button", id: "add-rain", onclick: () => change(["rain"], [{ do: "append", path: ["rain"],
      value: { date: document.getElementById("rain-date").value, amount: document.getElementById("rain-amount").value } }], true) }, "Add the rain"))];
}

// A box to tick for what is said by whether a key is there.
function ticked(path, words, checked, edits) {
  const box = make("input", { type: "checkbox", id: `tick-${path.join(".")}`, checked });
  box.addEventListener("change", async () => {
    await change(path, edits(box.checked), true);
    main.querySelector(`[id="${box.id}"]`).focus();
  });
  return make("div", { class: "tools" }, make("label", { class: "tick" }, box, words));
}

function spread() {
  const path = ["spread"];
  const broken = [...path, "breakdowns"];
  const now = state.tree.spread;
  const varies = ticked(path, "Times vary", now !== undefined,
    (yes) => [yes ? { do: "set", path, value: {} } : { do: "remove", path }]);
  if (now === undefined) return [varies];
  const known = at(broken);
  const none = valueAt(broken) === "none";
  return [varies, form(path, at(path), now, ["breakdowns"]), make("fieldset", {}, make("legend", {}, "Breakdowns"),
    ticked(broken, "Machines break down", !none, (yes) => [yes ? { do: "remove", path: broken } : { do: "set", path: broken, value: "none" }]),
    none ? null : form(broken, known.oneOf.find((choice) => choice.properties), valueAt(broken)))];
}

function content() {
  if (section === "rain") return rains();
  if (section === "spread") return spread();
  if (whole.includes(section)) {
    const parts = [form([section], at([section]), state.tree[section])];
    if (section === "season") {
      parts.push(make("div", { class: "form" }, ...["hours", "closed"].map((key) => input([key], at([key]), state.tree[key], state.tree, key === "hours", put))));
    }
    return parts;
  }
  return entries(section);
}

function step(path, words) {
  return (event) => event.currentTarget.getAttribute("aria-disabled") !== "true" && attempt(event.currentTarget, async () => {
    try {
      accept(await tell(path, { files: state.files }));
      draw();
      say(words);
    } catch (failure) {
      refused(failure);
    }
  });
}

function draw() {
  fill(main, make("h2", {}, "Season"),
    make("div", { class: "tools" },
      make("div", { class: "chips", role: "group", "aria-label": "Parts of the season" }, ...sections.map(([name, title]) => make("button",
        { type: "button", "aria-pressed": String(name === section), "data-section": name, onclick: () => { section = name; draw(); main.querySelector(`[data-section=${name}]`).focus(); } }, title))),
      make("button", { type: "button", id: "undo", onclick: step("/api/season/undo", "Undone.") }, "Undo"),
      make("button", { type: "button", id: "redo", onclick: step("/api/season/redo", "Redone.") }, "Redo")),
    make("div", { id: "missing", role: "status" }),
    make("div", { id: "section" }, make("h3", {}, sections.find(([name]) => name === section)[1]),
      make("p", { class: "lead" }, (at([section]) || {}).description || ""), ...content()),
    make("div", { id: "sums" }));
  main.dataset.section = section;
  showProblems();
  showSums();
}

async function load() {
  accept(await ask("/api/season"));
  draw();
}

export const season = {
  id: "season",
  title: "Season",
  async show(place) {
    main = place;
    const [schema, now] = await Promise.all([ask("/api/season/schema"), ask("/api/season")]);
    use(schema);
    accept(now);
    draw();
    unfollow = follow("season", (news) => {
      if (JSON.stringify(news.files) !== JSON.stringify(state.files)) say("The season was changed elsewhere. Your next change will say so.");
    });
  },
  leave() {
    if (unfollow) unfollow();
  },
};
