// Fields, loads and batches as tables that can be sorted and searched. Long ones are built a part at a time.
const tables = (() => {
  const PART = 60;

  /** @param columns each with name, text, sort, and choose (kind) where its cells choose something */
  function table(section, things, columns, rows) {
    const root = d3.select(section);
    const tools = root.append("div").attr("class", "tools");
    const search = tools.append("label").text("Search ").append("input").attr("type", "search").attr("autocomplete", "off");
    const status = tools.append("span").attr("role", "status");
    const box = root.append("div").attr("class", "wide").attr("tabindex", 0).attr("role", "region").attr("aria-label", `Table of ${things}`);
    const grid = box.append("table");
    const head = grid.append("thead").append("tr").selectAll("th").data(columns).join("th").attr("scope", "col").classed("number", (c) => c.number);
    head.append("button").attr("type", "button").text((c) => c.name).on("click", (event, c) => {
      down = sorted === c ? !down : false;
      sorted = c;
      fill();
    });
    const body = grid.append("tbody");
    const more = root.append("button").attr("type", "button").attr("class", "more").on("click", () => {
      shown += 400;
      fill();
    });
    let sorted = columns[0];
    let down = false;
    let shown = PART;
    const texts = rows.map((row) => columns.map((c) => c.text(row)).join("\n").toLocaleLowerCase());
    search.on("input", () => {
      shown = PART;
      fill();
    });

    function fill() {
      const words = search.property("value").toLocaleLowerCase().split(/\s+/).filter((word) => word !== "");
      const found = rows.filter((row, i) => words.every((word) => texts[i].includes(word)));
      const ordered = d3.sort(found, (a, b) => (down ? -1 : 1) * d3.ascending(sorted.sort(a), sorted.sort(b)));
      head.attr("aria-sort", (c) => (c === sorted ? (down ? "descending" : "ascending") : null));
      const part = ordered.slice(0, shown);
      const row = body.selectAll("tr").data(part, (d) => d.index).join((enter) => {
        const line = enter.append("tr").attr("data-index", (d) => d.index);
        columns.forEach((c) => {
          const cell = line.append(c === columns[0] ? "th" : "td").attr("scope", c === columns[0] ? "row" : null)
            .classed("number", c.number).classed("words", c.words);
          if (c.choose) {
            cell.append("button").attr("type", "button").attr("class", "choose").attr("dir", "auto").text(c.text)
              .on("click", (event, d) => choice.choose(c.choose, d.index));
          } else {
            cell.attr("dir", "auto").text(c.text);
          }
        });
        return line;
      });
      row.order();
      status.text(`${part.length} of ${found.length} shown`);
      more.text(`Show more ${things}`).property("hidden", part.length === found.length);
      highlight();
    }

    function highlight() {
      const belongs = { fields: choice.hasField, loads: choice.hasLoad, batches: choice.hasBatch }[things];
      const one = { fields: "field", loads: "load", batches: "batch" }[things];
      body.selectAll("tr").classed("chosen", (d) => belongs(d.index))
        .select("button.choose").attr("aria-pressed", (d) => String(choice.is(one, d.index)));
    }

    fill();
    choice.follow(highlight);
    window.addEventListener("beforeprint", () => {
      if (things === "fields") {
        shown = Infinity;
        fill();
      }
    });
  }

  /** Columns that stand in a table only where a plan has what they tell. */
  const where = (holds, column) => (holds ? [column] : []);
  const numbered = (rows) => rows.map((row, index) => ({ ...row, index }));

  function fields() {
    table("#fields", "fields", [
      { name: "field", text: (d) => d.id, sort: (d) => d.id, choose: "field" },
      { name: "name", text: (d) => d.name, sort: (d) => d.name },
      { name: "crop", text: (d) => plan.crops[d.crop], sort: (d) => plan.crops[d.crop] },
      { name: "area", text: (d) => figures.area(d.ha), sort: (d) => d.ha, number: true },
      { name: plan.words.all.done, text: fieldWords.days, sort: (d) => (d.from === undefined ? Infinity : d.from) },
      { name: "by", text: (d) => d.planter || "-", sort: (d) => d.planter || "" },
      ...where(plan.work.some(isWithoutExtract), {
        name: "without extract", text: (d) => (d.haWithout > 0 ? figures.area(d.haWithout) : "-"), sort: (d) => d.haWithout, number: true,
      }),
      { name: "window", text: (d) => `${figures.shortDay(d.opens)} to ${figures.shortDay(d.closes)}`, sort: (d) => d.closes },
      { name: "days to spare or late", text: fieldWords.slack, sort: (d) => (d.leftHa !== undefined ? -Infinity : d.closes - d.lastDay) },
      { name: "why", text: fieldWords.why, sort: fieldWords.why, words: true },
    ], numbered(plan.fields));
  }

  // batches that follow one another by the first and the last
  function inTurn(load) {
    const ids = load.batches.map((i) => plan.batches[i].id);
    const last = ids.length - 1;
    return last > 1 && load.batches[last] - load.batches[0] === last ? `${ids[0]} to ${ids[last]}` : ids.join(", ");
  }

  function loads() {
    table("#loads", "loads", [
      { name: "load", text: (d) => d.id, sort: (d) => d.index, choose: "load" },
      { name: "filled", text: (d) => figures.shortTime(d.start), sort: (d) => d.start },
      { name: plan.words.all.machine, text: (d) => plan.machineOf.get(d.planter).name, sort: (d) => d.planter },
      { name: "rig", text: (d) => d.rig, sort: (d) => d.rig },
      { name: "recipe", text: (d) => d.recipe, sort: (d) => d.recipe },
      { name: "mix", text: (d) => figures.volume(d.litres), sort: (d) => d.litres, number: true },
      { name: "area", text: (d) => figures.area(d.ha), sort: (d) => d.ha, number: true },
      { name: "batches", text: inTurn, sort: (d) => d.batches.length },
      { name: "fields", text: (d) => Array.from(d.haByField.keys(), (i) => plan.fields[i].id).join(", "), sort: (d) => d.haByField.size },
      { name: "last drop", text: (d) => figures.clockOn(d.lastDrop, dayOf(d.start)), sort: (d) => d.lastDrop },
      { name: "use by", text: (d) => figures.clockOn(d.useBy, dayOf(d.start)), sort: (d) => d.useBy },
      { name: "margin", text: (d) => figures.span(d.useBy - d.lastDrop), sort: (d) => d.useBy - d.lastDrop, number: true },
      { name: "dumped", text: (d) => (d.dumpedL ? figures.volume(d.dumpedL) : "-"), sort: (d) => d.dumpedL || 0, number: true },
    ], numbered(plan.loads));
  }

  function batches() {
    table("#batches", "batches", [
      { name: "batch", text: (d) => d.id, sort: (d) => d.index, choose: "batch" },
      { name: "started", text: (d) => figures.shortTime(d.start), sort: (d) => d.start },
      { name: "ready", text: (d) => figures.clock(d.end), sort: (d) => d.end },
      { name: "rig", text: (d) => d.rig, sort: (d) => d.rig },
      { name: "compost", text: (d) => figures.mass(d.kg), sort: (d) => d.kg, number: true },
      { name: "water", text: (d) => figures.volume(d.waterL), sort: (d) => d.waterL, number: true },
      { name: "lots", text: (d) => Object.entries(d.lots).map(([lot, kg]) => `${lot} ${figures.mass(kg)}`).join(", "), sort: (d) => Object.keys(d.lots).join() },
      { name: "loads", text: (d) => d.loads.map((i) => plan.loads[i].id).join(", ") || "none", sort: (d) => d.loads[0] },
    ], numbered(plan.batches));
  }

  return { start: [fields, loads, batches] };
})();
