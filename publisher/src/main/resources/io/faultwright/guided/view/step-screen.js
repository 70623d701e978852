// One check at a time: cautions, how to take it, the answer.
(function (fw) {
  "use strict";

  const { make, button, para } = fw;

  /** `at` says which reading and what it is needed for. */
  function stepScreen(state, symptom, look, at) {
    const reading = symptom.readings[at.reading];
    const before = state.readings.get(at.reading);
    const changing = before !== undefined;
    return {
      status: changing ? "change" : look.status === "answered" ? "going-on" : look.status,
      label: stepLabel(state, at.reading, changing),
      title: reading.ask || reading.title,
      content: [
        purpose(symptom, look, at),
        look.status === "ask-first" && !changing
          ? para(fw.say("This must be right before all else."), "purpose")
          : null,
        make("div.cautions", {}, fw.cautions(reading.cautions, symptom.cautions)),
        placeOf(reading),
        setUp(reading, state, symptom, at.reading),
        how(reading),
        answers(reading, at.reading, before, look, limitsNote(symptom, look, at.reading)),
        fw.displayPanel(symptom, look),
        remark(at.reading, reading.title, fw.say("This step was unclear")),
      ],
    };
  }

  function stepLabel(state, id, changing) {
    if (!changing) return fw.say("Step {0}", state.readings.size + 1);
    return fw.say("Change step {0}", [...state.readings.keys()].indexOf(id) + 1);
  }

  /** What an operand is measured for, with the limits of what is worked out. */
  function purpose(symptom, look, at) {
    const goal = at.toward && at.toward !== at.reading && symptom.readings[at.toward];
    if (!goal) return null;
    const sum = fw.computation(goal) ? " = " + fw.computation(goal) : "";
    return make(
      "div.purpose",
      {},
      para([make("b", {}, fw.say("For: {0}", goal.title)), sum]),
      goal.units ? fw.limitsLine(goal, look.band(at.toward), fw.figure.offered(goal)) : null,
    );
  }

  const placeOf = (reading) =>
    fw.facts([
      [fw.say("Where"), reading.where],
      [fw.say("When"), reading.phase],
      [fw.say("With"), reading.instrument],
      [
        fw.say("Takes"),
        reading.minutes && reading.minutes !== "0" ? fw.say("{0} min", fw.local(reading.minutes)) : "",
      ],
    ]);

  /** Shown once: later steps with the same set-up only say that it is done. */
  function setUp(reading, state, symptom, id) {
    if (!reading.setUp) return null;
    const title = reading.setUp.title;
    const same = (other) =>
      other !== id &&
      symptom.readings[other] &&
      symptom.readings[other].setUp &&
      symptom.readings[other].setUp.title === title &&
      state.readings.get(other) !== "untaken";
    if ([...state.readings.keys()].some(same)) return para(fw.say("Still needed: {0}", title), "fine");
    return make(
      "div.setup",
      {},
      make("h3", {}, fw.say("Once, before this: {0}", title)),
      steps(reading.setUp.steps),
    );
  }

  const steps = (list) =>
    list && list.length
      ? make(
          "ol.steps",
          {},
          list.map((text) => make("li", {}, make("p.do", {}, text))),
        )
      : null;

  function how(reading) {
    const guide = reading.guide;
    return make(
      "div.how",
      {},
      reading.how && reading.how.length ? make("h3", {}, fw.say("How to take it")) : null,
      steps(reading.how),
      make(
        "ul.targets",
        {},
        guide ? make("li", {}, fw.link(fw.say("Guide: {0}", guide.title), guide.href)) : null,
        reading.page ? make("li", {}, fw.link(fw.say("This reading in the handbook"), reading.page)) : null,
      ),
    );
  }

  /** What the limits hang on, where that is not known yet. */
  function limitsNote(symptom, look, id) {
    const table = symptom.limits[id];
    const missing =
      table && !look.band(id) ? (table.drivers || []).filter((driver) => !look.value(driver)) : [];
    return missing.length
      ? fw.say("The limits depend on: {0}.", missing.map((driver) => fw.titleOf(driver, symptom)).join(", "))
      : "";
  }

  function answers(reading, id, before, look, note) {
    const take = (text) => fw.job.answer(id, text);
    const untaken = button(fw.say("This reading cannot be taken"), () => take("untaken"), "answer.none", {
      "data-value": "untaken",
      "aria-pressed": before === "untaken" ? "true" : null,
    });
    const body = reading.values
      ? choices(reading, before, take)
      : fw.quantity(reading, before, look.band(id), take, note);
    return make("div.reply", {}, make("h3", {}, fw.say("Your answer")), body, untaken);
  }

  function choices(reading, before, take) {
    const buttons = reading.values.map(([value, title]) =>
      button(title, () => take(value), "answer", {
        "data-value": value,
        "aria-pressed": before === value ? "true" : null,
      }),
    );
    return make("div.answers", { role: "group", "aria-labelledby": "guided-question" }, buttons);
  }

  /** Kept with the job; it goes along when the job is handed over. */
  function remark(id, title, question) {
    const old = ((fw.job.note().unclear || {})[id] || ["", ""])[1];
    const name = fw.newId("remark");
    const field = make("textarea.entry", {
      id: name,
      rows: "3",
      value: old,
      oninput: () => fw.job.remark(id, title, field.value),
    });
    return fw.details(
      "aside.remark",
      question,
      [
        make(
          "label.field",
          { for: name },
          fw.say("What was unclear? It goes along when you hand the job over."),
        ),
        field,
      ],
      old,
    );
  }

  fw.remark = remark;
  fw.screens = { ...fw.screens, step: stepScreen };
})((window.faultwright = window.faultwright || {}));
