// Where a check ends: faults, another complaint, the hotline, or readings to take again.
(function (fw) {
  "use strict";

  const { make, button, para } = fw;

  const of = (look, kind) => look.answers.filter((answer) => answer[0] === kind).map((answer) => answer[1]);

  /** Something was answered: faults, a referral, an escalation, or several of them. */
  function resultScreen(state, symptom, look) {
    if (look.contradictory) return contradiction(state, symptom, look);
    const faults = of(look, "fault");
    if (!faults.length && of(look, "refer").length) return referral(state, symptom, look);
    if (!faults.length) return escalation(state, symptom, look);
    return {
      status: "answered", label: fw.say("Result"),
      title: faults.length > 1 ? fw.say("{0} faults found. Mend all of them.", faults.length) : fw.say("Found: {0}", faultTitle(symptom, faults[0])),
      content: [borderline(state, symptom, look), because(symptom, look), faults.map((id) => fw.remedy(id, state, symptom, faults.length > 1)),
        others(symptom, look), readingsThatLed(state, symptom, look), actions(true), unclear()],
    };
  }

  const unclear = () => fw.remark("result", fw.say("Result"), fw.say("Something was unclear"));

  const faultTitle = (symptom, id) => (symptom.faults[id] ? symptom.faults[id].title : id);

  const fired = (symptom, look) => look.rules.filter((rule) => rule.state === "fired")
    .map((rule) => symptom.rules.find((each) => each.id === rule.id)).filter((rule) => rule && rule.because);

  function because(symptom, look) {
    const reasons = fired(symptom, look).map((rule) => rule.because);
    return reasons.length ? make("div.because", {}, [...new Set(reasons)].map((text) => para(text))) : null;
  }

  /** A reading so near to its limit that the instrument could have it on the other side. */
  function borderline(state, symptom, look) {
    if (!look.borderline || !look.borderline.length) return null;
    const items = look.borderline.map((near) => make("li", { "data-reading": near.reading },
      para(make("b", {}, fw.titleOf(near.reading, symptom) + ": " + measuredAt(near, state, symptom, look))),
      limitsOf(near.reading, state, symptom, look),
      para(otherwise(symptom, near)), toChange(operands(near.reading, symptom), state, symptom)));
    return make("div.close-call", { id: "guided-borderline" }, make("h3", {}, fw.say("Too close to call")),
      para(fw.say("Before you replace a part: take this again with a better instrument.")), make("ul.plainly", {}, items));
  }

  function measuredAt(near, state, symptom, look) {
    const value = fw.valueOf(near.reading, state, symptom, look);
    const reach = near.tolerance && fw.figure.reach(symptom.readings[near.reading], state.readings.get(near.reading), near.tolerance);
    return reach ? fw.say("{0}, give or take {1}", value, reach) : value;
  }

  function limitsOf(id, state, symptom, look) {
    const reading = symptom.readings[id];
    const figure = reading && reading.units && state.readings.has(id) && fw.figure.read(reading, state.readings.get(id));
    return figure ? fw.limitsLine(reading, look.band(id), figure.unit) : null;
  }

  function otherwise(symptom, near) {
    const names = (near.otherwise || []).map((answer) => answerWords(answer, symptom));
    return names.length ? fw.say("Within its accuracy it could also be: {0}.", names.join(", ")) : fw.say("Within its accuracy there could be no answer.");
  }

  function answerWords([kind, id], symptom) {
    if (kind === "fault") return faultTitle(symptom, id);
    return kind === "refer" ? symptomTitle(id, symptom) : fw.say("ask the hotline");
  }

  fw.answerWords = answerWords;

  function symptomTitle(id, symptom) {
    const listed = fw.book.symptoms.find((each) => each.id === id);
    return (symptom && symptom.titles && symptom.titles[id]) || (listed ? listed.title : id);
  }

  /** Other faults that may be there at the same time. */
  function others(symptom, look) {
    if (!look.possible.length || !look.next) return null;
    return make("div.others", {}, make("h3", {}, fw.say("Another fault may be there too")),
      make("ul.plainly", {}, look.possible.map((id) => make("li", {}, faultTitle(symptom, id)))),
      button(fw.say("Go on checking"), () => fw.job.goOn(look.answers.length), "answer", { id: "guided-go-on" }));
  }

  function readingsThatLed(state, symptom, look) {
    const given = [...state.readings].filter(([id]) => symptom.readings[id])
      .map(([id, text]) => [symptom.readings[id].title, fw.figure.words(symptom.readings[id], text)]);
    const worked = fw.workedOut(symptom, look).map((each) => [each.title, each.value]);
    return make("div.led", {}, make("h3", {}, fw.say("The readings that led here")), fw.facts([...given, ...worked]));
  }

  const actions = (onPaper) => make("div.answers.tools", {}, button(fw.say("Hand the job over"), () => fw.job.show("hand-over"), "answer", { id: "guided-hand-over" }),
    onPaper ? button(fw.say("Print"), () => window.print(), "answer") : null);

  function referral(state, symptom, look) {
    const ids = of(look, "refer");
    return {
      status: "referred", label: fw.say("Result"), title: fw.say("This belongs to another complaint"),
      content: [because(symptom, look), reasons(look.because, state, symptom, look), borderline(state, symptom, look),
        para(fw.say("Model and readings are kept.")), make("div.answers", {}, ids.map((id) => onward(id, symptom))), actions(), unclear()],
    };
  }

  const onward = (id, symptom) => button(fw.say("Go on with: {0}", symptomTitle(id, symptom)), () => fw.job.symptom(id), "answer.main", { "data-refer": id });

  function escalation(state, symptom, look) {
    return {
      status: "escalate", label: fw.say("Result"), title: fw.say("Call the hotline"),
      content: [because(symptom, look), fw.hotline(), para(fw.say("Have your readings ready.")), borderline(state, symptom, look),
        readingsThatLed(state, symptom, look), actions(), unclear()],
    };
  }

  function contradiction(state, symptom, look) {
    return {
      status: "contradictory", label: fw.say("Result"), title: fw.say("The handbook gives two answers"),
      content: [make("ul.plainly", {}, look.answers.map((answer) => make("li", {}, answerWords(answer, symptom)))),
        para(fw.say("Do not choose one. Call the hotline.")), fw.hotline(), actions()],
    };
  }

  /** Tests in words. */
  function reasons(tests, state, symptom, look) {
    return tests && tests.length ? make("ul.plainly", {}, tests.map((test) => make("li", {}, fw.testWords(test, state, symptom, look)))) : null;
  }

  /** A row for each reading that may be wrong, with a way to take it again. */
  function toChange(ids, state, symptom) {
    const given = [...new Set(ids)].filter((id) => state.readings.has(id) && symptom.readings[id]);
    return given.length ? make("div.answers", {}, given.map((id) =>
      button(fw.say("Take again: {0}", symptom.readings[id].title), () => fw.job.ask(id), "answer", { "data-again": id }))) : null;
  }

  /** The readings behind these tests, through what is worked out from them. */
  function operands(id, symptom) {
    const reading = symptom.readings[id];
    if (!reading || !reading.derived) return [id];
    const of = (derived) => [...derived.terms.map((term) => term[0]), ...derived.bends.flatMap((bend) => of(bend.argument))];
    return of(reading.derived).flatMap((each) => operands(each, symptom));
  }

  const unknown = (tests) => tests.filter((test) => test.truth === null);

  const subjects = (tests, symptom) => [...new Set(tests.map((test) => fw.titleOf(test.subject, symptom)))].join(", ");

  const measured = (tests, symptom) => tests.flatMap((test) => operands(test.subject, symptom));

  const troubles = {
    "take-again": (state, symptom, look) => ({
      title: fw.say("These readings do not fit together"),
      content: [look.broken.map((broken) => [para(broken.because), reasons(broken.tests, state, symptom, look)]),
        para(fw.say("Take them again.")), toChange(measured(look.broken.flatMap((broken) => broken.tests), symptom), state, symptom)],
    }),
    "check-values": (state, symptom, look) => ({
      title: fw.say("A value is not possible"),
      content: [look.strange.map((odd) => [para(fw.titleOf(odd.reading, symptom) + ": " + fw.valueOf(odd.reading, state, symptom, look)),
        fw.rangeLine(symptom.readings[odd.reading])]),
        toChange(look.strange.flatMap((odd) => operands(odd.reading, symptom)), state, symptom)],
    }),
    "not-this-symptom": (state, symptom, look) => ({
      title: fw.say("This is not that complaint"),
      content: [para(fw.say("These readings do not go with it.")), reasons(look.because, state, symptom, look),
        toChange(measured(look.because || [], symptom), state, symptom), otherComplaint()],
    }),
    "does-not-apply": () => ({
      title: fw.say("This complaint is not for this machine"), content: [otherComplaint(), otherMachine()],
    }),
    "no-such-equipment": () => ({
      title: fw.say("There is no such machine in this handbook"), content: [otherMachine()],
    }),
    "ask-first": (state, symptom, look) => ({
      title: fw.say("Something must be known first"),
      content: [para(fw.say("Without it there is no answer: {0}.", subjects(unknown(look.because), symptom))),
        toChange(measured(unknown(look.because), symptom), state, symptom)],
    }),
    "no-answer": () => ({
      title: fw.say("The handbook has no answer here"), content: [para(fw.say("Do not guess. Call the hotline."))],
    }),
    "nothing-yet": (state, symptom, look) => ({
      title: fw.say("These readings do not decide it"), content: [para(fw.say("Call the hotline, or change a reading.")), stillOpen(symptom, look),
        toChange([...state.readings.keys()].filter((id) => state.readings.get(id) === "untaken"), state, symptom)],
    }),
  };

  const stillOpen = (symptom, look) => (look.possible.length ? [make("h3", {}, fw.say("Still possible")),
    make("ul.plainly", {}, look.possible.map((id) => make("li", {}, faultTitle(symptom, id))))] : null);

  const otherComplaint = () => make("div.answers", {}, button(fw.say("Choose another complaint"), () => fw.job.show("complaint"), "answer"));

  const otherMachine = () => make("div.answers", {}, button(fw.say("Change the machine"), () => fw.job.show("machine"), "answer"));

  /** No answer, and why; always with the hotline and the hand-over. */
  function troubleScreen(state, symptom, look) {
    const known = troubles[look.status] || troubles["nothing-yet"];
    const { title, content } = known(state, symptom, look);
    return { status: look.status, label: fw.say("Result"), title, content: [content, fw.hotline(), actions(), unclear()] };
  }

  /** A fact that the technician does not know, and without which nothing goes on. */
  function stuckScreen(id, state) {
    const screen = fw.screens.fact(id, state);
    return { ...screen, status: "fact-needed", title: fw.say("The check needs this to go on: {0}", fw.titleOf(id)), content: [screen.content, fw.hotline(), actions()] };
  }

  fw.screens = { ...fw.screens, result: resultScreen, trouble: troubleScreen, stuck: stuckScreen };
})(window.faultwright = window.faultwright || {});
