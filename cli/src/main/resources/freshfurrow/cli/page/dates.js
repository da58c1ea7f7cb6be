// Dates in words: with the month first where clocks have twelve hours, and the day first elsewhere.
const datesInWords = (isTwelve) => {
  const inWords = (monthFirst, dayFirst) => d3.utcFormat(isTwelve ? monthFirst : dayFirst);
  return {
    long: inWords("%A, %B %-d, %Y", "%A %-d %B %Y"),
    short: inWords("%b %-d", "%-d %b"),
    crew: inWords("%a %b %-d", "%a %-d %b"),
  };
};
