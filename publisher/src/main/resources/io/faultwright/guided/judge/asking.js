/* What to ask next: by the chart as long as there is a way on it, else what most rules wait for. */
(function (fw) {
  "use strict";

  const ACCESS = ["outside", "panel", "live-voltage", "refrigerant-circuit"];

  /** What has to be looked at for a subject: itself, or all that it is worked out of. */
  function observedFor(symptom, id, withLimits, found = new Set()) {
    const reading = symptom.readings[id];
    if (!reading || found.has(id)) {
      return found;
    }
    if (reading.derived) {
      fw.forms.operands(reading.derived).forEach((operand) => observedFor(symptom, operand, false, found));
    } else {
      found.add(id);
    }
    if (withLimits) {
      symptom.limits[id].drivers.forEach((driver) => observedFor(symptom, driver, false, found));
    }
    return found;
  }

  const isOnMachine = (observed, id) => observed.builds.some((build) => observed.hasReading(id, build));

  /** What is not known yet of it, what has to be asked first before it. */
  function missing(observed, id, withLimits) {
    const { symptom } = observed;
    const open = [...observedFor(symptom, id, withLimits)].filter(
      (each) => !observed.value(each) && isOnMachine(observed, each),
    );
    const waits = (each) => (symptom.readings[each].after || []).some((before) => open.includes(before));
    return [...open.filter((each) => !waits(each)), ...open.filter(waits)];
  }

  /** The chart for the machine; undefined where it may be one of several, or there is none. */
  function chartFor(observed) {
    return observed.symptom.charts.find(
      (chart) => chart.nodes.length > 0 && observed.builds.every((build) => chart.builds.includes(build)),
    );
  }

  function takenArm(observed, node) {
    const known = observed.value(node.ask);
    const fits = ([condition]) => observed.met(condition) === true;
    const special = ([condition]) => JSON.stringify(condition).match(/"(untaken|absent|nofigure)"/);
    return node.arms.find((arm) => fits(arm) && !(known && known.untaken && !special(arm)));
  }

  /** Follows the chart as far as it is known: {asked, next, node, ended, lost}. */
  function follow(observed) {
    const chart = chartFor(observed);
    const asked = [];
    if (!chart) {
      return { asked, lost: true };
    }
    let at = chart.root;
    while (!chart.nodes[at].end) {
      const node = chart.nodes[at];
      const arm = takenArm(observed, node);
      if (!arm) {
        const [reading] = observed.isReading(node.ask) ? missing(observed, node.ask, node.limits) : [];
        return reading ? { asked, node, reading } : { asked, lost: true };
      }
      asked.push(...observedFor(observed.symptom, node.ask, node.limits));
      at = arm[1];
    }
    return { asked, ended: true, answers: chart.nodes[at].end };
  }

  /** Tests of a condition whose outcome is open, with the subjects they wait for. */
  function waiting(observed, condition, found) {
    const [kind, part] = condition;
    if (kind === "all" || kind === "any") {
      part.forEach((each) => waiting(observed, each, found));
    } else if (kind === "not") {
      waiting(observed, part, found);
    } else if (observed.exists(condition) && observed.truth(condition) === null) {
      waitsFor(observed, condition).forEach((each) => found.set(each.id, each));
    }
    return found;
  }

  function waitsFor(observed, [kind, subject]) {
    if (!observed.isReading(subject)) {
      return [{ id: subject, fact: true }];
    }
    return missing(observed, subject, kind === "limits").map((id) => ({ id, toward: subject }));
  }

  function effort(symptom, { id, fact }) {
    const reading = symptom.readings[id];
    return fact ? [0, 0] : [ACCESS.indexOf(reading.access), Number(reading.minutes)];
  }

  /** The subject that most open conditions wait for and that is not given up; of equals the easiest. */
  function mostAwaited(observed, conditions, unknown = []) {
    const counts = new Map();
    const subjects = new Map();
    for (const condition of conditions) {
      for (const each of waiting(observed, condition, new Map()).values()) {
        counts.set(each.id, (counts.get(each.id) || 0) + 1);
        subjects.set(each.id, each);
      }
    }
    const blocked = (each) =>
      !each.fact && (observed.symptom.readings[each.id].after || []).some((id) => subjects.has(id));
    const asked = (each) => each.fact && unknown.includes(each.id);
    const ranked = [...subjects.values()].filter((each) => !blocked(each) && !asked(each));
    const compare = (a, b) => {
      const [accessA, minutesA] = effort(observed.symptom, a);
      const [accessB, minutesB] = effort(observed.symptom, b);
      return (
        counts.get(b.id) - counts.get(a.id) || accessA - accessB || minutesA - minutesB || (a.id < b.id ? -1 : 1)
      );
    };
    return ranked.sort(compare)[0];
  }

  fw.asking = { observedFor, follow, missing, mostAwaited, chartFor };
})((window.faultwright = window.faultwright || {}));
