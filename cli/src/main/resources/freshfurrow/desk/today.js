// The day's work by machine, big enough for a thumb, and what people say happened.
import { ask, tell, follow } from "/desk/server.js";
import { make, fill, say, attempt, problemList, input, valueOf as value } from "/desk/make.js";
import { typed } from "/desk/here.js";
import { happenings, empty } from "/desk/happenings.js";
import { tap, kept, followTaps, forget } from "/desk/taps.js";

let main = null;
let day = null;
let shown = null; // the machine that is shown; null for all
let ahead = null; // of the farm's time, how far this device's clock is behind it, ms
let stops = [];
let open = null; // the step that is done otherwise or not done, with what the plan says of it
let waits = 0; // taps that were not sent yet
let tapping = 0; // taps that are on their way

// The farm's local time now, to the second, or null when today is no day of the season.
function farmNow() {
  return ahead === null ? null : new Date(Date.now() + ahead).toISOString().slice(0, 19);
}

function earlier(a, b) {
  return b !== null && b < a ? b : a;
}

// "done" is what was filled in for it, a step's form or what happened besides: once it is logged, it is empty again.
async function log(lines, { words, step, done } = {}) {
  tapping++;
  try {
    const came = await tap(lines, step && planned(step));
    if (!main) return; // another part is shown
    if (came.state !== "refused" && open === done) open = null;
    if (came.state !== "refused" && typeof done === "string") empty(main, done);
    if (came.state === "logged") {
      await load(day.day);
      say(words || "Logged.");
      return;
    }
    draw();
    say(came.state === "kept" ? `${came.problems.join(" ")} The tap is kept here and sent again until it is logged.` : came.problems.join(" "));
  } finally {
    tapping--;
  }
}

// What the plan says of a step, by which a tap that waits is known to be of it.
const planned = (step) => JSON.stringify(step.line);

const took = (id) => (document.getElementById(id) ? { took: value(id) } : {});

function otherwise(step, key) {
  const { line } = step;
  return make("div", { class: "otherwise" },
    input(`amount-${key}`, "Amount", { value: line.amount || "", type: "text" }),
    input(`at-${key}`, "Ended", { value: earlier(line.at, farmNow()).slice(0, 16), type: "datetime-local" }),
    line.fact === "drawn" ? null : input(`took-${key}`, "Took (leave out if not known)", { type: "text", placeholder: "like 17 min" }),
    make("button", { type: "button", class: "chief", onclick: (event) => attempt(event.currentTarget, () => log([{ ...line, amount: value(`amount-${key}`), at: value(`at-${key}`), ...took(`took-${key}`) }], { step, done: open })) }, "Log it so"));
}

function notDone(step, key, machine) {
  const at = farmNow() || step.line.at;
  const field = step.line.fact === "planted" ? step.line.place : null;
  const send = (line) => (event) => attempt(event.currentTarget, () => log([{ at, ...line() }], { done: open }));
  return make("div", { class: "otherwise" },
    make("p", {}, "What came between?"),
    make("div", { class: "tools" }, input(`behind-${key}`, `${machine} is behind by`, { type: "text", placeholder: "like 50 min" }),
      make("button", { type: "button", "data-log": "behind", onclick: send(() => ({ fact: "behind", machine, amount: value(`behind-${key}`) })) }, "Log that")),
    field ? make("div", { class: "tools" }, input(`unfit-${key}`, `${field} is not fit until`, { type: "date" }),
      make("button", { type: "button", "data-log": "unfit", onclick: send(() => ({ fact: "unfit", place: field, until: value(`unfit-${key}`) })) }, "Log that")) : null,
    make("div", { class: "tools" }, input(`down-${key}`, `${machine} is down until`, { type: "datetime-local" }),
      make("button", { type: "button", "data-log": "down", onclick: send(() => ({ fact: "down", machine, until: value(`down-${key}`) })) }, "Log that")));
}

function stepRow(step, i, machine) {
  const key = `${machine}-${i}`;
  const text = make("div", { class: "step-text" }, make("span", { class: "clock" }, step.clock), " ", make("strong", {}, step.verb), ` ${step.text}`,
    step.note ? make("div", { class: "note" }, step.note) : null);
  if (!step.line) return make("li", { class: "step" }, text);
  if (step.logged) return make("li", { class: "step is-logged", tabindex: -1, "data-step": key }, text, make("p", { class: "state" }, "✓ logged"));
  if (kept().some((one) => !one.problems && one.about === planned(step))) return make("li", { class: "step is-waiting", tabindex: -1, "data-step": key }, text, make("p", { class: "state" }, "waits to be sent"));
  const done = make("button", { type: "button", class: "chief", "data-done": key, onclick: () => attempt(done, () => log([{ ...step.line, at: earlier(step.line.at, farmNow()) }], { step })) }, "Done as planned");
  const toggle = (what) => () => {
    open = open && open.key === key && open.what === what ? null : { key, what, about: planned(step) };
    draw();
  };
  return make("li", { class: "step", tabindex: -1, "data-step": key }, text,
    make("div", { class: "tools taps" }, done,
      make("button", { type: "button", "data-otherwise": key, "aria-expanded": String(open !== null && open.key === key && open.what === "otherwise"), onclick: toggle("otherwise") }, "Done otherwise"),
      make("button", { type: "button", "data-not-done": key, "aria-expanded": String(open !== null && open.key === key && open.what === "not"), onclick: toggle("not") }, "Not done")),
    open && open.key === key ? (open.what === "otherwise" ? otherwise(step, key) : notDone(step, key, step.line.machine || machine)) : null);
}

