// Which machine it is: the builds that fit what is known, and what a nameplate says.
(function (fw) {
  "use strict";

  const known = (value) => value && value !== "?";

  /** Numbers of the builds that fit the facts; what is not known fits all. */
  function builds(facts) {
    const numbers = [];
    fw.book.builds.forEach((build, number) => {
      if (Object.keys(facts).every((id) => !known(facts[id]) || valueOf(build, id) === facts[id]))
        numbers.push(number);
    });
    return numbers;
  }

  function valueOf(build, id) {
    return id === "model" || id === "software" ? build[id] : build.facts[id];
  }

  /** Values of a fact that occur among the builds that fit the other facts. */
  function values(id, facts) {
    const others = { ...facts };
    delete others[id];
    const found = new Set(builds(others).map((number) => valueOf(fw.book.builds[number], id)));
    if (id === "model")
      return fw.book.models
        .filter((model) => found.has(model.id))
        .map((model) => [model.id, model.id + " – " + model.title]);
    const fact = fw.factOf(id);
    return fact ? fact.values.filter((value) => found.has(value[0])) : [];
  }

  const fits = (numbers, facts) => {
    if (!numbers) return true;
    const possible = new Set(builds(facts));
    return numbers.some((number) => possible.has(number));
  };

  const model = (id) => fw.book.models.find((each) => each.id === id);

  const bare = (text) => text.toUpperCase().replace(/[^\p{L}\p{N}]/gu, "");

  /** Reads a model number segment by segment, as far as it goes. */
  function decode(text) {
    const plate = fw.book.nameplate;
    let rest = bare(text);
    const parts = [];
    for (const segment of plate ? plate.segments : []) {
      if (!rest) return { parts, complete: false };
      const part = take(segment, rest);
      if (!part) return { parts, complete: false, stray: rest };
      rest = rest.slice(part.code.length);
      if (part.code) parts.push(part);
    }
    return { parts, complete: Boolean(plate) && !rest, stray: rest };
  }

  function take(segment, rest) {
    if (segment.text !== undefined) return fixed(bare(segment.text), rest);
    if (segment.digits) {
      const digits = rest.slice(0, segment.digits);
      return /^\d+$/.test(digits) && digits.length === segment.digits
        ? { code: digits, title: fw.say("Size"), text: digits }
        : null;
    }
    const codes = segment.codes.filter((code) => rest.startsWith(bare(code[0])));
    codes.sort((a, b) => bare(b[0]).length - bare(a[0]).length);
    return codes.length ? meant(segment.fact, codes[0]) : null;
  }

  const fixed = (code, rest) => (rest.startsWith(code) ? { code, title: "", text: "" } : null);

  const meant = (fact, code) => ({
    code: bare(code[0]),
    title: fw.titleOf(fact),
    text: fw.factValue(fact, code[1]),
    fact,
    value: code[1],
  });

  /** The model that is meant exactly, or the models that are near. */
  function search(text) {
    const typed = bare(text);
    if (!typed) return { exact: null, near: [], begun: [] };
    const all = fw.book.models.map((each) => [each, bare(each.id)]);
    const exact = all.find((pair) => pair[1] === typed);
    if (exact) return { exact: exact[0], near: [], begun: [] };
    const begun = all.filter((pair) => pair[1].startsWith(typed)).map((pair) => pair[0]);
    return { exact: null, begun, near: begun.length ? [] : nearest(all, typed) };
  }

  function nearest(all, typed) {
    const allowed = typed.length < 4 ? 1 : 2.5;
    return all
      .map((pair) => [pair[0], distance(pair[1], typed)])
      .filter((pair) => pair[1] <= allowed)
      .sort((a, b) => a[1] - b[1])
      .slice(0, 3)
      .map((pair) => pair[0]);
  }

  const ALIKE = ["0OQD", "1IL", "8B", "5S", "2Z", "6G", "UV"];
  const swap = (a, b) => (a === b ? 0 : ALIKE.some((set) => set.includes(a) && set.includes(b)) ? 0.5 : 1);

  /** Edits from one text to the other; characters that look alike count half. */
  function distance(a, b) {
    let before = [],
      row = Array.from({ length: b.length + 1 }, (none, j) => j);
    for (let i = 1; i <= a.length; i++) {
      const next = [i];
      for (let j = 1; j <= b.length; j++) {
        next[j] = Math.min(row[j] + 1, next[j - 1] + 1, row[j - 1] + swap(a[i - 1], b[j - 1]));
        if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
          next[j] = Math.min(next[j], before[j - 2] + 1);
      }
      before = row;
      row = next;
    }
    return row[b.length];
  }

  fw.machine = { builds, values, fits, model, decode, search, known, bare };
})((window.faultwright = window.faultwright || {}));
