// What the display says, and for how long: a help to choose, it answers nothing by itself.
(function (fw) {
  "use strict";

  const { make, button, para } = fw;

  /** Null where nothing is told of the display of this machine. */
  function displayPanel(symptom, look) {
    const texts = fw.displays.texts(symptom, look.builds);
    if (!texts.length) return null;
    const chosen = { text: "", minutes: "", seconds: "" };
    const result = make("div", { role: "status" });
    const fill = () => result.replaceChildren(...outcome(symptom, look, chosen));
    const buttons = texts.map((text) => choice(text, chosen, () => press(buttons, chosen, fill)));
    return fw.details("aside.remark.display-times", fw.say("What does the display say, and for how long?"), [
      fw.warning(fw.say("The machine starts by itself. Watch with the panels on. Isolate and lock out before you reach in.")),
      make("div.answers", { role: "group", "aria-label": fw.say("What does the display say, and for how long?") }, buttons),
      make("div.line", {}, part("minutes", fw.say("Minutes"), chosen, fill), part("seconds", fw.say("Seconds"), chosen, fill)),
      result,
    ]);
  }

  const choice = (text, chosen, then) =>
    button(
      text,
      () => {
        chosen.text = chosen.text === text ? "" : text;
        then();
      },
      "answer",
      { "data-display": text, "aria-pressed": "false" },
    );

  function press(buttons, chosen, fill) {
    buttons.forEach((each) => each.setAttribute("aria-pressed", String(each.dataset.display === chosen.text)));
    fill();
  }

  function part(key, label, chosen, fill) {
    const id = fw.newId(key);
    const input = make("input.entry", {
      id,
      type: "text",
      inputmode: "decimal",
      autocomplete: "off",
      size: "4",
      oninput: () => {
        chosen[key] = input.value;
        fill();
      },
    });
    return make("div", {}, make("label.field", { for: id }, label), input);
  }

  /** Seconds; null where nothing is typed, NaN where it is no time. */
  function seconds(chosen) {
    const parts = [chosen.minutes, chosen.seconds].map((text) => text.trim());
    if (!parts[0] && !parts[1]) return null;
    const [minutes, rest] = parts.map((text) => (text ? Number(fw.figure.tidy(text) || "?") : 0));
    return minutes < 0 || rest < 0 ? NaN : minutes * 60 + rest;
  }

  function outcome(symptom, look, chosen) {
    const typed = seconds(chosen);
    if (Number.isNaN(typed)) return [para(fw.say("Type one number, such as {0}.", "2"), "wrong")];
    if (!chosen.text) return typed === null ? [] : [para(fw.say("Press what the display says first."), "wrong")];
    const sorted = fw.displays.sort(symptom, look.builds, chosen.text, typed);
    return [
      sorted.fits.length
        ? list(fw.say("Goes with it"), sorted.fits, symptom, look)
        : para(fw.say("None of the faults listed here goes with it. Look at the display and the time again."), "wrong"),
      list(fw.say("Does not go with it"), sorted.others, symptom, look),
      para(fw.say("Of faults that are not listed here nothing is told."), "fine"),
      para(fw.say("Times are taken to {0} s. What an event ends may last longer or shorter.", fw.displays.WATCH), "fine"),
    ].filter(Boolean);
  }

  const isOpen = (look, id) =>
    look.possible.includes(id) || look.answers.some((answer) => answer[0] === "fault" && answer[1] === id);

  /** What the answers rule out already is said beside it. */
  const fault = (symptom, look, id) =>
    make(
      "li",
      {},
      fw.link(symptom.faults[id].title, symptom.faults[id].page),
      isOpen(look, id) ? null : make("span.fine", {}, fw.say("Ruled out")),
    );

  const list = (title, faults, symptom, look) =>
    faults.length
      ? make(
          "div",
          {},
          make("h3", {}, title),
          make(
            "ul.targets",
            {},
            faults.map((id) => fault(symptom, look, id)),
          ),
        )
      : null;

  fw.displayPanel = displayPanel;
})((window.faultwright = window.faultwright || {}));
