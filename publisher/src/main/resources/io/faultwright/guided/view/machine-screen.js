// Screens that find out which machine it is.
(function (fw) {
  "use strict";

  const { make, button, para } = fw;
  let typed = "";

  /** Nameplate first: type the model number, or choose it. */
  function machineScreen(state) {
    const known = state.facts.model && state.facts.model !== "?" && !fw.machine.model(state.facts.model);
    if (known && !typed) typed = state.facts.model;
    return {
      status: "machine",
      title: fw.say("Which machine is it?"),
      content: [recent(), plateField(), fromList(), unknown(), hotlineHint()],
    };
  }

  function recent() {
    const ids = (fw.store.read("models") || []).filter((id) => fw.machine.model(id));
    if (!ids.length) return null;
    const buttons = ids.map((id) => choice(fw.machine.model(id)));
    return make(
      "div.group",
      {},
      make("h3", {}, fw.say("Used before on this device")),
      make("div.answers", {}, buttons),
    );
  }

  const choice = (model) =>
    button([make("b", {}, model.id), make("span.fine", {}, model.title)], () => take(model.id), "answer", {
      "data-model": model.id,
    });

  function take(id) {
    typed = "";
    fw.job.fact("model", id);
  }

  function plateField() {
    const found = make("div.found", { id: "guided-found", "aria-live": "polite" });
    const input = make("input.entry", {
      id: "guided-model",
      type: "text",
      autocomplete: "off",
      autocapitalize: "characters",
      spellcheck: "false",
      value: typed,
      enterkeyhint: "go",
      oninput: () => update(input, found),
    });
    update(input, found);
    return make(
      "form.group",
      { onsubmit: (event) => submit(event, input, found) },
      make("label.field", { for: "guided-model" }, fw.say("Model number on the nameplate")),
      make("div.line", {}, input, make("button.press.main", { type: "submit" }, fw.say("Take it"))),
      found,
      where(),
    );
  }

  function where() {
    const text = fw.book.nameplate && fw.book.nameplate.where;
    return text ? fw.details("aside", fw.say("Where is the nameplate?"), para(text), false) : null;
  }

  function submit(event, input, found) {
    event.preventDefault();
    const hit = fw.machine.search(input.value);
    const only = hit.exact || (hit.begun.length === 1 && hit.begun[0]);
    if (only) return take(only.id);
    update(input, found);
    input.focus();
    return undefined;
  }

  function update(input, found) {
    typed = input.value;
    const hit = fw.machine.search(typed);
    const plate = fw.machine.decode(typed);
    found.replaceChildren(...[decoded(plate), verdict(hit, plate)].flat().filter(Boolean));
  }

  function decoded(plate) {
    const parts = plate.parts.filter((part) => part.title);
    if (!parts.length) return null;
    return make(
      "ul.decoded",
      {},
      parts.map((part) =>
        make(
          "li",
          {},
          make("b", {}, part.code),
          make("span", {}, make("span.fine", {}, part.title), part.text),
        ),
      ),
    );
  }

  function verdict(hit, plate) {
    if (hit.exact) return [para("✓ " + hit.exact.id + " – " + hit.exact.title, "good")];
    if (hit.near.length) return [para(fw.say("Not in this handbook. Is it one of these?")), list(hit.near)];
    if (hit.begun.length && hit.begun.length <= 6) return [list(hit.begun)];
    if (hit.begun.length || !typed.trim()) return [];
    return [
      para(
        plate.complete
          ? fw.say("This model is not in this handbook.")
          : fw.say("No such model number. Read it again."),
        "bad",
      ),
    ];
  }

  const list = (models) => make("div.answers", {}, models.map(choice));

  /** Family, then model. */
  function fromList() {
    const family = fw.factOf("family");
    const groups = (family ? family.values : []).map(([id, title]) => {
      const models = fw.book.models.filter((model) => model.family === id);
      return models.length ? fw.details("family", title, list(models), false) : null;
    });
    return make("div.group", {}, make("h3", {}, fw.say("Or choose it")), groups);
  }

  const unknown = () =>
    make(
      "div.group",
      {},
      button(fw.say("I cannot read the nameplate"), () => fw.job.fact("model", "?"), "plain", {
        id: "guided-no-model",
      }),
    );

  const hotlineHint = () =>
    para(fw.say("A machine that is not in the list? Do not use the figures of another."), "fine");

  /** Asks for the version of the control software. */
  function softwareScreen(state) {
    const versions = fw.machine.values("software", state.facts).map((value) => value[0]);
    return {
      status: "software",
      title: fw.say("Which software version does the controller show?"),
      content: [
        fw.book.softwareWhere ? para(fw.book.softwareWhere, "where") : null,
        factAnswers(
          "software",
          versions.map((version) => [version, version]),
          state,
        ),
        otherVersion(),
      ],
    };
  }

  function otherVersion() {
    const text = [para(fw.say("This handbook does not know another version.")), fw.hotline()];
    return fw.details("aside", fw.say("Another version is shown"), text, false);
  }

  /** Asks for an equipment fact that the check turns on. */
  function factScreen(id, state) {
    const fact = fw.factOf(id);
    return {
      status: "fact",
      title: fw.say("Which is it? {0}", fact ? fact.title : fw.say("Model")),
      content: [
        id === "software" && fw.book.softwareWhere ? para(fw.book.softwareWhere, "where") : null,
        id === "model" ? where() : null,
        factAnswers(id, fw.machine.values(id, state.facts), state),
      ],
    };
  }

  function factAnswers(id, values, state) {
    const buttons = [...values, ["?", fw.say("I don't know")]].map(([value, title]) =>
      button(title, () => fw.job.fact(id, value), value === "?" ? "answer.none" : "answer", {
        "data-value": value,
        "aria-pressed": state.facts[id] === value ? "true" : null,
      }),
    );
    return make("div.answers", { role: "group", "aria-labelledby": "guided-question" }, buttons);
  }

  const needsSoftware = (facts) =>
    fw.machine.known(facts.model) && !facts.software && fw.machine.values("software", facts).length > 1;

  fw.screens = {
    ...fw.screens,
    machine: machineScreen,
    software: softwareScreen,
    fact: factScreen,
    needsSoftware,
  };
})((window.faultwright = window.faultwright || {}));
