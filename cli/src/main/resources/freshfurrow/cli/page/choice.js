// What the reader has chosen: a day, and a field, load or batch with all that belongs to it. Views follow it.
const choice = (() => {
  const followers = [];
  const dayFollowers = [];
  let kind = null;
  let index = -1;
  let day = plan.work.filter(coversGround).map((activity) => dayOf(activity.start)).sort(d3.ascending)[0];
  let fields = new Set();
  let loads = new Set();
  let batches = new Set();
  if (day === undefined) day = plan.days.length > 0 ? plan.days[0] : 0;

  function gather() {
    fields = new Set();
    loads = new Set();
    batches = new Set();
    if (kind === "field") {
      fields.add(index);
      loads = new Set(plan.fields[index].loads);
    } else if (kind === "load") {
      loads.add(index);
    } else if (kind === "batch") {
      batches.add(index);
      loads = new Set(plan.batches[index].loads);
    }
    if (kind !== "field") loads.forEach((load) => plan.loads[load].haByField.forEach((ha, field) => fields.add(field)));
    if (kind !== "batch") loads.forEach((load) => plan.loads[load].batches.forEach((batch) => batches.add(batch)));
  }

  function choose(newKind, newIndex) {
    const same = kind === newKind && index === newIndex;
    kind = same ? null : newKind;
    index = same ? -1 : newIndex;
    gather();
    followers.forEach((follow) => follow());
  }

  const belongs = (activity) => kinds[activity.what].belongs(activity, { kind, index, loads, batches });

  return {
    choose,
    clear: () => choose(kind, index),
    belongs,
    any: () => kind !== null,
    is: (aKind, anIndex) => kind === aKind && index === anIndex,
    hasField: (field) => fields.has(field),
    hasLoad: (load) => loads.has(load),
    hasBatch: (batch) => batches.has(batch),
    kind: () => kind,
    index: () => index,
    follow: (follower) => followers.push(follower),
    day: () => day,
    openDay: (newDay) => {
      day = newDay;
      dayFollowers.forEach((follow) => follow());
    },
    followDay: (follower) => dayFollowers.push(follower),
    firstDay: () => {
      if (kind === "field" && plan.fields[index].from !== undefined) return dayOf(plan.fields[index].from);
      const starts = plan.work.filter(belongs).map((activity) => activity.start);
      return starts.length > 0 ? dayOf(d3.min(starts)) : day;
    },
  };
})();
