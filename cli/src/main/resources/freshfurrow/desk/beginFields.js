// The fields of a season that is begun: rows of a table, typed, pasted from a spreadsheet, or out of a file.
import { tell } from "/desk/server.js";
import { make, fill, attempt, problemList, say } from "/desk/make.js";
import { blankMap, degrees, position } from "/desk/beginMap.js";

const columns = [["name", "Name"], ["id", "Id"], ["area", "Area"], ["crop", "Crop"], ["lat", "Latitude"], ["lon", "Longitude"]];
const headings = [["", "nothing"], ...columns, ["drainage", "Drainage"]];
let chosen = 0; // the row that a click on the map is for
const empty = () => ({ id: "", name: "", area: "", lat: "", lon: "", crop: "", drainage: "" });

// Rows that the table was pasted with, until somebody has confirmed what its columns are.
function confirmation(answer, text, take) {
  const choices = answer.columns.map((guess, i) => make("select", { "aria-label": `Column ${i + 1}`, "data-column": i },
    ...headings.map(([key, name]) => make("option", { value: key, selected: key === guess }, name))));
  const use = make("button", { type: "button", id: "use-table", class: "chief", onclick: () => attempt(use, async () =>
    take((await tell("/api/begin/table", { text, columns: choices.map((choice) => choice.value) })).fields)) }, `Use these ${answer.fields.length} fields`);
  return make("div", { id: "confirm-table" }, make("p", {}, "Is each column what it seems to be?"),
    make("div", { class: "wide", tabindex: 0, role: "region", "aria-label": "Columns" }, make("table", {},
      make("thead", {}, make("tr", {}, ...answer.headings.map((heading) => make("th", { scope: "col" }, heading || "(no heading)")))),
      make("tbody", {}, make("tr", {}, ...answer.first.map((cell) => make("td", {}, cell))), make("tr", {}, ...choices.map((choice) => make("td", {}, choice)))))), use);
}

export function fieldsStep({ state, changed, redraw }) {
  const click = make("p", { id: "click-for" });
  const choose = (i) => {
    chosen = Math.max(0, Math.min(i, state.fields.length - 1));
    const field = state.fields[chosen];
    click.textContent = `Click where machines enter ${field.name || field.id || `field ${chosen + 1}`}, or type the coordinates. Another row is chosen by going into it.`;
  };
  const given = make("div", { id: "given", "aria-live": "polite" });
  const drawn = state.map !== null;
  if (state.fields.length === 0 && !drawn) state.fields.push(empty());
  choose(chosen);

  const take = (rows) => {
    const kept = state.map === null ? state.fields.filter((field) => Object.values(field).some((cell) => cell !== "")) : [];
    state.fields = [...kept, ...rows];
    state.map = null;
    changed();
    redraw();
    say(`${rows.length} fields taken. Look them over.`);
  };
  const read = async (order) => {
    try {
      const answer = await tell("/api/begin/table", order);
      if (answer.drawn) {
        state.map = answer.map || order.text;
        state.fields = answer.fields;
        changed();
        redraw();
        say([`${answer.fields.length} fields taken from the map. Areas and places come from the drawing.`, ...(answer.said || [])].join(" "));
      } else {
        fill(given, confirmation(answer, order.text, take));
      }
    } catch (failure) {
      if (!failure.problems) throw failure;
      fill(given, problemList(failure.problems));
    }
  };
  const base64 = (one) => new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve({ name: one.name, base64: reader.result.slice(reader.result.indexOf(",") + 1) });
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(one);
  });
  // A map of several files, or in a zip, is no text.
  const readFiles = async (files) => {
    const chosen = [...files];
    if (chosen.some((one) => /\.(shp|dbf|prj|cpg|kmz|zip)$/i.test(one.name))) {
      await read({ files: await Promise.all(chosen.filter((one) => /\.(shp|dbf|prj|cpg|kmz|zip)$/i.test(one.name)).map(base64)) });
    } else if (chosen[0]) {
      await read({ text: await chosen[0].text() });
    }
  };

  const cell = (field, key, i) => {
    const none = drawn && ["area", "lat", "lon"].includes(key);
    const input = make("input", { type: "text", "data-field": i, "data-cell": key, autocomplete: "off", disabled: none, placeholder: none ? "as drawn" : null,
      "aria-label": `${columns.find(([name]) => name === key)[1]} of field ${i + 1}` });
    input.value = field[key];
    input.addEventListener("focus", () => choose(i));
    input.addEventListener("input", () => { field[key] = input.value.trim(); changed(); });
    return make("td", {}, input);
  };
  const rows = () => state.fields.map((field, i) => make("tr", {}, ...columns.map(([key]) => cell(field, key, i)),
    make("td", {}, drawn ? null : make("button", { type: "button", "aria-label": `Take field ${i + 1} out`, onclick: () => { state.fields.splice(i, 1); changed(); redraw(); } }, "×"))));

  const paste = make("textarea", { id: "paste", rows: 3, "aria-label": "Rows copied from a spreadsheet", placeholder: "Copy the rows in your spreadsheet, with their headings, and paste them here" });
  paste.addEventListener("input", () => { if (paste.value.trim() !== "") read({ text: paste.value }); });
  const file = make("input", { type: "file", id: "field-file", multiple: true, accept: ".csv,.tsv,.txt,.json,.geojson,.kml,.kmz,.zip,.shp,.dbf,.prj,.cpg" });
  file.addEventListener("change", () => readFiles(file.files));
  const drop = make("div", { class: "drop" }, make("label", {}, "Or choose or drop a CSV, GeoJSON, KML, KMZ or zip file, or the .shp, .dbf and .prj files of a shapefile ", file));
  drop.addEventListener("dragover", (event) => event.preventDefault());
  drop.addEventListener("drop", async (event) => {
    event.preventDefault();
    await readFiles(event.dataTransfer.files);
  });

  const at = position((state.entries.places[0].typed || {}).at);
  const marks = [...(at ? [{ name: "yard", ...at }] : []),
    ...state.fields.filter((field) => field.lat !== "" && field.lon !== "").map((field) => ({ name: field.name || field.id, lat: degrees(field.lat), lon: degrees(field.lon) }))];
  return [
    make("div", { class: "wide", tabindex: 0, role: "region", "aria-label": "Fields" }, make("table", { id: "field-rows" },
      make("thead", {}, make("tr", {}, ...columns.map(([, name]) => make("th", { scope: "col" }, name)), make("td", {}))),
      make("tbody", {}, ...rows()))),
    make("p", { class: "help" }, `Areas without a unit are in ${state.units === "us" ? "acres" : "hectares"}. Where nothing is typed as id, one is made of the name.`),
    drawn ? make("p", {}, "Areas and places come from the map.") : make("button", { type: "button", id: "add-field", onclick: () => {
      state.fields.push(empty());
      redraw();
      document.querySelector(`[data-field="${state.fields.length - 1}"][data-cell=name]`).focus();
    } }, "Another field"),
    paste, drop, given,
    at && !drawn ? make("div", {}, click,
      blankMap({ id: "field-map", centre: at, marks, units: state.units, picked: ({ lat, lon }) => {
        Object.assign(state.fields[chosen], { lat, lon });
        changed();
        redraw();
      } })) : null,
  ];
}
