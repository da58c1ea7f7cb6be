// Figures in the season file's units, written as the program's own text writes them.
const figures = (() => {
  const zero = Date.parse(`${plan.season.first}T00:00:00Z`);
  const at = (time) => new Date(zero + time * 1000);
  const decimals = (value, places) => value.toLocaleString("en-US", { minimumFractionDigits: places, maximumFractionDigits: places });
  const inUnit = (unit, si) => si * plan.units[unit].perSi;
  const named = (unit, text) => `${text} ${plan.units[unit].symbol}`;

  function shortest(value) {
    if (Math.abs(value) >= 100) return decimals(value, 0);
    const tenths = decimals(value, 1);
    if (value > 0 && tenths === "0.0") return "<0.1";
    return tenths.endsWith(".0") ? tenths.slice(0, -2) : tenths;
  }

  // what the timeline reckons with, 1 dm2; less is left of subtracting figures
  const smallestHa = 1e-6;

  function area(ha) {
    const places = plan.units.area.decimals;
    const figure = decimals(inUnit("area", ha), places);
    return ha >= smallestHa && figure === decimals(0, places) ? `<${decimals(10 ** -places, places)}` : figure;
  }

  function span(seconds) {
    const minutes = Math.floor(Math.abs(seconds) / 60);
    const text = minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, "0")} min`;
    return seconds < 0 ? `-${text}` : text;
  }

  const MINUTES_IN_HALF_A_DAY = 720;
  const STEP_S = 300;
  const isTwelve = plan.season.clock === "12h";
  const twentyFourHours = d3.utcFormat("%H:%M");
  const twelveHours = d3.utcFormat("%-I:%M");
  const dayFormat = d3.utcFormat("%a %Y-%m-%d");
  const day = (index) => dayFormat(at(index * DAY_S));
  const words = datesInWords(isTwelve);

  function clock(time) {
    if (!isTwelve) return twentyFourHours(at(time));
    const minute = Math.floor((time % DAY_S) / 60);
    if (minute % MINUTES_IN_HALF_A_DAY === 0) return minute > 0 ? "noon" : "midnight";
    return `${twelveHours(at(time))} ${minute < MINUTES_IN_HALF_A_DAY ? "am" : "pm"}`;
  }

  // midnight at the day's end is called 24:00 where clocks go to 24
  const endsDay = (time, index) => time === (index + 1) * DAY_S;
  const timeOn = (time, index) => (endsDay(time, index) && !isTwelve ? "24:00" : clock(time));
  const dated = (time, index, date) => timeOn(time, index) + (endsDay(time, index) || dayOf(time) === index ? "" : ` on ${date}`);
  const forCrew = (time, index) => dated(time, index, words.crew(at(time)));
  return {
    at,
    inUnit,
    symbol: (unit) => plan.units[unit].symbol,
    area: (ha) => named("area", area(ha)),
    volume: (litres) => named("volume", shortest(inUnit("volume", litres))),
    mass: (kg) => named("mass", shortest(inUnit("mass", kg))),
    distance: (km) => named("distance", decimals(inUnit("distance", km), 1)),
    count: (number, one, many) => `${number.toLocaleString("en-US")} ${number === 1 ? one : many}`,
    span,
    day,
    shortDay: (index) => words.short(at(index * DAY_S)),
    longDay: (index) => words.long(at(index * DAY_S)),
    clock,
    time: (time) => `${day(dayOf(time))} ${clock(time)}`,
    shortTime: (time) => `${words.crew(at(time))} ${clock(time)}`,
    hour: (time, last) => (isTwelve ? clock(time).replace(":00", "") : time === last && time % DAY_S === 0 ? "24:00" : clock(time)),
    clockOn: (time, index) => dated(time, index, day(dayOf(time))),
    // as crews read them: the nearest five minutes, and a limit never later than it is
    about: (time, index) => forCrew(Math.floor((time + STEP_S / 2) / STEP_S) * STEP_S, index),
    by: (time, index) => forCrew(Math.floor(time / STEP_S) * STEP_S, index),
  };
})();
