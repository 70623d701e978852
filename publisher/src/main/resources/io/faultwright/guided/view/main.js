// Starts the page, loads data when it is needed, and shows the screen that the address asks for.
(function (fw) {
  "use strict";

  const { make, button, para } = fw;
  const at = (id) => document.getElementById(id);

  fw.render = function () {
    const state = fw.job.state();
    if (!state.symptom || !listed(state)) return fw.put(withoutSymptom(state), state);
    const symptom = fw.symptoms[state.symptom];
    if (symptom && symptom.ready) return fw.put(working(state, symptom), state, symptom);
    return fetchSymptom(state);
  };

  const listed = (state) => fw.book.symptoms.find((each) => each.id === state.symptom);

  function fetchSymptom(state) {
    const id = state.symptom;
    Object.assign(at("guided").dataset, { status: "loading", verdict: "", answers: "", next: "" });
    fw.loadAll(fw.symptoms[id] ? [] : [listed(state).file], (ok) => {
      const symptom = fw.symptoms[id];
      if (ok && symptom) fetchCurves(state, symptom);
      else fw.put(notLoaded(), state);
    });
  }

  function fetchCurves(state, symptom) {
    const missing = (symptom.curves || []).filter((curve) => !fw.curves.has(curve));
    fw.loadAll(
      missing.map((curve) => "guided/curve-" + curve + ".js"),
      (ok) => {
        symptom.ready = ok;
        if (ok) fw.render();
        else fw.put(notLoaded(), state);
      },
    );
  }

  const notLoaded = () => ({
    status: "not-loaded",
    title: fw.say("A part of the handbook is missing"),
    content: [
      para(fw.say("Check the connection, then try again.")),
      make("div.answers", {}, button(fw.say("Try again"), fw.render, "answer.main")),
    ],
  });

  /** Screens that need no reasoning; undefined where the address asks for none of them. */
  function plainScreen(state) {
    const model = state.facts.model;
    if (state.show === "new") return fw.screens.fresh(state);
    if (state.show === "machine" || !model || (model !== "?" && !fw.machine.model(model)))
      return fw.screens.machine(state);
    if (state.show === "software" || fw.screens.needsSoftware(state.facts)) return fw.screens.software(state);
    if (state.show.startsWith("other-")) return fw.screens.other(state.show.slice(6));
    if (state.show.startsWith("fact-") && fw.factOf(state.show.slice(5)))
      return fw.screens.fact(state.show.slice(5), state);
    return state.show === "complaint" ? fw.screens.complaint(state) : undefined;
  }

  function withoutSymptom(state) {
    const last = state.show ? null : fw.job.waiting();
    if (last) return fw.screens.last(last);
    return (
      plainScreen(state) ||
      (state.show === "hand-over" ? fw.screens.handOver(state) : fw.screens.complaint(state))
    );
  }

  /** What the judge sees: only what is known, and only readings of this complaint. */
  function told(state, symptom) {
    const facts = {};
    Object.keys(state.facts).forEach((id) => {
      if (fw.machine.known(state.facts[id])) facts[id] = state.facts[id];
    });
    const readings = {};
    state.readings.forEach((text, id) => {
      const value = symptom.readings[id] && fw.figure.value(symptom.readings[id], text);
      if (value) readings[id] = value;
    });
    const unknown = Object.keys(state.facts).filter((id) => !fw.machine.known(state.facts[id]));
    return { facts, readings, unknown };
  }

  function working(state, symptom) {
    const plain = plainScreen(state);
    if (plain) return plain;
    try {
      const look = fw.judge.look(symptom, told(state, symptom));
      return { ...judged(state, symptom, look), look };
    } catch (trouble) {
      window.console.error(trouble);
      return failed(symptom);
    }
  }

  function judged(state, symptom, look) {
    if (state.show === "hand-over") return fw.screens.handOver(state, symptom, look);
    if (symptom.readings[state.ask])
      return fw.screens.step(state, symptom, look, { reading: state.ask, toward: state.ask });
    if (look.answers.length && !(state.on === fw.answersKey(look) && look.next))
      return fw.screens.result(state, symptom, look);
    if (!look.next || !["nothing-yet", "ask-first", "answered"].includes(look.status))
      return fw.screens.trouble(state, symptom, look);
    if (!look.next.fact) return fw.screens.step(state, symptom, look, look.next);
    return state.facts[look.next.fact] === "?"
      ? fw.screens.stuck(look.next.fact, state)
      : fw.screens.fact(look.next.fact, state);
  }

  const failed = (symptom) => ({
    status: "failed",
    title: fw.say("The guided check does not work here"),
    content: [
      para(fw.say("Work by the chart of the handbook.")),
      make("p", {}, fw.link(symptom.title, symptom.page, "press")),
      fw.hotline(),
    ],
  });

  /** A sticker on the machine leads here with `?model=`; it moves into the fragment. */
  function takeSticker() {
    const model = new URLSearchParams(window.location.search).get("model");
    if (!model) return;
    const state = fw.address.read(fw.here.fragment());
    if (!state.facts.model) {
      const found = fw.machine.search(model);
      state.facts.model = found.exact ? found.exact.id : model;
    }
    const target = fw.address.write(state);
    try {
      window.history.replaceState(null, "", window.location.pathname + target);
    } catch (refused) {
      window.location.replace(target);
    }
  }

  function begin() {
    takeSticker();
    at("guided").hidden = false;
    fw.job.start();
  }

  function start() {
    if (!at("guided")) return;
    if (fw.book) begin();
    else
      fw.loadAll(["guided/handbook.js"], (ok) =>
        ok ? begin() : at("guided-broken").removeAttribute("hidden"),
      );
  }

  if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", start);
  else start();
})((window.faultwright = window.faultwright || {}));
