// Every kind of activity, with all that views have to know of it: one row a kind, one for each of the plan file's.
//   keys     what stands behind what, start and end in the page's data
//   name     in the legend, in its order; letter on a mark that has room for it, or a label where that differs from mark to mark
//   y        and height of its mark: what is done for a load stands tall, what is in between lies low
//   look     of its mark, a class of the style sheet; or a fill, where colour and texture are made, and a swatch of it for the legend
//   says     what a machine does, in words that follow its times
//   belongs  whether it belongs to what is chosen: a kind, an index, and all loads and batches with it
//   chooses  what a click on it chooses, a kind and an index
const kinds = (() => {
  const spot = (index) => plan.spots[index].id;
  const loadOf = (activity) => plan.loads[activity.load];
  const isField = (index) => index < plan.fields.length;
  const ofLoad = (activity, chosen) => chosen.loads.has(activity.load);
  const chooseLoad = (activity) => ["load", activity.load];
  const mountedOn = (activity) => plan.machineOf.get(loadOf(activity).planter).mountedOn;
  const nothing = () => null;
  const never = () => false;

  return {
    plant: {
      keys: ["at", "load", "ha"],
      name: "work on fields, colored by field", letter: "", label: (activity) => spot(activity.at),
      y: 10, height: 34, fill: (activity) => looks.field(activity.at), swatch: () => looks.field(0),
      says: (a) => `${plan.words[plan.fields[a.at].work].does} ${figures.area(a.ha)} in ${spot(a.at)}, ${plan.fields[a.at].name}, with load ${loadOf(a).id}`,
      belongs: (a, chosen) => (chosen.kind === "field" ? a.at === chosen.index : ofLoad(a, chosen)),
      chooses: chooseLoad,
    },
    plantWithout: {
      keys: ["at", "ha"],
      name: "planting without extract", letter: "", label: (activity) => `${spot(activity.at)} without`,
      y: 10, height: 34, fill: () => looks.without, swatch: () => looks.without,
      says: (a) => `plants ${figures.area(a.ha)} in ${spot(a.at)}, ${plan.fields[a.at].name}, without extract`,
      belongs: (a, chosen) => chosen.kind === "field" && a.at === chosen.index,
      chooses: (a) => ["field", a.at],
    },
    fill: {
      keys: ["at", "load"],
      name: "fill", letter: "F",
      y: 10, height: 34, look: "look-dark",
      says: (a, day) => (mountedOn(a)
        ? `gets ready to spray load ${loadOf(a).id}, ${figures.volume(loadOf(a).litres)} out of ${loadOf(a).rig} at ${spot(a.at)}, for `
        : `fills with load ${loadOf(a).id}, ${figures.volume(loadOf(a).litres)} from ${loadOf(a).rig} at ${spot(a.at)}, for `)
        + `${figures.area(loadOf(a).ha)}; use by ${figures.by(loadOf(a).useBy, day)}`,
      belongs: ofLoad,
      chooses: chooseLoad,
    },
    transfer: {
      keys: ["at", "load", "litres"],
      name: "transfer", letter: "T",
      y: 10, height: 34, look: "look-dark",
      says: (a, day) => (mountedOn(a)
        ? `gets ready to spray ${figures.volume(a.litres)} with ${loadOf(a).planter} at ${spot(a.at)}, load ${loadOf(a).id}; `
        : `pumps ${figures.volume(a.litres)} into ${loadOf(a).planter} at ${spot(a.at)}, load ${loadOf(a).id}; `)
        + `use by ${figures.by(loadOf(a).useBy, day)}`,
      belongs: ofLoad,
      chooses: chooseLoad,
    },
    extract: {
      keys: ["at", "batch"],
      name: "batch", letter: "B",
      y: 18, height: 26, look: "look-straw",
      says: (a) => `makes batch ${plan.batches[a.batch].id} at ${spot(a.at)}: ${controls.contents(plan.batches[a.batch])}`,
      belongs: (a, chosen) => chosen.batches.has(a.batch),
      chooses: (a) => ["batch", a.batch],
    },
    draw: {
      keys: ["at", "litres"],
      name: "draw", letter: "W",
      y: 18, height: 26, look: "look-wet",
      says: (a) => `draws ${figures.volume(a.litres)} of water at ${spot(a.at)}`,
      belongs: never,
      chooses: nothing,
    },
    loadCompost: {
      keys: ["at", "lot", "kg"],
      name: "compost loading", letter: "C",
      y: 18, height: 26, look: "look-straw",
      says: (a) => `loads ${figures.mass(a.kg)} of ${plan.lots[a.lot].id} at ${spot(a.at)}`,
      belongs: never,
      chooses: nothing,
    },
    wait: {
      keys: ["at", "why"],
      name: "waiting", letter: "",
      y: 30, height: 14, fill: () => looks.wait, swatch: () => looks.wait,
      says: (a) => `waits ${controls.waits(a)} at ${spot(a.at)}, ${figures.span(a.end - a.start)}`,
      belongs: (a, chosen) => chosen.kind === "field" && a.at === chosen.index,
      chooses: (a) => (isField(a.at) ? ["field", a.at] : null),
    },
    clean: {
      keys: ["at"],
      name: "cleaning", letter: "",
      y: 34, height: 10, look: "look-dashed",
      says: (a) => `cleans the drum and strainer at ${spot(a.at)}`,
      belongs: never,
      chooses: nothing,
    },
    move: {
      keys: ["from", "to", "km"],
      name: "drive", letter: "",
      y: 38, height: 6, look: "look-flat",
      says: (a) => `drives from ${spot(a.from)} to ${spot(a.to)}, ${figures.distance(a.km)}`,
      belongs: (a, chosen) => chosen.kind === "field" && a.to === chosen.index,
      chooses: (a) => (isField(a.to) ? ["field", a.to] : null),
    },
    dump: {
      keys: ["at", "litres"],
      name: "mix dumped", letter: "X",
      y: 18, height: 26, look: "look-loss",
      says: (a) => `dumps ${figures.volume(a.litres)} of mix that is too old at ${spot(a.at)}`,
      belongs: never,
      chooses: nothing,
    },
    flush: {
      keys: ["at"],
      name: "flush", letter: "R",
      y: 18, height: 26, look: "look-dashed",
      says: (a) => `is flushed at ${spot(a.at)}`,
      belongs: never,
      chooses: nothing,
    },
    setUp: {
      keys: ["at"],
      name: "set-up", letter: "S",
      y: 18, height: 26, look: "look-dashed",
      says: (a) => `is set up at ${spot(a.at)}`,
      belongs: never,
      chooses: nothing,
    },
    closeUp: {
      keys: ["at"],
      name: "close-up", letter: "C",
      y: 18, height: 26, look: "look-dashed",
      says: (a) => `is closed up at ${spot(a.at)}`,
      belongs: never,
      chooses: nothing,
    },
  };
})();
