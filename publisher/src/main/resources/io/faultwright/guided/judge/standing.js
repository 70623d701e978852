/* Where the rules of a symptom stand, and what follows from them. */
(function (fw) {
  "use strict";

  const answersOf = (rule) =>
    rule.conclude
      ? rule.conclude.map((fault) => ["fault", fault])
      : rule.refer
        ? [["refer", rule.refer]]
        : rule.escalate
          ? [["escalate", rule.escalate]]
          : [];

  const RANK = { fault: 0, refer: 1, escalate: 2 };
  const order = ([kindA, a], [kindB, b]) => RANK[kindA] - RANK[kindB] || (a < b ? -1 : a > b ? 1 : 0);
  const isSame = (a, b) => a[0] === b[0] && a[1] === b[1];

  /** Answers, each once, faults before referrals before escalations. */
  function distinct(answers) {
    return answers
      .slice()
      .sort(order)
      .filter((answer, i, all) => i === 0 || !isSame(answer, all[i - 1]));
  }

  class Standing {
    constructor(symptom, observed) {
      this.symptom = symptom;
      this.truths = new Map(symptom.rules.map((rule) => [rule.id, observed.met(rule.when)]));
      this.firing = symptom.rules.filter((rule) => this.state(rule) === "fired");
    }

    /** Ids of rules that stand instead of this one, of which the truth is so. */
    others(rule, truth) {
      return this.symptom.rules
        .filter((other) => (other.insteadOf || []).includes(rule.id) && this.truths.get(other.id) === truth)
        .map((other) => other.id);
    }

    state(rule) {
      const truth = this.truths.get(rule.id);
      if (truth === false) {
        return "cannot";
      }
      if (this.others(rule, true).length > 0) {
        return "silenced";
      }
      return truth === true && this.others(rule, null).length === 0 ? "fired" : "could";
    }

    answers() {
      return distinct(this.firing.flatMap(answersOf));
    }

    /** Rules that may yet fire, those that do included. */
    possibleRules() {
      return this.symptom.rules.filter((rule) => ["fired", "could"].includes(this.state(rule)));
    }

    open() {
      return this.possibleRules().some((rule) => answersOf(rule).length > 0);
    }

    excluded() {
      return new Set(this.firing.flatMap((rule) => rule.exclude || []));
    }

    contradictory(answers) {
      const excluded = this.excluded();
      const goTogether = (a, b) =>
        a[0] === "fault" && b[0] === "fault" &&
        this.symptom.together.some((pair) => pair.includes(a[1]) && pair.includes(b[1]));
      return (
        answers.some(([kind, id]) => kind === "fault" && excluded.has(id)) ||
        answers.some((a, i) => answers.slice(i + 1).some((b) => !goTogether(a, b)))
      );
    }

    /** Faults, concluded ones left out, that some rule may yet conclude and none excludes. */
    possible() {
      const concluded = new Set(this.firing.flatMap((rule) => rule.conclude || []));
      const excluded = this.excluded();
      const open = new Set(this.possibleRules().flatMap((rule) => rule.conclude || []));
      return [...open].filter((fault) => !concluded.has(fault) && !excluded.has(fault)).sort();
    }

    /** Faults that no rule can conclude any more, and faults that a rule excludes. */
    ruledOut() {
      const open = new Set(this.possibleRules().flatMap((rule) => rule.conclude || []));
      const excluded = this.excluded();
      const all = new Set(this.symptom.rules.flatMap((rule) => rule.conclude || []));
      return [...new Set([...[...all].filter((fault) => !open.has(fault)), ...excluded])].sort();
    }
  }

  fw.standing = (symptom, observed) => new Standing(symptom, observed);
  fw.answers = { distinct, of: answersOf };
})((window.faultwright = window.faultwright || {}));
