// Questions about the plan and the season, and what people take along.
import { ask, tell, watch } from "/desk/server.js";
import { make, fill, attempt, problemList, say } from "/desk/make.js";
import { learning } from "/desk/learning.js";

let compared = null;

function lines(text, name) {
  return make("pre", { class: "wide", tabindex: 0, role: "region", "aria-label": name }, text.join("\n"));
}

function why(fields, first) {
  const answer = make("div", { id: "why-answer", "aria-live": "polite" });
  const choice = make("select", { id: "why-field" }, ...fields.map((field) => make("option", { value: field.id, selected: field.id === first },
    field.label)));
  const button = make("button", { type: "button", id: "why-ask", onclick: () => attempt(button, async () => {
    fill(answer, make("p", { class: "aside" }, "Trying the field everywhere else…"));
    try {
      fill(answer, lines((await ask(`/api/why?field=${encodeURIComponent(choice.value)}`)).lines, "The answer"));
    } catch (failure) {
      fill(answer, problemList(failure.problems || [String(failure)]));
    }
  }) }, "Why then, and what would change it?");
  return make("section", { "aria-labelledby": "why-title" }, make("h3", { id: "why-title" }, "A field"),
    make("div", { class: "tools" }, make("label", {}, "Field ", choice), button), answer);
}

function paper(days) {
  const day = make("select", { id: "sheet-day" }, make("option", { value: "" }, "all days"), ...days.map(({ date, name }) => make("option", { value: date }, name)));
  const link = make("a", { id: "sheets", href: "/sheets.html", target: "_blank", rel: "noopener" }, "Open the crew sheets to print");
  day.addEventListener("change", () => { link.href = day.value ? `/sheets.html?day=${day.value}` : "/sheets.html"; });
  const written = make("div", { id: "export-answer", "aria-live": "polite" });
  const write = (replace) => (event) => attempt(event.currentTarget, async () => {
    try {
      const { files } = await tell("/api/export", { replace });
      fill(written, make("p", {}, "Written:"), make("ul", {}, ...files.map((file) => make("li", {}, file))));
    } catch (failure) {
      if (!failure.problems) throw failure;
      fill(written, problemList(failure.problems), failure.status === 409 && !replace
        ? make("button", { type: "button", id: "export-replace", onclick: write(true) }, "Replace them") : null);
    }
  });
  return make("section", { "aria-labelledby": "paper-title" }, make("h3", { id: "paper-title" }, "What to bring"),
    make("div", { class: "tools" }, make("label", {}, "Day ", day), link),
    make("div", { class: "tools" }, make("button", { type: "button", id: "export", onclick: write(false) }, "Write calendar, tables and map beside the plan")), written);
}

const far = (run) => (run.all > 0 ? `${run.lived} of ${run.all} springs` : "Planning…");

// How far it has come, while the button under the reader's finger stays alone.
function farther(run) {
  const done = document.getElementById("compare-done");
  done.max = run.all || 1;
  done.value = run.lived;
  document.getElementById("compare-far").textContent = far(run);
}

function comparison(state, order) {
  const { run } = state;
  const busy = run && run.state === "underway";
  const springs = make("select", { id: "springs" }, ...[20, 50, 100, 300].map((n) => make("option", { value: n }, `${n} springs`)));
  const with_ = make("select", { id: "compare-with" },
    ...state.rigs.map((rig) => make("option", { value: `rig:${rig}` }, `one more rig like ${rig}`)),
    ...state.variants.map((name) => make("option", { value: `file:${name}` }, `variant ${name}`)));
  const start = make("button", { type: "button", id: "compare-start", onclick: () => attempt(start, async () => {
    const [kind, ...rest] = with_.value.split(":");
    const chosen = rest.join(":");
    await order("/api/compare/start", { springs: Number(springs.value), [kind === "rig" ? "secondLike" : "variant"]: chosen });
  }) }, "Compare");
  const shown = make("section", { id: "comparison", "aria-labelledby": "compare-title", "data-state": run ? run.state : "none" },
    make("h3", { id: "compare-title" }, "Would it pay?"),
    make("p", { class: "lead" }, "The season as it is and a variant of it are simulated over the same springs of the weather record."));
  if (busy) {
    const stop = make("button", { type: "button", id: "compare-stop", onclick: () => attempt(stop, () => order("/api/compare/stop", {})) }, "Stop the comparison");
    shown.append(make("p", { id: "compare-far", role: "status" }, far(run)),
      make("progress", { id: "compare-done", max: run.all || 1, value: run.lived, "aria-label": "Springs done" }), make("div", { class: "tools" }, stop));
  } else {
    shown.append(make("div", { class: "tools" }, make("label", {}, "Against ", with_), make("label", {}, "over ", springs), start));
  }
  if (run && run.state === "stopped") shown.append(make("p", { class: "readout telling", role: "status" }, "The comparison was stopped. Nothing of it was written."));
  if (run && run.state === "failed") shown.append(problemList(run.problems));
  if (run && run.state === "made") {
    shown.append(lines(run.lines, "The comparison"), make("iframe", { src: "/compare.html", title: "The comparison, drawn", class: "plan" }));
  }
  return shown;
}

export const asking = {
  id: "ask",
  title: "Ask",
  async show(main, [first]) {
    const questions = await ask("/api/ask");
    const lessons = await learning(() => compared.again());
    fill(main, make("h2", {}, "Ask"),
      ...(questions.fields ? [why(questions.fields, first),
        make("section", { "aria-labelledby": "held-title" }, make("h3", { id: "held-title" }, "Bottlenecks"),
          questions.heldBack.length > 0 ? lines(questions.heldBack, "What each bottleneck costs") : make("p", {}, "It was not worked out for this plan: the search was stopped before.")),
        paper(questions.days)] : [make("p", { class: "aside" }, "The season has no plan yet to ask about.")]),
      lessons, make("div", { id: "compared" }));
    compared = await watch("/api/compare", "compare", (state, order) => {
      const busy = state.run && state.run.state === "underway";
      if (busy && document.getElementById("compare-stop")) farther(state.run);
      else fill(main.querySelector("#compared"), comparison(state, order));
    });
    say("");
  },
  leave() {
    if (compared) compared.leave();
    compared = null;
  },
};
