// The frame around the parts: which one is shown, and what they share.
import { ask, tell, follow } from "/desk/server.js";
import { callSeason, make, fill, problemList, say } from "/desk/make.js";
import { season } from "/desk/season.js";
import { planning } from "/desk/planning.js";
import { trial } from "/desk/trial.js";
import { today } from "/desk/today.js";
import { asking } from "/desk/asking.js";
import { sharing } from "/desk/sharing.js";

const parts = [season, planning, trial, today, asking, sharing];
const main = document.getElementById("part");
let mine = parts; // those for whoever opened the desk
let shown = null;

function wanted() {
  const [id, ...rest] = location.hash.slice(1).split("/");
  return { part: mine.find((part) => part.id === id) || mine[0], rest };
}

// One part after the other: one that was slow to be read is not to be drawn over the next.
let turn = Promise.resolve();

function show() {
  const hash = location.hash;
  turn = turn.then(() => (hash === location.hash ? showNow() : undefined));
  return turn;
}

async function showNow() {
  const { part, rest } = wanted();
  if (shown && shown.part.leave) shown.part.leave();
  shown = { part };
  say(""); // which was of the part before
  for (const link of document.querySelectorAll("#parts a")) {
    if (link.hash === `#${part.id}`) link.setAttribute("aria-current", "page");
    else link.removeAttribute("aria-current");
  }
  const titled = () => { document.title = `${part.title}: ${document.getElementById("season-name").textContent}`; };
  titled();
  fill(main, make("p", { class: "aside" }, "One moment…"));
  try {
    await part.show(main, rest);
  } catch (failure) {
    if (!failure.problems) throw failure;
    fill(main, problemList(failure.problems));
  }
  titled(); // by now the part may have read another name
  document.documentElement.dataset.shown = part.id;
}

function theme() {
  const choice = document.getElementById("theme");
  choice.addEventListener("change", () => {
    if (choice.value === "") delete document.documentElement.dataset.theme;
    else document.documentElement.dataset.theme = choice.value;
  });
}

async function start() {
  theme();
  const { role, begins } = await ask("/api/role");
  document.documentElement.dataset.role = role;
  const list = (those) => {
    mine = those;
    fill(document.getElementById("parts"), ...mine.map((part) => make("li", {}, make("a", { href: `#${part.id}` }, part.title))));
  };
  const all = parts.filter((part) => role === "OWNER" || part.crew);
  // until there is a season, nothing else can be done
  list(begins ? [(await import("/desk/begin.js")).begin] : all);
  const begun = () => {
    if (mine === all) return;
    list(all);
    if (location.hash === "#season") show();
    else location.hash = "#season";
  };
  if (!begins) callSeason((await ask("/api/season/name")).name);
  document.addEventListener("begun", begun);
  if (begins) follow("begun", begun);
  const end = document.getElementById("end");
  end.hidden = role !== "OWNER";
  end.addEventListener("click", async () => {
    await tell("/api/end", {});
    fill(document.body, make("main", {}, make("p", {}, "The desk is closed. All files are where they were.")));
  });
  follow("gone", () => say("The desk does not answer. It may have been closed."));
  follow("back", () => say("The desk answers again."));
  document.querySelector(".skip").addEventListener("click", (event) => {
    event.preventDefault(); // its address would be taken for that of a part
    main.focus();
  });
  document.getElementById("parts").addEventListener("click", (event) => {
    say(""); // what was told elsewhere is read by now
    const link = event.target.closest("a");
    if (link && link.hash === location.hash) show(); // opened again: as things are now
  });
  window.addEventListener("hashchange", show);
  await show();
}

start();
