// Taps that are lines of the log. One that could not be sent yet is kept in this browser and sent again until it has arrived; the desk
// writes a line once, however often it comes.
import { tell, Refusal } from "/desk/server.js";

const KEPT = "taps";
const AGAIN_MS = 3000;
let memory = null; // the taps, once this browser turns out to keep nothing
let sending = false;
const followers = new Set();

export function kept() {
  if (memory) return memory;
  try {
    return JSON.parse(localStorage.getItem(KEPT) || "[]");
  } catch (failure) {
    return [];
  }
}

function keep(taps) {
  try {
    localStorage.setItem(KEPT, JSON.stringify(taps));
    memory = null;
  } catch (failure) {
    memory = taps; // a private window, or a full one: they are kept as long as it is open
  }
  followers.forEach((follower) => follower(taps));
}

// Calls a follower with the taps that wait, now and whenever they change.
export function followTaps(follower) {
  followers.add(follower);
  follower(kept());
  return () => followers.delete(follower);
}

export function forget(id) {
  keep(kept().filter((tap) => tap.id !== id));
}

function newId() {
  return Array.from(crypto.getRandomValues(new Uint32Array(3)), (n) => n.toString(36)).join("");
}

// What came of a tap: "logged", "refused" with the problems, or "kept" until the desk writes it. "about" says what was tapped on.
export async function tap(lines, about) {
  const taken = { id: newId(), lines, about };
  keep([...kept(), taken]);
  const hindered = await send();
  const still = kept().find((one) => one.id === taken.id);
  if (!still) return { state: "logged" };
  return still.problems ? { state: "refused", problems: still.problems } : { state: "kept", problems: hindered };
}

// One after the other, in the order in which they were tapped; those that were refused stay for their people to see. What keeps the
// desk from writing any is returned.
async function send() {
  if (sending) {
    await new Promise((done) => setTimeout(done, 50));
    if (sending) return send();
  }
  sending = true;
  try {
    for (const next of kept().filter((one) => !one.problems)) {
      try {
        await tell("/api/log", { lines: next.lines });
        forget(next.id);
      } catch (failure) {
        if (!(failure instanceof Refusal)) throw failure;
        if (failure.status === 0 || failure.status >= 500 || failure.status === 403) return failure.problems;
        keep(kept().map((one) => (one.id === next.id ? { ...one, problems: failure.problems } : one)));
      }
    }
  } finally {
    sending = false;
  }
  return [];
}

setInterval(() => { if (kept().some((one) => !one.problems)) send(); }, AGAIN_MS);
window.addEventListener("online", send);
