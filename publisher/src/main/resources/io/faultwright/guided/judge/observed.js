/*
 * What is known of one machine, ready to be asked, in strong three-valued logic: true, false, and
 * null for what is not known.
 */
(function (fw) {
  "use strict";

  const not = (truth) => (truth === null ? null : !truth);
  const both = (a, b) => (a === false || b === false ? false : a === null || b === null ? null : true);
  const either = (a, b) => not(both(not(a), not(b)));

  const hasFacts = (build, facts) =>
    Object.entries(facts).every(([fact, wanted]) => fw.equipment.value(build, fact) === wanted);

  /** Every build of the handbook, by its number, that a machine can be. */
  function matching(facts) {
    return fw.book.builds.map((_, number) => number).filter((number) => hasFacts(fw.book.builds[number], facts));
  }

  /** What all agree on; null where they differ. */
  function agreed(list, truthOf) {
    const first = truthOf(list[0]);
    return list.every((each) => truthOf(each) === first) ? first : null;
  }

  class Observed {
    constructor(symptom, facts, readings) {
      this.symptom = symptom;
      this.facts = facts;
      this.given = readings;
      this.machines = matching(facts);
      this.builds = this.machines.filter((number) => symptom.builds.includes(number));
      this.values = new Map();
      this.bands = new Map();
      this.truths = new Map();
    }

    isReading(subject) {
      return subject in this.symptom.readings;
    }

    hasReading(id, build) {
      const reading = this.symptom.readings[id];
      return !reading || !reading.builds || reading.builds.includes(build);
    }

    /** The one refrigerant of every build that the machine can be. */
    refrigerant() {
      const found = new Set(this.machines.map((number) => fw.book.builds[number].refrigerant));
      return found.size === 1 ? [...found][0] : undefined;
    }

    /** {number} as a fraction, {word} or {untaken}; undefined where it is not known. */
    value(id) {
      if (!this.values.has(id)) {
        this.values.set(id, this.work(id));
      }
      return this.values.get(id);
    }

    work(id) {
      const reading = this.symptom.readings[id];
      if (reading && reading.derived) {
        return this.derived(reading.derived);
      }
      const given = this.given[id] || (reading && reading.assumed);
      return given && given.number !== undefined ? { number: fw.number.of(given.number) } : given;
    }

    /** Not taken where an operand is not, or where the curve it is read off has no figure. */
    derived(form) {
      const operands = fw.forms.operands(form).map((id) => this.value(id));
      if (operands.some((known) => known && known.untaken)) {
        return { untaken: true };
      }
      const refrigerant = this.refrigerant();
      const number = fw.forms.number(form, (id) => (this.value(id) || {}).number, refrigerant);
      if (number) {
        return { number };
      }
      const beyond = operands.every(Boolean) && (refrigerant || !fw.forms.needsRefrigerant(form));
      return beyond ? { untaken: true } : undefined;
    }

    bandOn(id, build) {
      const table = this.symptom.limits[id];
      const known = table.drivers.map((driver) => (this.value(driver) || {}).number).filter(Boolean);
      return fw.limits.band(table, build, known.length === table.drivers.length ? known : []);
    }

    bandsOf(id) {
      if (!this.bands.has(id)) {
        this.bands.set(id, this.builds.map((build) => this.bandOn(id, build)));
      }
      return this.bands.get(id);
    }

    /** The limits of a reading here; undefined unless all builds it can be have the same. */
    band(id) {
      const [first, ...others] = this.symptom.limits[id] ? this.bandsOf(id) : [];
      const same = (a, b) => (a && b ? fw.number.compare(a, b) === 0 : a === b);
      const equal = (band) => band && same(band.low, first.low) && same(band.high, first.high);
      return first && others.every(equal) ? first : undefined;
    }

    /** Whether the machine has, or may have, the reading of a test and those its limits follow. */
    exists(test) {
      const [kind, subject] = test;
      if (!this.isReading(subject)) {
        return true;
      }
      const needed = kind === "limits" ? [subject, ...this.symptom.limits[subject].drivers] : [subject];
      return this.builds.some((build) => needed.every((id) => this.hasReading(id, build)));
    }

    /**
     * Whether a condition holds, or its contrary. A test on a reading that the machine does not
     * have does neither.
     */
    met(condition, wanted = true) {
      const [kind, part] = condition;
      switch (kind) {
        case "all":
        case "any":
          return (kind === "all") === wanted
            ? part.reduce((joined, each) => both(joined, this.met(each, wanted)), true)
            : part.reduce((joined, each) => either(joined, this.met(each, wanted)), false);
        case "not":
          return this.met(part, !wanted);
        default:
          return this.exists(condition) && (wanted ? this.truth(condition) : not(this.truth(condition)));
      }
    }

    /** Whether a test comes true. */
    truth(test) {
      if (!this.truths.has(test)) {
        this.truths.set(test, this.decide(test));
      }
      return this.truths.get(test);
    }

    decide(test) {
      const [kind, subject, wanted] = test;
      switch (kind) {
        case "builds":
          return agreed(this.builds, (build) => subject.includes(build));
        case "absent":
          return agreed(this.builds, (build) => !this.hasAll(subject, wanted, build));
        case "nofigure":
          return this.hasNoFigure(subject);
        default:
          return this.isReading(subject) ? this.ofReading(test) : this.ofFact(test);
      }
    }

    hasAll(id, withLimits, build) {
      const drivers = withLimits ? this.symptom.limits[id].drivers : [];
      return [id, ...drivers].every((each) => this.hasReading(each, build));
    }

    hasNoFigure(id) {
      const known = [id, ...this.symptom.limits[id].drivers].every((each) => (this.value(each) || {}).number);
      return known ? agreed(this.bandsOf(id), (band) => band === undefined) : null;
    }

    ofFact([, fact, values]) {
      return agreed(this.builds, (build) => {
        const value = fw.equipment.value(fw.book.builds[build], fact);
        return value !== undefined && values.includes(value);
      });
    }

    ofReading([kind, subject, wanted]) {
      const value = this.value(subject);
      if (!value) {
        return null;
      }
      if (kind === "untaken") {
        return Boolean(value.untaken);
      }
      if (value.untaken) {
        return null;
      }
      if (kind === "is") {
        return wanted.includes(value.word);
      }
      return kind === "in"
        ? fw.limits.contains(fw.limits.interval(wanted), value.number)
        : agreed(this.bandsOf(subject), (band) => (band ? wanted.includes(fw.limits.side(band, value.number)) : null));
    }
  }

  /** Facts of builds. */
  fw.equipment = {
    value(build, fact) {
      return fact === "model" ? build.model : fact === "software" ? build.software : build.facts[fact];
    },
    matching,
  };

  fw.observe = (symptom, facts, readings) => new Observed(symptom, facts, readings);
})((window.faultwright = window.faultwright || {}));
