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

// Calls a follower with each event of a name, until the function that is returned is called. "gone" is the desk out of reach, and
// "back" that it is reached again.
export function follow(name, follower) {
  if (!source) {
    source = new EventSource("/api/events");
    let gone = false;
    source.addEventListener("error", () => {
      gone = true;
      (followers.get("gone") || []).forEach((each) => each());
    });
    source.addEventListener("open", () => {
      if (gone) (followers.get("back") || []).forEach((each) => each());
      gone = false;
    });
  }
  if (!followers.has(name)) {
    followers.set(name, new Set());
    if (name !== "gone" && name !== "back") listen(name);
  }
  followers.get(name).add(follower);
  return () => followers.get(name).delete(follower);
}
