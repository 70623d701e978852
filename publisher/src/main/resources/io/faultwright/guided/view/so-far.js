// What is known so far: still possible, ruled out and why, every reading with a way to change it.
(function (fw) {
  "use strict";

  const { make, button, para } = fw;

  /** The blocks beside the step. */
  fw.soFar = function (state, symptom, look) {
    return [
      possible(symptom, look),
      ruledOut(state, symptom, look),
      readings(state, symptom, look),
      equipment(state),
    ].filter(Boolean);
  };

  function block(name, title, count, content) {
    const shown = count === null ? title : title + " (" + count + ")";
    const box = fw.details("known", shown, content, fw.open[name]);
    box.id = "guided-" + name;
    box.addEventListener("toggle", () => {
      fw.open[name] = box.open;
    });
    return box;
  }

  /** Which blocks are open; stays as the technician left it. */
  fw.open = fw.open || { possible: true, out: false, readings: true, equipment: false };

  fw.faultTitle = (symptom, id) => (symptom.faults[id] ? symptom.faults[id].title : id);

  function possible(symptom, look) {
    if (!look || !(look.possible.length || look.answers.some((answer) => answer[0] === "fault"))) return null;
    const found = look.answers.filter((answer) => answer[0] === "fault").map((answer) => answer[1]);
    const items = look.possible.map((id) => make("li", { "data-fault": id }, fw.faultTitle(symptom, id)));
    const certain = found.map((id) =>
      make("li", { "data-fault": id }, make("b", {}, fw.say("Found: {0}", fw.faultTitle(symptom, id)))),
    );
    const list = [...certain, ...items];
    const title = found.length && !items.length ? fw.say("Found") : fw.say("Still possible");
    return block(
      "possible",
      title,
      list.length,
      list.length ? make("ul.plainly", {}, list) : para(fw.say("No fault of this complaint.")),
    );
  }

  function ruledOut(state, symptom, look) {
    if (!look || !look.ruledOut.length) return null;
    const items = look.ruledOut.map((out) =>
      make(
        "li",
        { "data-fault": out.fault },
        make("span.out", {}, fw.faultTitle(symptom, out.fault)),
        out.why.map((test) => make("span.fine", {}, fw.testWords(test, state, symptom, look))),
      ),
    );
    return block("out", fw.say("Ruled out"), items.length, make("ul.plainly", {}, items));
  }

  /** A test in words: `Superheat: 3 K – not above limits`. */
  fw.testWords = function (test, state, symptom, look) {
    const title = fw.titleOf(test.subject, symptom);
    const value = fw.valueOf(test.subject, state, symptom, look);
    const holds = (test.truth !== false) === (test.wanted !== false);
    const words = holds ? test.words : fw.say("not: {0}", test.words);
    return title + ": " + (value && value !== test.words ? value + " – " + words : words);
  };

  /** The value of a reading or fact in words, as given, worked out or assumed; "" where it is not known. */
  fw.valueOf = function (id, state, symptom, look) {
    if (state.facts[id] && id !== "symptom") return fw.factValue(id, state.facts[id]);
    const reading = symptom && symptom.readings[id];
    if (!reading) return factOfModel(id, state);
    if (state.readings.has(id)) return fw.figure.words(reading, state.readings.get(id));
    const told = look && look.value(id);
    return told ? fw.figure.valueWords(reading, told) : "";
  };

  function factOfModel(id, state) {
    const number = fw.machine.builds(state.facts)[0];
    const build = number === undefined ? null : fw.book.builds[number];
    return build && fw.machine.known(state.facts.model) && build.facts[id]
      ? fw.factValue(id, build.facts[id])
      : "";
  }

  function readings(state, symptom, look) {
    const given = [...state.readings].map(([id, text]) => reading(id, text, symptom, look)).filter(Boolean);
    const worked =
      symptom && look
        ? fw
            .workedOut(symptom, look)
            .map((each) =>
              make(
                "li",
                { "data-reading": each.id },
                make(
                  "div",
                  {},
                  make("span.fine", {}, each.title),
                  make("b", {}, each.value),
                  make("span.fine", {}, each.computation),
                ),
                each.derived ? null : change(each.id, each.title),
              ),
            )
        : [];
    const list = [...given, ...worked];
    return given.length
      ? block("readings", fw.say("Readings so far"), given.length, make("ul.given", {}, list))
      : null;
  }

  function reading(id, text, symptom, look) {
    const known = symptom && symptom.readings[id];
    if (!known) return null;
    const place = known.units && look ? fw.sideWords(known, id, text, look) : "";
    return make(
      "li",
      { "data-reading": id },
      make(
        "div",
        {},
        make("span.fine", {}, known.title),
        make("b", {}, fw.figure.words(known, text)),
        place ? make("span.fine", {}, place) : null,
      ),
      change(id, known.title),
    );
  }

  const change = (id, title) =>
    button(fw.say("Change"), () => fw.job.ask(id), "plain", { "aria-label": fw.say("Change: {0}", title) });

  /** `below limits`, `within limits`, `above limits`, or nothing. */
  fw.sideWords = function (reading, id, text, look) {
    const figure = text !== "untaken" && fw.figure.read(reading, text);
    const side = figure ? fw.figure.side(look.band(id), figure.inOwn) : null;
    if (!side) return "";
    return side === "below"
      ? fw.say("below limits")
      : side === "above"
        ? fw.say("above limits")
        : fw.say("within limits");
  };

  /** Derived and assumed readings that have a value. */
  fw.workedOut = function (symptom, look) {
    const state = fw.job.state();
    return Object.keys(symptom.readings)
      .filter((id) => !state.readings.has(id) && look.has(id))
      .map((id) => worked(id, symptom.readings[id], look))
      .filter(Boolean);
  };

  /** How a derived reading comes about, in words; "" where the data do not say. */
  fw.computation = (reading) => reading.computation || (reading.derived && reading.derived.computation) || "";

  fw.equation = (each) =>
    each.title +
    ": " +
    each.value +
    (each.derived && each.computation
      ? " = " + each.computation
      : each.derived
        ? ""
        : " (" + each.computation + ")");

  function worked(id, reading, look) {
    if (!reading.derived && !reading.assumed) return null;
    const told = look.value(id);
    if (!told || (told.untaken && !reading.derived)) return null;
    const computation = told.untaken ? "" : reading.derived ? fw.computation(reading) : fw.say("assumed");
    return {
      id,
      title: reading.title,
      value: told.untaken ? fw.say("cannot be worked out") : fw.figure.valueWords(reading, told),
      computation,
      derived: Boolean(reading.derived),
    };
  }

  function equipment(state) {
    const rows = Object.keys(state.facts).map((id) =>
      make(
        "li",
        {},
        make(
          "div",
          {},
          make("span.fine", {}, fw.titleOf(id)),
          make("b", {}, fw.factValue(id, state.facts[id])),
        ),
        changeFact(id),
      ),
    );
    return rows.length ? block("equipment", fw.say("Machine"), null, make("ul.given", {}, rows)) : null;
  }

  const changeFact = (id) =>
    button(
      fw.say("Change"),
      () => fw.job.show(id === "model" || id === "software" ? pageOf(id) : "fact-" + id),
      "plain",
      { "aria-label": fw.say("Change: {0}", fw.titleOf(id)) },
    );

  const pageOf = (id) => (id === "model" ? "machine" : "software");
})((window.faultwright = window.faultwright || {}));
