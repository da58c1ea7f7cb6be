// Work stops, for rain or for the day: what is left in tanks then. Lines of the log say so by how much was planted.
import { tell } from "/desk/server.js";
import { make, fill, attempt, input, problemList, valueOf } from "/desk/make.js";

let found = {}; // what was typed, by machine and load: it stays when the page is drawn anew

const names = (tanks) => tanks.map(({ machine, load, amount }, i) => {
  const label = input(`left-${i}`, `Left in ${machine}'s tank, of load ${load}`, { type: "text", "data-left": machine, value: amount });
  const element = label.querySelector("input");
  const about = `${machine} ${load}`;
  if (found[about] !== undefined) element.value = found[about];
  element.addEventListener("input", () => { found[about] = element.value; });
  return label;
});

// "at" gives when it was, and "log" writes lines.
export function stopped(at, log) {
  const tanks = make("div", { class: "tools" });
  const said = make("div", { "aria-live": "polite" });
  const look = async () => {
    const answer = await tell("/api/today/stopped", { at: at() }).catch((failure) => ({ problems: failure.problems || [String(failure)] }));
    fill(said, problemList(answer.problems), answer.tanks && answer.tanks.length === 0 ? make("p", { class: "aside" }, "By the plan no tank has mix in it then.") : null);
    fill(tanks, ...names(answer.tanks || []));
  };
  const send = make("button", { type: "button", class: "chief", "data-log": "stopped", onclick: () => attempt(send, async () => {
    const rain = valueOf("stopped-rain").trim();
    const left = Object.fromEntries(Array.from(tanks.querySelectorAll("[data-left]"), (element) => [element.dataset.left, element.value]));
    const { lines } = await tell("/api/today/stopped", { at: at(), left });
    const all = [...lines, ...(rain === "" ? [] : [{ at: at(), fact: "rain", amount: rain }])];
    if (all.length === 0) {
      fill(said, make("p", {}, "There is nothing to log of it."));
      return;
    }
    found = {};
    await log(all);
  }) }, "Log it");
  const form = make("details", { "data-say": "stopped" }, make("summary", {}, "Work stopped, or the day is over"),
    make("p", { class: "help" }, "What is left before anything is drained: the figure is the plan's. It is logged as what was planted, by the recipe's mix; what the log lacks of those fields is logged as planned."),
    tanks, said, make("div", { class: "tools" }, input("stopped-rain", "Rain that stopped it (leave out if none)", { type: "text", placeholder: "like 0.4 in" }), send));
  form.addEventListener("toggle", () => { if (form.open) look(); });
  form.addEventListener("again", look);
  return form;
}
