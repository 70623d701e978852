/* Finds what the handbook holds: complaints, faults, readings, parts. Nothing leaves the device. */
(function (fw) {
  "use strict";
  var translated = {};

  /* A built-in text in the language of the handbook. */
  fw.say = fw.say || function (text, value) {
    return (Object.hasOwn(translated, text) ? translated[text] : text).replace("{0}", value);
  };

  /* The page's own fragment of the address; where the whole handbook is one file, that file says otherwise. */
  fw.here = fw.here || {
    fragment: function () { return location.hash; },
    go: function (fragment) { location.hash = fragment; },
    replace: function (fragment) { history.replaceState(history.state, "", fragment || "#"); },
    open: function (href) { location.href = href; }
  };

  /* What a word counts for in an instruction, in the sentence about it, in what people say, in the name. */
  var WEIGHTS = [1, 3, 6, 8];
  var SHOWN = 60, WEIGHED = 200;

  /* What is likelier to be looked for than another thing that fits as well. */
  var LIKELY = { symptom: 2, fault: 1, equipment: -5 };

  var families, entries, synonyms, phrases, terms, postings, letters, numbers;

  function words(text) {
    return text.normalize("NFKD").replace(/[\p{M}\u00ad]/gu, "").toLowerCase()
      .replace(/ß/g, "ss").replace(/ς/g, "σ").match(/[\p{L}\p{N}]+/gu) || [];
  }

  fw.index = function (data) {
    translated = data.words;
    families = data.families;
    entries = data.entries;
    terms = data.terms ? data.terms.split(" ") : [];
    postings = data.postings.split(" ");
    numbers = new Map(terms.map(function (term, i) { return [term, i]; }));
    letters = terms.map(signature);
    synonyms = entries.map(function () { return []; });
    phrases = new Map();
    data.synonyms.forEach(function (one) {
      one[1].forEach(function (entry) { synonyms[entry].push(one[0]); });
    });
    show();
  };

  /* Which letters a word has, as bits: an error changes one of them, or one each way. */
  function signature(word) {
    var bits = 0;
    for (var i = 0; i < word.length; i++) bits |= 1 << word.charCodeAt(i) % 31;
    return bits;
  }

  function more(bits, most) {
    for (; bits && most >= 0; most--) bits &= bits - 1;
    return most < 0;
  }

  /* How many letters are wrong, missing, too many or swapped with the next (Damerau and Levenshtein). */
  function errors(a, b, most) {
    var older = [], old = [], row = [], least;
    for (var j = 0; j <= b.length; j++) old[j] = j;
    for (var i = 1; i <= a.length; i++) {
      least = row[0] = i;
      for (j = 1; j <= b.length; j++) {
        row[j] = Math.min(old[j] + 1, row[j - 1] + 1, old[j - 1] + (a[i - 1] !== b[j - 1]));
        if (j > 1 && i > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
          row[j] = Math.min(row[j], older[j - 2] + 1);
        }
        least = Math.min(least, row[j]);
      }
      if (least > most) return least;
      var spare = older;
      older = old;
      old = row;
      row = spare;
    }
    return old[b.length];
  }

  /* A number of a part or a model is never guessed. */
  function allowed(word) {
    return /\p{N}/u.test(word) || word.length < 4 ? 0 : word.length < 8 ? 1 : 2;
  }

  /* Terms that a word may mean, each with how well it fits: the same, begun by it, holding it. */
  function near(word, guess) {
    var found = new Map(), inside = word.length > 2 || word > "\u2e80";
    terms.forEach(function (term, i) {
      var at = term.indexOf(word);
      if (at === 0) found.set(i, term.length === word.length ? 1 : 0.7 + 0.2 * word.length / term.length);
      else if (at > 0 && inside) found.set(i, 0.3);
    });
    if (guess || !found.size) guessed(word, found);
    return found;
  }

  /* Terms with a slip of the finger, or begun with one, or with another ending: "leaking" for "leaks". */
  function guessed(word, found) {
    var most = allowed(word), bits = signature(word);
    if (most) terms.forEach(function (term, i) {
      if (found.has(i)) return;
      if (Math.abs(term.length - word.length) <= most
          && !more(bits & ~letters[i], most) && !more(letters[i] & ~bits, most)) {
        var wrong = errors(word, term, most);
        if (wrong <= most) return found.set(i, 0.6 - 0.1 * wrong);
      }
      if (word.length > 4 && term.length > word.length && !more(bits & ~letters[i], 1)
          && Math.min(errors(word, term.slice(0, word.length), 1), errors(word, term.slice(0, word.length + 1), 1)) < 2) {
        return found.set(i, 0.3);
      }
      var same = 0;
      while (same < word.length && word[same] === term[same]) same++;
      if (same > 3 && word.length - same < 4 && term.length - same < 4) found.set(i, 0.25);
    });
  }

  function decoded(term) {
    var code = 0;
    if (typeof postings[term] === "string") {
      postings[term] = postings[term].split(",").map(function (step) { return code += parseInt(step, 36); });
    }
    return postings[term];
  }

  /* The best worth of each entry that a word is in. */
  function worth(found) {
    var best = new Map();
    found.forEach(function (fit, term) {
      decoded(term).forEach(function (code) {
        var value = fit * WEIGHTS[code & 3];
        if (!(best.get(code >> 2) >= value)) best.set(code >> 2, value);
      });
    });
    return best;
  }

  function known(text) {
    if (!phrases.has(text)) {
      phrases.set(text, words(text).map(function (word) { return numbers.get(word); }));
    }
    return phrases.get(text);
  }

  /* How well a whole query fits a whole name: all of its words must be in it. */
  function fits(text, asked) {
    var own = known(text), covered = new Set(), sum = 0;
    for (var i = 0; i < asked.length; i++) {
      var best = 0, where;
      own.forEach(function (term, at) {
        var fit = asked[i].get(term) || 0;
        if (fit > best) { best = fit; where = at; }
      });
      if (!best) return 0;
      covered.add(where);
      sum += best;
    }
    return sum * (0.5 + covered.size / own.length) / asked.length;
  }

  /* Entries in which every word is found, the best first: {entry, said, score}. Only the best are weighed twice. */
  function all(asked, family) {
    var scores = null;
    asked.map(worth).forEach(function (best) {
      var both = new Map();
      best.forEach(function (value, entry) {
        if (!scores || scores.has(entry)) both.set(entry, value + (scores ? scores.get(entry) : 0));
      });
      scores = both;
    });
    return Array.from(scores, function (pair) { return { entry: pair[0], said: "", score: pair[1] / asked.length }; })
      .filter(function (one) {
        var only = entries[one.entry][4];
        return family < 0 || !only || only.includes(family);
      })
      .sort(better)
      .map(function (one, i) { return i < WEIGHED ? ranked(one.entry, one.score, asked) : one; })
      .sort(better);
  }

  function better(a, b) {
    return b.score - a.score || a.entry - b.entry;
  }

  function ranked(entry, score, asked) {
    var name = fits(entries[entry][1], asked), said = "", best = 0;
    synonyms[entry].forEach(function (text) {
      var fit = fits(text, asked);
      if (fit > best) { best = fit; said = text; }
    });
    score += 8 * Math.max(name, best) + (LIKELY[entries[entry][0]] || 0);
    return { entry: entry, said: name ? "" : said, score: score };
  }

  fw.find = function (query, family) {
    var asked = words(query), number = families.indexOf(family);
    function found(guess) {
      return all(asked.map(function (word) { return near(word, guess); }), number);
    }
    if (!asked.length) return [];
    var sure = found(false);
    return sure.length ? sure : found(true);
  };

  /* What is seen. */
  function heading(kind) {
    return {
      symptom: fw.say("Complaints"), fault: fw.say("Faults"), reading: fw.say("Readings"),
      sequence: fw.say("Sequences of operation"), part: fw.say("Parts"),
      model: fw.say("Models"), equipment: fw.say("Equipment"), guide: fw.say("Guides"),
      refrigerant: fw.say("Refrigerants")
    }[kind];
  }

  function element(name, style, text) {
    var made = document.createElement(name);
    if (style) made.className = style;
    if (text) made.textContent = text;
    return made;
  }

  function item(one) {
    var entry = entries[one.entry], link = element("a"), line = element("li");
    link.href = entry[3];
    if (one.said) {
      var said = element("span", "said");
      said.append(element("b", "", one.said), element("span", "toward", " → "));
      link.append(said);
    }
    link.append(element("span", "name", entry[1]));
    if (entry[2]) link.append(element("span", "fine", entry[2]));
    line.append(link);
    return line;
  }

  function section(kind, found) {
    var made = element("section"), list = element("ul", "targets");
    found.forEach(function (one) { list.append(item(one)); });
    made.append(element("h2", "", heading(kind)), list);
    return made;
  }

  function grouped(found) {
    var kinds = new Map();
    found.forEach(function (one) {
      var kind = entries[one.entry][0];
      kinds.set(kind, (kinds.get(kind) || []).concat(one));
    });
    return Array.from(kinds, function (pair) { return section(pair[0], pair[1]); });
  }

  function counted(query, found) {
    if (!words(query).length) return "";
    if (!found.length) return fw.say("Nothing found. Use fewer or other words, or see A to Z.");
    if (found.length > SHOWN) return fw.say("Many results. Add a word.");
    return found.length === 1 ? fw.say("1 result") : fw.say("{0} results", found.length);
  }

  var form = document.getElementById("search"), place = document.getElementById("results"), timer, shownHash;

  function asked() {
    var said = new URLSearchParams(fw.here.fragment().slice(1));
    return { query: said.get("q") || "", family: said.get("family") || "" };
  }

  function chosen() {
    var box = form.querySelector("[name=family]:checked");
    return { query: form.elements.q.value, family: box ? box.value : "" };
  }

  function address(want) {
    var said = new URLSearchParams();
    if (want.query.trim()) said.set("q", want.query.trim());
    if (want.family) said.set("family", want.family);
    return String(said) && "#" + said;
  }

  function draw(want) {
    var found = fw.find(want.query, want.family);
    place.replaceChildren.apply(place, grouped(found.slice(0, SHOWN)));
    document.getElementById("count").textContent = counted(want.query, found);
  }

  /* Takes over what the address says. */
  function show() {
    if (!place || !entries || fw.here.fragment() === shownHash) return;
    var want = asked();
    shownHash = fw.here.fragment();
    form.elements.q.value = want.query;
    form.querySelectorAll("[name=family]").forEach(function (box) { box.checked = box.value === want.family; });
    draw(want);
  }

  /* Takes over what is typed; the address follows, so that it can be kept and sent. */
  function typed() {
    clearTimeout(timer);
    timer = setTimeout(function () {
      var want = chosen();
      shownHash = address(want);
      if (fw.here.fragment() !== shownHash) fw.here.replace(shownHash);
      if (entries) draw(want);
    }, 120);
  }

  function open() {
    fw.here.open(form.dataset.page + address({ query: form.elements.q.value, family: "" }));
  }

  if (form) {
    form.hidden = false;
    form.addEventListener("submit", function (event) {
      event.preventDefault();
      if (place) typed();
      else open();
    });
    if (place) {
      form.addEventListener("input", typed);
      addEventListener("hashchange", show);
    }
  }
})(window.faultwright = window.faultwright || {});
