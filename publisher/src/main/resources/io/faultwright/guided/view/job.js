// The job: what is known so far, where it is kept, and how it moves on.
(function (fw) {
  "use strict";

  let state = fw.address.empty();
  let current = "";
  let note = {};
  let joined = false;
  let own = false; // whether the kept job is the one that is shown
  let begunWith = "";
  let numbers = false; // whether the browser lets us number our steps

  const fragment = () => fw.here.fragment();

  function go(next) {
    const target = fw.address.write(next);
    if (target === current) return fw.render();
    const step = moves() + 1;
    fw.here.go(target);
    number(step);
    arrive();
  }

  /** How many steps back still are steps of ours. */
  const moves = () => (window.history.state && window.history.state.step) || 0;

  function number(step) {
    try {
      window.history.replaceState({ step }, "");
      numbers = true;
    } catch (refused) {
      // then Back takes answers away instead
    }
  }

  /** Takes the address as it now stands, and shows it. */
  function arrive() {
    current = fragment() || "#";
    state = fw.address.read(current);
    joined = joined || Boolean(state.symptom);
    keep();
    fw.render();
  }

  function keep() {
    if (!state.symptom || (!own && !state.readings.size && holdsReadings(kept()))) return;
    own = true;
    remember(state.facts.model);
    const last = fw.address.copy(state);
    last.ask = last.show = "";
    fw.store.write("job", { at: fw.address.write(last), revision: begunWith || fw.book.revision, note });
  }

  /** A job with readings is not given up for one without, such as a link to a complaint. */
  const holdsReadings = (last) => Boolean(last) && fw.address.read(last.at).readings.size > 0;

  /** The last models, for the next job. */
  function remember(model) {
    const before = fw.store.read("models") || [];
    if (!fw.machine.known(model) || before[0] === model) return;
    fw.store.write("models", [model, ...before.filter((each) => each !== model)].slice(0, 3));
  }

  const isOpen = () => Boolean(state.symptom || state.readings.size || Object.keys(state.facts).length);

  const kept = () => fw.store.read("job");

  /** The job that this device remembers, until this visit goes on with it or begins another. */
  const waiting = () => (joined ? null : kept());

  /** Goes on with what was noted of a job, and with the revision that it was begun with. */
  function take(last) {
    note = last.note || {};
    begunWith = last.revision || "";
  }

  function resume() {
    const last = kept();
    take(last || {});
    joined = own = true;
    go(fw.address.read(last ? last.at : ""));
  }

  function begin(facts) {
    take({});
    joined = own = true;
    fw.store.remove("job");
    go({ ...fw.address.empty(), facts: facts || {} });
  }

  /** Takes the address that somebody followed here; where it is of another job, nothing goes along. */
  function follow() {
    const isOurs = !numbers || window.history.state !== null;
    if (!isOurs && isAnotherJob(fw.address.read(fragment()))) {
      take({});
      joined = own = false;
    }
    number(moves());
    arrive();
  }

  const isAnotherJob = (next) =>
    next.symptom !== state.symptom || next.facts.model !== state.facts.model;

  const change = (alter) => {
    const next = fw.address.copy(state);
    alter(next);
    go(next);
  };

  const done = (next) => {
    next.ask = next.show = "";
  };

  const answer = (id, text) =>
    change((next) => {
      next.readings.set(id, text);
      done(next);
    });

  const fact = (id, value) =>
    change((next) => {
      done(next);
      if (id === "model" && isAnother(next, value)) next.show = "other-" + value;
      else if (id === "model") become(next, value);
      else next.facts[id] = value;
    });

  /** Readings of one machine must not be judged by the limits of another. */
  const isAnother = (next, value) =>
    next.readings.size > 0 && fw.machine.known(next.facts.model) && next.facts.model !== value;

  /** The same machine, whose model number was wrong. */
  const corrected = (value) =>
    change((next) => {
      done(next);
      become(next, value);
    });

  function become(next, value) {
    next.facts =
      value === "?" ? { ...next.facts, model: value } : { model: value, ...softwareOf(next, value) };
  }

  function softwareOf(next, id) {
    const model = fw.machine.model(id);
    const before = next.facts.software;
    const keepIt = before === "?" || (model && model.software.includes(before));
    return before && keepIt ? { software: before } : {};
  }

  const symptom = (id) =>
    change((next) => {
      next.symptom = id;
      next.on = "";
      done(next);
    });

  const ask = (id) =>
    change((next) => {
      next.ask = id;
      next.show = "";
    });

  const show = (what) =>
    change((next) => {
      next.show = what;
      next.ask = "";
    });

  const goOn = (answers) =>
    change((next) => {
      next.on = answers;
      done(next);
    });

  /** One step back: by the browser where we came from there, else by taking the last answer away. */
  function back() {
    if (moves() > 0) window.history.back();
    else change(undo);
  }

  function undo(next) {
    if (next.show || next.ask) done(next);
    else if (next.on) next.on = "";
    else if (next.readings.size) next.readings.delete([...next.readings.keys()].pop());
    else if (next.symptom) next.symptom = "";
    else next.facts = {};
  }

  function remark(id, title, text) {
    note.unclear = { ...note.unclear, [id]: [title, text] };
    if (!text.trim()) delete note.unclear[id];
    keep();
  }

  /** Whether a check after the repair was done. */
  function tick(key, isDone) {
    note.done = { ...note.done, [key]: isDone };
    keep();
  }

  function write(key, text) {
    note[key] = text;
    keep();
  }

  const start = () => {
    window.addEventListener("hashchange", () => {
      if ((fragment() || "#") !== current) follow();
    });
    const last = kept();
    if (last && fw.address.write(withoutViews(fw.address.read(fragment()))) === last.at)
      take(last);
    number(moves());
    arrive();
  };

  const withoutViews = (next) => {
    done(next);
    return next;
  };

  fw.job = {
    start,
    isOpen,
    waiting,
    resume,
    begin,
    answer,
    fact,
    corrected,
    symptom,
    ask,
    show,
    goOn,
    back,
    remark,
    write,
    tick,
    state: () => state,
    note: () => note,
    begunWith: () => begunWith || fw.book.revision,
    canGoBack: () => moves() > 0 || isOpen(),
  };
})((window.faultwright = window.faultwright || {}));
