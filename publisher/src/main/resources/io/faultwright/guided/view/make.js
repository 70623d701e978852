// Makes elements. Data only ever becomes text, never markup.
(function (fw) {
  "use strict";

  const SVG = "http://www.w3.org/2000/svg";
  const TRIANGLE = "M12 0 24 22H0ZM10.7 7.5 11.2 15h1.6l.5-7.5ZM12 16.6a1.4 1.4 0 1 0 .01 0Z";
  let numbers = 0;

  /** `make("p.fine", {attribute: value, onclick: f}, "text", element, [list])`; nothing is made of null and false. */
  function make(name, attributes, ...children) {
    const [tag, ...classes] = name.split(".");
    const element = document.createElement(tag);
    if (classes.length) element.className = classes.join(" ");
    Object.entries(attributes || {}).forEach(([key, value]) => set(element, key, value));
    add(element, children);
    return element;
  }

  function set(element, key, value) {
    if (value === null || value === undefined || value === false) return;
    if (key.startsWith("on")) element.addEventListener(key.slice(2), value);
    else if (key === "value") element.value = value;
    else element.setAttribute(key, value === true ? "" : value);
  }

  function add(element, children) {
    children.flat(3).forEach((child) => {
      if (child === null || child === undefined || child === false || child === "") return;
      element.append(typeof child === "object" ? child : String(child));
    });
  }

  fw.make = make;

  fw.newId = (stem) => "guided-" + stem + "-" + ++numbers;

  /** A second tap of a glove must not answer the next question, which has just come under it. */
  const isSlip = (event) => event.detail > 1 && window.performance.now() - fw.changedAt < 500;

  fw.changedAt = 0;

  fw.button = (text, press, kind, attributes) =>
    make(
      "button.press" + (kind ? "." + kind : ""),
      { type: "button", onclick: (event) => isSlip(event) || press(event), ...attributes },
      text,
    );

  fw.link = (text, href, kind) => make("a" + (kind ? "." + kind : ""), { href }, text);

  /** A heading that can take the focus. */
  fw.heading = (level, text, attributes) => make("h" + level, { tabindex: "-1", ...attributes }, text);

  fw.para = (text, kind) => (text ? make("p" + (kind ? "." + kind : ""), {}, text) : null);

  fw.facts = (pairs) => {
    const rows = pairs.filter((pair) => pair && pair[1]);
    if (!rows.length) return null;
    return make(
      "dl.facts",
      {},
      rows.map(([label, text]) => make("div", {}, make("dt", {}, label), make("dd", {}, text))),
    );
  };

  fw.details = (kind, title, content, open) =>
    make("details." + kind, { open: Boolean(open) }, make("summary", {}, make("span", {}, title)), content);

  function alertSymbol() {
    const picture = document.createElementNS(SVG, "svg");
    const path = document.createElementNS(SVG, "path");
    const size = { class: "alert", viewBox: "0 0 24 22", width: "24", height: "22", "aria-hidden": "true" };
    Object.entries(size).forEach(([key, value]) => picture.setAttribute(key, value));
    path.setAttribute("fill", "currentColor");
    path.setAttribute("fill-rule", "evenodd");
    path.setAttribute("d", TRIANGLE);
    picture.append(path);
    return picture;
  }

  const RANK = ["DANGER", "WARNING", "CAUTION", "NOTICE"];

  function signal(caution, name) {
    const symbol = caution.signal === "NOTICE" ? null : alertSymbol();
    return make(name, {}, symbol, make("span", {}, caution.word || caution.signal));
  }

  function panel(caution) {
    const style = "panel.is-" + caution.signal.toLowerCase();
    return make(
      "div." + style,
      { "data-signal": caution.signal },
      signal(caution, "p.signal"),
      make("p.hazard", {}, caution.text),
    );
  }

  fw.warning = (text) => panel({ signal: "WARNING", word: fw.say("WARNING"), text });

  /** Panels of cautions, the gravest first; those in `seen` become a short reminder. */
  fw.cautions = (ids, known, seen) => {
    const list = (ids || []).map((id) => [id, known[id]]).filter((pair) => pair[1] && concerns(pair[1]));
    list.sort((a, b) => RANK.indexOf(a[1].signal) - RANK.indexOf(b[1].signal));
    const fresh = list.filter(([id]) => !seen || !seen.has(id));
    const again = list.filter(([id]) => seen && seen.has(id));
    if (seen) fresh.forEach(([id]) => seen.add(id));
    return [fresh.map(([, caution]) => panel(caution)), again.length ? reminder(again) : null];
  };

  /** That a refrigerant can burn is not said where the machine is known to have none such. */
  function concerns(caution) {
    const builds = fw.machine.builds(fw.job.state().facts);
    const none = builds.length > 0 && builds.every((number) => fw.book.builds[number].flammable === false);
    return !(caution.ifFlammable && none);
  }

  function reminder(list) {
    const tags = list.map(([, caution]) => signal(caution, "span.tag.is-" + caution.signal.toLowerCase()));
    return make("p.reminders", {}, tags, make("span", {}, fw.say("as above")));
  }
})((window.faultwright = window.faultwright || {}));
