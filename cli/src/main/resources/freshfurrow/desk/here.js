// Where somebody is on the page, and what they are about to type: both stay when a part is drawn anew.

const STOPS = "a[href], button, input, select, textarea, summary, [tabindex]";

const stops = (place) => Array.from(place.querySelectorAll(STOPS)).filter((element) => !element.disabled && element.getClientRects().length > 0);

// What an element is known by in the next drawing too.
function nameOf(element) {
  const known = Object.keys(element.dataset).length > 0 ? { ...element.dataset } : element.getAttribute("aria-label") || element.textContent.trim();
  return element.id || JSON.stringify([element.tagName, known]);
}

function caret(element) {
  return element.tagName === "TEXTAREA" || (element.tagName === "INPUT" && element.type === "text") ? [element.selectionStart, element.selectionEnd] : null;
}

// Where to be when an element is gone: at what is around it. Never at another button, which a key held down would press.
function around(element, place) {
  const found = [];
  for (let outer = element.parentElement; outer !== place; outer = outer.parentElement) {
    if (outer.tagName === "DETAILS") found.push(outer.querySelector("summary"));
    else if (outer.matches("[tabindex]")) found.push(outer);
  }
  return found;
}

// Of a place, or of what it is in.
function heading(place) {
  const title = place.querySelector("h2, h3");
  if (!title && place.parentElement && place.tabIndex < 0 && !place.hasAttribute("tabindex")) return heading(place.parentElement);
  if (title) title.tabIndex = -1;
  return title || place;
}

// To be called before a place is drawn anew; gives what brings back to where somebody is, or to what is around it.
export function here(place) {
  const active = document.activeElement;
  if (active === place || !place.contains(active)) return () => {};
  const names = [active, ...around(active, place)].map(nameOf);
  const selected = caret(active);
  return () => {
    const now = new Map(stops(place).reverse().map((element) => [nameOf(element), element]));
    const name = names.find((one) => now.has(one));
    const next = name === undefined ? heading(place) : now.get(name);
    next.focus({ preventScroll: true });
    if (name === names[0] && selected && caret(next)) next.setSelectionRange(...selected);
  };
}

// What an element holds before anybody types or chooses.
export const usual = (element) => (element.tagName === "SELECT"
  ? (Array.from(element.options).find((option) => option.defaultSelected) || element.options[0] || { value: "" }).value : element.defaultValue);

// To be called before a place is drawn anew; gives what puts back what was typed and chosen, opens what was open, and brings back to
// where somebody is in it. Inputs are known by their ids, and what opens by what it says.
export function typed(place) {
  const back = here(place);
  const values = Array.from(place.querySelectorAll("input[id], select[id], textarea[id]"), (element) => [element.id, element.value, usual(element)])
    .filter(([, value, before]) => value !== before);
  const open = Array.from(place.querySelectorAll("details[open]"), (element) => nameOf(element.querySelector("summary")));
  return () => {
    for (const summary of place.querySelectorAll("summary")) if (open.includes(nameOf(summary))) summary.parentElement.open = true;
    for (const [id, value] of values) {
      const element = document.getElementById(id);
      if (element && place.contains(element)) element.value = value;
    }
    back(); // now that it can be seen again
  };
}