function machineList(machine) {
  return make("section", { class: "machine", "aria-label": `${machine.kind.toLowerCase()} ${machine.id}` },
    make("h3", {}, `${machine.kind.charAt(0)}${machine.kind.slice(1).toLowerCase()} ${machine.id}`),
    machine.steps.length === 0 ? make("p", { class: "aside" }, "No work on this day.") : make("ol", { class: "steps" }, ...machine.steps.map((step, i) => stepRow(step, i, machine.id))));
}

function entries() {
  if (day.log.length === 0) return make("p", { class: "aside" }, "Nothing is logged for this day.");
  return make("ul", { id: "entries", tabindex: -1 }, ...day.log.map((entry) => make("li", {}, entry.text, " ", entry.mayVoid
    ? make("button", { type: "button", "data-void": entry.entry, onclick: (event) => attempt(event.currentTarget, () => log([{ at: farmNow() || `${day.day}T12:00`, fact: "void", voids: String(entry.entry), note: "tapped by mistake" }], { words: "Void now." })) }, "Void") : null)));
}

function waiting(taps) {
  const place = main && main.querySelector("#waiting");
  if (!place) return;
  const refused = taps.filter((one) => one.problems);
  const before = waits;
  waits = taps.length - refused.length;
  fill(place, waits > 0 ? make("p", { class: "readout telling" }, waits === 1 ? "One tap waits to be sent." : `${waits} taps wait to be sent.`) : null,
    ...refused.map((one) => make("div", { class: "problems" }, make("p", {}, "Not logged: ", one.lines.map((line) => [line.fact, line.place, line.machine, line.amount].filter((cell) => cell).join(" ")).join("; ")),
      problemList(one.problems), make("button", { type: "button", onclick: () => forget(one.id) }, "I have seen it"))));
  if (waits < before && tapping === 0) refresh(true);
}

function draw(sameDay = true) {
  const putBack = sameDay ? typed(main) : () => {};
  const owner = document.documentElement.dataset.role === "OWNER";
  const machines = day.machines.filter((machine) => shown === null || machine.id === shown);
  const to = (date) => () => load(date);
  fill(main, make("h2", {}, day.name),
    make("div", { class: "tools" },
      make("button", { type: "button", id: "day-before", disabled: !day.before, onclick: to(day.before) }, "Day before"),
      make("button", { type: "button", id: "day-after", disabled: !day.after, onclick: to(day.after) }, "Day after"),
      make("a", { href: `/sheets.html?day=${day.day}`, target: "_blank", rel: "noopener" }, "Sheets to print"),
      owner ? make("button", { type: "button", id: "again", onclick: (event) => attempt(event.currentTarget, async () => {
        await tell("/api/plan/start", { seconds: 30, again: true });
        location.hash = "#plan";
      }) }, "Replan with what happened") : null),
    make("div", { id: "waiting", role: "status" }),
    day.machines.length === 0 ? make("p", { class: "aside" }, "The season has no plan yet.") : make("div", { class: "chips", role: "group", "aria-label": "Machines" },
      ...[null, ...day.machines.map((machine) => machine.id)].map((id) => make("button", { type: "button", "aria-pressed": String(shown === id), onclick: () => { shown = id; draw(); } }, id || "all"))),
    day.orders && day.orders.length > 0 ? make("div", { class: "cautions" }, make("p", {}, "Mix already made"), make("ul", {}, ...day.orders.map((order) => make("li", {}, order)))) : null,
    ...machines.map(machineList),
    day.cautions ? make("section", { class: "cautions", "aria-label": "Cautions" }, make("p", {}, day.firstOfAll), make("ul", {}, ...day.cautions.map((text) => make("li", {}, text)))) : null,
    happenings(day, farmNow, (lines, id) => log(lines, { done: id })),
    make("section", { "aria-labelledby": "log-title" }, make("h3", { id: "log-title" }, "The log of this day"), entries()));
  putBack();
  main.dataset.day = day.day;
  stops.forEach((stop) => stop());
  stops = [follow("log", () => refresh()), follow("back", () => refresh()), follow("plan", (state) => { if (!state.search) refresh(); }), followTaps(waiting)];
}

function isFillingIn() {
  return open !== null || main.querySelector("details[open]") !== null || ["INPUT", "SELECT"].includes((document.activeElement || main).tagName);
}

// After news, but not under the hands of somebody who fills something in.
async function refresh(redraw = false) {
  if (!main || isFillingIn()) return;
  const asked = await ask(`/api/today?day=${day.day}`).catch(() => day); // out of reach, what was seen last stays
  const content = (one) => JSON.stringify({ ...one, now: null });
  if (main && !isFillingIn() && asked.day === day.day && (redraw || content(asked) !== content(day))) use(asked);
}

async function load(date) {
  use(await ask(date ? `/api/today?day=${date}` : "/api/today"));
}

// Whether what somebody fills in is still about a step that is shown.
function isStillOpen() {
  const steps = day.machines.flatMap((machine) => machine.steps.map((step, i) => ({ step, key: `${machine.id}-${i}` })));
  return open !== null && steps.some(({ step, key }) => key === open.key && step.line && !step.logged && planned(step) === open.about);
}

function use(asked) {
  if (!main) return;
  const sameDay = day !== null && asked.day === day.day;
  day = asked;
  if (!isStillOpen()) open = null;
  ahead = day.now ? Date.parse(`${day.now}Z`) - Date.now() : null;
  const at = window.scrollY;
  draw(sameDay);
  window.scrollTo(0, at);
}

export const today = {
  id: "today",
  title: "Today",
  crew: true,
  async show(place) {
    main = place;
    await load(null);
  },
  leave() {
    stops.forEach((stop) => stop());
    stops = [];
    open = null;
    main = null;
  },
};
