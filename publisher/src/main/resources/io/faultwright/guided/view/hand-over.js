// The job as plain text, and as a field case that the handbook's makers can read in.
(function (fw) {
  "use strict";

  /** Lines that a person can read out on the telephone. */
  function text(state, symptom, look) {
    const note = fw.job.note();
    return (
      [
        ...head(note),
        "",
        ...equipment(state),
        row(fw.say("Complaint"), symptom ? symptom.title : ""),
        "",
        ...readings(state, symptom, look),
        "",
        ...outcome(symptom, look),
        ...checks(symptom, look),
        "",
        ...remarks(note, symptom),
        "",
        link(state),
      ]
        .filter((line) => line !== null)
        .filter((line, index, all) => line !== "" || all[index - 1] !== "")
        .join("\n")
        .trim() + "\n"
    );
  }

  /** Where the page has an address, the same job opens from it. */
  function link(state) {
    if (!/^https?:$/.test(window.location.protocol)) return null;
    const plain = { ...state, ask: "", show: "" };
    return (
      fw.say("Open this job") + ": " + window.location.href.replace(/[?#].*$/, "") + fw.address.write(plain)
    );
  }

  /** What was checked after the repair. */
  function checks(symptom, look) {
    const faults = look
      ? look.answers.filter((answer) => answer[0] === "fault" && symptom.faults[answer[1]])
      : [];
    const lines = faults.flatMap(([, id]) =>
      (symptom.faults[id].verify || []).map(
        (step, index) => (fw.isDone(fw.checkKey(id, index)) ? "[x] " : "[ ] ") + step.text,
      ),
    );
    return lines.length ? [fw.say("Checked after the repair") + ":", ...lines] : [];
  }

  const row = (label, value) => (value ? label + ": " + value : null);

  const head = (note) => [
    fw.book.title,
    row(fw.say("Revision"), fw.book.revision),
    fw.book.draft ? fw.say("DRAFT. Not checked.") : null,
    row(fw.say("Job"), note.job),
    row(fw.say("Date"), note.date),
  ];

  const equipment = (state) =>
    Object.keys(state.facts).map((id) => row(fw.titleOf(id), fw.factValue(id, state.facts[id])));

  function readings(state, symptom, look) {
    if (!symptom) return [];
    const given = [...state.readings]
      .filter(([id]) => symptom.readings[id])
      .map(([id, value]) => {
        const reading = symptom.readings[id];
        const side = reading.units && look ? fw.sideWords(reading, id, value, look) : "";
        return (
          "- " + reading.title + ": " + fw.figure.words(reading, value) + (side ? " (" + side + ")" : "")
        );
      });
    const worked = look ? fw.workedOut(symptom, look).map((each) => "- " + fw.equation(each)) : [];
    return given.length ? [fw.say("Readings") + ":", ...given, ...worked] : [];
  }

  function outcome(symptom, look) {
    if (!look) return [];
    const answers = look.answers.map((answer) => fw.answerWords(answer, symptom));
    const open = look.possible.map((id) => fw.faultTitle(symptom, id));
    const near = (look.borderline || []).map((each) => fw.titleOf(each.reading, symptom));
    return [
      row(fw.say("Outcome"), answers.length ? answers.join(", ") : fw.say("no answer yet")),
      row(fw.say("Still possible"), open.join(", ")),
      row(fw.say("Too close to call"), near.join(", ")),
    ];
  }

  function remarks(note, symptom) {
    const unclear = unclearLines(note).map((line) => "- " + line);
    return [
      row(fw.say("Found in the end"), foundWords(note, symptom)),
      row(fw.say("Remark"), note.remark),
      ...(unclear.length ? [fw.say("Unclear") + ":", ...unclear] : []),
    ];
  }

  const foundWords = (note, symptom) =>
    note.found && symptom && symptom.faults[note.found] ? symptom.faults[note.found].title : "";

  const unclearLines = (note) =>
    Object.values(note.unclear || {}).map(([title, said]) => title + ": " + said.trim());

  /** A scalar that is safe in YAML whatever it holds: JSON's double quotes are YAML's. */
  const quoted = (value) => JSON.stringify(visible(String(value)));

  /** Without signs that nobody sees: controls, turns of direction, halves of pairs. */
  const visible = (text) =>
    text.replace(/[\p{Cc}\p{Zl}\p{Zp}\p{Cs}\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff\ufffe\uffff]/gu, " ");

  /** A field case; see the format of field cases. */
  function yaml(state, symptom) {
    const note = fw.job.note();
    const unclear = unclearLines(note);
    const origin = [note.job, note.date].filter(Boolean).join(", ");
    return (
      [
        "cases:",
        "  " + quoted(caseId(state, note)) + ":",
        "    symptom: " + quoted(state.symptom),
        "    given:",
        ...given(state, symptom),
        note.found && symptom.faults[note.found] ? "    expect: " + quoted(note.found) : null,
        origin ? "    origin: " + quoted(origin) : null,
        "    note: " + quoted(noteLine(note)),
        unclear.length ? "    unclear: [" + unclear.map(quoted).join(", ") + "]" : null,
      ]
        .filter(Boolean)
        .join("\n") + "\n"
    );
  }

  const noteLine = (note) =>
    [fw.book.title + ", " + fw.say("Revision") + " " + fw.book.revision, note.remark]
      .filter(Boolean)
      .join(". ");

  function given(state, symptom) {
    const facts = Object.keys(state.facts)
      .filter((id) => fw.machine.known(state.facts[id]))
      .map((id) => [id, state.facts[id]]);
    const readings = [...state.readings]
      .filter(([id, text]) => symptom.readings[id] && fw.figure.value(symptom.readings[id], text))
      .map(([id, text]) => [id, written(symptom.readings[id], text)]);
    const all = [...facts, ...readings];
    return all.length ? all.map(([id, value]) => "      " + id + ": " + quoted(value)) : ["      {}"];
  }

  function written(reading, text) {
    if (text === "untaken") return "cannot be taken";
    const figure = reading.units && fw.figure.read(reading, text);
    return figure ? fw.figure.write(figure.number, figure.unit) : text;
  }

  const slug = (text) =>
    text
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, "-")
      .replace(/^-|-$/g, "");

  const caseId = (state, note) =>
    [
      state.symptom,
      slug(fw.machine.known(state.facts.model) ? state.facts.model : ""),
      slug(note.job || "") || note.number,
    ]
      .filter(Boolean)
      .join("-");

  fw.handOver = { text, yaml, caseId };
})((window.faultwright = window.faultwright || {}));
