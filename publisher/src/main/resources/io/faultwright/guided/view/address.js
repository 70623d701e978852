// The state of a job as the fragment of the address, and back.
(function (fw) {
  "use strict";

  /* The page's own fragment of the address; where the whole handbook is one file, that file says otherwise. */
  fw.here = fw.here || {
    fragment: () => window.location.hash,
    go: (fragment) => { window.location.hash = fragment; },
    replace: (fragment) => window.history.replaceState(window.history.state, "", fragment || "#"),
    open: (href) => { window.location.href = href; },
  };

  const PLAIN = ["symptom", "ask", "show"];

  const empty = () => ({ facts: {}, symptom: "", readings: new Map(), ask: "", show: "", on: "" });

  const copy = (state) => ({ ...state, facts: { ...state.facts }, readings: new Map(state.readings) });

  function read(fragment) {
    const state = empty();
    fragment
      .replace(/^#/, "")
      .split("&")
      .filter(Boolean)
      .forEach((part) => {
        const at = part.indexOf("=");
        if (at > 0) put(state, decode(part.slice(0, at)), decode(part.slice(at + 1)));
      });
    return state;
  }

  function decode(text) {
    try {
      return decodeURIComponent(text.replace(/\+/g, " "));
    } catch (broken) {
      return text;
    }
  }

  function put(state, key, value) {
    if (!value) return;
    if (key === "on") state.on = value;
    else if (PLAIN.includes(key)) state[key] = value;
    else if (key.startsWith("r.")) state.readings.set(key.slice(2), value);
    else if (key.startsWith("f.")) state.facts[key.slice(2)] = value;
    else if (key === "model" || key === "software") state.facts[key] = value;
  }

  const encode = (text) => encodeURIComponent(text).replace(/%20/g, "+").replace(/%2F/g, "/");

  function write(state) {
    const parts = [];
    const push = (key, value) => value && parts.push(encode(key) + "=" + encode(String(value)));
    push("model", state.facts.model);
    push("software", state.facts.software);
    Object.keys(state.facts)
      .sort()
      .forEach((id) => {
        if (id !== "model" && id !== "software") push("f." + id, state.facts[id]);
      });
    push("symptom", state.symptom);
    state.readings.forEach((value, id) => push("r." + id, value));
    push("on", state.on);
    push("ask", state.ask);
    push("show", state.show);
    return "#" + parts.join("&");
  }

  fw.address = { read, write, empty, copy };
})((window.faultwright = window.faultwright || {}));
