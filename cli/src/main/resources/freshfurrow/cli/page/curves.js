// Four curves over the season: compost, water, freshness and progress. Each day, and each load, can be reached and told.
const curves = (() => {
  const { MARGIN, HEIGHT } = frames;
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
      left.set(event.lot, Math.max(0, left.get(event.lot) + event.kg));
      use += event.use;
      rows.push({ at: event.at, use, ...Object.fromEntries(left) });
    });
    rows.push({ ...rows[rows.length - 1], at: end() });
    const upTo = d3.bisector((row) => row.at).right;
    const say = (day) => {
      const row = rows[upTo(rows, (day + 1) * DAY_S) - 1];
      return `${figures.day(day)}, at its end: ${plan.lots.map((lot) => `${figures.mass(row[lot.id])} of ${lot.id}`).join(", ")} left; ${figures.mass(row.use)} used so far`;
    };
    const view = frames.panel("curve-compost", "Compost on hand and used",
      `${figures.mass(stock)} in ${figures.count(plan.lots.length, "lot", "lots")}, ${figures.mass(used)} used, ${figures.mass(Math.max(0, stock - used))} left.`);
    controls.drawToWidth(view.box.node(), (width) => {
      const { svg, x } = frames.frame(view, width);
      const stack = d3.stack().keys(plan.lots.map((lot) => lot.id))(rows);
      const y = frames.scaleY(svg, mass(Math.max(use, d3.max(rows, (row) => d3.sum(plan.lots, (lot) => row[lot.id])))), figures.symbol("mass"), width);
      const area = d3.area().x((d) => x(d.data.at)).y0((d) => y(mass(d[0]))).y1((d) => y(mass(d[1]))).curve(d3.curveStepAfter);
      svg.append("g").selectAll("path").data(stack).join("path").attr("class", "band").attr("d", area).attr("fill", (d, i) => looks.numbered(i));
      svg.append("path").attr("class", "line strong").attr("d", stepPath(x, y)(rows.map((row) => ({ at: row.at, value: mass(row.use) }))));
      controls.rove([frames.days(view, svg, x, MARGIN.top, HEIGHT - MARGIN.bottom, say)]);
    });
    view.legend([
      ...plan.lots.map((lot, i) => ({ text: `${lot.id} on hand (from ${figures.shortDay(lot.from)})`, draw: controls.swatch(looks.numbered(i)) })),
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
    const view = frames.panel("curve-water", "Water drawn each day, and the limit", `${summary}.`);
    const row = Math.max(78, (HEIGHT - MARGIN.bottom - 8) / points.length);
    const height = row * points.length + MARGIN.bottom + 8;
    controls.drawToWidth(view.box.node(), (width) => {
      const { svg, x } = frames.frame(view, width, height);
      const rows = points.map((point, i) => {
        const top = 24 + i * row;
        const bottom = (i + 1) * row;
        const y = frames.scaleY(svg, volume(Math.max(point.most, point.limitL || 0)) * 1.04, figures.symbol("volume"), width, top, bottom, 2);
        svg.append("text").attr("class", "small strong").attr("x", MARGIN.left).attr("y", top - 8).text(point.id);
        svg.append("g").selectAll("rect").data(point.byDay).join("rect").attr("class", "water-bar")
          .attr("x", (d) => x(d[0] * DAY_S) + 1).attr("width", Math.max(2, x(DAY_S) - x(0) - 2)).attr("y", (d) => y(volume(d[1]))).attr("height", (d) => bottom - y(volume(d[1])));
        if (point.limitL) svg.append("line").attr("class", "limit").attr("x1", MARGIN.left).attr("x2", width - MARGIN.right).attr("y1", y(volume(point.limitL))).attr("y2", y(volume(point.limitL)));
        const drawn = new Map(point.byDay);
        return frames.days(view, svg, x, top, bottom, (day) => `${figures.day(day)}, ${point.id}: ${figures.volume(drawn.get(day) || 0)} drawn${limit(point)}`);
      });
      controls.rove(rows);
    });
    view.legend([
      { text: "drawn on the day", draw: (svg) => svg.append("rect").attr("class", "water-bar").attr("width", 26).attr("height", 14) },
      { text: "daily limit", draw: (svg) => svg.append("line").attr("class", "limit").attr("x2", 26).attr("y1", 7).attr("y2", 7) },
    ]);
  }

  function freshness() {
    const hours = (load) => (load.useBy - load.lastDrop) / 3600;
    const least = d3.least(plan.loads, hours);
    const summary = least
      ? `Time from each load's last drop to its use-by time. Tightest: ${figures.span(least.useBy - least.lastDrop)}, load ${least.id}; `
        + `median ${figures.span(d3.median(plan.loads, hours) * 3600)}.`
      : "There are no loads.";
    const view = frames.panel("curve-freshness", "Margin of every load", summary,
      "Point at or tap a load, or use the arrow keys; Enter selects one.");
    const say = (load) => `Load ${load.id} of ${plan.machineOf.get(load.planter).name}: ${figures.span(load.useBy - load.lastDrop)} from its last drop on ${figures.time(load.lastDrop)} to its use-by time`;
    const planters = plan.planters.map((planter) => planter.id);
    const symbols = [d3.symbolCircle, d3.symbolDiamond, d3.symbolSquare, d3.symbolTriangle, d3.symbolCross, d3.symbolStar, d3.symbolWye];
    const look = (planter) => planters.indexOf(planter);
    const symbol = (planter, size) => d3.symbol(symbols[look(planter) % symbols.length], size)();
    controls.drawToWidth(view.box.node(), (width) => {
      const { svg, x } = frames.frame(view, width);
      const y = frames.scaleY(svg, d3.max(plan.loads, hours), "h", width);
      const mark = svg.append("g").selectAll("path").data(d3.sort(plan.loads, (load) => load.lastDrop)).join("path").attr("class", "load")
        .attr("role", "button").attr("aria-label", say).attr("data-x", (d) => x(d.lastDrop))
        .attr("d", (d) => symbol(d.planter, 34)).attr("transform", (d) => `translate(${x(d.lastDrop)},${y(hours(d))})`)
        .attr("fill", (d) => looks.colour(look(d.planter)))
        .on("click", (event, d) => choice.choose("load", plan.loads.indexOf(d)));
      controls.tells(mark, view.readout, say);
      if (least) {
        svg.append("circle").attr("class", "ring").attr("r", 8).attr("cx", x(least.lastDrop)).attr("cy", y(hours(least)));
      }
      svg.append("line").attr("class", "limit").attr("x1", MARGIN.left).attr("x2", width - MARGIN.right).attr("y1", y(0)).attr("y2", y(0));
      highlight();
      controls.rove(planters.map((planter) => mark.nodes().filter((node) => d3.select(node).datum().planter === planter)));
    });
    view.legend([
      ...planters.map((planter) => ({ text: plan.machineOf.get(planter).name, draw: (svg) => svg.append("path").attr("class", "load").attr("d", symbol(planter, 60)).attr("transform", "translate(13,7)").attr("fill", looks.colour(look(planter))) })),
      { text: "least", draw: (svg) => svg.append("circle").attr("class", "ring").attr("r", 5).attr("cx", 13).attr("cy", 7) },
    ]);
  }

  function progress() {
    const area = (ha) => figures.inUnit("area", ha);
    const plantings = d3.sort(plan.work.filter(coversGround), (activity) => activity.end);
    const sums = (rows) => {
      let sum = 0;
      return [{ at: 0, value: 0 }, ...rows.map((row) => ({ at: row.at, value: sum += row.ha })), { at: end(), value: sum }];
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
    const reached = (curve, day) => figures.area(d3.max(curve.filter((point) => point.at <= (day + 1) * DAY_S), (point) => point.value));
    const say = (day) => `${figures.day(day)}, at its end: ${crops.map((crop) => `${reached(crop.done, day)} of ${crop.name} ${fieldWords.ofCrop(crop.crop).done}, windows of ${reached(crop.due, day)} closed`).join("; ")}`;
    const view = frames.panel("curve-progress", `Area ${plan.words.all.done}, and windows closing`,
      `Where a solid line runs below its dashed line, area is late. ${areas.join("; ")}.`);
    controls.drawToWidth(view.box.node(), (width) => {
      const { svg, x } = frames.frame(view, width);
      const y = frames.scaleY(svg, area(d3.max(crops, (crop) => Math.max(crop.done[crop.done.length - 1].value, crop.due[crop.due.length - 1].value))), figures.symbol("area"), width);
      const inArea = (curve) => curve.map((point) => ({ at: point.at, value: area(point.value) }));
      const line = d3.line((d) => x(d.at), (d) => y(d.value));
      crops.forEach((crop) => {
        svg.append("path").attr("class", "line due").attr("stroke", looks.colour(crop.crop)).attr("d", stepPath(x, y)(inArea(crop.due)));
        svg.append("path").attr("class", "line done").attr("stroke", looks.colour(crop.crop)).attr("d", line(inArea(crop.done)));
        const last = crop.done[crop.done.length - 1];
        svg.append("text").attr("class", "small end").attr("x", width - MARGIN.right - 2).attr("y", y(area(last.value)) - 5).text(crop.name);
      });
      controls.rove([frames.days(view, svg, x, MARGIN.top, HEIGHT - MARGIN.bottom, say)]);
    });
    view.legend(crops.flatMap((crop) => [
      { text: `${crop.name} ${fieldWords.ofCrop(crop.crop).done}`, draw: (svg) => svg.append("path").attr("class", "line done").attr("stroke", looks.colour(crop.crop)).attr("d", "M0,7H26") },
      { text: `${crop.name} windows closed`, draw: (svg) => svg.append("path").attr("class", "line due").attr("stroke", looks.colour(crop.crop)).attr("d", "M0,7H26") },
    ]));
  }

  function highlight() {
    d3.selectAll("#curve-freshness .curve path.load").classed("dim", (d) => choice.any() && !choice.hasLoad(plan.loads.indexOf(d)))
      .classed("chosen", (d) => choice.any() && choice.hasLoad(plan.loads.indexOf(d)))
      .attr("aria-pressed", (d) => String(choice.any() && choice.hasLoad(plan.loads.indexOf(d))));
  }

  function markDay() {
    d3.selectAll("#curves g.day").attr("aria-pressed", (day) => String(day === choice.day()));
  }

  return { markDay, start: [compost, water, freshness, progress], highlight };
})();
