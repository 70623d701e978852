// A fault that was found: cautions, repair, parts, and the check that it worked.
(function (fw) {
  "use strict";

  const { make, para } = fw;

  /** One fault in full; cautions stand before all else and before the step they belong to. */
  fw.remedy = function (id, state, symptom, titled) {
    const fault = symptom.faults[id];
    if (!fault) return make("section.fault", {}, fw.heading(3, id));
    const seen = new Set();
    const level = titled ? 4 : 3;
    return make(
      "section.fault",
      { "data-fault": id },
      titled ? fw.heading(3, fault.title) : null,
      para(fault.about),
      fw.cautions(fault.cautions, symptom.cautions, seen),
      nameplate(fault, state),
      part(level, fw.say("Repair"), repair(fault, symptom, seen)),
      parts(level, fault, state),
      part(level, fw.say("Check that it worked"), checks(id, fault, symptom, seen)),
      fault.page
        ? make("ul.targets", {}, make("li", {}, fw.link(fw.say("This fault in the handbook"), fault.page)))
        : null,
    );
  };

  const part = (level, title, content) => (content ? [make("h" + level, {}, title), content] : null);

  function repair(fault, symptom, seen) {
    const list = fault.remedy || [];
    return list.length
      ? make(
          "ol.steps",
          {},
          list.map((step) =>
            make("li", {}, fw.cautions(step.cautions, symptom.cautions, seen), make("p.do", {}, step.text)),
          ),
        )
      : null;
  }

  function checks(id, fault, symptom, seen) {
    const list = fault.verify || [];
    return list.length
      ? make(
          "ul.checks",
          {},
          list.map((step, index) => check(fw.checkKey(id, index), step, symptom, seen)),
        )
      : null;
  }

  fw.checkKey = (fault, index) => fault + "/" + (index + 1);

  fw.isDone = (key) => Boolean((fw.job.note().done || {})[key]);

  function check(key, step, symptom, seen) {
    const id = fw.newId("check");
    const box = make("input", {
      type: "checkbox",
      id,
      "data-check": key,
      onchange: () => fw.job.tick(key, box.checked),
    });
    box.checked = fw.isDone(key);
    return make(
      "li",
      {},
      fw.cautions(step.cautions, symptom.cautions, seen),
      make("label.tick", { for: id }, box, make("span", {}, step.text)),
    );
  }

  /** Charge, supply and the like of this model, for comparison with the nameplate. */
  function nameplate(fault, state) {
    const wanted = fault.nameplate || [];
    if (!wanted.length) return null;
    const model = fw.machine.known(state.facts.model) && fw.machine.model(state.facts.model);
    const pairs = model ? model.data.filter(([label]) => wanted.includes(label)) : [];
    if (!pairs.length) return para(fw.say("Read these on the nameplate: {0}.", wanted.join(", ")));
    return make(
      "div.plate-data",
      {},
      make("p.label", {}, fw.say("From the nameplate, {0}", model.id)),
      fw.facts(pairs),
      para(fw.say("Compare it with the nameplate. If they disagree, stop and call."), "fine"),
    );
  }

  function parts(level, fault, state) {
    const list = (fault.parts || []).filter((each) => fw.machine.fits(each.builds, state.facts));
    if (!list.length) return null;
    const rows = list.map((each) =>
      make(
        "li",
        {},
        make("b", {}, each.title),
        each.number ? " – " + each.number : "",
        each.note ? make("span.fine", {}, each.note) : null,
      ),
    );
    return part(level, fw.say("Parts"), make("ul.plainly", {}, rows));
  }
})((window.faultwright = window.faultwright || {}));
