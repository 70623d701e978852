// The field for a measured value: number, sign, unit, limits, and the question back when it cannot be.
(function (fw) {
  "use strict";

  const { make, button, para } = fw;

  /** A form that gives the text of the answer, such as `36 psi(g)`. */
  fw.quantity = function (reading, before, band, take, note) {
    const old = before && before !== "untaken" ? fw.figure.read(reading, before) : null;
    const unit = { now: old ? old.unit : fw.figure.offered(reading) };
    const ids = { hint: fw.newId("hint"), wrong: fw.newId("wrong") };
    const input = make("input.entry.number", {
      id: "guided-value",
      type: "text",
      dir: "ltr",
      inputmode: "decimal",
      autocomplete: "off",
      enterkeyhint: "done",
      value: old ? fw.local(old.number) : "",
      "aria-describedby": ids.hint + " " + ids.wrong,
    });
    const wrong = make("div.wrong", { id: ids.wrong, role: "alert" });
    const hint = make("div.hints", { id: ids.hint });
    const sign = signKey(input);
    const show = () => {
      hint.replaceChildren(...hints(reading, band, unit.now, note));
      sign.hidden = !negative(reading, unit.now);
    };
    const picker = unitPicker(reading, unit, () => {
      show();
      wrong.replaceChildren();
    });
    show();
    return make(
      "form.group",
      { novalidate: true, onsubmit: (event) => submit(event, reading, input, unit.now, wrong, take) },
      make("label.field", { for: "guided-value" }, reading.title),
      make("div.line", {}, sign, input, picker),
      hint,
      wrong,
      make("button.press.answer.main", { type: "submit", id: "guided-take" }, fw.say("Take this value")),
    );
  };

  function signKey(input) {
    const flip = () => {
      const text = input.value.trim().replace(/^[\u2212\u2013]/, "-");
      input.value = text.startsWith("-") ? text.slice(1) : "-" + text;
      input.focus();
    };
    return button("±", flip, "sign", { "aria-label": fw.say("Change the sign") });
  }

  function negative(reading, unit) {
    const low = fw.figure.shown(reading, fw.number.of(reading.range[0]), unit);
    return /^[-\u2212]/.test(low);
  }

  function unitPicker(reading, unit, changed) {
    if (reading.units.length < 2) return make("span.unit", {}, unit.now.symbol);
    const options = reading.units.map((each) =>
      make("option", { value: each.symbol, selected: each === unit.now }, each.symbol),
    );
    const choose = (event) => {
      unit.now = fw.figure.unitOf(reading, event.target.value);
      fw.figure.remember(reading, unit.now);
      changed();
    };
    return make(
      "select.entry.unit",
      { id: "guided-unit", dir: "ltr", "aria-label": fw.say("Unit"), onchange: choose },
      options,
    );
  }

  function hints(reading, band, unit, note) {
    return [fw.limitsLine(reading, band, unit), para(note, "fine"), fw.rangeLine(reading, unit)].filter(
      Boolean,
    );
  }

  /** What the reading can be at all. */
  fw.rangeLine = function (reading, unit) {
    if (!reading.range) return null;
    const there = unit || fw.figure.own(reading);
    const [from, to] = reading.range.map((end) => fw.figure.shown(reading, fw.number.of(end), there));
    return para(fw.say("Possible: {0} to {1} {2}", from, to, there.symbol), "fine");
  };

  /** The limits for this machine, in words. */
  fw.limitsLine = function (reading, band, unit) {
    if (!band || (!band.low && !band.high)) return null;
    const low = band.low && fw.figure.shown(reading, band.low, unit);
    const high = band.high && fw.figure.shown(reading, band.high, unit);
    const text =
      low && high
        ? fw.say("Limits here: {0} to {1} {2}", low, high, unit.symbol)
        : low
          ? fw.say("Limit here: at least {0} {1}", low, unit.symbol)
          : fw.say("Limit here: at most {0} {1}", high, unit.symbol);
    return make("p.limit", { "data-limits": true }, text);
  };

  function submit(event, reading, input, unit, wrong, take) {
    event.preventDefault();
    const number = fw.figure.tidy(input.value);
    if (number === null)
      return refuse(input, wrong, [para(fw.say("Type one number, such as {0}.", fw.local("2.5")))]);
    const possible = (each) => fw.figure.inRange(reading, fw.figure.toOwn(reading, each, unit));
    const ways = fw.figure.twoWays(input.value);
    if (ways.some(possible)) return refuse(input, wrong, whichOne(ways.filter(possible), unit, take));
    if (!possible(number)) {
      return refuse(input, wrong, outside(reading, number, unit, take));
    }
    return take(fw.figure.write(number, unit));
  }

  function refuse(input, wrong, content) {
    input.setAttribute("aria-invalid", "true");
    wrong.replaceChildren(...content);
    input.focus();
    input.select();
  }

  function whichOne(ways, unit, take) {
    const choose = ways.map((way) =>
      button(fw.amount(way, unit), () => take(fw.figure.write(way, unit)), "answer"),
    );
    return [para(fw.say("Which of these do you mean?")), make("div.answers", {}, choose)];
  }

  /** The question back: this cannot be; what was meant? */
  function outside(reading, number, unit, take) {
    const meant = fw.figure.meant(reading, number, unit).slice(0, 3);
    const buttons = meant.map(([text, each]) =>
      button(
        fw.amount(text, each),
        () => {
          fw.figure.remember(reading, each);
          take(fw.figure.write(text, each));
        },
        "answer",
      ),
    );
    return [
      para(fw.say("{0} is not possible here. Read it again.", fw.amount(number, unit))),
      meant.length ? para(fw.say("Did you mean:")) : null,
      meant.length ? make("div.answers", {}, buttons) : null,
    ].filter(Boolean);
  }
})((window.faultwright = window.faultwright || {}));
