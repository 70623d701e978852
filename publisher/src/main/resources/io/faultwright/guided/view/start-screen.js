// Screens at the beginning: go on with the last job, start a new one, choose the complaint.
(function (fw) {
  "use strict";

  const { make, button, para } = fw;
  let sought = "";

  /** The last job, if this device remembers one. */
  function lastScreen(last) {
    const before = fw.address.read(last.at);
    const symptom = fw.book.symptoms.find((each) => each.id === before.symptom);
    const revisions = [last.revision, fw.book.revision];
    const changed = last.revision !== fw.book.revision;
    return {
      status: "last-job",
      title: fw.say("Go on with the last job?"),
      content: [
        fw.facts([
          [fw.say("Model"), fw.factValue("model", before.facts.model || "?")],
          [fw.say("Complaint"), symptom ? symptom.title : ""],
          [fw.say("Readings"), String(before.readings.size)],
        ]),
        changed
          ? para(fw.say("The handbook has changed since: revision {0} is now {1}.", ...revisions), "bad")
          : null,
        make(
          "div.answers",
          {},
          button(fw.say("Go on"), fw.job.resume, "answer.main", { id: "guided-resume" }),
          button(fw.say("Start a new job"), () => fw.job.show("new"), "answer", { id: "guided-new" }),
        ),
      ],
    };
  }

  /** Asks before a job is thrown away. */
  function newScreen(state) {
    const keepModel = fw.machine.known(state.facts.model) ? state.facts.model : "";
    return {
      status: "new-job",
      title: fw.say("Start a new job?"),
      content: [
        para(fw.say("The readings of the last job go away. Save it first if you need it.")),
        make(
          "div.answers",
          {},
          button(fw.say("Yes, start a new job"), () => fw.job.begin(), "answer.main", {
            id: "guided-new-yes",
          }),
          keepModel
            ? button(fw.say("New job on {0}", keepModel), () => fw.job.begin({ ...state.facts }), "answer")
            : null,
          button(fw.say("No, keep this job"), fw.job.back, "answer", { id: "guided-new-no" }),
        ),
      ],
    };
  }

  /** Asks before readings of one machine are judged by the limits of another. */
  function otherScreen(model) {
    return {
      status: "other-machine",
      title: fw.say("Is it still the same machine?"),
      content: [
        para(fw.say("Readings of one machine say nothing about another.")),
        make(
          "div.answers",
          {},
          button(fw.say("Same machine, its model is {0}", model), () => fw.job.corrected(model), "answer"),
          button(fw.say("Another machine: new job on {0}", model), () => fw.job.begin({ model }), "answer.main"),
          button(fw.say("No, keep this job"), fw.job.back, "answer"),
        ),
      ],
    };
  }

  /** What the technician sees; only complaints of this machine. */
  function complaintScreen(state) {
    const offered = fw.book.symptoms.filter((symptom) => fw.machine.fits(symptom.builds, state.facts));
    const list = make("ul.complaints", { id: "guided-complaints" });
    const none = make("p.bad", { "aria-live": "polite" });
    const input = make("input.entry", {
      id: "guided-filter",
      type: "search",
      autocomplete: "off",
      value: sought,
      oninput: () => filter(),
    });
    const filter = () => {
      sought = input.value;
      const found = offered.filter(matches);
      list.replaceChildren(...found.map(complaint));
      none.textContent = found.length ? "" : fw.say("Nothing found. Use fewer letters.");
    };
    filter();
    return {
      status: "complaint",
      title: fw.say("What do you see?"),
      content: [
        para(fw.say("Choose what you see, not what you think it is.")),
        offered.length > 5
          ? make(
              "div.group",
              {},
              make("label.field", { for: "guided-filter" }, fw.say("Find a complaint")),
              input,
            )
          : null,
        none,
        list,
        fw.details("aside", fw.say("It is not in the list"), notListed(), false),
      ],
    };
  }

  const plain = (text) => text.toLowerCase().normalize("NFD").replace(/\p{M}/gu, "");

  function matches(symptom) {
    const hints = (symptom.recognise || []).flat(2).join(" ");
    const text = plain([symptom.title, symptom.about, hints].join(" "));
    return plain(sought)
      .split(/\s+/)
      .every((word) => text.includes(word));
  }

  function complaint(symptom) {
    const hints = (symptom.recognise || []).map((hint) => make("span.fine", {}, [hint].flat(2).join(" – ")));
    return make(
      "li",
      {},
      button([make("span.name", {}, symptom.title), hints], () => choose(symptom.id), "complaint", {
        "data-symptom": symptom.id,
      }),
    );
  }

  function choose(id) {
    sought = "";
    fw.job.symptom(id);
  }

  const notListed = () => [
    para(fw.say("Then this handbook has no check for it. Call the hotline.")),
    fw.hotline(),
  ];

  /** The number to call. */
  fw.hotline = () => {
    const number = fw.book.hotline;
    if (!number) return para(fw.say("Ask the maker of the machine."), "hotline");
    const tidy = /^[+0-9 ()./-]+$/.test(number);
    const shown = tidy
      ? fw.link(fw.say("Call {0}", number), "tel:" + number.replace(/[^+0-9]/g, ""), "press.call")
      : make("b", {}, number);
    return make("p.hotline", {}, make("span", {}, fw.say("Hotline") + ": "), shown);
  };

  fw.screens = { ...fw.screens, last: lastScreen, fresh: newScreen, other: otherScreen, complaint: complaintScreen };
})((window.faultwright = window.faultwright || {}));
