// A board of machines and days. A field is dragged, or picked up with Enter and moved with the arrow keys; the answer comes at once.
import { ask, tell } from "/desk/server.js";
import { make, fill, say, attempt, problemList } from "/desk/make.js";

let main = null;
let base = null; // the plan that is followed
let shown = null; // what is tried, or the same
let placings = [];
let wanted = []; // placings with those that are not answered yet
let held = null; // the field that is picked up
let asked = 0;
let gone = null; // tells listeners that another part is shown

const fieldOf = (id) => shown.fields.find((field) => field.id === id);

function chip(field) {
  const marks = [field.late ? "late" : null, field.without ? "without extract" : null, field.fixedOn || field.fixedTo ? "fixed" : null].filter((mark) => mark);
  const moved = placings.some((placing) => placing.field === field.id);
  return make("button", { type: "button", class: `chip${field.late ? " is-late" : ""}${moved ? " is-moved" : ""}`, "data-field": field.id, "aria-pressed": String(held === field.id),
    title: `${field.label}, ${field.area}, window ${field.first} to ${field.last}` },
    make("strong", {}, field.label), ` ${field.area}`, ...marks.map((mark) => make("span", { class: "mark-word" }, ` ${mark}`)));
}

function grid() {
  const days = shown.days;
  const used = new Map();
  shown.fields.filter((field) => field.day).forEach((field) => {
    const key = `${field.machine} ${field.day}`;
    used.set(key, [...(used.get(key) || []), field]);
  });
  const last = shown.fields.map((field) => field.day || "").sort().pop() || days[0].date;
  const until = Math.min(days.length, days.findIndex((day) => day.date === last) + 8);
  const some = days.slice(0, Math.max(1, until));
  const none = shown.fields.filter((field) => !field.day);
  return make("div", { class: "wide", role: "region", "aria-label": "Board of machines and days", tabindex: 0 },
    make("table", { class: "board" },
      make("thead", {}, make("tr", {}, make("th", { scope: "col" }, "Machine"), ...some.map((day) => make("th", { scope: "col" }, day.name, day.closed ? make("span", { class: "mark-word" }, " closed") : null)))),
      make("tbody", {}, ...shown.machines.map((machine) => make("tr", {}, make("th", { scope: "row" }, machine.id),
        ...some.map((day) => make("td", { "data-machine": machine.id, "data-day": day.date },
          ...(used.get(`${machine.id} ${day.date}`) || []).map(chip))))))),
    none.length > 0 ? make("p", { class: "chips" }, make("span", {}, "Not started"), ...none.map(chip)) : null);
}

function answer() {
  if (!shown.then) return null;
  const names = [...new Set([...shown.now.totals, ...shown.then.totals].map((line) => line.name))];
  const none = { figure: "none", amount: "none" };
  const total = (plan, name) => plan.totals.find((line) => line.name === name) || none;
  const figure = (plan, name) => total(plan, name).figure;
  const isSame = (name) => total(shown.now, name).amount === total(shown.then, name).amount; // whatever was proven of it
  return make("div", { id: "answer" },
    make("h3", {}, "What it would change"),
    problemList(shown.broken),
    make("div", { class: "wide", tabindex: 0, role: "region", "aria-label": "Totals" }, make("table", {},
      make("thead", {}, make("tr", {}, make("th", { scope: "col" }, "Total"), make("th", { scope: "col" }, "Plan that is followed"), make("th", { scope: "col" }, "With this"))),
      make("tbody", {}, ...names.map((name) => make("tr", { class: isSame(name) ? "" : "chosen" },
        make("th", { scope: "row" }, name), make("td", { class: "words" }, figure(shown.now, name)), make("td", { class: "words" }, figure(shown.then, name))))))),
    shown.moved.length > 0 ? make("details", {}, make("summary", {}, `${shown.moved.length} fields would start on another day or with another machine`),
      make("ul", {}, ...shown.moved.map((one) => make("li", {}, `${one.field}: ${one.from}, then ${one.to}`)))) : null,
    make("div", { class: "tools" },
      make("button", { type: "button", id: "keep", class: "chief", onclick: keep }, "Keep it: fix what was moved"),
      make("button", { type: "button", id: "spring-back", onclick: back }, "Put it back")));
}

