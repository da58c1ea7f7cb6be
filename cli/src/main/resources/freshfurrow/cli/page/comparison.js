// Writes the figures of a comparison and draws how its springs spread. It knows no rule of the season.
(() => {
  const data = JSON.parse(document.getElementById("comparison-data").textContent);
  const base = data.variants[0];
  const theme = document.getElementById("theme");
  theme.addEventListener("change", () => {
    if (theme.value === "") delete document.documentElement.dataset.theme;
    else document.documentElement.dataset.theme = theme.value;
  });
  d3.select("#springs").text(`${data.springs}. ${data.rule}`);
  d3.select("#said").selectAll("li").data(data.words).join("li").attr("dir", "auto").text((d) => d);
  d3.select("#source").text(`Made from ${data.file}: ${data.variants.map((v) => `${v.name} SHA-256 ${v.sha256.slice(0, 16)}…`).join(", ")}. Nobody knows the weather ahead; these springs come from a record and from chance.`);

  function table() {
    const table = d3.select("#figures").append("table");
    const head = table.append("thead").append("tr");
    head.append("th").attr("scope", "col").text("Figure");
    data.variants.forEach((variant, i) => {
      head.append("th").attr("scope", "col").text(variant.name);
      if (i > 0) head.append("th").attr("scope", "col").text(`${variant.name} minus ${base.name}`);
    });
    const body = table.append("tbody");
    data.measures.forEach((measure) => {
      const row = body.append("tr");
      row.append("th").attr("scope", "row").text(measure.label);
      measure.variants.forEach((variant, i) => {
        row.append("td").text(variant.text);
        if (i > 0) row.append("td").append(variant.apart ? "strong" : "span").text(variant.difference || "needs more springs");
      });
    });
    besides(body, "springs with every field planted in its window", (variant) => variant.inside);
    if (base.money !== "") besides(body, "cost per season", (variant) => variant.money);
  }

  function reserves(tried) {
    d3.select("#reserves").property("hidden", false);
    const table = d3.select("#reserve-figures").append("table");
    table.append("thead").append("tr").selectAll("th").data(tried.headings).join("th").attr("scope", "col").text((d) => d);
    const rows = table.append("tbody").selectAll("tr").data(tried.rows).join("tr");
    rows.append("th").attr("scope", "row").text((row) => row[0]);
    rows.selectAll("td").data((row) => row.slice(1)).join("td").text((d) => d);
    d3.select("#reserves").selectAll("p.said").data(tried.said).join("p").attr("class", "said").text((d) => d);
  }

  function besides(body, label, cell) {
    const row = body.append("tr");
    row.append("th").attr("scope", "row").text(label);
    data.variants.forEach((variant, i) => {
      row.append("td").text(cell(variant));
      if (i > 0) row.append("td");
    });
  }

  const ROW = 74;
  const MARGIN = { left: 12, right: 14, top: 20, bottom: 26 };
  const first = Date.parse(`${data.first}T00:00:00Z`);
  const asDate = datesInWords(data.clock === "12h").short;

  function chart(measure) {
    const figure = d3.select("#charts").append("figure");
    figure.append("figcaption").append("h3").text(measure.label);
    const label = `${measure.label}: ${measure.variants.map((v, i) => `${data.variants[i].name} ${v.text}`).join("; ")}`;
    const box = figure.append("div").attr("class", "curve");
    const all = measure.variants.flatMap((variant) => variant.figures);
    const from = d3.min(all);
    const to = d3.max(all);
    const bins = d3.bin().domain(from === to ? [from - 0.5, from + 0.5] : [from, to]).thresholds(24);
    const counted = measure.variants.map((variant) => bins(variant.figures));
    const most = d3.max(counted.flat(), (bin) => bin.length);
    const height = MARGIN.top + ROW * measure.variants.length + MARGIN.bottom;

    function draw() {
      const width = Math.max(260, box.node().clientWidth);
      box.selectAll("svg").remove();
      const svg = box.append("svg").attr("width", width).attr("height", height).attr("role", "img").attr("aria-label", label);
      const domain = from === to ? [from - 0.5, from + 0.5] : d3.extent(counted.flat().flatMap((bin) => [bin.x0, bin.x1]));
      const x = d3.scaleLinear(domain, [MARGIN.left, width - MARGIN.right]);
      counted.forEach((row, i) => {
        const variant = measure.variants[i];
        const floor = MARGIN.top + (i + 1) * ROW - 18;
        const y = d3.scaleLinear([0, most], [0, ROW - 34]);
        svg.append("text").attr("class", "strong").attr("x", MARGIN.left).attr("y", floor - ROW + 30).text(data.variants[i].name);
        svg.append("g").selectAll("rect").data(row.filter((bin) => bin.length > 0)).join("rect").attr("class", "springs")
          .attr("x", (bin) => x(bin.x0)).attr("width", (bin) => Math.max(1, x(bin.x1) - x(bin.x0) - 1))
          .attr("y", (bin) => floor - y(bin.length)).attr("height", (bin) => y(bin.length));
        svg.append("line").attr("class", "floor").attr("x1", MARGIN.left).attr("x2", width - MARGIN.right).attr("y1", floor).attr("y2", floor);
        svg.append("path").attr("class", "bracket").attr("d", `M${x(variant.low)},${floor + 3}v6H${x(variant.high)}v-6`);
        svg.append("line").attr("class", "median").attr("x1", x(variant.median)).attr("x2", x(variant.median)).attr("y1", floor - ROW + 36).attr("y2", floor + 9);
      });
      const axis = svg.append("g").attr("class", "axis").selectAll("g").data(x.ticks(Math.max(3, Math.floor(width / 110)))).join("g").attr("transform", (d) => `translate(${x(d)},0)`);
      axis.append("text").attr("y", height - 8).text((d) => (measure.dates ? asDate(new Date(first + d * 86400000)) : d.toLocaleString("en-US")));
    }
    draw();
    new ResizeObserver(() => { if (box.select("svg").empty() || Number(box.select("svg").attr("width")) !== Math.max(260, box.node().clientWidth)) draw(); }).observe(box.node());
  }

  table();
  if (data.reserves) reserves(data.reserves);
  data.measures.forEach(chart);
  document.documentElement.dataset.drawn = "";
})();
