// The plan as the page was given it, with its short lists turned into objects that point at one another.
const DAY_S = 86400;

// Whether it covers ground: what has an area is done to the field where it is.
const coversGround = (activity) => activity.ha !== undefined;

// Whether it plants without extract: ground is covered out of no load.
const isWithoutExtract = (activity) => coversGround(activity) && activity.load === undefined;

const plan = (() => {
  const given = JSON.parse(document.getElementById("plan-data").textContent);
  function machine(kind, row) {
    const name = kind === "sprayer" ? `${row.id} (sprayer)` : row.id;
    const work = row.activities.map(([what, start, end, ...rest]) => {
      const activity = { what, start, end, machine: row.id };
      kinds[what].keys.forEach((key, i) => { activity[key] = rest[i]; });
      return activity;
    });
    const byDay = d3.group(
      work.flatMap((activity) => d3.range(dayOf(activity.start), dayOf(Math.max(activity.start, activity.end - 1)) + 1)
        .map((day) => ({ day, activity }))),
      (entry) => entry.day);
    return { id: row.id, name, kind, does: row.work, mountedOn: row.on, hours: row.hours, work, on: (day) => (byDay.get(day) || []).map((entry) => entry.activity) };
  }

  const machines = [...given.planters.map((row) => machine(given.words[row.work].machine, row)), ...given.rigs.map((row) => machine("rig", row))];
  const work = machines.flatMap((each) => each.work);
  given.loads.forEach((load) => { load.haByField = new Map(); load.ha = 0; });
  given.batches.forEach((batch) => { batch.loads = []; });
  given.fields.forEach((field) => { field.loads = new Set(); field.haWithout = 0; });
  work.filter(coversGround).forEach((planting) => {
    const field = given.fields[planting.at];
    field.planter = planting.machine;
    if (isWithoutExtract(planting)) {
      field.haWithout += planting.ha;
      return;
    }
    const load = given.loads[planting.load];
    load.ha += planting.ha;
    load.haByField.set(planting.at, (load.haByField.get(planting.at) || 0) + planting.ha);
    field.loads.add(planting.load);
  });
  work.filter((activity) => activity.what === "transfer").forEach((transfer) => {
    given.loads[transfer.load].start = transfer.start;
  });
  given.loads.forEach((load, i) => load.batches.forEach((batch) => given.batches[batch].loads.push(i)));
  // from, to, then longitude and latitude in hundred-thousandths of a degree, each less that of the point before
  const ways = new Map((given.ways || []).map(([from, to, ...steps]) => {
    let at = [0, 0];
    return [`${from} ${to}`, d3.range(0, steps.length, 2).map((i) => {
      at = [at[0] + steps[i], at[1] + steps[i + 1]];
      return at.map((step) => step / 1e5);
    })];
  }));
  return {
    ...given,
    ways,
    machines,
    machineOf: new Map(machines.map((each) => [each.id, each])),
    work,
    spots: [...given.fields, ...given.points, ...given.places],
    days: Array.from(new Set(work.flatMap((activity) => [dayOf(activity.start), dayOf(Math.max(activity.start, activity.end - 1))])))
      .sort(d3.ascending),
  };
})();

function dayOf(time) {
  return Math.floor(time / DAY_S);
}
