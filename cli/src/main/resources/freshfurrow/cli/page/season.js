// The season: rows are machines, columns are days.
const seasonChart = (() => {
  const ROW = 46;
  const TOP = 46;
  const RAIN = 24;
  const WET = 12;
  const LABELS = 92;
  let by = "crop";
  let redraw = () => {};

  const hasWeather = () => plan.rain.length > 0 || plan.wet.some((ground) => ground.times.length > 0);
  const weatherHeight = () => (hasWeather() ? RAIN + WET * plan.wet.length + 6 : 0);

  /** What a machine put out on a day, by crop or by field, and with extract or without: hectares planted or litres pumped. */
  function output(machine, day) {
    const sums = new Map();
    const add = (field, amount, without = false) => {
      const key = by === "crop" ? plan.fields[field].crop : field;
      const id = 2 * key + Number(without);
      sums.set(id, { key, without, amount: (sums.has(id) ? sums.get(id).amount : 0) + amount });
    };
    machine.on(day).filter((activity) => dayOf(activity.start) === day).forEach((activity) => {
      if (coversGround(activity)) {
        add(activity.at, activity.ha, isWithoutExtract(activity));
      } else if (activity.what === "transfer") {
        const load = plan.loads[activity.load];
        load.haByField.forEach((ha, field) => add(field, (activity.litres * ha) / load.ha));
      }
    });
    return d3.sort(sums, ([id]) => id).map(([, sum]) => sum);
  }

  const total = (sums) => d3.sum(sums, (sum) => sum.amount);

  const amount = (machine, sum) => (machine.kind === "rig" ? figures.volume(sum) : figures.area(sum));

  function sayOutput(machine, day) {
    const sums = output(machine, day);
    const without = total(sums.filter((sum) => sum.without));
    return `${machine.id} ${amount(machine, total(sums))} ${machine.kind === "rig" ? "transferred" : plan.words[machine.does].done}`
      + (without > 0 ? `, ${figures.area(without)} of it without extract` : "");
  }

  function lateHa(machine, day) {
    return d3.sum(machine.on(day).filter((activity) => coversGround(activity) && dayOf(activity.start) === day
      && day > plan.fields[activity.at].closes), (activity) => activity.ha);
  }

  function sayDay(day) {
    const parts = plan.machines.filter((machine) => total(output(machine, day)) > 0).map((machine) => sayOutput(machine, day));
    const late = d3.sum(plan.machines, (machine) => lateHa(machine, day));
    const closed = plan.closed.includes(day) ? "; closed" : "";
    const rain = plan.rain.filter((shower) => dayOf(shower.at) === day).map((shower) => `; rain ${shower.depth}${shower.daily ? "" : ` from ${figures.clock(shower.at)}`}`).join("");
    const wet = plan.wet.filter((ground) => ground.why[day]).map((ground) => `; ${ground.why[day]}`).join("");
    return `${figures.day(day)}: ${parts.join(", ") || `nothing ${plan.words.all.done} or transferred`}${late > 0 ? `; ${figures.area(late)} of it late` : ""}${rain}${wet}${closed}`;
  }

  function segments(machine, width, left, height) {
    const days = d3.range(plan.season.days).map((day) => ({ day, sums: output(machine, day) }));
    const most = d3.max(days, (each) => total(each.sums)) || 0;
    const y = d3.scaleLinear([0, most || 1], [0, height]);
    const bars = days.flatMap(({ day, sums }) => {
      let below = 0;
      return sums.map(({ key, without, amount: value }) => {
        const bar = { day, key, without, x: left(day) + 1, width: width - 2, y: height - y(below + value), height: y(value) };
        below += value;
        return bar;
      });
    });
    return { most, bars };
  }

  function draw(all, onPaper) {
    const chart = d3.select("#season-chart");
    const scrolled = chart.select(".scroll").empty() ? 0 : chart.select(".scroll").node().scrollLeft;
    chart.selectAll("*").remove();
    const column = Math.max(onPaper ? 0 : 17, (all - LABELS) / plan.season.days);
    const left = (day) => day * column;
    const top = TOP + weatherHeight();
    const height = top + ROW * plan.machines.length + 4;
    const width = column * plan.season.days;
    const labels = chart.append("svg").attr("class", "labels").attr("width", LABELS).attr("height", height).attr("aria-hidden", "true");
    const svg = chart.append("div").attr("class", "scroll").append("svg").attr("width", width).attr("height", height)
      .attr("role", "group").attr("aria-label", "The season by day; arrow keys move from day to day, Enter opens one");
    const back = svg.append("g").attr("aria-hidden", "true");
    head(back, left, column);
    weather(back, labels, column, top, height);
    back.append("g").selectAll("rect").data(plan.closed).join("rect")
      .attr("x", left).attr("y", top).attr("width", column).attr("height", height - top).attr("fill", looks.closed);
    plan.machines.forEach((machine, i) => {
      const y = top + i * ROW;
      const { most, bars } = segments(machine, column, left, ROW - 12);
      back.append("line").attr("class", "ground").attr("x2", width).attr("y1", y + ROW - 2).attr("y2", y + ROW - 2);
      const parts = (name, some, fill) => back.append("g").attr("transform", `translate(0,${y + 10})`).selectAll("rect").data(some).join("rect")
        .attr("class", name)
        .attr("x", (d) => d.x).attr("y", (d) => d.y).attr("width", (d) => d.width).attr("height", (d) => d.height)
        .attr("fill", fill)
        .attr("data-field", (d) => (by === "field" ? d.key : null));
      parts("part", bars, (d) => (by === "crop" ? looks.crop(d.key) : looks.field(d.key)));
      parts("part without", bars.filter((bar) => bar.without), looks.without);
      back.append("g").selectAll("path").data(d3.range(plan.season.days).filter((day) => lateHa(machine, day) > 0)).join("path")
        .attr("class", "late").attr("d", (day) => `M${left(day) + column / 2 - 4},${y + 1}h8l-4,6z`);
      labels.append("text").attr("class", "machine").attr("x", 0).attr("y", y + 17).text(machine.id);
      labels.append("text").attr("class", "small").attr("x", 0).attr("y", y + 29).text(machine.kind);
      labels.append("text").attr("class", "small").attr("x", 0).attr("y", y + 41).text(most > 0 ? `to ${amount(machine, most)}` : "no work");
    });
    const day = svg.selectAll("g.day").data(d3.range(plan.season.days)).join("g")
      .attr("class", "day").attr("role", "button").attr("data-x", left).attr("data-day", (d) => d)
      .attr("aria-label", sayDay)
      .on("click", (event, d) => {
        choice.openDay(d);
        document.getElementById("day").scrollIntoView({ block: "start" });
      });
    day.append("rect").attr("x", left).attr("y", 18).attr("width", column).attr("height", height - 20);
    marks();
    controls.tells(day, "#season-readout", sayDay);
    controls.rove([day.nodes()]);
    chart.select(".scroll").node().scrollLeft = scrolled;
  }

  function head(back, left, column) {
    const month = d3.utcFormat("%B");
    const days = d3.range(plan.season.days);
    const date = (day) => figures.at(day * DAY_S);
    back.selectAll("text.month").data(days.filter((day) => day === 0 || date(day).getUTCDate() === 1)).join("text")
      .attr("class", "month").attr("x", (day) => left(day) + 2).attr("y", 13).text((day) => month(date(day)));
    back.selectAll("text.date").data(days).join("text")
      .attr("class", "date").attr("x", (day) => left(day) + column / 2).attr("y", 30).text((day) => date(day).getUTCDate());
    back.selectAll("text.weekday").data(days).join("text")
      .attr("class", "weekday").attr("x", (day) => left(day) + column / 2).attr("y", 42).text((day) => "SMTWTFS"[date(day).getUTCDay()]);
  }

  function weather(back, labels, column, top, height) {
    if (!hasWeather()) return;
    const x = (time) => (time / DAY_S) * column;
    labels.append("text").attr("class", "small").attr("y", TOP + 16).text("rain");
    const drop = back.append("g").selectAll("g").data(plan.rain).join("g").attr("transform", (d) => `translate(${x(d.at)},${TOP + 4})`);
    drop.append("path").attr("class", "drop").attr("d", "M0,0C4,6 5,8 5,11A5,5 0 1 1 -5,11C-5,8 -4,6 0,0z");
    drop.filter((d, i) => i + 1 === plan.rain.length || x(plan.rain[i + 1].at) - x(d.at) > 56).append("text").attr("class", "small").attr("x", 8).attr("y", 13).text((d) => d.depth);
    plan.wet.forEach((wet, i) => {
      const y = TOP + RAIN + i * WET;
      labels.append("text").attr("class", "small").attr("y", y + 9).text(wet.fields || (wet.drainage === "well" ? "well drained" : `${wet.drainage}ly`));
      back.append("g").selectAll("rect").data(wet.times).join("rect")
        .attr("class", "wet").attr("x", (d) => x(d[0])).attr("width", (d) => x(d[1]) - x(d[0])).attr("y", y).attr("height", WET - 2).attr("fill", looks.wet);
    });
    // where all fields are too wet, nothing can be planted at all
    back.append("g").selectAll("rect").data(plan.wetEverywhere).join("rect")
      .attr("x", (d) => x(d[0])).attr("width", (d) => x(d[1]) - x(d[0])).attr("y", top).attr("height", height - top).attr("fill", looks.wet).attr("opacity", 0.55);
  }

  function marks() {
    d3.selectAll("#season-chart g.day")
      .attr("aria-pressed", (day) => String(day === choice.day()))
      .classed("has-chosen", (day) => choice.any() && plan.machines.some((machine) => machine.on(day).some(choice.belongs)));
    d3.selectAll("#season-chart rect.part").classed("dim", (d) => choice.any() && by === "field" && !choice.hasField(d.key));
  }

  function legend() {
    const crops = plan.crops.map((name, i) => ({ text: name, draw: controls.swatch(looks.crop(i)) }));
    controls.legend("#season-legend", [
      ...(by === "crop" ? crops : [{ text: "each field has its own color and texture; point at a day for names", draw: controls.swatch(looks.field(0)) }]),
      ...(plan.work.some(isWithoutExtract) ? [{ text: "planted without extract", draw: controls.swatch(looks.without) }] : []),
      { text: "closed", draw: controls.swatch(looks.closed) },
      ...(hasWeather() ? [{ text: `too wet to ${plan.words.all.verb}`, draw: controls.swatch(looks.wet) }] : []),
      { text: `some ${plan.words.all.done} late`, draw: (svg) => svg.append("path").attr("class", "late").attr("d", "M7,3h12l-6,9z") },
      { text: "day shown below", draw: (svg) => svg.append("rect").attr("class", "day-swatch").attr("x", 6).attr("y", 1).attr("width", 12).attr("height", 12) },
    ]);
  }

  function start() {
    controls.toggle("#season-tools", "Color by", ["crop", "field"], by, (chosen) => {
      by = chosen;
      redraw();
      legend();
    });
    controls.rest("#season-readout", "Point at or tap a day for details, or use the arrow keys; click it to see it hour by hour.");
    legend();
    redraw = controls.drawToWidth(document.getElementById("season-chart"), draw);
    choice.follow(marks);
    choice.followDay(marks);
  }

  return { start };
})();