function draw(focus) {
  const seen = main.querySelector(".wide");
  const [left, top] = seen ? [seen.scrollLeft, seen.scrollTop] : [0, 0];
  fill(main, make("h2", {}, "Try"),
    make("p", { class: "lead" }, "Drag a field to another day or machine, or onto the field that it is to come before; or choose it and use the arrow keys: Enter picks it up and puts it down, Escape lets it go. Nothing is changed until you keep it."),
    grid(), byForm(), make("p", { id: "took", class: "aside" }), answer());
  main.querySelector(".wide").scrollTo(left, top);
  if (focus) {
    const element = main.querySelector(`[data-field="${CSS.escape(focus)}"]`);
    if (element) element.focus();
  }
  main.dataset.tried = String(placings.length);
}

async function put(placing) {
  const turn = ++asked;
  const next = [...wanted.filter((each) => each.field !== placing.field), placing];
  wanted = next;
  const began = performance.now();
  try {
    const tried = await tell("/api/try", { placings: next });
    if (turn !== asked) return;
    placings = next;
    shown = { ...tried };
    held = null;
    draw(placing.field);
    const field = fieldOf(placing.field);
    main.dataset.tookMs = String(performance.now() - began);
    say(field.day ? `${field.id} would start on ${field.starts} with ${field.machine}.` : `${field.id} would not start.`);
  } catch (failure) {
    if (!failure.problems) throw failure;
    if (turn !== asked) return;
    wanted = placings;
    held = null;
    draw(placing.field);
    say(failure.problems.join(" "));
  }
}

function back() {
  asked++; // what is not answered yet springs back too
  placings = [];
  wanted = [];
  shown = base;
  draw();
  say("All is as it was.");
}

async function keep(event) {
  const kept = placings.map((placing) => ({ do: "set", path: ["fixed", placing.field],
    value: Object.fromEntries([[fieldOf(placing.field).work === "spray" ? "sprayer" : "planter", placing.machine], ["on", placing.on || fieldOf(placing.field).day]].filter(([, value]) => value)) }));
  await attempt(event.currentTarget, async () => {
    const { files } = await ask("/api/season");
    await tell("/api/season/change", { files, edits: kept });
    placings = [];
    wanted = [];
    fill(main, make("h2", {}, "Try"), make("p", { id: "kept" }, "Fixed in the season file. Replan, or make a new plan, and all else is arranged around it."),
      make("p", {}, make("a", { href: "#plan" }, "To the plan")));
    say("Fixed.");
  });
}

function byForm() {
  const field = make("select", { id: "try-field" }, ...[...shown.fields].sort((a, b) => (a.id < b.id ? -1 : 1)).map((each) => make("option", { value: each.id }, each.label)));
  const machine = make("select", { id: "try-machine" }, ...shown.machines.map((each) => make("option", { value: each.id }, each.id)));
  const day = make("input", { type: "date", id: "try-day", min: shown.days[0].date, max: shown.days[shown.days.length - 1].date });
  const follow = () => {
    const its = fieldOf(field.value);
    if (its && its.machine) machine.value = its.machine;
    if (its && its.day) day.value = its.day;
  };
  field.addEventListener("change", follow);
  follow();
  return make("div", { class: "tools" }, make("label", {}, "Field ", field), make("label", {}, "by ", machine), make("label", {}, "on ", day),
    make("button", { type: "button", id: "try-it", onclick: () => put({ field: field.value, machine: machine.value, on: day.value }) }, "Try it"));
}

// How many fields the machine does before another, but for the one that is moved.
function placeBefore(other, moved, machine) {
  return shown.machines.find((each) => each.id === machine).list.filter((id) => id !== moved).indexOf(other);
}

