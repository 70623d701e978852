// No answer, and why: readings to take again, another complaint, or the hotline.
(function (fw) {
  "use strict";

  const { make, button, para } = fw;

  /** Tests in words. */
  fw.testList = function (tests, state, symptom, look) {
    return tests && tests.length
      ? make(
          "ul.plainly",
          {},
          tests.map((test) => make("li", {}, fw.testWords(test, state, symptom, look))),
        )
      : null;
  };

  /** A row for each reading that may be wrong, with a way to take it again. */
  fw.takeAgain = function (ids, state, symptom) {
    const given = [...new Set(ids)].filter((id) => state.readings.has(id) && symptom.readings[id]);
    return given.length
      ? make(
          "div.answers",
          {},
          given.map((id) =>
            button(fw.say("Take again: {0}", symptom.readings[id].title), () => fw.job.ask(id), "answer", {
              "data-again": id,
            }),
          ),
        )
      : null;
  };

  /** The readings behind these tests, through what is worked out from them. */
  fw.operands = function (id, symptom) {
    const reading = symptom.readings[id];
    if (!reading || !reading.derived) return [id];
    const of = (derived) => [
      ...derived.terms.map((term) => term[0]),
      ...derived.bends.flatMap((bend) => of(bend.argument)),
    ];
    return of(reading.derived).flatMap((each) => fw.operands(each, symptom));
  };

  const unknown = (tests) => tests.filter((test) => test.truth === null);

  const subjects = (tests, symptom) =>
    [...new Set(tests.map((test) => fw.titleOf(test.subject, symptom)))].join(", ");

  const measured = (tests, symptom) => tests.flatMap((test) => fw.operands(test.subject, symptom));

  const troubles = {
    "take-again": (state, symptom, look) => ({
      title: fw.say("These readings do not fit together"),
      content: [
        look.broken.map((broken) => [para(broken.because), fw.testList(broken.tests, state, symptom, look)]),
        para(fw.say("Take them again.")),
        fw.takeAgain(
          measured(
            look.broken.flatMap((broken) => broken.tests),
            symptom,
          ),
          state,
          symptom,
        ),
      ],
    }),
    "check-values": (state, symptom, look) => ({
      title: fw.say("A value is not possible"),
      content: [
        look.strange.map((odd) => [
          para(fw.titleOf(odd.reading, symptom) + ": " + fw.valueOf(odd.reading, state, symptom, look)),
          fw.rangeLine(symptom.readings[odd.reading]),
        ]),
        fw.takeAgain(
          look.strange.flatMap((odd) => fw.operands(odd.reading, symptom)),
          state,
          symptom,
        ),
      ],
    }),
    "not-this-symptom": (state, symptom, look) => ({
      title: fw.say("This is not that complaint"),
      content: [
        para(fw.say("These readings do not go with it.")),
        fw.testList(look.because, state, symptom, look),
        fw.takeAgain(measured(look.because || [], symptom), state, symptom),
        otherComplaint(),
      ],
    }),
    "does-not-apply": () => ({
      title: fw.say("This complaint is not for this machine"),
      content: [otherComplaint(), otherMachine()],
    }),
    "no-such-equipment": () => ({
      title: fw.say("There is no such machine in this handbook"),
      content: [otherMachine()],
    }),
    "ask-first": (state, symptom, look) => ({
      title: fw.say("Something must be known first"),
      content: [
        para(fw.say("Without it there is no answer: {0}.", subjects(unknown(look.because), symptom))),
        fw.takeAgain(measured(unknown(look.because), symptom), state, symptom),
      ],
    }),
    "no-answer": () => ({
      title: fw.say("The handbook has no answer here"),
      content: [para(fw.say("Do not guess. Call the hotline."))],
    }),
    "nothing-yet": (state, symptom, look) => ({
      title: fw.say("These readings do not decide it"),
      content: [
        para(fw.say("Call the hotline, or change a reading.")),
        stillOpen(symptom, look),
        fw.takeAgain(
          [...state.readings.keys()].filter((id) => state.readings.get(id) === "untaken"),
          state,
          symptom,
        ),
      ],
    }),
  };

  const stillOpen = (symptom, look) =>
    look.possible.length
      ? [
          make("h3", {}, fw.say("Still possible")),
          make(
            "ul.plainly",
            {},
            look.possible.map((id) => make("li", {}, fw.faultTitle(symptom, id))),
          ),
        ]
      : null;

  const otherComplaint = () =>
    make(
      "div.answers",
      {},
      button(fw.say("Choose another complaint"), () => fw.job.show("complaint"), "answer"),
    );

  const otherMachine = () =>
    make(
      "div.answers",
      {},
      button(fw.say("Change the machine"), () => fw.job.show("machine"), "answer"),
    );

  /** No answer, and why; always with the hotline and the hand-over. */
  function troubleScreen(state, symptom, look) {
    const known = troubles[look.status] || troubles["nothing-yet"];
    const { title, content } = known(state, symptom, look);
    return {
      status: look.status,
      label: fw.say("Result"),
      title,
      content: [content, fw.hotline(), fw.actions(), fw.unclear()],
    };
  }

  /** A fact that the technician does not know, and without which nothing goes on. */
  function stuckScreen(id, state) {
    const screen = fw.screens.fact(id, state);
    return {
      ...screen,
      status: "fact-needed",
      title: fw.say("The check needs this to go on: {0}", fw.titleOf(id)),
      content: [screen.content, fw.hotline(), fw.actions()],
    };
  }

  fw.screens = { ...fw.screens, trouble: troubleScreen, stuck: stuckScreen };
})((window.faultwright = window.faultwright || {}));
