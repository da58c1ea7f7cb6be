// The ground: fields where they lie, water points, places, and the ways of the day.
const groundMap = (() => {
  // degrees to metres on a sphere of the Earth's mean radius; for drawing only
  const M_PER_DEGREE = 111195;
  const DROP = "M0,-10C5,-3 7,0 7,4A7,7 0 1 1 -7,4C-7,0 -5,-3 0,-10z";
  const LINE = 12;
  let zoomed = d3.zoomIdentity;
  let whose = "";
  let redraw = () => {};

  const located = () => plan.spots.filter((spot) => spot.at);
  const dated = plan.fields.filter((field) => field.from !== undefined);
  const date = d3.scaleSequential(d3.extent(dated, (field) => dayOf(field.from)), d3.interpolateCividis);
  const overField = (field) => (field.haWithout === 0 ? null : fieldWords.isPartly(field) ? looks.partlyWithout : looks.without);
  const fieldFill = (field) => (field.from === undefined ? looks.wait : date(dayOf(field.from)));

  function projection(width) {
    const points = located().flatMap((spot) => (spot.rings ? spot.rings.flat() : [spot.at]));
    const middle = d3.mean(d3.extent(points, (p) => p[1]));
    const squeeze = Math.cos((middle * Math.PI) / 180);
    const xs = d3.extent(points, (p) => p[0] * squeeze * M_PER_DEGREE);
    const ys = d3.extent(points, (p) => p[1] * M_PER_DEGREE);
    const margin = 46;
    const wide = Math.max(500, xs[1] - xs[0]);
    const high = Math.max(500, ys[1] - ys[0]);
    const scale = Math.min((width - 2 * margin) / wide, (Math.max(320, Math.min(760, width)) - 2 * margin) / high);
    const height = Math.max(260, high * scale + 2 * margin);
    const cx = (xs[0] + xs[1]) / 2;
    const cy = (ys[0] + ys[1]) / 2;
    return {
      height,
      scale,
      at: (p) => [width / 2 + (p[0] * squeeze * M_PER_DEGREE - cx) * scale, height / 2 - (p[1] * M_PER_DEGREE - cy) * scale],
    };
  }

  const radius = (field, scale) => Math.max(3.5, Math.sqrt((field.ha * 10000) / Math.PI) * scale);

  function outline(field, to, scale) {
    if (field.rings) return field.rings.map((ring) => `M${ring.map((p) => to(p).map((v) => v.toFixed(1)).join(",")).join("L")}Z`).join("");
    const [x, y] = to(field.at);
    const r = radius(field, scale);
    return `M${x - r},${y}a${r},${r} 0 1 0 ${2 * r},0a${r},${r} 0 1 0 ${-2 * r},0Z`;
  }

  /** Inside a field where its name has room and no texture lies behind it; else below it, or above it at the map's lower edge. */
  function labelAt(field, to, scale, lines, height) {
    const ring = field.rings ? field.rings[0].map(to) : null;
    const [x, y] = ring ? d3.polygonCentroid(ring) : to(field.at);
    if (radius(field, scale) >= 30 && field.haWithout === 0) return [x, y - 1];
    const r = radius(field, scale);
    const [top, bottom] = ring ? d3.extent(ring, (p) => p[1]) : [y - r, y + r];
    return [x, bottom < height && bottom + LINE * lines + 2 > height ? top - LINE * (lines - 1) - 5 : bottom + 13];
  }

  function draw(width) {
    const chart = d3.select("#map-chart");
    chart.selectAll("*").remove();
    const { height, scale, at } = projection(width);
    const to = (p) => zoomed.apply(at(p));
    const shown = scale * zoomed.k;
    const svg = chart.append("svg").attr("width", width).attr("height", height).attr("role", "group")
      .attr("aria-label", "Map of the fields; arrow keys move from field to field in planting order, Enter selects one");
    const fields = plan.fields.map((field, index) => ({ field, index })).filter((each) => each.field.at || each.field.rings);
    // small fields lie on large ones
    const shapes = svg.append("g").selectAll("g").data(d3.sort(fields, (d) => -d.field.ha)).join("g")
      .attr("class", "field").attr("role", "button").attr("data-field", (d) => d.index)
      .attr("aria-label", (d) => fieldWords.sentence(d.field))
      .on("click", (event, d) => choice.choose("field", d.index));
    const shape = (some, fill) => some.append("path").attr("fill-rule", "evenodd").attr("d", (d) => outline(d.field, to, shown)).attr("fill", fill);
    shape(shapes, (d) => fieldFill(d.field));
    shape(shapes.filter((d) => d.field.haWithout > 0), (d) => overField(d.field)).attr("class", "over");
    names(svg.append("g").attr("class", "names").attr("aria-hidden", "true"), shapes.data(), to, shown, width, height);
    ways(svg.append("g").attr("class", "ways").attr("aria-hidden", "true"), to);
    spots(svg.append("g").attr("aria-hidden", "true"), to, width);
    scaleBar(svg, shown, height);
    controls.tells(shapes, "#map-readout", (d) => fieldWords.sentence(d.field));
    controls.rove([d3.sort(shapes.nodes(), (node) => { const { from } = d3.select(node).datum().field; return from === undefined ? Infinity : from; })]);
    svg.call(d3.zoom().scaleExtent([1, 12]).filter((event) => (event.type === "wheel" ? event.ctrlKey : event.type !== "touchstart" || event.touches.length > 1))
      .on("zoom", (event) => {
        if (event.sourceEvent) move(event.transform);
      })).call((s) => { s.node().__zoom = zoomed; });
    highlight();
  }

  const spotWidth = (spot) => 7.5 * spot.id.length;
  const leftward = (spot, x, width) => x <= width && x + 14 + spotWidth(spot) > width;

  /** Names of as many fields as have room, the largest first; none is cut off by the map's edge while its field is on the map. */
  function names(group, fields, to, scale, width, height) {
    const taken = plan.points.concat(plan.places).filter((spot) => spot.at).map((spot) => {
      const [x, y] = to(spot.at);
      const end = 14 + spotWidth(spot);
      return leftward(spot, x, width) ? [x - end, y - 11, x + 10, y + 10] : [x - 10, y - 11, x + end, y + 10];
    });
    const free = (box) => taken.every((other) => box[2] < other[0] || box[0] > other[2] || box[3] < other[1] || box[1] > other[3]);
    fields.forEach(({ field, index }) => {
      const when = field.from === undefined ? fieldWords.of(field).undone : figures.shortDay(dayOf(field.from));
      const what = fieldWords.mark(field);
      const lines = what ? 3 : 2;
      const [centre, y] = labelAt(field, to, scale, lines, height);
      const half = Math.max(field.id.length * 4.2, Math.max(when.length, what.length) * 3.1);
      const x = centre < 0 || centre > width ? centre : Math.max(half + 2, Math.min(width - half - 2, centre));
      const box = [x - half, y - 11, x + half, y + LINE * (lines - 1) + 2];
      if (!free(box)) return;
      taken.push(box);
      const name = group.append("text").datum({ index }).attr("transform", `translate(${x},${y})`);
      name.append("tspan").attr("x", 0).attr("y", 0).text(field.id);
      name.append("tspan").attr("class", "when").attr("x", 0).attr("y", LINE).text(when);
      if (what) name.append("tspan").attr("class", "when what").attr("x", 0).attr("y", 2 * LINE).text(what);
    });
  }

  function move(transform) {
    zoomed = transform;
    window.requestAnimationFrame(() => redraw());
  }

  function ways(group, to) {
    const moves = plan.machines.filter((machine) => whose === "" || machine.id === whose).flatMap((machine, m) => machine.on(choice.day()).filter((activity) => activity.what === "move")
      .map((activity) => ({ activity, machine, m })))
      .filter((way) => plan.spots[way.activity.from].at && plan.spots[way.activity.to].at && way.activity.from !== way.activity.to);
    const way = group.selectAll("g").data(moves).join("g").attr("class", (d) => `way ${d.machine.kind}`);
    way.append("path").attr("d", ({ activity }) => {
      const road = plan.ways.get(`${activity.from} ${activity.to}`);
      return road ? along(road.map(to)) : bow(to(plan.spots[activity.from].at), to(plan.spots[activity.to].at));
    });
  }

  const headOf = ([x, y], angle) => {
    const side = (turn) => `L${x - 8 * Math.cos(angle + turn)},${y - 8 * Math.sin(angle + turn)}M${x},${y}`;
    return `${side(0.45)}${side(-0.45)}`;
  };

  function along(points) {
    const end = points[points.length - 1];
    const before = points.findLast(([x, y]) => Math.hypot(x - end[0], y - end[1]) > 1) || points[0];
    return `M${points.map((p) => p.join(",")).join("L")}${headOf(end, Math.atan2(end[1] - before[1], end[0] - before[0]))}`;
  }

  /** A line bent a little to its right, so that there and back again do not hide one another. */
  function bow([x1, y1], [x2, y2]) {
    const mx = (x1 + x2) / 2 + (y1 - y2) * 0.08;
    const my = (y1 + y2) / 2 + (x2 - x1) * 0.08;
    return `M${x1},${y1}Q${mx},${my} ${x2},${y2}${headOf([x2, y2], Math.atan2(y2 - my, x2 - mx))}`;
  }

  function spots(group, to, width) {
    const points = plan.points.filter((point) => point.at);
    const water = group.selectAll("g.water").data(points).join("g").attr("class", "water").attr("transform", (d) => `translate(${to(d.at)})`);
    water.append("path").attr("d", DROP);
    const place = group.selectAll("g.place").data(plan.places.filter((spot) => spot.at)).join("g").attr("class", "place").attr("transform", (d) => `translate(${to(d.at)})`);
    place.append("path").attr("d", "M-7,7V-2L0,-8L7,-2V7z");
    group.selectAll("g").append("text").attr("x", (d) => (leftward(d, to(d.at)[0], width) ? -11 : 11)).attr("y", 5)
      .style("text-anchor", (d) => (leftward(d, to(d.at)[0], width) ? "end" : "start")).text((d) => d.id);
  }

  function scaleBar(svg, scale, height) {
    const unit = plan.units.distance;
    const pxPerUnit = (scale * 1000) / unit.perSi;
    const steps = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50];
    const length = steps.findLast((step) => step * pxPerUnit <= 140) || steps[0];
    const bar = svg.append("g").attr("class", "scale").attr("aria-hidden", "true").attr("transform", `translate(12,${height - 14})`);
    bar.append("path").attr("d", `M0,-5V0H${length * pxPerUnit}V-5`);
    bar.append("text").attr("x", length * pxPerUnit + 6).text(`${length} ${unit.symbol}`);
    svg.append("text").attr("class", "scale north").attr("aria-hidden", "true").attr("x", svg.attr("width") - 16).attr("y", 22).text("N ↑");
  }

  function highlight() {
    const onDay = new Set(plan.machines.flatMap((machine) => machine.on(choice.day())).filter(coversGround).map((a) => a.at));
    d3.selectAll("#map-chart g.field")
      .classed("chosen", (d) => choice.hasField(d.index)).classed("dim", (d) => choice.any() && !choice.hasField(d.index))
      .classed("today", (d) => onDay.has(d.index))
      .attr("aria-pressed", (d) => String(choice.hasField(d.index)));
    d3.selectAll("#map-chart .names text").classed("dim", (d) => choice.any() && !choice.hasField(d.index));
  }

  function legend() {
    const extent = date.domain();
    const stops = Array.from(new Set(d3.range(5).map((i) => Math.round(extent[0] + ((extent[1] - extent[0]) * i) / 4))));
    const over = (text, look) => (plan.fields.some((field) => overField(field) === look) ? [{ text, draw: controls.swatch(look) }] : []);
    controls.legend("#map-legend", [
      ...(dated.length > 0 ? stops.map((day) => ({ text: figures.shortDay(day), draw: controls.swatch(date(day)) })) : []),
      ...(dated.length < plan.fields.length ? [{ text: plan.words.all.undone, draw: controls.swatch(looks.wait) }] : []),
      ...over("planted without extract", looks.without),
      ...over("planted in part without extract", looks.partlyWithout),
      { text: `${plan.words.all.done} on the day shown above`, draw: (svg) => svg.append("rect").attr("class", "today-swatch").attr("x", 5).attr("y", 1).attr("width", 16).attr("height", 12) },
      { text: `route of a ${plan.words.all.machine} that day`, draw: (svg) => svg.append("g").attr("class", "way planter").append("path").attr("d", "M0,7H26") },
      { text: "route of a rig", draw: (svg) => svg.append("g").attr("class", "way rig").append("path").attr("d", "M0,7H26") },
      { text: "water", draw: (svg) => svg.append("g").attr("class", "water").append("path").attr("transform", "translate(13,8) scale(.6)").attr("d", DROP) },
      { text: "place", draw: (svg) => svg.append("g").attr("class", "place").append("path").attr("transform", "translate(13,7) scale(.8)").attr("d", "M-7,7V-2L0,-8L7,-2V7z") },
    ]);
  }

  function start() {
    if (!plan.fields.some((field) => field.at || field.rings)) {
      d3.select("#map-lead").text("The season file gives distances but no coordinates, so there is nothing to draw here.");
      return;
    }
    const shape = plan.fields.some((field) => field.rings) ? "Fields are drawn with their outlines" : "Each field is drawn as a circle of the right area";
    d3.select("#map-lead").text(`${shape}, colored by the day its ${plan.words.all.noun} starts. ${plan.ways.size > 0
      ? "Routes follow the season's map of roads, which may be wrong: signs, limits and local rules come first. Roads: © OpenStreetMap contributors, Open Database License, openstreetmap.org/copyright."
      : "Routes are straight lines, not roads."}`);
    const tools = d3.select("#map-tools");
    const zoom = (factor) => {
      const svg = document.querySelector("#map-chart svg");
      const centre = [svg.clientWidth / 2, svg.clientHeight / 2];
      const k = Math.max(1, Math.min(12, zoomed.k * factor));
      const fixed = zoomed.invert(centre);
      move(k === 1 ? d3.zoomIdentity : d3.zoomIdentity.translate(centre[0] - fixed[0] * k, centre[1] - fixed[1] * k).scale(k));
    };
    tools.append("button").attr("type", "button").text("Zoom in").on("click", () => zoom(1.6));
    tools.append("button").attr("type", "button").text("Zoom out").on("click", () => zoom(1 / 1.6));
    tools.append("button").attr("type", "button").text("Show all").on("click", () => move(d3.zoomIdentity));
    const pick = tools.append("label").text("Routes for ").append("select").on("change", (event) => {
      whose = event.target.value;
      redraw();
    });
    pick.selectAll("option").data([{ id: "", name: "all machines" }, ...plan.machines]).join("option").attr("value", (d) => d.id).text((d) => d.name);
    controls.rest("#map-readout", "Point at or tap a field for details; click it to highlight its loads and days.");
    legend();
    redraw = controls.drawToWidth(document.getElementById("map-chart"), draw);
    choice.follow(highlight);
    choice.followDay(() => redraw());
  }

  return { start };
})();
