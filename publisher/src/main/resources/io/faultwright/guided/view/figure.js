// Measured values: as typed, in which unit, and how they are shown.
(function (fw) {
  "use strict";

  const own = (reading) => reading.units[0];

  const unitOf = (reading, symbol) => reading.units.find((unit) => unit.symbol === symbol);

  /** Digits of Arabic and Persian keyboards as ours. */
  const western = (text) =>
    text
      .replace(/[\u0660-\u0669\u06f0-\u06f9]/g, (digit) => digit.charCodeAt(0) & 15)
      .replace(/\u066b/g, ".");

  /** `1,500` where the decimal sign is a point may be one and a half or fifteen hundred; both readings, else none. */
  function twoWays(typed) {
    const other = fw.book.decimal === "," ? "." : ",";
    const text = typed.trim().replace(/[\u2212\u2013]/g, "-");
    const parts = text.split(other);
    if (parts.length !== 2 || !/^-?[1-9]\d{0,2}$/.test(parts[0]) || !/^\d{3}$/.test(parts[1])) return [];
    return [parts.join("."), parts.join("")];
  }

  /** A typed number with a point as decimal sign; null if it is not one number. */
  function tidy(typed) {
    const text = western(typed)
      .trim()
      .replace(/[\u2212\u2013\u2012]/g, "-")
      .replace(/\s/g, "")
      .replace(",", ".");
    return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(text)
      ? text
          .replace("+", "")
          .replace(/^(-?)\./, "$10.")
          .replace(/\.$/, "")
      : null;
  }

  /** As exact as the rules; nobody types one. */
  const FRACTION = /^-?\d{1,40}\/[1-9]\d{0,40}$/;

  /** From the text of the address, `36 psi(g)`, to number, unit and the rational in the reading's own unit. */
  function read(reading, text) {
    const match = /^\s*([-+\u2212\d.,]+(?:\/\d+)?)\s*(.*?)\s*$/.exec(text);
    const number = match && (FRACTION.test(match[1]) ? match[1] : tidy(match[1]));
    const unit = match && (match[2] ? unitOf(reading, match[2]) : own(reading));
    if (number === null || !number || !unit) return null;
    return { number, unit, inOwn: toOwn(reading, number, unit) };
  }

  const toOwn = (reading, number, unit) => fw.number.convert(fw.number.of(number), unit, own(reading));

  const write = (number, unit) => number + " " + unit.symbol;

  /** What the judge is told; undefined where the text means nothing for this reading. */
  function value(reading, text) {
    if (text === "untaken") return { untaken: true };
    if (reading.values) return reading.values.some((each) => each[0] === text) ? { word: text } : undefined;
    const figure = reading.units && read(reading, text);
    return figure ? { number: fw.number.exact(figure.inOwn) } : undefined;
  }

  /** An answer in words: as it was given. */
  function words(reading, text) {
    if (text === "untaken") return fw.say("cannot be taken");
    if (reading && reading.values) return (reading.values.find((each) => each[0] === text) || [0, text])[1];
    const figure = reading && reading.units && read(reading, text);
    return figure ? fw.amount(figure.number, figure.unit) : text;
  }

  /** What the judge worked out or assumed, in words. */
  function valueWords(reading, told) {
    if (told.untaken) return fw.say("cannot be taken");
    if (told.word !== undefined) return words(reading, told.word);
    const unit = offered(reading);
    return fw.amount(shown(reading, rational(told.number), unit), unit);
  }

  /** How far the instrument may be off, in the unit of the answer. */
  function reach(reading, text, tolerance) {
    const figure = text && text !== "untaken" && read(reading, text);
    if (!figure) return "";
    const there = fw.number.convert(tolerance, plain(own(reading)), plain(figure.unit));
    return fw.amount(fw.number.decimal(there, 2), figure.unit);
  }

  const rational = (number) => (typeof number === "string" ? fw.number.of(number) : number);

  /** A rational of the own unit, shown in another. */
  function shown(reading, rational, unit) {
    const there = fw.number.convert(rational, own(reading), unit);
    const finest = step(reading, unit);
    return fw.local(finest ? fw.number.rounded(there, finest) : fw.number.decimal(there, 3));
  }

  const plain = (unit) => ({ symbol: unit.symbol, scale: unit.scale, offset: "0" });

  /** The resolution in another unit; differences have no offset. */
  function step(reading, unit) {
    if (!reading.resolution) return null;
    return fw.number.convert(fw.number.of(reading.resolution), plain(own(reading)), plain(unit));
  }

  const compare = (a, b) => fw.number.compare(a, b);

  function inRange(reading, rational) {
    const [low, high] = reading.range.map((text) => fw.number.of(text));
    return compare(rational, low) >= 0 && compare(rational, high) <= 0;
  }

  /** What may have been meant by a number that is not possible: another unit, another sign. */
  function meant(reading, number, unit) {
    const flipped = number.startsWith("-") ? number.slice(1) : "-" + number;
    const tries = reading.units.filter((each) => each !== unit).map((each) => [number, each]);
    return [[flipped, unit], ...tries].filter(([text, each]) => inRange(reading, toOwn(reading, text, each)));
  }

  /** Where a value lies: "below", "within", "above" its limits; null where that is not known. */
  function side(band, rational) {
    if (!band) return null;
    if (band.low && compare(rational, band.low) < 0) return "below";
    return band.high && compare(rational, band.high) > 0 ? "above" : "within";
  }

  const AMERICAN = /psi|°F|^in|^ft|lb|gal|cfm|oz|BTU/i;

  /** The unit to offer: the last one used for this kind, or the one of the handbook's system. */
  function offered(reading) {
    const used = unitOf(reading, (fw.store.read("units") || {})[kind(reading)]);
    if (used) return used;
    const system = fw.book.systems;
    const wanted = reading.units.slice(0, 2).find((unit) => AMERICAN.test(unit.symbol) === (system === "us"));
    return (system === "us" || system === "si") && wanted ? wanted : own(reading);
  }

  const kind = (reading) =>
    reading.units
      .map((unit) => unit.symbol)
      .sort()
      .join(" ");

  function remember(reading, unit) {
    fw.store.write("units", { ...fw.store.read("units"), [kind(reading)]: unit.symbol });
  }

  fw.figure = {
    own,
    unitOf,
    tidy,
    twoWays,
    read,
    toOwn,
    write,
    value,
    words,
    valueWords,
    shown,
    inRange,
    meant,
    side,
    reach,
    offered,
    remember,
  };
})((window.faultwright = window.faultwright || {}));
