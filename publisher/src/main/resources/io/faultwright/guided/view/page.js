// The page around a screen: strip, tools, what is known so far; and where the focus goes.
(function (fw) {
  "use strict";

  const { make, button } = fw;
  const at = (id) => document.getElementById(id);
  let shown = "";

  /** Puts a screen on the page, and the focus on its heading. */
  fw.put = function (screen, state, symptom) {
    const first = shown === "";
    const root = at("guided");
    const look = screen.look;
    mark(root, screen.status, look);
    at("guided-strip").replaceChildren(...(screen.status === "last-job" ? [] : strip(state, symptom)));
    const heading = fw.heading(2, screen.title, { id: "guided-question" });
    at("guided-step").replaceChildren(
      ...[
        screen.label ? make("p.label", { id: "guided-label" }, screen.label) : null,
        lately(state, symptom, look),
        heading,
        ...screen.content.flat(3),
      ].filter((each) => each && each !== ""),
    );
    at("guided-so-far").replaceChildren(
      ...(look || state.readings.size ? fw.soFar(state, symptom, look) : []),
    );
    at("guided-tools").replaceChildren(...tools(state, screen));
    at("guided-so-far").setAttribute("aria-label", fw.say("So far"));
    at("guided-live").textContent = isOutcome(screen)
      ? screen.title
      : (at("guided-lately") || { textContent: "" }).textContent;
    if (!first) {
      root.scrollIntoView();
      heading.focus({ preventScroll: true });
    }
    shown = screen.status;
    fw.changedAt = window.performance.now();
  };

  /** What the screen is, in attributes: for tests, and for whoever styles it. */
  function mark(root, status, look) {
    root.dataset.status = status;
    root.dataset.verdict = look ? look.status : "";
    root.dataset.answers = look ? look.answers.map((answer) => answer.join(":")).join(" ") : "";
    root.dataset.next = look && look.next ? look.next.reading || look.next.fact : "";
  }

  const isOutcome = (screen) => Boolean(screen.look && screen.label === fw.say("Result"));

  function strip(state, symptom) {
    const parts = [
      state.facts.model === "?" ? fw.say("Model not known") : state.facts.model || "",
      fw.machine.known(state.facts.software) ? fw.say("software {0}", state.facts.software) : "",
      symptom ? symptom.title : "",
      otherRevision(),
    ];
    return parts.filter(Boolean).map((text) => make("span", {}, text));
  }

  /** A job may outlast an edition: then what it was begun with and what is asked now differ. */
  function otherRevision() {
    const begun = fw.job.begunWith();
    return begun === fw.book.revision
      ? ""
      : fw.say("begun with revision {0}, now revision {1}", begun, fw.book.revision);
  }

  /** The last answer, and what was worked out with it. */
  function lately(state, symptom, look) {
    if (!look || !symptom || state.ask || state.show) return null;
    const id = [...state.readings.keys()].pop();
    const reading = id && symptom.readings[id];
    if (!reading) return null;
    const side = reading.units ? fw.sideWords(reading, id, state.readings.get(id), look) : "";
    const worked = fw
      .workedOut(symptom, look)
      .filter((each) => each.derived && fw.operands(each.id, symptom).includes(id));
    const lines = worked.map((each) => make("span", { "data-derived": each.id }, fw.equation(each)));
    return make(
      "p.lately",
      { id: "guided-lately" },
      make(
        "span",
        {},
        "✓ " +
          reading.title +
          ": " +
          fw.figure.words(reading, state.readings.get(id)) +
          (side ? " – " + side : ""),
      ),
      lines,
    );
  }

  function tools(state, screen) {
    const list = [];
    if (screen.status === "last-job") return list;
    if (fw.job.canGoBack()) list.push(button(fw.say("Back"), fw.job.back, "plain", { id: "guided-back" }));
    if (state.on && !state.show)
      list.push(button(fw.say("Show the result"), () => fw.job.goOn(0), "plain", { id: "guided-result" }));
    if (state.symptom && screen.status !== "hand-over")
      list.push(button(fw.say("Hand over"), () => fw.job.show("hand-over"), "plain"));
    if (state.symptom && screen.status !== "complaint")
      list.push(button(fw.say("Other complaint"), () => fw.job.show("complaint"), "plain"));
    if (fw.job.isOpen() && screen.status !== "new-job")
      list.push(button(fw.say("New job"), () => fw.job.show("new"), "plain"));
    return list;
  }
})((window.faultwright = window.faultwright || {}));
