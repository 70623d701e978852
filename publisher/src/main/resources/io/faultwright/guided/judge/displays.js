// Which faults go with what the display says, and for how long.
(function (fw) {
  "use strict";

  /** A person with a watch is so many seconds off, to either side. */
  const WATCH = 10;

  /** What is told of these builds. */
  const told = (symptom, builds) =>
    (symptom.displays || []).filter((entry) => entry.builds.some((build) => builds.includes(build)));

  /** Everything that the display can say, in the order in which it first does. */
  const texts = (symptom, builds) => [
    ...new Set(told(symptom, builds).flatMap((entry) => entry.shows.map((show) => show[0]))),
  ];

  const lasts = (show, seconds) =>
    seconds === null ||
    (seconds >= Number(show[1]) - WATCH && (show.length < 3 || seconds <= Number(show[2]) + WATCH));

  const shows = (entry, text, seconds) =>
    entry.shows.some((show) => show[0] === text && lasts(show, seconds));

  /** Ids of the faults that are told of: those that go with it on some build, and the others. */
  function sort(symptom, builds, text, seconds) {
    const known = told(symptom, builds);
    const fits = new Set(known.filter((entry) => shows(entry, text, seconds)).map((entry) => entry.fault));
    const others = new Set(known.map((entry) => entry.fault).filter((fault) => !fits.has(fault)));
    return { fits: [...fits], others: [...others] };
  }

  fw.displays = { WATCH, texts, sort };
})((window.faultwright = window.faultwright || {}));
