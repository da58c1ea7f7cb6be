// Colours and textures. Colours are those of Okabe and Ito ("Color Universal Design", 2008), which people with the common
// kinds of colour blindness can tell apart; a texture or a letter always goes with them.
const looks = (() => {
  const colours = ["#0072B2", "#E69F00", "#009E73", "#CC79A7", "#56B4E9", "#D55E00", "#F0E442"];
  const textures = [
    () => [],
    () => ["M-2,10L10,-2", "M4,16L16,4", "M-4,4L4,-4"],
    () => ["M2,2h2v2h-2z", "M8,8h2v2h-2z"],
    () => ["M0,3H12", "M0,9H12"],
    () => ["M-2,2L10,14", "M4,-4L16,8", "M-4,8L4,16"],
    () => ["M3,0V12", "M9,0V12"],
    () => ["M0,3H12", "M0,9H12", "M3,0V12", "M9,0V12"],
  ];
  const made = new Set();
  const defs = d3.select("#looks defs");

  function fill(colour, texture) {
    const id = `look-${colour}-${texture}`;
    if (!made.has(id)) {
      made.add(id);
      const pattern = defs.append("pattern").attr("id", id).attr("width", 12).attr("height", 12).attr("patternUnits", "userSpaceOnUse");
      pattern.append("rect").attr("width", 12).attr("height", 12).attr("fill", colours[colour]);
      pattern.selectAll("path").data(textures[texture]()).join("path").attr("d", (d) => d).attr("class", "texture");
    }
    return `url(#${id})`;
  }

  function hatch(id, d, className) {
    const pattern = defs.append("pattern").attr("id", id).attr("width", 8).attr("height", 8).attr("patternUnits", "userSpaceOnUse");
    pattern.append("path").attr("d", d).attr("class", className);
    return `url(#${id})`;
  }

  // drawn over a color, so each line has one of the paper's on both sides
  function over(id, d) {
    const pattern = defs.append("pattern").attr("id", id).attr("width", 10).attr("height", 10).attr("patternUnits", "userSpaceOnUse");
    ["over-edge", "over-line"].forEach((className) => pattern.append("path").attr("d", d).attr("class", className));
    return `url(#${id})`;
  }

  const numbered = (number) => fill(number % colours.length, Math.floor(number / colours.length + number) % textures.length);
  const order = d3.sort(d3.range(plan.fields.length), (f) => (plan.fields[f].from === undefined ? Infinity : plan.fields[f].from));
  const place = new Map(order.map((field, i) => [field, i]));
  return {
    colour: (number) => colours[number % colours.length],
    crop: numbered,
    field: (field) => numbered(place.get(field)),
    numbered,
    without: over("over-without", "M-2,9L5,2L12,9"),
    partlyWithout: over("over-partly-without", "M2,8L8,2"),
    closed: hatch("hatch-closed", "M0,0L8,8M8,0L0,8", "hatch-closed"),
    wet: hatch("hatch-wet", "M-2,6L6,-2M2,10L10,2", "hatch-wet"),
    wait: hatch("hatch-wait", "M-2,6L6,-2M2,10L10,2", "hatch-wait"),
  };
})();
