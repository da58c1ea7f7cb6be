// What the log teaches of the figures of the season.
import { ask, tell } from "/desk/server.js";
import { make, fill, attempt, problemList } from "/desk/make.js";

const sentence = ({ path, text }) => `${path.join(" ")}: ${text}`;

// A section; "written" is called once a variant has been written.
export async function learning(written) {
  const shown = make("section", { id: "learning", "aria-labelledby": "learning-title" });
  const answer = make("div", { id: "learning-answer", "aria-live": "polite", tabindex: -1 });

  // What was pressed may be gone, and whoever came by keyboard goes on from here.
  const tellOf = (text) => {
    fill(answer, make("p", {}, text));
    answer.focus();
  };

  const trying = (replace) => (event) => attempt(event.currentTarget, async () => {
    try {
      const { file } = await tell("/api/learn/variant", { replace });
      tellOf(`Written as variant ${file}: compare it with the season below, or plan with it by --variant ${file}.`);
      await written();
    } catch (failure) {
      if (!failure.problems) throw failure;
      fill(answer, problemList(failure.problems), failure.status === 409 && !replace
        ? make("button", { type: "button", id: "learning-replace", onclick: trying(true) }, "Replace it") : null);
    }
  });

  const setting = (values) => (event) => attempt(event.currentTarget, async () => {
    const { files } = await ask("/api/season");
    await tell("/api/season/change", { files, edits: values.map(({ path, text }) => ({ do: "set", path, value: text })) });
    await draw();
    tellOf("The season file has these values now. Undo under Season undoes that.");
  });

  async function draw() {
    const title = make("h3", { id: "learning-title" }, "What the log teaches");
    try {
      const { lines, values, entries } = await ask("/api/learn");
      fill(shown, title,
        entries === 0 ? make("p", { class: "aside" }, "Nothing is logged yet. Say how long work took when you tick it off, and what differs from the season file shows here.")
          : make("pre", { class: "wide", tabindex: 0, role: "region", "aria-label": "Figures of the season file and of the log" }, lines.join("\n")),
        values.length === 0 ? null : make("p", {}, `It would write ${values.map(sentence).join("; ")}.`),
        values.length === 0 ? null : make("div", { class: "tools" },
          make("button", { type: "button", id: "learning-try", onclick: trying(false) }, "Try it as a variant"),
          make("button", { type: "button", id: "learning-set", onclick: setting(values) }, "Write it into the season file")),
        answer);
    } catch (failure) {
      fill(shown, title, problemList(failure.problems || [String(failure)]));
    }
  }

  await draw();
  return shown;
}
