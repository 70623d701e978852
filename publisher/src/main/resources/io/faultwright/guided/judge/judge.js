/* Says what a symptom's rules answer in a situation, and why; the same as the handbook's engine. */
(function (fw) {
  "use strict";

  /** Called by the data of the handbook, and by those of a symptom. */
  fw.symptoms = fw.symptoms || {};
  fw.handbook = (data) => {
    fw.book = data;
  };
  /** Data of another edition number the machines otherwise; they are not taken. */
  fw.symptom = (data) => {
    if (data.equipment === fw.book.equipment) {
      fw.symptoms[data.id] = data;
    }
  };

  /** The tests of a condition, each with whether it holds as the condition wants it. */
  function tests(observed, condition, wanted = true) {
    const [kind, part] = condition;
    if (kind === "all" || kind === "any") {
      return part.flatMap((each) => tests(observed, each, wanted));
    }
    if (kind === "not") {
      return tests(observed, part, !wanted);
    }
    const words = condition[condition.length - 1];
    return [{ subject: part, words, wanted, truth: observed.met(condition, wanted) }];
  }

  const isMissing = (value) => value === null || value === undefined;

  /** Given values that their readings cannot have. */
  function strange(symptom, readings) {
    const found = [];
    for (const [id, value] of Object.entries(readings)) {
      const reading = symptom.readings[id];
      if (reading && !value.untaken && !isPossible(reading, value)) {
        found.push({ reading: id, value });
      }
    }
    return found;
  }

  function isPossible(reading, value) {
    if (reading.values) {
      return reading.values.some(([id]) => id === value.word);
    }
    if (isMissing(value.number)) {
      return false;
    }
    const N = fw.number;
    const number = N.of(value.number);
    const [low, high] = reading.range.map(N.of);
    return N.compare(number, low) >= 0 && N.compare(number, high) <= 0;
  }

  /** How far the rules get: {status, answers, contradictory} and what it rests on. */
  function verdict(observed) {
    const { symptom } = observed;
    const silent = (status, more) => ({ status, answers: [], contradictory: false, ...more });
    if (observed.builds.length === 0) {
      return silent(observed.machines.length === 0 ? "no-such-equipment" : "does-not-apply");
    }
    const odd = strange(symptom, observed.given);
    if (odd.length > 0) {
      return silent("check-values", { strange: odd });
    }
    const broken = symptom.nevers.filter((never) => observed.met(never.when) === true);
    if (broken.length > 0) {
      return silent("take-again", { broken });
    }
    if (observed.met(symptom.recognise) === false) {
      return silent("not-this-symptom", { doubt: symptom.recognise });
    }
    const first = symptom.first.find((each) => observed.met(each.when) !== true);
    return first ? ofFirst(observed, first, silent) : ofRules(symptom, observed, silent);
  }

  function ofFirst(observed, first, silent) {
    return observed.met(first.when) === null
      ? silent("ask-first", { doubt: first.when })
      : { status: "referred", answers: [["refer", first.otherwise]], contradictory: false, doubt: first.when };
  }

  function ofRules(symptom, observed, silent) {
    const standing = fw.standing(symptom, observed);
    const answers = standing.answers();
    return answers.length > 0
      ? { status: "answered", answers, contradictory: standing.contradictory(answers), standing }
      : silent(standing.open() ? "nothing-yet" : "no-answer", { standing });
  }

  /** Why a fault is out: of each rule that could conclude it, what does not hold. */
  function whyOut(observed, standing, fault) {
    const seen = new Set();
    return observed.symptom.rules
      .filter((rule) => (rule.conclude || []).includes(fault) && standing.truths.get(rule.id) === false)
      .flatMap((rule) => tests(observed, rule.when).filter((test) => test.truth === false).slice(0, 1))
      .filter((test) => {
        const key = test.subject + " " + test.wanted + " " + test.words;
        return !seen.has(key) && seen.add(key);
      });
  }

  /** What to ask next, and whether the chart says so. */
  function next(observed, said, course, unknown) {
    if (course.reading) {
      return { reading: course.reading, toward: course.node.ask, onChart: true };
    }
    const conditions =
      said.status === "ask-first"
        ? [said.doubt]
        : said.standing && said.status !== "no-answer"
          ? said.standing.possibleRules().flatMap((rule) => [rule.when, ...silencing(observed, rule)])
          : [];
    const found = fw.asking.mostAwaited(observed, conditions, unknown);
    if (!found) {
      return null;
    }
    return found.fact
      ? { fact: found.id, onChart: false }
      : { reading: found.id, toward: found.toward, onChart: false };
  }

  const silencing = (observed, rule) =>
    observed.symptom.rules
      .filter((other) => (other.insteadOf || []).includes(rule.id) && observed.met(other.when) === null)
      .map((other) => other.when);

  /** How far a shown value may lie from the true one; undefined where that is not known. */
  function tolerance(reading, number) {
    const N = fw.number;
    if (!reading || !reading.accuracy || !number) {
      return undefined;
    }
    const half = reading.resolution ? N.divide(N.of(reading.resolution), N.of("2")) : N.ZERO;
    return reading.accuracy.reduce((sum, [kind, size, end]) => {
      const part = N.of(size);
      const by = kind === "reading" ? N.absolute(number) : kind === "scale" ? N.of(end) : N.of("1");
      return N.add(sum, N.multiply(part, by));
    }, half);
  }

  const word = (said) => JSON.stringify([said.status, said.answers]);

  /**
   * The readings that, one alone and within what its instrument can tell, would bring another
   * outcome.
   */
  function borderline(symptom, facts, readings, said) {
    const N = fw.number;
    const found = [];
    for (const [id, value] of Object.entries(readings)) {
      const reading = symptom.readings[id];
      const number = value.number === undefined ? undefined : N.of(value.number);
      const reach = tolerance(reading, number);
      if (reach) {
        const [low, high] = reading.range.map(N.of);
        const within = (each) => (N.compare(each, low) < 0 ? low : N.compare(each, high) > 0 ? high : each);
        const others = [N.subtract(number, reach), N.add(number, reach)]
          .map(within)
          .map((each) => ({ ...readings, [id]: { number: N.exact(each) } }))
          .map((changed) => verdict(fw.observe(symptom, facts, changed)))
          .filter((other) => !["check-values", "take-again"].includes(other.status) && word(other) !== word(said));
        if (others.length > 0) {
          found.push({ reading: id, tolerance: reach, status: others[0].status, otherwise: others[0].answers });
        }
      }
    }
    return found;
  }

  /** Looks at a situation of a symptom: facts by name, readings by id. */
  function look(symptom, { facts, readings, unknown = [] }) {
    const observed = fw.observe(symptom, facts, readings);
    const said = verdict(observed);
    const works = observed.builds.length > 0 && said.status !== "check-values";
    const course = works ? fw.asking.follow(observed) : { asked: [], lost: true };
    const { standing } = said;
    return {
      status: said.status,
      answers: said.answers,
      contradictory: said.contradictory,
      strange: said.strange || [],
      broken: (said.broken || []).map(({ id, because, when }) => ({ id, because, tests: tests(observed, when) })),
      because: said.doubt ? tests(observed, said.doubt) : [],
      rules: standing
        ? symptom.rules.map((rule) => ({
            id: rule.id,
            because: rule.because,
            state: standing.state(rule),
            answers: fw.answers.of(rule),
            tests: tests(observed, rule.when),
          }))
        : [],
      possible: standing ? standing.possible() : [],
      ruledOut: standing
        ? standing.ruledOut().map((fault) => ({ fault, why: whyOut(observed, standing, fault) }))
        : [],
      value: (id) => observed.value(id),
      band: (id) => observed.band(id),
      has: (id) => observed.builds.some((build) => observed.hasReading(id, build)),
      refrigerant: observed.refrigerant(),
      builds: observed.builds,
      trail: course.asked,
      ended: Boolean(course.ended),
      lost: Boolean(course.lost),
      next: works ? next(observed, said, course, unknown) : null,
      get borderline() {
        return borderline(symptom, facts, readings, said);
      },
    };
  }

  fw.judge = { look, tolerance };
})((window.faultwright = window.faultwright || {}));
