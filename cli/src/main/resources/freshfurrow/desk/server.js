// What pages ask of the desk, tell it, and hear from it.

// What could not be done, as lines to show.
export class Refusal extends Error {
  constructor(status, answer) {
    super(answer.problems.join(" "));
    this.status = status;
    this.answer = answer;
    this.problems = answer.problems;
  }
}

async function answered(request) {
  let response;
  try {
    response = await request;
  } catch (failure) {
    throw new Refusal(0, { problems: ["The desk does not answer. It may have been closed."] });
  }
  const answer = await response.json().catch(() => ({ problems: ["The desk gave an answer that cannot be read."] }));
  if (!response.ok) throw new Refusal(response.status, answer.problems ? answer : { problems: [`The desk answered ${response.status}.`] });
  return answer;
}

export function ask(path) {
  return answered(fetch(path));
}

export function tell(path, what) {
  return answered(fetch(path, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(what) }));
}

const followers = new Map();
let source = null;

function listen(name) {
  source.addEventListener(name, (event) => followers.get(name).forEach((follower) => follower(JSON.parse(event.data))));
}

const call = (name) => (followers.get(name) || []).forEach((each) => each());

// Calls a follower with each event of a name, until the function that is returned is called. "gone" is the desk out of reach,
// "joined" that its events are heard from now on, and "back" that they are heard again.
export function follow(name, follower) {
  if (!source) {
    source = new EventSource("/api/events");
    let gone = false;
    source.addEventListener("error", () => {
      gone = true;
      call("gone");
    });
    source.addEventListener("open", () => {
      if (gone) call("back");
      gone = false;
      call("joined");
    });
  }
  if (!followers.has(name)) {
    followers.set(name, new Set());
    if (!["gone", "back", "joined"].includes(name)) listen(name);
  }
  followers.get(name).add(follower);
  return () => followers.get(name).delete(follower);
}

// Shows what the desk has of a thing, and again each time that this changes: "show" is given it, and a function that sends an order
// about it. What is returned asks "again", and ends with "leave".
export async function watch(path, name, show) {
  let told = 0;
  let left = false;
  let shown = null;
  const draw = (state) => {
    const text = JSON.stringify(state);
    if (text === shown) return; // and nothing moves under the reader's hands
    shown = text;
    show(state, order);
  };
  const newest = async (answer) => {
    const before = told;
    const state = await answer;
    if (told === before && !left) draw(state); // else the desk has told since what is as new or newer
  };
  const order = (where, what) => newest(tell(where, what));
  const again = () => newest(ask(path));
  const stops = [follow(name, (state) => {
    told += 1;
    draw(state);
  }), follow("joined", () => again().catch(() => {}))]; // out of reach, what was seen last stays
  const leave = () => {
    left = true;
    stops.forEach((stop) => stop());
  };
  try {
    await again();
  } catch (failure) {
    leave();
    throw failure;
  }
  return { again, leave };
}
