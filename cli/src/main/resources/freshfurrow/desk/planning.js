// Planning: press once, watch, take the new plan or leave it.
import { follow, watch } from "/desk/server.js";
import { make, fill, attempt, problemList, say } from "/desk/make.js";

const times = [[10, "10 seconds"], [30, "30 seconds"], [60, "1 minute"], [300, "5 minutes"], [1800, "half an hour"]];
let stops = [];

function framed(url, title) {
  return make("iframe", { src: url, title, class: "plan" });
}

function totals(now, then) {
  const names = [...new Set([...(now ? now.totals : []), ...(then ? then.totals : [])].map((line) => line.name))];
  const figure = (plan, name) => (plan.totals.find((line) => line.name === name) || { figure: "none" }).figure;
  const plans = [now, then].filter((plan) => plan);
  const heads = [now ? "Plan that is followed" : null, then ? "New plan" : null].filter((head) => head);
  return make("div", { class: "wide", tabindex: 0, role: "region", "aria-label": "Plans in figures" }, make("table", { id: "totals" },
    make("thead", {}, make("tr", {}, make("th", { scope: "col" }, "Total"), ...heads.map((head) => make("th", { scope: "col" }, head)))),
    make("tbody", {}, ...names.map((name) => make("tr", {}, make("th", { scope: "row" }, name),
      ...plans.map((plan) => make("td", { class: "words" }, figure(plan, name))))))));
}

function beginning(state, order) {
  const time = make("select", { id: "plan-time" }, ...times.map(([seconds, text]) => make("option", { value: seconds, selected: seconds === 30 }, text)));
  const start = (again) => (event) => attempt(event.currentTarget, () => order("/api/plan/start", { seconds: Number(time.value), again }));
  const canFollow = state.now && state.now.totals;
  return make("div", { class: "tools" },
    make("label", {}, "Search for at most ", time),
    canFollow ? make("button", { type: "button", id: "plan-again", onclick: start(true) }, "Replan what is left") : null,
    make("button", { type: "button", id: "plan-whole", onclick: start(false) }, state.now ? "Make a new plan of the whole season" : "Plan the season"));
}

function best(search) {
  const { best: found } = search;
  if (!found) return [make("div", {}, make("dt", {}, "So far"), make("dd", {}, "reading the season"))];
  return [["Late", found.late], ["Unplanted", found.unplanted], ["Fills", found.leastFills === undefined ? found.fills : `${found.fills}, proven minimum ${found.leastFills}`],
    ["Time left", found.secondsLeft === undefined ? "until done" : `${found.secondsLeft} s`]]
    .map(([name, value]) => make("div", {}, make("dt", {}, name), make("dd", {}, String(value))));
}

function underway(search, order) {
  return make("div", { class: "underway", id: "underway" },
    make("p", {}, search.again ? "Replanning what is left of the season. The best plan so far:" : "Planning the season. The best plan so far:"),
    make("dl", { class: "best" }, ...best(search)),
    make("button", { type: "button", id: "plan-stop", onclick: (event) => attempt(event.currentTarget, () => order("/api/plan/stop", {})) },
      "Good enough: stop the search"));
}

function proposal(state, order) {
  const { search } = state;
  const answer = (path, words) => (event) => attempt(event.currentTarget, async () => {
    await order(path, {});
    say(words);
  });
  return make("div", { id: "proposal" },
    make("p", {}, search.stopped ? "The search was stopped; this is the best plan it found. " : "A new plan is ready. ",
      "Nothing is changed until you take it."),
    make("div", { class: "tools" },
      make("button", { type: "button", id: "plan-take", class: "chief", onclick: answer("/api/plan/take", state.now ? "The new plan is taken. The one before is kept." : "The plan is taken. Today shows its work, print its sheets under Ask.") }, "Take the new plan"),
      make("button", { type: "button", id: "plan-leave", onclick: answer("/api/plan/leave", "The new plan is left. All is as it was.") }, "Leave it")),
    search.changes.length > 0 ? make("pre", { class: "wide", tabindex: 0, role: "region", "aria-label": "What would change" }, search.changes.join("\n")) : null);
}

// How far it has come, where that is shown already: the button under the reader's finger is left alone.
function farther(main, search) {
  const shown = main.querySelector("#underway .best");
  if (shown) fill(shown, ...best(search));
  return shown !== null;
}

function draw(main, state, order) {
  const { now, search } = state;
  const proposed = search && search.state === "proposed" ? search : null;
  const busy = search && search.state === "underway";
  if (busy && farther(main, search)) return;
  const parts = [make("h2", {}, "Plan")];
  if (search && search.state === "failed") parts.push(problemList(search.problems));
  if (now && now.problems) parts.push(problemList(now.problems));
  if (now && now.ofSeason === false) parts.push(make("p", { class: "readout telling" }, "The season was changed after this plan was made. Replan what is left, or make a new plan."));
  parts.push(busy ? underway(search, order) : null, proposed ? proposal(state, order) : null);
  if (!busy && !proposed) parts.push(beginning(state, order));
  const followed = now && now.totals ? now : null;
  if (followed || proposed) parts.push(totals(followed, proposed));
  if (!followed && !proposed && !busy) parts.push(make("p", { class: "aside" }, "The season has no plan yet."));
  if (proposed && proposed.withPage) parts.push(make("h3", {}, "The new plan"), framed("/plan/proposed.html", "The new plan"));
  if (followed && now.ofSeason) parts.push(make("h3", {}, "The plan that is followed"), framed("/plan/now.html", "The plan that is followed"));
  fill(main, ...parts);
  main.dataset.state = busy ? "underway" : proposed ? "proposed" : "still";
}

export const planning = {
  id: "plan",
  title: "Plan",
  async show(main) {
    const watched = await watch("/api/plan", "plan", (state, order) => draw(main, state, order));
    stops = [watched.leave, follow("progress", (search) => farther(main, search))];
  },
  leave() {
    stops.forEach((stop) => stop());
    stops = [];
  },
};
