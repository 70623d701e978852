// What this participant got, what was answered, and what is handed in. Nothing is ever sent from here.
(function (fw) {
  "use strict";

  const LONGEST_NAME = 80;
  const DIGITS = 32;
  const quiz = JSON.parse(document.getElementById("quiz-data").textContent);
  const place = "faultwright-quiz/" + quiz.quiz + "/" + quiz.participant;

  fw.quiz = quiz;
  fw.fileName = quiz.session + "-" + String(quiz.participant).padStart(3, "0") + ".json";

  /** A text of the tool in the language of the page; {0}, {1} stand for the other arguments. */
  fw.say = (text, ...parts) =>
    (Object.prototype.hasOwnProperty.call(quiz.words, text) ? quiz.words[text] : text).replace(
      /\{(\d)\}/g,
      (all, index) => String(parts[index]),
    );

  /** A name on one line, without what no file can hold. */
  fw.plainName = (text) => {
    const line = text.replace(/[\p{Cc}\p{Cs}\u2028\u2029\s]+/gu, " ").trim();
    return Array.from(line.normalize("NFC")).slice(0, LONGEST_NAME).join("").trim();
  };

  function remembered() {
    try {
      return JSON.parse(window.localStorage.getItem(place)) || {};
    } catch (refused) {
      return {};
    }
  }

  const known = remembered();
  const answers = Object.create(null);
  quiz.items.forEach((id) => (answers[id] = (known.answers || {})[id] || null));
  let name = typeof known.name === "string" ? known.name : "";
  let handedIn = known.handedIn || null;

  function remember() {
    try {
      window.localStorage.setItem(place, JSON.stringify({ name, answers, handedIn }));
      return true;
    } catch (refused) {
      return false;
    }
  }

  fw.remembers = remember();
  fw.name = () => name;
  fw.answer = (number) => answers[quiz.items[number - 1]];
  fw.open = () => quiz.items.map((id, i) => i + 1).filter((number) => fw.answer(number) === null);

  /** Whether all is as it was last handed in. */
  fw.isHandedIn = () => handedIn !== null;

  function changed() {
    handedIn = null;
    remember();
  }

  fw.setName = (text) => {
    if (fw.plainName(text) === name) return;
    name = fw.plainName(text);
    changed();
  };

  fw.choose = (number, choice) => {
    answers[quiz.items[number - 1]] = choice;
    changed();
  };

  fw.forget = () => {
    try {
      window.localStorage.removeItem(place);
    } catch (refused) {
      // nothing was remembered
    }
  };

  /** Local date and time to the minute, as in 2026-04-14T10:32. */
  function now() {
    const at = new Date();
    const two = (number) => String(number).padStart(2, "0");
    const day = [String(at.getFullYear()).padStart(4, "0"), two(at.getMonth() + 1), two(at.getDate())].join("-");
    return day + "T" + two(at.getHours()) + ":" + two(at.getMinutes());
  }

  /** The text that the check value stands for. */
  function canonical(result) {
    const fields = [
      ["session", result.session],
      ["quiz", result.quiz],
      ["participant", result.participant],
      ["name", result.name],
      ["handed-in", result.handedIn],
      ...result.answers.map((answer) => [answer.item, answer.choice === null ? "-" : answer.choice]),
    ];
    const lines = fields.map(([field, value]) => field + "=" + String(value).replace(/[\r\n]/g, " ") + "\n");
    return "faultwright hand-in 1\n" + lines.join("");
  }

  /** The text of the file; the same text until something changes. */
  fw.handIn = () => {
    handedIn = handedIn || now();
    remember();
    const result = {
      what: "quiz answers",
      session: quiz.session,
      quiz: quiz.quiz,
      participant: quiz.participant,
      name,
      handedIn,
      answers: quiz.items.map((item) => ({ item, choice: answers[item] })),
    };
    result.check = fw.hmac(quiz.key, canonical(result)).slice(0, DIGITS);
    return JSON.stringify(result) + "\n";
  };
})((window.faultwright = window.faultwright || {}));
