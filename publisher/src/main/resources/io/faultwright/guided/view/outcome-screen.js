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
      status: "answered",
      label: fw.say("Result"),
      title:
        faults.length > 1
          ? fw.say("{0} faults found. Mend all of them.", faults.length)
          : fw.say("Found: {0}", fw.faultTitle(symptom, faults[0])),
      content: [
        borderline(state, symptom, look),
        because(symptom, look),
        others(symptom, look),
        faults.map((id) => fw.remedy(id, state, symptom, faults.length > 1)),
        readingsThatLed(state, symptom, look),
        fw.actions(true),
        fw.unclear(),
      ],
    };
  }

  fw.unclear = () => fw.remark("result", fw.say("Result"), fw.say("Something was unclear"));

  const fired = (symptom, look) =>
    look.rules
      .filter((rule) => rule.state === "fired")
      .map((rule) => symptom.rules.find((each) => each.id === rule.id))
      .filter((rule) => rule && rule.because);

  function because(symptom, look) {
    const reasons = fired(symptom, look).map((rule) => rule.because);
    return reasons.length
      ? make(
          "div.because",
          {},
          [...new Set(reasons)].map((text) => para(text)),
        )
      : null;
  }

  /** A reading so near to its limit that the instrument could have it on the other side. */
  function borderline(state, symptom, look) {
    if (!look.borderline || !look.borderline.length) return null;
    const items = look.borderline.map((near) =>
      make(
        "li",
        { "data-reading": near.reading },
        para(
          make("b", {}, fw.titleOf(near.reading, symptom) + ": " + measuredAt(near, state, symptom, look)),
        ),
        limitsOf(near.reading, state, symptom, look),
        para(otherwise(symptom, near)),
        fw.takeAgain(fw.operands(near.reading, symptom), state, symptom),
      ),
    );
    return make(
      "div.close-call",
      { id: "guided-borderline" },
      make("h3", {}, fw.say("Too close to call")),
      para(fw.say("Before you replace a part: take this again with a better instrument.")),
      make("ul.plainly", {}, items),
    );
  }

  function measuredAt(near, state, symptom, look) {
    const value = fw.valueOf(near.reading, state, symptom, look);
    const reach =
      near.tolerance &&
      fw.figure.reach(symptom.readings[near.reading], state.readings.get(near.reading), near.tolerance);
    return reach ? fw.say("{0}, give or take {1}", value, reach) : value;
  }

  function limitsOf(id, state, symptom, look) {
    const reading = symptom.readings[id];
    const figure =
      reading && reading.units && state.readings.has(id) && fw.figure.read(reading, state.readings.get(id));
    return figure ? fw.limitsLine(reading, look.band(id), figure.unit) : null;
  }

  function otherwise(symptom, near) {
    const names = (near.otherwise || []).map((answer) => answerWords(answer, symptom));
    return names.length
      ? fw.say("Within its accuracy it could also be: {0}.", names.join(", "))
      : fw.say("Within its accuracy there could be no answer.");
  }

  function answerWords([kind, id], symptom) {
    if (kind === "fault") return fw.faultTitle(symptom, id);
    return kind === "refer" ? symptomTitle(id, symptom) : fw.say("ask the hotline");
  }

  fw.answerWords = answerWords;

  function symptomTitle(id, symptom) {
    const listed = fw.book.symptoms.find((each) => each.id === id);
    return (symptom && symptom.titles && symptom.titles[id]) || (listed ? listed.title : id);
  }

  /** What was answered, to know whether it is still the same after another check. */
  fw.answersKey = (look) => look.answers.map((answer) => answer.join(":")).join(" ");

  /** Other faults that may be there at the same time. */
  function others(symptom, look) {
    if (!look.possible.length) return null;
    return make(
      "div.others",
      {},
      make("h3", {}, fw.say("Another fault may be there too")),
      make(
        "ul.plainly",
        {},
        look.possible.map((id) => make("li", {}, fw.faultTitle(symptom, id))),
      ),
      look.next
        ? button(fw.say("Go on checking"), () => fw.job.goOn(fw.answersKey(look)), "answer", {
            id: "guided-go-on",
          })
        : null,
    );
  }

  function readingsThatLed(state, symptom, look) {
    const given = [...state.readings]
      .filter(([id]) => symptom.readings[id])
      .map(([id, text]) => [symptom.readings[id].title, fw.figure.words(symptom.readings[id], text)]);
    const worked = fw
      .workedOut(symptom, look)
      .map((each) => [each.title, each.derived ? each.value : each.value + " (" + each.computation + ")"]);
    return make(
      "div.led",
      {},
      make("h3", {}, fw.say("The readings that led here")),
      fw.facts([...given, ...worked]),
    );
  }

  fw.actions = (onPaper) =>
    make(
      "div.answers.tools",
      {},
      button(fw.say("Hand the job over"), () => fw.job.show("hand-over"), "answer", {
        id: "guided-hand-over",
      }),
      onPaper ? button(fw.say("Print"), () => window.print(), "answer") : null,
    );

  function referral(state, symptom, look) {
    const ids = of(look, "refer");
    return {
      status: "referred",
      label: fw.say("Result"),
      title: fw.say("This belongs to another complaint"),
      content: [
        because(symptom, look),
        fw.testList(look.because, state, symptom, look),
        borderline(state, symptom, look),
        para(fw.say("Model and readings are kept.")),
        make(
          "div.answers",
          {},
          ids.map((id) => onward(id, symptom)),
        ),
        fw.actions(),
        fw.unclear(),
      ],
    };
  }

  const onward = (id, symptom) =>
    button(fw.say("Go on with: {0}", symptomTitle(id, symptom)), () => fw.job.symptom(id), "answer.main", {
      "data-refer": id,
    });

  function escalation(state, symptom, look) {
    return {
      status: "escalate",
      label: fw.say("Result"),
      title: fw.say("Call the hotline"),
      content: [
        because(symptom, look),
        fw.hotline(),
        para(fw.say("Have your readings ready.")),
        borderline(state, symptom, look),
        readingsThatLed(state, symptom, look),
        fw.actions(),
        fw.unclear(),
      ],
    };
  }

  function contradiction(state, symptom, look) {
    return {
      status: "contradictory",
      label: fw.say("Result"),
      title: fw.say("The handbook gives two answers"),
      content: [
        make(
          "ul.plainly",
          {},
          look.answers.map((answer) => make("li", {}, answerWords(answer, symptom))),
        ),
        para(fw.say("Do not choose one. Call the hotline.")),
        fw.hotline(),
        fw.actions(),
      ],
    };
  }

  fw.screens = { ...fw.screens, result: resultScreen };
})((window.faultwright = window.faultwright || {}));
