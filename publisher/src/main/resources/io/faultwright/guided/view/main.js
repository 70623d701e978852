// Starts the page, loads data when it is needed, and shows the screen that the address asks for.
(function (fw) {
  "use strict";

  const { make, button, para } = fw;
  const at = (id) => document.getElementById(id);
  const loads = new Map();
  let shown = "";

  /** Loads a data file once; `then(true)` when it is there. */
  function load(file, then) {
    if (loads.get(file) === "there") return then(true);
    if (fw.run) return then(fw.run(file));
    const script = document.createElement("script");
    script.src = file;
    script.onload = () => {
      loads.set(file, "there");
      then(true);
    };
    script.onerror = () => then(false);
    document.head.append(script);
    return undefined;
  }

  /** Loads several; `then(true)` when all are there. */
  function loadAll(files, then) {
    if (!files.length) return then(true);
    let left = files.length;
    let good = true;
    files.forEach((file) => load(file, (ok) => {
      good = good && ok;
      if (--left === 0) then(good);
    }));
    return undefined;
  }

  fw.render = function () {
    const state = fw.job.state();
    if (!state.symptom || !listed(state)) return put(withoutSymptom(state), state);
    const symptom = fw.symptoms[state.symptom];
    if (symptom && isReady(state, symptom)) return put(working(state, symptom), state, symptom);
    return fetchSymptom(state);
  };

  const listed = (state) => fw.book.symptoms.find((each) => each.id === state.symptom);

  function fetchSymptom(state) {
    const id = state.symptom;
    at("guided").dataset.status = "loading";
    loadAll([listed(state).file], (ok) => {
      const symptom = fw.symptoms[id];
      if (!ok || !symptom) return put(notLoaded(), state);
      return loadAll(curves(state, symptom), (all) => (all ? fw.render() : put(notLoaded(), state)));
    });
  }

  /** The curves that this machine needs: the altitude's, and those of the refrigerants that it may have. */
  function curves(state, symptom) {
    const may = new Set(fw.machine.builds(state.facts).map((number) => fw.book.builds[number].refrigerant));
    return (symptom.curves || []).filter((curve) => curve === "altitude" || may.has(curve)).map((curve) => "guided/curve-" + curve + ".js");
  }

  const isReady = (state, symptom) => curves(state, symptom).every((file) => loads.get(file) === "there");

  const notLoaded = () => ({
    status: "not-loaded", title: fw.say("A part of the handbook is missing"),
    content: [para(fw.say("Check the connection, then try again.")), make("div.answers", {}, button(fw.say("Try again"), fw.render, "answer.main"))],
  });

  /** Screens that need no reasoning; undefined where the address asks for none of them. */
  function plainScreen(state) {
    const model = state.facts.model;
    if (state.show === "new") return fw.screens.fresh(state);
    if (state.show === "machine" || !model || (model !== "?" && !fw.machine.model(model))) return fw.screens.machine(state);
    if (state.show === "software" || fw.screens.needsSoftware(state.facts)) return fw.screens.software(state);
    if (state.show.startsWith("fact-")) return fw.screens.fact(state.show.slice(5), state);
    return state.show === "complaint" ? fw.screens.complaint(state) : undefined;
  }

  function withoutSymptom(state) {
    const last = state.show ? null : fw.job.waiting();
    if (last) return fw.screens.last(last);
    return plainScreen(state) || (state.show === "hand-over" ? fw.screens.handOver(state) : fw.screens.complaint(state));
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
    return { facts, readings };
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
    if (symptom.readings[state.ask]) return fw.screens.step(state, symptom, look, { reading: state.ask, toward: state.ask });
    if (look.answers.length && !(state.on >= look.answers.length && look.next)) return fw.screens.result(state, symptom, look);
    if (!look.next || !["nothing-yet", "ask-first", "answered"].includes(look.status)) return fw.screens.trouble(state, symptom, look);
    if (!look.next.fact) return fw.screens.step(state, symptom, look, look.next);
    return state.facts[look.next.fact] === "?" ? fw.screens.stuck(look.next.fact, state) : fw.screens.fact(look.next.fact, state);
  }

  const failed = (symptom) => ({
    status: "failed", title: fw.say("The guided check does not work here"),
    content: [para(fw.say("Work by the chart of the handbook.")), make("p", {}, fw.link(symptom.title, symptom.page, "press")), fw.hotline()],
  });

  /** Puts a screen on the page, and the focus on its heading. */
  function put(screen, state, symptom) {
    const first = shown === "";
    const root = at("guided");
    const look = screen.look;
    root.dataset.status = screen.status;
    root.dataset.verdict = look ? look.status : "";
    root.dataset.answers = look ? look.answers.map((answer) => answer.join(":")).join(" ") : "";
    root.dataset.next = look && look.next ? look.next.reading || look.next.fact : "";
    at("guided-strip").replaceChildren(...strip(state, symptom));
    const heading = fw.heading(2, screen.title, { id: "guided-question" });
    at("guided-step").replaceChildren(...[screen.label ? make("p.label", { id: "guided-label" }, screen.label) : null,
      lately(state, symptom, look), heading, ...screen.content.flat(3)].filter((each) => each && each !== ""));
    at("guided-so-far").replaceChildren(...(look || state.readings.size ? fw.soFar(state, symptom, look) : []));
    at("guided-tools").replaceChildren(...tools(state, screen));
    at("guided-so-far").setAttribute("aria-label", fw.say("So far"));
    at("guided-live").textContent = isOutcome(screen) ? screen.title : (at("guided-lately") || { textContent: "" }).textContent;
    if (!first) {
      root.scrollIntoView();
      heading.focus({ preventScroll: true });
    }
    shown = screen.status;
  }

  const isOutcome = (screen) => Boolean(screen.look && screen.label === fw.say("Result"));

  function strip(state, symptom) {
    const parts = [state.facts.model === "?" ? fw.say("Model not known") : state.facts.model || "",
      fw.machine.known(state.facts.software) ? fw.say("software {0}", state.facts.software) : "", symptom ? symptom.title : ""];
    return parts.filter(Boolean).map((text) => make("span", {}, text));
  }

  /** The last answer, and what was worked out with it. */
  function lately(state, symptom, look) {
    if (!look || !symptom || state.ask || state.show) return null;
    const id = [...state.readings.keys()].pop();
    const reading = id && symptom.readings[id];
    if (!reading) return null;
    const side = reading.units ? fw.sideWords(reading, id, state.readings.get(id), look) : "";
    const worked = fw.workedOut(symptom, look).filter((each) => each.derived && uses(symptom.readings[each.id].derived, id, symptom));
    const lines = worked.map((each) => make("span", { "data-derived": each.id }, fw.equation(each)));
    return make("p.lately", { id: "guided-lately" },
      make("span", {}, "✓ " + reading.title + ": " + fw.figure.words(reading, state.readings.get(id)) + (side ? " – " + side : "")), lines);
  }

  function uses(derived, id, symptom) {
    const inner = (other) => symptom.readings[other] && symptom.readings[other].derived && uses(symptom.readings[other].derived, id, symptom);
    return derived.terms.some(([term]) => term === id || inner(term)) || derived.bends.some((bend) => uses(bend.argument, id, symptom));
  }

  function tools(state, screen) {
    const list = [];
    if (screen.status === "last-job") return list;
    if (fw.job.canGoBack()) list.push(button(fw.say("Back"), fw.job.back, "plain", { id: "guided-back" }));
    if (state.symptom && screen.status !== "hand-over") list.push(button(fw.say("Hand over"), () => fw.job.show("hand-over"), "plain"));
    if (state.symptom && screen.status !== "complaint") list.push(button(fw.say("Other complaint"), () => fw.job.show("complaint"), "plain"));
    if (fw.job.isOpen() && screen.status !== "new-job") list.push(button(fw.say("New job"), () => fw.job.show("new"), "plain"));
    return list;
  }

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
    else load("guided/handbook.js", (ok) => (ok ? begin() : at("guided-broken").removeAttribute("hidden")));
  }

  if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", start);
  else start();
})(window.faultwright = window.faultwright || {});
