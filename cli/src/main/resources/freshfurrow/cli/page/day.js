// One day: rows are machines on a clock axis. Threads tie each transfer of a rig to the fill of the planter that takes it.
const dayChart = (() => {
  const ROW = 58;
  const TOP = 26;
  const LABELS = 66;
  let redraw = () => {};

  const kindOf = (activity) => kinds[activity.what];
  const fillOf = (activity) => (kindOf(activity).fill ? kindOf(activity).fill(activity) : null);
  const label = (activity) => (kindOf(activity).label ? kindOf(activity).label(activity) : kindOf(activity).letter);

  const sayKind = (machine) => machine.kind + (machine.mountedOn ? ` on ${machine.mountedOn}` : "");

  function working() {
    return plan.machines.map((machine) => ({ machine, work: machine.on(choice.day()) }));
  }

  function choose(activity) {
    const chosen = kindOf(activity).chooses(activity);
    if (chosen) choice.choose(...chosen);
  }

  function draw(all, onPaper) {
    const day = choice.day();
    const rows = working();
    const acts = rows.flatMap((row) => row.work);
    const chart = d3.select("#day-chart");
    chart.selectAll("*").remove();
    const busy = acts.filter((activity) => activity.what !== "wait");
    if (busy.length === 0) {
      const waits = new Set(acts.map((activity) => `${plan.machineOf.get(activity.machine).name} waits ${controls.waits(activity)}.`));
      chart.append("p").attr("class", "nothing")
        .text([plan.closed.includes(day) ? "Closed: no machine works on this day." : "No machine works on this day.", ...waits].join(" "));
      return;
    }
    const zero = day * DAY_S;
    const from = Math.max(zero, Math.floor((d3.min(busy, (a) => a.start) - 600) / 3600) * 3600);
    const to = Math.min(zero + DAY_S, Math.ceil((d3.max(busy, (a) => a.end) + 600) / 3600) * 3600);
    const width = Math.max(onPaper ? 0 : 760, all - LABELS - 12);
    const height = TOP + ROW * rows.length + 4;
    const x = d3.scaleLinear([from, to], [20, width - 20]).clamp(true);
    const labels = chart.append("svg").attr("class", "labels").attr("width", LABELS).attr("height", height).attr("aria-hidden", "true");
    const svg = chart.append("div").attr("class", "scroll").append("svg").attr("width", width).attr("height", height)
      .attr("role", "group").attr("aria-label", `${figures.longDay(day)}: each row is a machine; arrow keys move from block to block, Enter selects its load`);
    axis(svg, x, from, to, height);
    rows.forEach((row, i) => {
      const y = TOP + i * ROW;
      offHours(svg, row.machine, x, zero, from, to, y);
      labels.append("text").attr("class", "machine").attr("y", y + 30).text(row.machine.id);
      labels.append("text").attr("class", "small").attr("y", y + 43).text(row.machine.kind);
      if (row.machine.mountedOn) labels.append("text").attr("class", "small").attr("y", y + 54).text(`on ${row.machine.mountedOn}`);
      svg.append("line").attr("class", "ground").attr("x1", 20).attr("x2", width - 20).attr("y1", y + 46).attr("y2", y + 46);
    });
    threads(svg, rows, x);
    const inSight = (activity) => activity.end > from && activity.start < to;
    const groups = rows.map((row, i) => marksOf(svg.append("g")
      .attr("transform", `translate(0,${TOP + i * ROW})`).attr("role", "group").attr("aria-label", `${row.machine.id}, ${sayKind(row.machine)}`), row.work.filter(inSight), x, day));
    controls.rove(groups);
    highlight();
  }

  function axis(svg, x, from, to, height) {
    const hours = d3.range(from, to + 1, 3600);
    const tick = svg.append("g").attr("class", "axis").attr("aria-hidden", "true").selectAll("g").data(hours).join("g").attr("transform", (d) => `translate(${x(d)},0)`);
    tick.append("line").attr("y1", 18).attr("y2", height);
    tick.append("text").attr("y", 13).text((d) => figures.hour(d, to));
  }

  function offHours(svg, machine, x, zero, from, to, y) {
    const free = [];
    let at = from;
    if (!plan.closed.includes(zero / DAY_S)) {
      machine.hours.forEach(([start, end]) => {
        if (zero + start > at) free.push([at, zero + start]);
        at = Math.max(at, zero + end);
      });
    }
    if (at < to) free.push([at, to]);
    svg.append("g").attr("aria-hidden", "true").selectAll("rect").data(free.filter((span) => span[0] < to)).join("rect")
      .attr("class", "off").attr("x", (d) => x(d[0])).attr("width", (d) => x(d[1]) - x(d[0])).attr("y", y + 6).attr("height", ROW - 12);
  }

  function threads(svg, rows, x) {
    const rowOf = new Map(rows.map((row, i) => [row.machine.id, i]));
    const transfers = rows.flatMap((row) => row.work).filter((activity) => activity.what === "transfer");
    svg.append("g").attr("aria-hidden", "true").selectAll("line").data(transfers).join("line").attr("class", "thread")
      .attr("x1", (d) => x((d.start + d.end) / 2)).attr("x2", (d) => x((d.start + d.end) / 2))
      .attr("y1", (d) => TOP + rowOf.get(plan.loads[d.load].planter) * ROW + 44)
      .attr("y2", (d) => TOP + rowOf.get(d.machine) * ROW + 10);
  }

  function marksOf(parent, work, x, day) {
    const mark = parent.selectAll("g").data(work).join("g")
      .attr("class", (d) => `mark ${d.what} ${kindOf(d).look || ""}`).attr("role", "button").attr("data-x", (d) => x(d.start))
      .attr("data-load", (d) => d.load).attr("data-field", (d) => (coversGround(d) ? d.at : null))
      .attr("aria-label", (d) => controls.sentence(d, day))
      .on("click", (event, d) => choose(d));
    const wide = (d) => Math.max(2, x(d.end) - x(d.start) - 1);
    mark.append("rect").attr("class", "reach").attr("x", (d) => x(d.start)).attr("y", 6).attr("width", (d) => Math.max(6, wide(d))).attr("height", ROW - 10);
    mark.append("rect").attr("class", "body")
      .attr("x", (d) => x(d.start)).attr("y", (d) => kindOf(d).y).attr("width", wide).attr("height", (d) => kindOf(d).height)
      .style("fill", fillOf);
    mark.filter((d) => label(d) !== "" && wide(d) >= label(d).length * 7 + 4).append("text")
      .attr("x", (d) => x(d.start) + wide(d) / 2).attr("y", (d) => kindOf(d).y + kindOf(d).height / 2 + 4).text(label);
    controls.tells(mark, "#day-readout", (d) => controls.sentence(d, day));
    return mark.nodes();
  }

  function highlight() {
    const any = choice.any();
    d3.selectAll("#day-chart g.mark").classed("chosen", (d) => any && choice.belongs(d)).classed("dim", (d) => any && !choice.belongs(d))
      .attr("aria-pressed", (d) => String(any && choice.belongs(d)));
    d3.selectAll("#day-chart line.thread").classed("chosen", (d) => choice.belongs(d)).classed("dim", (d) => any && !choice.belongs(d));
    d3.selectAll("#day .chips button").attr("aria-pressed", (d) => String(d.kind === "field" ? choice.hasField(d.index) : choice.hasLoad(d.index)));
  }

  /** On a narrow window what is chosen may lie beside what is seen of the day. */
  function bringIntoSight() {
    const scroll = document.querySelector("#day-chart .scroll");
    const first = document.querySelector("#day-chart g.mark.chosen");
    if (!scroll || !first) return;
    const x = Number(first.dataset.x);
    if (x < scroll.scrollLeft || x > scroll.scrollLeft + scroll.clientWidth) scroll.scrollLeft = Math.max(0, x - 60);
  }

  function around() {
    const day = choice.day();
    const acts = working().flatMap((row) => row.work).filter((activity) => dayOf(activity.start) === day);
    const of = (what) => acts.filter((activity) => activity.what === what);
    const plantings = acts.filter(coversGround);
    const without = plantings.filter(isWithoutExtract);
    d3.select("#day-title").text(figures.longDay(day));
    d3.select("#day-pick").property("value", String(day));
    d3.select("#day-before").property("disabled", before() === undefined);
    d3.select("#day-after").property("disabled", after() === undefined);
    const sums = [
      `${figures.area(d3.sum(plantings, (a) => a.ha))} ${plan.words.all.done}`
        + (without.length > 0 ? `, ${figures.area(d3.sum(without, (a) => a.ha))} of it without extract` : ""),
      figures.count(of("fill").length, "fill", "fills"),
      `${figures.count(of("extract").length, "batch", "batches")} with ${figures.mass(d3.sum(of("extract"), (a) => plan.batches[a.batch].kg))} of compost`,
      `${figures.volume(d3.sum(of("draw"), (a) => a.litres))} of water in ${figures.count(of("draw").length, "water trip", "water trips")}`,
      ...(of("loadCompost").length > 0
        ? [`${figures.mass(d3.sum(of("loadCompost"), (a) => a.kg))} of compost loaded in ${figures.count(of("loadCompost").length, "compost trip", "compost trips")}`]
        : []),
      `${figures.distance(d3.sum(of("move"), (a) => a.km))} of driving`,
    ];
    const rain = plan.rain.filter((shower) => dayOf(shower.at) === day).map((shower) => `rain ${shower.depth}${shower.daily ? "" : ` from ${figures.clock(shower.at)}`}`);
    d3.select("#day-sums").text([...rain, ...sums].join(" · "));
    const cautions = (plan.cautionsByDay[day] || []).map((i) => plan.cautions[i]);
    d3.select("#cautions").selectAll("li").data(cautions).join("li").classed("over", (d) => d.over).text((d) => d.text);
    chips("#day-fields", "Fields", "field", new Set(plantings.map((a) => a.at)), (f) => plan.fields[f].id, (f) => plan.fields[f].name);
    chips("#day-loads", "Loads", "load", new Set([...of("fill"), ...plantings.filter((a) => !isWithoutExtract(a))].map((a) => a.load)), (l) => plan.loads[l].id,
      (l) => `load ${plan.loads[l].id}, ${figures.volume(plan.loads[l].litres)}`);
  }

  function chips(parent, title, kind, indices, text, longText) {
    const box = d3.select(parent);
    box.selectAll("*").remove();
    if (indices.size === 0) return;
    box.append("span").text(title);
    box.selectAll("button").data(Array.from(indices, (index) => ({ kind, index }))).join("button")
      .attr("type", "button").attr("dir", "auto").attr("title", (d) => longText(d.index)).attr("data-index", (d) => d.index).text((d) => text(d.index))
      .on("click", (event, d) => choice.choose(d.kind, d.index));
  }

  const before = () => plan.days.filter((day) => day < choice.day()).pop();
  const after = () => plan.days.find((day) => day > choice.day());

  function start() {
    const tools = d3.select("#day-tools");
    tools.classed("tight", true);
    tools.append("button").attr("type", "button").attr("id", "day-before").text("Previous day").on("click", () => choice.openDay(before()));
    tools.append("button").attr("type", "button").attr("id", "day-after").text("Next day").on("click", () => choice.openDay(after()));
    const pick = tools.append("label").text("Day ").append("select").attr("id", "day-pick").on("change", (event) => choice.openDay(Number(event.target.value)));
    pick.selectAll("option").data(d3.range(plan.season.days)).join("option").attr("value", (d) => d)
      .text((d) => `${figures.day(d)}${plan.days.includes(d) ? "" : " (no work)"}`);
    controls.rest("#day-readout", "Point at or tap a block for details; click it to highlight everything for that load.");
    controls.legend("#day-legend", Object.values(kinds).map((kind) => ({
      text: kind.name + (kind.letter ? ` (${kind.letter})` : ""),
      draw: (svg) => svg.append("g").attr("class", `mark ${kind.look || ""}`).append("rect").attr("class", "body").attr("y", kind.height < 10 ? 5 : 1)
        .attr("width", 26).attr("height", kind.height < 10 ? 4 : 12).style("fill", kind.swatch ? kind.swatch() : null),
    })));
    d3.select("#first-of-all").text(plan.firstOfAll);
    around();
    redraw = controls.drawToWidth(document.getElementById("day-chart"), draw);
    choice.follow(highlight);
    choice.follow(bringIntoSight);
    choice.followDay(() => {
      around();
      redraw();
    });
  }

  return { start };
})();
