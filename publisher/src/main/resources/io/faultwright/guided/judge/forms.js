/* How readings are computed from others: sums, and what is read off curves. */
(function (fw) {
  "use strict";

  /** Ids of the readings that it is computed from. */
  function operands(form) {
    const ids = form.terms.map(([id]) => id);
    form.bends.forEach((bend) => ids.push(...operands(bend.argument)));
    return [...new Set(ids)].sort();
  }

  const needsRefrigerant = (form) =>
    form.bends.some((bend) => bend.curve !== "altitude" || needsRefrigerant(bend.argument));

  /** The value; undefined where an operand is not known, or where a curve ends before. */
  function number(form, operand, refrigerant) {
    const N = fw.number;
    let sum = N.of(form.constant);
    for (const [id, factor] of form.terms) {
      const known = operand(id);
      if (!known) {
        return undefined;
      }
      sum = N.add(sum, N.multiply(N.of(factor), known));
    }
    for (const bend of form.bends) {
      const argument = number(bend.argument, operand, refrigerant);
      const read = argument && fw.curves.value(bend.curve, refrigerant, argument);
      if (!read) {
        return undefined;
      }
      sum = N.add(sum, N.multiply(N.of(bend.factor), read));
    }
    return sum;
  }

  fw.forms = { operands, needsRefrigerant, number };
})((window.faultwright = window.faultwright || {}));
