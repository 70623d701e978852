// The handbook's data, and every text in its language.
(function (fw) {
  "use strict";

  fw.book = fw.book || null;
  fw.symptoms = fw.symptoms || Object.create(null);

  /** Called by the data file of the handbook. */
  fw.handbook =
    fw.handbook ||
    function (data) {
      fw.book = data;
    };

  /** Called by the data file of a symptom. */
  fw.symptom =
    fw.symptom ||
    function (data) {
      fw.symptoms[data.id] = data;
    };

  /** A built-in text in the handbook's language; {0}, {1} stand for the other arguments. */
  fw.say = function (text, ...parts) {
    const words = (fw.book && fw.book.words) || {};
    const found = Object.prototype.hasOwnProperty.call(words, text) ? words[text] : text;
    return found.replace(/\{(\d)\}/g, (all, index) => (index < parts.length ? String(parts[index]) : all));
  };

  /** A number text with the decimal sign of the language. */
  fw.local = function (text) {
    return fw.book && fw.book.decimal === "," ? String(text).replace(".", ",") : String(text);
  };

  /** A number with its unit stays in one order where the text around runs from right to left. */
  fw.amount = function (number, unit) {
    const text = fw.local(number) + " " + unit.symbol;
    return document.documentElement.dir === "rtl" ? "\u2066" + text + "\u2069" : text;
  };

  /** The title of an equipment fact or a reading. */
  fw.titleOf = function (id, symptom) {
    if (id === "model") return fw.say("Model");
    const fact = fw.factOf(id);
    if (fact) return fact.title;
    const reading = symptom && symptom.readings[id];
    return reading ? reading.title : id;
  };

  fw.factOf = function (id) {
    return fw.book.facts.find((fact) => fact.id === id);
  };

  /** What a value of an equipment fact is called. */
  fw.factValue = function (id, value) {
    if (value === "?") return fw.say("not known");
    const fact = fw.factOf(id);
    const found = fact && fact.values.find((each) => each[0] === value);
    return found ? found[1] : value;
  };
})((window.faultwright = window.faultwright || {}));