// By hand: a pointer takes a field along, and lets it go over a day, or over a field that it is to come before.
function pointers(signal) {
  let from = null;
  main.addEventListener("pointerdown", (event) => {
    const button = event.target.closest(".chip");
    if (!button || event.button !== 0) return;
    from = { id: button.dataset.field, x: event.clientX, y: event.clientY, dragging: false, button };
  });
  window.addEventListener("pointermove", (event) => {
    if (!from) return;
    if (!from.dragging && Math.hypot(event.clientX - from.x, event.clientY - from.y) > 6) {
      from.dragging = true;
      from.button.classList.add("dragged");
    }
    if (!from.dragging) return;
    from.button.style.transform = `translate(${event.clientX - from.x}px, ${event.clientY - from.y}px)`;
    main.querySelectorAll(".aimed").forEach((cell) => cell.classList.remove("aimed"));
    const before = chipUnder(event, from.id);
    const cell = under(event);
    if (before) before.classList.add("aimed");
    else if (cell) cell.classList.add("aimed");
  }, { signal });
  const chipUnder = (event, id) => document.elementsFromPoint(event.clientX, event.clientY)
    .map((element) => element.closest("td .chip")).find((chipOf) => chipOf && chipOf.dataset.field !== id);
  const under = (event) => document.elementsFromPoint(event.clientX, event.clientY).map((element) => element.closest("td[data-day]")).find((cell) => cell);
  window.addEventListener("pointerup", (event) => {
    if (!from) return;
    const { id, dragging } = from;
    const cell = dragging ? under(event) : null;
    const before = dragging ? chipUnder(event, id) : null;
    from = null;
    if (!dragging) return;
    suppress = true;
    setTimeout(() => { suppress = false; });
    if (before) put({ field: id, machine: cell.dataset.machine, place: placeBefore(before.dataset.field, id, cell.dataset.machine) });
    else if (cell) put({ field: id, machine: cell.dataset.machine, on: cell.dataset.day });
    else draw(id);
  }, { signal });
  window.addEventListener("pointercancel", () => { if (from) { from = null; draw(); } }, { signal });
}

let suppress = false;

function keys() {
  main.addEventListener("click", (event) => {
    const button = event.target.closest(".chip");
    if (!button || suppress) return;
    const id = button.dataset.field;
    held = held === id ? null : id;
    const its = fieldOf(id);
    if (held) target = { machine: its.machine || shown.machines[0].id, day: its.day || shown.days[0].date };
    main.querySelectorAll(".chip").forEach((chipOf) => chipOf.setAttribute("aria-pressed", String(chipOf.dataset.field === held)));
    point();
    say(held ? `${its.label} is picked up. Choose a day with the arrow keys, then press Enter.` : `${its.label} is let go.`);
  });
  main.addEventListener("keydown", (event) => {
    if (!held || !event.target.closest(".chip")) return;
    const days = shown.days.map((day) => day.date);
    const machines = shown.machines.map((machine) => machine.id);
    const step = { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowDown: [0, 1], ArrowUp: [0, -1] }[event.key];
    if (step) {
      event.preventDefault();
      const clamp = (n, most) => Math.max(0, Math.min(most - 1, n));
      target = { day: days[clamp(days.indexOf(target.day) + step[0], days.length)], machine: machines[clamp(machines.indexOf(target.machine) + step[1], machines.length)] };
      point();
      say(`${held} to ${target.machine} on ${shown.days.find((day) => day.date === target.day).name}.`);
    } else if (event.key === "Enter" || event.key === " ") {
      const its = fieldOf(held);
      if (target.day === its.day && target.machine === its.machine) return;
      event.preventDefault();
      put({ field: held, machine: target.machine, on: target.day });
    } else if (event.key === "Escape") {
      held = null;
      draw(event.target.dataset.field);
    }
  });
}

let target = null;

function point() {
  main.querySelectorAll(".aimed").forEach((cell) => cell.classList.remove("aimed"));
  if (!held) return;
  const cell = main.querySelector(`td[data-machine="${CSS.escape(target.machine)}"][data-day="${target.day}"]`);
  if (cell) {
    cell.classList.add("aimed");
    cell.scrollIntoView({ block: "nearest", inline: "nearest" });
  }
}

export const trial = {
  id: "try",
  title: "Try",
  async show(place) {
    const board = await ask("/api/try");
    asked++;
    placings = [];
    wanted = [];
    held = null;
    if (!board.fields) {
      fill(place, make("h2", {}, "Try"), make("p", { class: "aside" }, "The season has no plan yet to try things out with."));
      return;
    }
    base = board;
    shown = board;
    main = make("div", { id: "trial" });
    fill(place, main);
    gone = new AbortController();
    pointers(gone.signal);
    keys();
    draw();
  },
  leave() {
    if (gone) gone.abort();
  },
};
