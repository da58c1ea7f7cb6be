// What people say happened, besides what the plan asks of them.
import { make, attempt, input, select, valueOf } from "/desk/make.js";
import { usual } from "/desk/here.js";
import { stopped } from "/desk/stopped.js";

// What happened besides: each a fact of the log. "log" is called with the facts and the name of their form.
export function happenings(day, farmNow, log) {
  const fields = day.fields.map((field) => field.id);
  const at = () => valueOf("say-at") || farmNow() || `${day.day}T12:00`;
  const entry = (id, title, parts, line) => make("details", { "data-say": id }, make("summary", {}, title),
    make("div", { class: "tools" }, ...parts, make("button", { type: "button", class: "chief", "data-log": id, onclick: (event) => attempt(event.currentTarget, () => log([{ at: at(), ...line() }], id)) }, "Log it")));
  const work = stopped(at, (lines) => log(lines, "stopped"));
  const when = input("say-at", "When", { type: "datetime-local", value: (farmNow() || `${day.day}T12:00`).slice(0, 16) });
  when.addEventListener("change", () => { if (work.open) work.dispatchEvent(new Event("again")); });
  return make("section", { "aria-labelledby": "say-title" }, make("h3", { id: "say-title" }, "Something happened"),
    make("div", { class: "tools" }, when),
    work,
    entry("rain", "It rained", [input("rain", "Amount", { type: "text", placeholder: "like 0.4 in" }), make("p", { class: "help" }, "Where it stopped work, say so above instead.")], () => ({ fact: "rain", amount: valueOf("rain") })),
    entry("down", "A machine broke down", [select("down", "Machine", day.allMachines), input("down-until", "works again (leave out if not known)", { type: "datetime-local" })], () => ({ fact: "down", machine: valueOf("down"), until: valueOf("down-until") })),
    entry("behind", "A machine is behind the plan", [select("behind", "Machine", day.allMachines), input("behind-by", "by", { type: "text", placeholder: "like 50 min" })], () => ({ fact: "behind", machine: valueOf("behind"), amount: valueOf("behind-by") })),
    entry("fit", "A field is fit", [select("fit", "Field", fields)], () => ({ fact: "fit", place: valueOf("fit") })),
    entry("unfit", "A field is not fit", [select("unfit", "Field", fields), input("unfit-until", "until (leave out if not known)", { type: "date" })], () => ({ fact: "unfit", place: valueOf("unfit"), until: valueOf("unfit-until") })),
    entry("planted", "Planted without extract", [select("planted", "Field", fields), input("planted-area", "Area", { type: "text" })], () => ({ fact: "planted", place: valueOf("planted"), amount: valueOf("planted-area"), load: "none" })),
    entry("delivered", "Compost came", [select("delivered", "Lot", day.lots), input("delivered-mass", "Amount", { type: "text" })], () => ({ fact: "delivered", lot: valueOf("delivered"), amount: valueOf("delivered-mass") })),
    entry("spoiled", "Compost spoiled", [select("spoiled", "Lot", day.lots), input("spoiled-mass", "Amount", { type: "text", value: "all" })], () => ({ fact: "spoiled", lot: valueOf("spoiled"), amount: valueOf("spoiled-mass") })),
    entry("transfer", "A transfer was timed", [select("transfer", "Rig", day.rigs), input("transfer-amount", "Amount", { type: "text", placeholder: "like 600 gal" }), input("transfer-took", "pumped for", { type: "text", placeholder: "like 9.5 min" })], () => ({ fact: "transfer", machine: valueOf("transfer"), amount: valueOf("transfer-amount"), took: valueOf("transfer-took") })),
    entry("drive", "A drive was timed", [select("drive", "Machine", day.allMachines), select("drive-from", "from", day.places), select("drive-to", "to", day.places), input("drive-took", "in", { type: "text", placeholder: "like 7 min" })], () => ({ fact: "drive", machine: valueOf("drive"), place: `${valueOf("drive-from")} ${valueOf("drive-to")}`, took: valueOf("drive-took") })),
    entry("note", "Something else", [input("note", "Note", { type: "text", maxlength: 500 })], () => ({ fact: "note", note: valueOf("note") })));
}

// After it is logged: the next is about another moment.
export function empty(place, id) {
  const form = place.querySelector(`[data-say=${id}]`);
  if (form.contains(document.activeElement)) form.querySelector("summary").focus();
  form.open = false;
  [...form.querySelectorAll("input, select"), place.querySelector("#say-at")].forEach((element) => { element.value = usual(element); });
}
