// What the curves share: a frame with the season's days below, a scale, and marks that the keyboard reaches.
const frames = (() => {
  const MARGIN = { top: 14, right: 16, bottom: 26, left: 58 };
  const HEIGHT = 250;

  function panel(id, title, summary, hint = "Point at or tap a day, or use the arrow keys; Enter opens one.") {
    const figure = d3.select("#curves-charts").append("figure").attr("id", id);
    figure.append("figcaption").append("h3").text(title);
    figure.select("figcaption").append("p").attr("dir", "auto").text(summary);
    const readout = figure.append("p").attr("class", "readout").node();
    controls.rest(readout, hint);
    const box = figure.append("div").attr("class", "curve");
    figure.append("ul").attr("class", "legend");
    return { box, readout, label: `${title}. ${summary}`, legend: (entries) => controls.legend(`#${id} .legend`, entries) };
  }

  function frame(view, width, height = HEIGHT) {
    view.box.selectAll("svg").remove();
    const svg = view.box.append("svg").attr("width", width).attr("height", height).attr("role", "group").attr("aria-label", view.label);
    const x = d3.scaleLinear([0, plan.season.days * DAY_S], [MARGIN.left, width - MARGIN.right]);
    const step = Math.ceil((46 * plan.season.days) / (width - MARGIN.left - MARGIN.right) / 7) * 7;
    const tick = svg.append("g").attr("class", "axis").attr("aria-hidden", "true").selectAll("g").data(d3.range(0, plan.season.days, step)).join("g").attr("transform", (d) => `translate(${x(d * DAY_S)},0)`);
    tick.append("line").attr("y1", MARGIN.top).attr("y2", height - MARGIN.bottom);
    tick.append("text").attr("y", height - 9).text(figures.shortDay);
    return { svg, x };
  }

  function scaleY(svg, most, unit, width, top = MARGIN.top, bottom = HEIGHT - MARGIN.bottom, ticks = 4) {
    const y = d3.scaleLinear([0, most || 1], [bottom, top]);
    const tick = svg.append("g").attr("class", "axis y").attr("aria-hidden", "true").selectAll("g").data(y.ticks(ticks)).join("g").attr("transform", (d) => `translate(0,${y(d)})`);
    tick.append("line").attr("x1", MARGIN.left).attr("x2", width - MARGIN.right);
    tick.append("text").attr("x", MARGIN.left - 6).attr("y", 4).text((d) => d.toLocaleString("en-US"));
    svg.append("text").attr("class", "small unit").attr("x", 2).attr("y", top + 4).text(unit);
    return y;
  }

  /** A mark for each day between two heights of a view, which tells the day and opens it; reached once it is given to rove. */
  function days(view, svg, x, top, bottom, text) {
    const mark = svg.append("g").selectAll("g").data(d3.range(plan.season.days)).join("g")
      .attr("class", "day").attr("role", "button").attr("data-x", (day) => x(day * DAY_S)).attr("data-day", (day) => day)
      .attr("aria-label", text).attr("aria-pressed", (day) => String(day === choice.day()))
      .on("click", (event, day) => choice.openDay(day));
    mark.append("rect").attr("x", (day) => x(day * DAY_S)).attr("width", x(DAY_S) - x(0)).attr("y", top).attr("height", bottom - top);
    controls.tells(mark, view.readout, text);
    return mark.nodes();
  }

  return { MARGIN, HEIGHT, panel, frame, scaleY, days };
})();
