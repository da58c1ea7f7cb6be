// A blank map around a position: what lies where, how far a mile or a kilometre is, and a click for a new position.
import { make } from "/desk/make.js";
import "/desk/d3.min.js";

const width = 640;
const height = 400;
const widest = 400; // km
const kmPerDegree = 111.32; // of latitude; enough for a drawing
const bars = { us: { name: "mi", km: 1.609344 }, metric: { name: "km", km: 1 } };

// Degrees have no thousands, so a comma parts their decimals.
export const degrees = (text) => Number(text.replace(/^([+-]?\d{1,3}),(\d+)$/, "$1.$2"));

export function position(text) {
  const match = /^\s*([+-]?\d{1,3}(?:\.\d+)?)\s*[,;\s]\s*([+-]?\d{1,3}(?:\.\d+)?)\s*$/.exec(text || "")
    || /^\s*([+-]?\d{1,3},\d+)\s*(?:[;\s]|,\s)\s*([+-]?\d{1,3},\d+)\s*$/.exec(text || "");
  if (!match) return null;
  const [lat, lon] = [degrees(match[1]), degrees(match[2])];
  return Math.abs(lat) <= 90 && Math.abs(lon) <= 180 ? { lat, lon } : null;
}

// "marks" are {name, lat, lon}; "picked" is called with {lat, lon} where somebody clicks.
export function blankMap({ id, centre, marks, units, picked }) {
  const known = marks.filter((mark) => Number.isFinite(mark.lat) && Number.isFinite(mark.lon));
  const cosine = Math.cos((centre.lat * Math.PI) / 180);
  const reach = Math.max(0, ...known.map((mark) => Math.max(Math.abs(mark.lon - centre.lon) * cosine, (Math.abs(mark.lat - centre.lat) * width) / height))) * kmPerDegree;
  let span = Math.min(widest, Math.max(6, reach * 2.4)); // km across, all marks in it
  const place = make("div", { class: "blank-map" });
  const draw = () => {
    const perKm = width / span;
    const x = (lon) => width / 2 + (lon - centre.lon) * kmPerDegree * cosine * perKm;
    const y = (lat) => height / 2 - (lat - centre.lat) * kmPerDegree * perKm;
    const svg = d3.create("svg").attr("id", id).attr("viewBox", `0 0 ${width} ${height}`).attr("role", "img")
      .attr("aria-label", `A blank map, ${marks.length} places on it. Click where it is, or type the coordinates.`);
    svg.append("rect").attr("class", "ground").attr("width", width).attr("height", height);
    const spots = svg.selectAll("g.spot").data(known).join("g")
      .attr("class", "spot").attr("transform", (mark) => `translate(${x(mark.lon)},${y(mark.lat)})`);
    spots.append("circle").attr("r", 5);
    spots.append("text").attr("x", 8).attr("y", 4).text((mark) => mark.name);
    const bar = bars[units];
    const length = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50].filter((step) => step * bar.km * perKm <= width / 3).pop() || 0.1;
    const scale = svg.append("g").attr("class", "scale").attr("transform", `translate(16,${height - 18})`);
    scale.append("path").attr("d", `M0,-6V0H${length * bar.km * perKm}V-6`);
    scale.append("text").attr("y", -8).attr("x", 4).text(`${length} ${bar.name}`);
    svg.on("click", (event) => {
      const [px, py] = d3.pointer(event, svg.node());
      picked({ lat: (centre.lat - (py - height / 2) / perKm / kmPerDegree).toFixed(5),
        lon: (centre.lon + (px - width / 2) / perKm / kmPerDegree / cosine).toFixed(5) });
    });
    place.replaceChildren(svg.node(), make("div", { class: "tools" },
      make("button", { type: "button", onclick: () => { span = Math.max(0.5, span / 2); draw(); } }, "Closer"),
      make("button", { type: "button", onclick: () => { span = Math.min(widest, span * 2); draw(); } }, "Wider")));
  };
  draw();
  return place;
}
