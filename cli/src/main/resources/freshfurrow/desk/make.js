// Elements, made of text as text, never as markup.

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

export function fill(element, ...children) {
  element.replaceChildren(...children.filter((child) => child !== null && child !== undefined));
  return element;
}

// Tells the reader something that needs no answer.
export function say(text) {
  document.getElementById("said").textContent = text;
}

// Does something that takes a moment, and shows what could not be done.
export async function attempt(button, deed) {
  button.disabled = true;
  try {
    return await deed();
  } catch (failure) {
    if (!failure.problems) throw failure;
    say(failure.problems.join(" "));
    return null;
  } finally {
    button.disabled = false;
  }
}

export function problemList(problems) {
  return problems && problems.length > 0 ? make("ul", { class: "problems" }, ...problems.map((line) => make("li", {}, line))) : null;
}
