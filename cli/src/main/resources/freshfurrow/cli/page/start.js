// Draws what is seen first, then the rest piece by piece so that the page answers meanwhile.
(() => {
  const theme = document.getElementById("theme");
  theme.addEventListener("change", () => {
    if (theme.value === "") delete document.documentElement.dataset.theme;
    else document.documentElement.dataset.theme = theme.value;
  });
  d3.select("#season-span").text(`${figures.longDay(0)} to ${figures.longDay(plan.season.days - 1)}`);
  d3.select("#source").text(`Made from ${plan.season.file}, SHA-256 ${plan.season.sha256.slice(0, 16)}…. All times are local to the farm. A plan is as good as its figures.`);

  function chosen() {
    d3.select("#chosen").property("hidden", !choice.any());
    if (!choice.any()) return;
    const i = choice.index();
    const field = plan.fields[i];
    const load = plan.loads[i];
    const batch = plan.batches[i];
    const text = {
      field: () => {
        const done = field.from === undefined
          ? fieldWords.of(field).undone
          : `${fieldWords.of(field).done} from ${figures.time(field.from)}${fieldWords.loads(field)}`;
        const why = field.why ? `. ${field.why}` : "";
        return `Field ${field.id}, ${field.name}: ${figures.area(field.ha)} of ${plan.crops[field.crop]}, ${done}${why}`;
      },
      load: () => {
        const into = Array.from(load.haByField.keys(), (f) => plan.fields[f].id).join(", ");
        return `Load ${load.id}: ${figures.volume(load.litres)} from ${load.rig} to ${load.planter}, ${figures.area(load.ha)} in ${into}; `
          + `last drop ${figures.time(load.lastDrop)}, use by ${figures.time(load.useBy)}${load.intoReserve ? ", little time in hand" : ""}${load.stale ?? ""}`;
      },
      batch: () => `Batch ${batch.id}: ready ${figures.time(batch.end)}, ${controls.contents(batch)}`,
    };
    d3.select("#chosen-text").text(text[choice.kind()]());
    d3.select("#chosen-day").property("hidden", choice.firstDay() === choice.day());
  }
  choice.follow(chosen);
  choice.followDay(chosen);
  choice.follow(curves.highlight);
  choice.followDay(curves.markDay);
  document.getElementById("chosen-clear").addEventListener("click", choice.clear);
  document.getElementById("chosen-day").addEventListener("click", () => choice.openDay(choice.firstDay()));

  ledger.draw();
  seasonChart.start();
  dayChart.start();
  performance.mark("answers");
  const later = [groundMap.start, ...curves.start, ...tables.start];
  (function next() {
    const draw = later.shift();
    if (draw) {
      draw();
      setTimeout(next);
    } else {
      performance.mark("drawn");
      document.documentElement.dataset.drawn = "";
    }
  })();
})();
