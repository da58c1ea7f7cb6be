// Four curves over the season: compost, water, freshness and progress. The tables are their text alternative.
const curves = (() => {
  const MARGIN = { top: 14, right: 16, bottom: 26, left: 58 };
  const HEIGHT = 250;

  function panel(id, title, summary) {
    const figure = d3.select("#curves-charts").append("figure").attr("id", id);
    figure.append("figcaption").append("h3").text(title);
    figure.select("figcaption").append("p").attr("dir", "auto").text(summary);
    const box = figure.append("div").attr("class", "curve");
    figure.append("ul").attr("class", "legend");
    return { box, label: `${title}. ${summary}`, legend: (entries) => controls.legend(`#${id} .legend`, entries) };
  }

  function frame(box, width, label, height = HEIGHT) {
    box.selectAll("svg").remove();
    const svg = box.append("svg").attr("width", width).attr("height", height).attr("role", "img").attr("aria-label", label);
    const x = d3.scaleLinear([0, plan.season.days * DAY_S], [MARGIN.left, width - MARGIN.right]);
    const step = Math.ceil((46 * plan.season.days) / (width - MARGIN.left - MARGIN.right) / 7) * 7;
    const tick = svg.append("g").attr("class", "axis").selectAll("g").data(d3.range(0, plan.season.days, step)).join("g").attr("transform", (d) => `translate(${x(d * DAY_S)},0)`);
    tick.append("line").attr("y1", MARGIN.top).attr("y2", height - MARGIN.bottom);
    tick.append("text").attr("y", height - 9).text(figures.shortDay);
    return { svg, x };
  }

  function scaleY(svg, most, unit, width, top = MARGIN.top, bottom = HEIGHT - MARGIN.bottom, ticks = 4) {
    const y = d3.scaleLinear([0, most || 1], [bottom, top]);
    const tick = svg.append("g").attr("class", "axis y").selectAll("g").data(y.ticks(ticks)).join("g").attr("transform", (d) => `translate(0,${y(d)})`);
    tick.append("line").attr("x1", MARGIN.left).attr("x2", width - MARGIN.right);
    tick.append("text").attr("x", MARGIN.left - 6).attr("y", 4).text((d) => d.toLocaleString("en-US"));
    svg.append("text").attr("class", "small unit").attr("x", 2).attr("y", top + 4).text(unit);
    return y;
  }

  const stepPath = (x, y) => d3.line((d) => x(d.at), (d) => y(d.value)).curve(d3.curveStepAfter);
  const end = () => plan.season.days * DAY_S;

  function compost() {
    const mass = (kg) => figures.inUnit("mass", kg);
    const stock = d3.sum(plan.lots, (lot) => lot.kg);
    const used = d3.sum(plan.batches, (batch) => batch.kg);
    const events = [
      ...plan.lots.map((lot) => ({ at: Math.max(0, lot.from * DAY_S), lot: lot.id, kg: lot.kg, use: 0 })),
      ...plan.batches.flatMap((batch) => Object.entries(batch.lots).map(([lot, kg]) => ({ at: batch.start, lot, kg: -kg, use: kg }))),
    ].filter((event) => event.at <= end()).sort((a, b) => a.at - b.at);
    const left = new Map(plan.lots.map((lot) => [lot.id, 0]));
    let use = 0;
    const rows = [{ at: 0, use: 0, ...Object.fromEntries(left) }];
    events.forEach((event) => {
      left.set(event.lot, Math.max(0, left.get(event.lot) + mass(event.kg)));
      use += mass(event.use);
      rows.push({ at: event.at, use, ...Object.fromEntries(left) });
    });
    rows.push({ ...rows[rows.length - 1], at: end() });
    const view = panel("curve-compost", "Compost in stock, and used",
      `${figures.mass(stock)} in ${figures.count(plan.lots.length, "lot", "lots")}, ${figures.mass(used)} used, ${figures.mass(Math.max(0, stock - used))} left.`);
    controls.drawToWidth(view.box.node(), (width) => {
      const { svg, x } = frame(view.box, width, view.label);
      const stack = d3.stack().keys(plan.lots.map((lot) => lot.id))(rows);
      const y = scaleY(svg, Math.max(use, d3.max(rows, (row) => d3.sum(plan.lots, (lot) => row[lot.id]))), figures.symbol("mass"), width);
      const area = d3.area().x((d) => x(d.data.at)).y0((d) => y(d[0])).y1((d) => y(d[1])).curve(d3.curveStepAfter);
      svg.append("g").selectAll("path").data(stack).join("path").attr("class", "band").attr("d", area).attr("fill", (d, i) => looks.numbered(i));
      svg.append("path").attr("class", "line strong").attr("d", stepPath(x, y)(rows.map((row) => ({ at: row.at, value: row.use }))));
    });
    view.legend([
      ...plan.lots.map((lot, i) => ({ text: `left of ${lot.id}, there from ${figures.shortDay(lot.from)}`, draw: controls.swatch(looks.numbered(i)) })),
      { text: "used so far", draw: (svg) => svg.append("path").attr("class", "line strong").attr("d", "M0,7H26") },
    ]);
  }

  function water() {
    const volume = (litres) => figures.inUnit("volume", litres);
    const draws = plan.work.filter((activity) => activity.what === "draw");
    const points = plan.points.map((point, i) => {
      const byDay = d3.rollups(draws.filter((draw) => draw.at === plan.fields.length + i), (v) => d3.sum(v, (draw) => draw.litres), (draw) => dayOf(draw.start));
      return { ...point, byDay, most: d3.max(byDay, (entry) => entry[1]) || 0 };
    });
    const limit = (point) => (point.limitL ? ` of ${figures.volume(point.limitL)}` : ", no limit given");
    const summary = points.map((point) => `${point.id}: at most ${figures.volume(point.most)}${limit(point)}`).join("; ");
    const view = panel("curve-water", "Water drawn a day, against its limit", `${summary}.`);
    const row = Math.max(78, (HEIGHT - MARGIN.bottom - 8) / points.length);
    const height = row * points.length + MARGIN.bottom + 8;
    controls.drawToWidth(view.box.node(), (width) => {
      const { svg, x } = frame(view.box, width, view.label, height);
      points.forEach((point, i) => {
        const top = 24 + i * row;
        const bottom = (i + 1) * row;
        const y = scaleY(svg, volume(Math.max(point.most, point.limitL || 0)) * 1.04, figures.symbol("volume"), width, top, bottom, 2);
        svg.append("text").attr("class", "small strong").attr("x", MARGIN.left).attr("y", top - 8).text(point.id);
        svg.append("g").selectAll("rect").data(point.byDay).join("rect").attr("class", "water-bar")
          .attr("x", (d) => x(d[0] * DAY_S) + 1).attr("width", Math.max(2, x(DAY_S) - x(0) - 2)).attr("y", (d) => y(volume(d[1]))).attr("height", (d) => bottom - y(volume(d[1])));
        if (point.limitL) svg.append("line").attr("class", "limit").attr("x1", MARGIN.left).attr("x2", width - MARGIN.right).attr("y1", y(volume(point.limitL))).attr("y2", y(volume(point.limitL)));
      });
    });
    view.legend([
      { text: "drawn on the day", draw: (svg) => svg.append("rect").attr("class", "water-bar").attr("width", 26).attr("height", 14) },
      { text: "limit a day", draw: (svg) => svg.append("line").attr("class", "limit").attr("x2", 26).attr("y1", 7).attr("y2", 7) },
    ]);
  }

  function freshness() {
    const hours = (load) => (load.useBy - load.lastDrop) / 3600;
    const least = d3.least(plan.loads, hours);
    const summary = least
      ? `Hours from a load's last drop to its use-by time. Least: ${figures.span(least.useBy - least.lastDrop)}, load ${least.id}; `
        + `in the middle ${figures.span(d3.median(plan.loads, hours) * 3600)}.`
      : "There are no loads.";
    const view = panel("curve-freshness", "Freshness margin of every load", summary);
    const planters = plan.planters.map((planter) => planter.id);
    const symbols = [d3.symbolCircle, d3.symbolDiamond, d3.symbolSquare, d3.symbolTriangle, d3.symbolCross, d3.symbolStar, d3.symbolWye];
    const look = (planter) => planters.indexOf(planter);
    const symbol = (planter, size) => d3.symbol(symbols[look(planter) % symbols.length], size)();
    controls.drawToWidth(view.box.node(), (width) => {
      const { svg, x } = frame(view.box, width, view.label);
      const y = scaleY(svg, d3.max(plan.loads, hours), "h", width);
      svg.append("g").selectAll("path").data(plan.loads).join("path").attr("class", "load")
        .attr("d", (d) => symbol(d.planter, 34)).attr("transform", (d) => `translate(${x(d.lastDrop)},${y(hours(d))})`)
        .attr("fill", (d) => looks.colour(look(d.planter)))
        .on("click", (event, d) => choice.choose("load", plan.loads.indexOf(d)))
        .append("title").text((d) => `${d.id}: ${figures.span(d.useBy - d.lastDrop)}`);
      if (least) {
        svg.append("circle").attr("class", "ring").attr("r", 8).attr("cx", x(least.lastDrop)).attr("cy", y(hours(least)));
      }
      svg.append("line").attr("class", "limit").attr("x1", MARGIN.left).attr("x2", width - MARGIN.right).attr("y1", y(0)).attr("y2", y(0));
      highlight();
    });
    view.legend([
      ...planters.map((planter) => ({ text: planter, draw: (svg) => svg.append("path").attr("class", "load").attr("d", symbol(planter, 60)).attr("transform", "translate(13,7)").attr("fill", looks.colour(look(planter))) })),
      { text: "least", draw: (svg) => svg.append("circle").attr("class", "ring").attr("r", 5).attr("cx", 13).attr("cy", 7) },
    ]);
  }

  function progress() {
    const area = (ha) => figures.inUnit("area", ha);
    const plantings = d3.sort(plan.work.filter((activity) => activity.what === "plant"), (activity) => activity.end);
    const sums = (rows) => {
      let sum = 0;
      return [{ at: 0, value: 0 }, ...rows.map((row) => ({ at: row.at, value: area(sum += row.ha) })), { at: end(), value: area(sum) }];
    };
    const crops = plan.crops.map((name, crop) => ({
      name,
      crop,
      done: sums(plantings.filter((planting) => plan.fields[planting.at].crop === crop)
        .flatMap((planting) => [{ at: planting.start, ha: 0 }, { at: planting.end, ha: planting.ha }])),
      due: sums(d3.sort(plan.fields.filter((field) => field.crop === crop), (field) => field.closes)
        .map((field) => ({ at: Math.max(0, Math.min(end(), (field.closes + 1) * DAY_S)), ha: field.ha }))),
    }));
    const areas = crops.map((crop) => `${crop.name}: ${figures.area(d3.sum(plan.fields.filter((f) => f.crop === crop.crop), (f) => f.ha))}`);
    const view = panel("curve-progress", "Area done, against windows closing",
      `A full line under its dashed line means area that is late. ${areas.join("; ")}.`);
    controls.drawToWidth(view.box.node(), (width) => {
      const { svg, x } = frame(view.box, width, view.label);
      const y = scaleY(svg, d3.max(crops, (crop) => Math.max(crop.done[crop.done.length - 1].value, crop.due[crop.due.length - 1].value)), figures.symbol("area"), width);
      const line = d3.line((d) => x(d.at), (d) => y(d.value));
      crops.forEach((crop) => {
        svg.append("path").attr("class", "line due").attr("stroke", looks.colour(crop.crop)).attr("d", stepPath(x, y)(crop.due));
        svg.append("path").attr("class", "line done").attr("stroke", looks.colour(crop.crop)).attr("d", line(crop.done));
        const last = crop.done[crop.done.length - 1];
        svg.append("text").attr("class", "small end").attr("x", width - MARGIN.right - 2).attr("y", y(last.value) - 5).text(crop.name);
      });
    });
    view.legend(crops.flatMap((crop) => [
      { text: `${crop.name} planted`, draw: (svg) => svg.append("path").attr("class", "line done").attr("stroke", looks.colour(crop.crop)).attr("d", "M0,7H26") },
      { text: `${crop.name} windows closed`, draw: (svg) => svg.append("path").attr("class", "line due").attr("stroke", looks.colour(crop.crop)).attr("d", "M0,7H26") },
    ]));
  }

  function highlight() {
    d3.selectAll("#curve-freshness .curve path.load").classed("dim", (d) => choice.any() && !choice.hasLoad(plan.loads.indexOf(d)))
      .classed("chosen", (d) => choice.any() && choice.hasLoad(plan.loads.indexOf(d)));
  }

  return { start: [compost, water, freshness, progress], highlight };
})();
