// The season at a glance, what limits it, and how it differs from the old plan.
const ledger = (() => {
  function draw() {
    const entry = d3.select("#ledger").selectAll("div").data(plan.ledger).join("div");
    entry.append("dt").attr("dir", "auto").text((d) => d.name);
    entry.append("dd").attr("class", "value").text((d) => d.value);
    entry.append("dd").attr("class", "note").text((d) => d.note);
    entry.filter((d) => d.boundShare !== undefined)
      .append("dd").attr("class", "bar").attr("aria-hidden", "true")
      .append("span").style("width", (d) => `${100 * Math.min(1, d.boundShare)}%`);
    d3.select("#besides").text(plan.besides);
    const limits = d3.select("#limits");
    limits.append("h3").text(plan.limiting);
    if (plan.limits.length > 0) {
      // beside the table, not in it: on a phone the table is wider than the screen
      limits.append("p").attr("class", "aside").attr("id", "limits-how")
        .text("What would change if one limit were lifted. Each row is a short replan; the figures overlap.");
      evidence(limits.append("div").attr("class", "wide").attr("tabindex", 0).attr("role", "region")
        .attr("aria-label", "What would change if one limit were lifted"));
    }
    if (plan.hours.length > 0) hours(limits);
    d3.select("#changes").property("hidden", plan.changes === "");
    d3.select("#changes-text").text(plan.changes);
  }

  function evidence(parent) {
    const table = parent.append("table").attr("class", "evidence").attr("aria-describedby", "limits-how");
    const heads = ["if...", "late", plan.words.all.undone, `${plan.words.all.machines} wait`, "lateness saved", "waiting saved"];
    table.append("thead").append("tr").selectAll("th").data(heads)
      .join("th").attr("scope", "col").text((d) => d);
    const row = table.append("tbody").selectAll("tr").data(plan.limits).join("tr");
    row.append("th").attr("scope", "row").text((d) => d.condition);
    ["late", "left", "wait"].forEach((key) => row.append("td").text((d) => d[key]));
    ["shareOfLate", "shareOfWait"].forEach((key) => {
      const cell = row.append("td").attr("class", "share");
      cell.append("span").attr("class", "bar").attr("aria-hidden", "true").append("span").style("width", (d) => `${100 * d[key]}%`);
      cell.append("span").text((d) => `${Math.floor(100 * d[key] + 1e-9)} %`);
    });
  }

  function hours(parent) {
    const all = d3.sum(plan.hours, (d) => d.minutes);
    parent.append("p").attr("class", "aside").text(`Where the ${plan.words.all.machines}' working hours go, up to the end of ${plan.words.all.noun}:`);
    const list = parent.append("ol").attr("class", "hours").selectAll("li").data(plan.hours).join("li");
    list.append("span").attr("class", "what").text((d) => d.what);
    list.append("span").attr("class", "bar").attr("aria-hidden", "true").append("span")
      .attr("class", (d) => (/^(waiting|stopped)/.test(d.what) ? "waiting" : null))
      .style("width", (d) => `${(100 * d.minutes) / plan.hours[0].minutes}%`);
    list.append("span").attr("class", "much").text((d) => `${d.text}, ${d.minutes * 200 < all ? "<1" : Math.round((100 * d.minutes) / all)} %`);
  }

  return { draw };
})();
