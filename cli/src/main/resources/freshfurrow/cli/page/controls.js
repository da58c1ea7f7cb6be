// Small things that views share: keyboard reach, toggles, legends, words for activities.
const controls = (() => {
  /**
   * Makes rows of marks one stop of the tab key, with arrows inside: left and right along a row, up and down to the mark
   * nearest in the row beside.
   * @param rows lists of elements, each with an x kept in its data-x
   */
  function rove(rows) {
    const filled = rows.filter((row) => row.length > 0);
    const all = filled.flat();
    if (all.length === 0) return;
    all.forEach((mark) => mark.setAttribute("tabindex", "-1"));
    let current = all.find((mark) => mark.getAttribute("aria-pressed") === "true") || all[0];
    current.setAttribute("tabindex", "0");
    const x = (mark) => Number(mark.dataset.x);
    const go = (mark) => {
      if (!mark) return;
      current.setAttribute("tabindex", "-1");
      current = mark;
      current.setAttribute("tabindex", "0");
      current.focus();
      current.scrollIntoView({ block: "nearest", inline: "nearest" });
    };
    filled.forEach((row, r) => row.forEach((mark, i) => {
      mark.addEventListener("keydown", (event) => {
        const beside = (other) => other && d3.least(other, (candidate) => Math.abs(x(candidate) - x(mark)));
        const keys = {
          ArrowRight: () => row[i + 1],
          ArrowLeft: () => row[i - 1],
          ArrowDown: () => beside(filled[r + 1]),
          ArrowUp: () => beside(filled[r - 1]),
          Home: () => row[0],
          End: () => row[row.length - 1],
        };
        if (keys[event.key]) {
          event.preventDefault();
          go(keys[event.key]());
        } else if (event.key === "Enter" || event.key === " ") {
          event.preventDefault();
          mark.dispatchEvent(new MouseEvent("click", { bubbles: true }));
        }
      });
      mark.addEventListener("click", () => {
        current.setAttribute("tabindex", "-1");
        current = mark;
        current.setAttribute("tabindex", "0");
      });
    }));
  }

  /** Tells in a line what is under the pointer or has the focus. */
  function tells(selection, readout, text) {
    const line = d3.select(readout);
    selection
      .on("pointerenter.tell focus.tell", (event, d) => line.text(text(d)).classed("telling", true))
      .on("pointerleave.tell blur.tell", () => line.text(line.attr("data-rest")).classed("telling", false));
  }

  function rest(readout, text) {
    d3.select(readout).attr("data-rest", text).attr("dir", "auto").text(text);
  }

  /** A few buttons of which one is down. */
  function toggle(parent, label, options, chosen, onChoose) {
    const group = d3.select(parent).append("div").attr("class", "toggle").attr("role", "group").attr("aria-label", label);
    group.append("span").text(label);
    const buttons = group.selectAll("button").data(options).join("button")
      .attr("type", "button").text((option) => option)
      .attr("aria-pressed", (option) => String(option === chosen))
      .on("click", (event, option) => {
        buttons.attr("aria-pressed", (other) => String(other === option));
        onChoose(option);
      });
  }

  /** @param entries each with a text and a function that draws into an svg of 26 x 14 */
  function legend(parent, entries) {
    const items = d3.select(parent).selectAll("li").data(entries).join((enter) => {
      const item = enter.append("li");
      item.append("svg").attr("width", 26).attr("height", 14).attr("aria-hidden", "true");
      item.append("span").attr("dir", "auto");
      return item;
    });
    items.select("svg").each(function (entry) {
      d3.select(this).selectAll("*").remove();
      entry.draw(d3.select(this));
    });
    items.select("span").text((entry) => entry.text);
  }

  const swatch = (fill) => (svg) => svg.append("rect").attr("class", "swatch").attr("width", 26).attr("height", 14).attr("fill", fill);

  const reasons = {
    rig: "for a rig", wet: "on wet ground", hours: "until work resumes", compost: "for compost", water: "for water",
    sprayHours: "for its spray hours",
  };
  const waits = (wait) => reasons[wait.why] || `for its ${plan.words[plan.machineOf.get(wait.machine).does].noun} window to open`;

  /** What is in a batch, and for which loads. */
  function contents(batch) {
    const loads = batch.loads.map((i) => plan.loads[i].id).join(", ") || "no load";
    return `${figures.mass(batch.kg)} of compost in ${figures.volume(batch.waterL)} of water, for ${loads}`;
  }

  /** What a machine does, in one sentence. */
  function sentence(activity, day) {
    const [from, to] = [figures.about(activity.start, day), figures.about(activity.end, day)];
    return `${plan.machineOf.get(activity.machine).name}, about ${from === to ? from : `${from} to ${to}`}: ` + kinds[activity.what].says(activity, day);
  }

  // of a sheet of paper upright with its margins, px
  const PAPER = 680;

  /**
   * Draws now, again whenever the element gets another width, and for paper.
   * @param draw given a width and whether it is for paper, where nothing scrolls
   */
  function drawToWidth(element, draw) {
    let width = 0;
    const look = () => {
      const now = element.clientWidth;
      if (now > 0 && now !== width) {
        width = now;
        draw(width, false);
      }
    };
    look();
    window.addEventListener("beforeprint", () => draw(PAPER, true));
    window.addEventListener("afterprint", () => draw(element.clientWidth, false));
    new ResizeObserver(() => window.requestAnimationFrame(look)).observe(element);
    return () => draw(element.clientWidth, false);
  }

  return { rove, tells, rest, toggle, legend, swatch, contents, sentence, waits, drawToWidth };
})();
