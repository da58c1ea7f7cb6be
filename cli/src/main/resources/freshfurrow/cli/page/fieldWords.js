// What is said of a field: what is done to it, when, by whom, and with extract or without.
const fieldWords = (() => {
  const of = (field) => plan.words[field.work];
  const isMixed = new Set(plan.fields.map((field) => field.work)).size > 1;
  const ofCrop = (crop) => {
    const works = new Set(plan.fields.filter((field) => field.crop === crop).map((field) => field.work));
    return works.size === 1 ? plan.words[[...works][0]] : plan.words.all;
  };
  const isPartly = (field) => field.haWithout > 0 && field.loads.size > 0;

  /** What a color cannot say of the work on a field; empty where that is planting with extract. */
  function mark(field) {
    if (field.from === undefined) return "";
    if (field.haWithout > 0) return isPartly(field) ? "part without extract" : "without extract";
    return isMixed && field.work === "spray" ? of(field).done : "";
  }

  function without(field) {
    if (field.haWithout === 0) return "";
    return isPartly(field) ? `, ${figures.area(field.haWithout)} of it without extract` : " without extract";
  }

  function loads(field) {
    return (field.loads.size > 0 ? ` with ${figures.count(field.loads.size, "load", "loads")}` : "") + without(field);
  }

  function sentence(field) {
    const until = field.lastDay !== dayOf(field.from) ? ` to ${figures.day(field.lastDay)}` : "";
    const done = field.from === undefined ? of(field).undone : `${of(field).done} ${figures.day(dayOf(field.from))}${until} by ${plan.machineOf.get(field.planter).name}${without(field)}`;
    return `${field.id}, ${field.name}: ${figures.area(field.ha)} of ${plan.crops[field.crop]}, ${done}; `
      + `window ${figures.shortDay(field.opens)} to ${figures.shortDay(field.closes)}`
      + (field.fixed ? `; ${field.fixed}` : "")
      + (field.said ? `; ${field.said}` : "");
  }

  function days(field) {
    if (field.from === undefined) return "-";
    const until = field.lastDay > dayOf(field.from) ? ` to ${figures.shortDay(field.lastDay)}` : "";
    return `${isMixed ? `${of(field).done} ` : ""}${figures.day(dayOf(field.from))}${until}`;
  }

  function slack(field) {
    if (field.leftHa !== undefined) return `${figures.area(field.leftHa)} ${of(field).undone}`;
    const left = field.closes - field.lastDay;
    if (left < 0) return `${figures.count(-left, "day", "days")} late`;
    return left === 0 ? "on the last day" : `${figures.count(left, "day", "days")} to spare`;
  }

  // a broken promise says itself what was fixed
  const why = (field) => [...(field.fixed && !(field.why || "").includes(field.fixed) ? [field.fixed] : []), ...(field.why ? [field.why] : [])].join("; ");

  return { of, ofCrop, isPartly, mark, loads, sentence, days, slack, why };
})();
