// Elements, made of text as text, never as markup.
import { here } from "/desk/here.js";

export function make(tag, attributes, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes || {})) {
    if (name.startsWith("on")) element.addEventListener(name.slice(2), value);
    else if (value === true) element.setAttribute(name, "");
    else if (value !== false && value !== null && value !== undefined) element.setAttribute(name, value);
  }
  element.append(...children.filter((child) => child !== null && child !== undefined));
  return element;
}

// Draws what is in an element anew. Whoever is at something in it stays there.
export function fill(element, ...children) {
  const back = here(element);
  element.replaceChildren(...children.filter((child) => child !== null && child !== undefined));
  back();
  return element;
}

// The heading above all parts.
export function callSeason(name) {
  document.getElementById("season-name").textContent = name || "Season";
}

// Tells the reader something that needs no answer.
export function say(text) {
  document.getElementById("said").textContent = text;
}

// Does something that takes a moment, once at a time, and shows what could not be done. The button is not disabled, as whoever has
// pressed it by keyboard would be nowhere then.
export async function attempt(button, deed) {
  if (button.getAttribute("aria-busy") === "true") return null;
  button.setAttribute("aria-busy", "true");
  try {
    return await deed();
  } catch (failure) {
    if (!failure.problems) throw failure;
    say(failure.problems.join(" "));
    return null;
  } finally {
    button.removeAttribute("aria-busy");
  }
}

export function problemList(problems) {
  return problems && problems.length > 0 ? make("ul", { class: "problems" }, ...problems.map((line) => make("li", {}, line))) : null;
}

export const input = (id, name, attributes) => make("label", {}, `${name} `, make("input", { id, ...attributes }));
export const select = (id, name, options) => make("label", {}, `${name} `, make("select", { id }, ...options.map((option) => make("option", { value: option }, option))));
export const valueOf = (id) => document.getElementById(id).value;
