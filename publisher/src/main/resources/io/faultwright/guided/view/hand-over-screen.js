// Hands the job over: as text, on paper, as a file. Nothing is sent by itself.
(function (fw) {
  "use strict";

  const { make, button, para } = fw;

  function handOverScreen(state, symptom, look) {
    number();
    const area = make("textarea.entry.job", {
      id: "guided-text",
      readonly: true,
      "aria-label": fw.say("The job as text"),
    });
    const paper = make("pre.on-paper", {});
    const said = make("p.told.on-screen", { role: "status" });
    const fill = () => {
      area.value = fw.handOver.text(state, symptom, look);
      area.rows = area.value.split("\n").reduce((rows, line) => rows + 1 + Math.floor(line.length / 36), 0);
      paper.textContent = area.value;
    };
    fill();
    return {
      status: "hand-over",
      title: fw.say("Hand the job over"),
      content: [
        para(fw.say("Nothing is sent by itself. You decide who gets this."), "on-screen"),
        fields(symptom, fill),
        area,
        paper,
        said,
        make(
          "div.answers.tools",
          {},
          copy(area, said),
          share(area, said),
          button(fw.say("Print"), () => window.print(), "answer"),
          symptom
            ? button(fw.say("Save as a field case"), () => save(state, symptom, said), "answer", {
                id: "guided-save",
              })
            : null,
        ),
        para(
          fw.say("A field case helps to make the handbook better. Send the file to the people who write it."),
          "fine.on-screen",
        ),
        make(
          "div.answers.tools",
          {},
          button(fw.say("Back to the job"), () => fw.job.show(""), "answer"),
          button(fw.say("Job done"), () => fw.job.show("new"), "answer"),
        ),
      ],
    };
  }

  /** Numbers the job on this device, so that no two files have one name. */
  function number() {
    if (fw.job.note().number) return;
    const next = (fw.store.read("jobs") || 0) + 1;
    fw.store.write("jobs", next);
    fw.job.write("number", next);
  }

  function fields(symptom, fill) {
    return make(
      "div.fields",
      {},
      field("job", fw.say("Job number"), fill),
      dateField(fill),
      symptom ? foundField(symptom, fill) : null,
      field("remark", fw.say("Remark"), fill),
    );
  }

  function field(key, label, fill) {
    const id = "guided-" + key;
    const input = make("input.entry", {
      id,
      type: "text",
      autocomplete: "off",
      value: fw.job.note()[key] || "",
      oninput: () => put(key, input.value, fill),
    });
    return make("div", {}, make("label.field", { for: id }, label), input);
  }

  function put(key, value, fill) {
    fw.job.write(key, value);
    fill();
  }

  function dateField(fill) {
    const box = field("date", fw.say("Date"), fill);
    const input = box.querySelector("input");
    const today = () => {
      const now = new Date();
      input.value = [now.getFullYear(), now.getMonth() + 1, now.getDate()]
        .map((part) => String(part).padStart(2, "0"))
        .join("-");
      put("date", input.value, fill);
    };
    const line = make("div.line", {}, button(fw.say("Today"), today, "plain"));
    input.replaceWith(line);
    line.prepend(input);
    return box;
  }

  function foundField(symptom, fill) {
    const faults = Object.keys(symptom.faults).map((id) => [id, symptom.faults[id].title]);
    const now = fw.job.note().found || "";
    const options = [["", fw.say("Not confirmed yet")], ...faults].map(([id, title]) =>
      make("option", { value: id, selected: id === now }, title),
    );
    return make(
      "div",
      {},
      make("label.field", { for: "guided-in-the-end" }, fw.say("What was it in the end?")),
      make(
        "select.entry",
        { id: "guided-in-the-end", onchange: (event) => put("found", event.target.value, fill) },
        options,
      ),
    );
  }

  const copy = (area, said) =>
    button(
      fw.say("Copy"),
      () => {
        const select = () => {
          area.focus();
          area.select();
          said.textContent = fw.say("The text is selected. Copy it now.");
        };
        if (!navigator.clipboard) return select();
        return navigator.clipboard.writeText(area.value).then(() => {
          said.textContent = fw.say("Copied.");
        }, select);
      },
      "answer.main",
      { id: "guided-copy" },
    );

  const share = (area, said) =>
    navigator.share
      ? button(
          fw.say("Share"),
          () => {
            navigator.share({ title: fw.book.title, text: area.value }).catch(() => {
              said.textContent = fw.say("Not shared.");
            });
          },
          "answer",
          { id: "guided-share" },
        )
      : null;

  function save(state, symptom, said) {
    const name = fw.handOver.caseId(state, fw.job.note()) + ".yaml";
    const address = URL.createObjectURL(new Blob([fw.handOver.yaml(state, symptom)], { type: "text/yaml" }));
    const link = make("a", { href: address, download: name });
    link.click();
    setTimeout(() => URL.revokeObjectURL(address), 10000);
    said.textContent = fw.say("Saved as {0}", name);
  }

  fw.screens = { ...fw.screens, handOver: handOverScreen };
})((window.faultwright = window.faultwright || {}));
