// How phones open the desk.
import { ask } from "/desk/server.js";
import { make, fill } from "/desk/make.js";

function code({ address, link, size, path }) {
  const picture = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  picture.setAttribute("viewBox", `0 0 ${size} ${size}`);
  picture.setAttribute("class", "code");
  picture.setAttribute("role", "img");
  picture.setAttribute("aria-label", `Code for ${address}`);
  const ground = document.createElementNS("http://www.w3.org/2000/svg", "rect");
  ground.setAttribute("width", size);
  ground.setAttribute("height", size);
  ground.setAttribute("fill", "#fff");
  const dark = document.createElementNS("http://www.w3.org/2000/svg", "path");
  dark.setAttribute("d", path);
  dark.setAttribute("fill", "#000");
  picture.append(ground, dark);
  return make("figure", {}, picture, make("figcaption", {}, make("code", {}, link)));
}

export const sharing = {
  id: "share",
  title: "Share",
  async show(main) {
    const { shared, links } = await ask("/api/share");
    const how = shared
      ? "Crews point their phone's camera at a code. They see the day's work and log it; the season and the plan are changed here only."
      : "The desk is open on this computer only. To let phones on the farm's own network open it, close it and start it with --share.";
    fill(main, make("h2", {}, "Share"), make("p", { class: "lead" }, how),
      shared && links.length === 0 ? make("p", { class: "readout telling" }, "This computer is not connected to a local network.") : null,
      ...links.map(code),
      shared ? make("p", { class: "aside" }, "What is sent is not encrypted: anyone in the same network could read it. Share it on a network of your own only. A phone keeps its way in until the file .freshfurrow-crew beside the season file is deleted and the desk is started again.") : null);
  },
};
