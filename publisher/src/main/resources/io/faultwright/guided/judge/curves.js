/* Curves that computed readings are read off: straight between exact points, nothing outside. */
(function (fw) {
  "use strict";

  const curves = new Map();
  const lines = new Map();

  /** A column of points: the denominator, how often differences were taken, the differences. */
  function column([denominator, order, ...differences]) {
    let numbers = differences.map(BigInt);
    for (let i = 0; i < order; i++) {
      let sum = 0n;
      numbers = numbers.map((number) => (sum += number));
    }
    return { numbers, denominator: BigInt(denominator) };
  }

  function lineOf(id, kind) {
    const data = curves.get(id);
    const key = id + " " + kind;
    if (data && !lines.has(key)) {
      const points = data[kind] || data.dew;
      lines.set(key, { x: column(points.x), y: column(points.y) });
    }
    return lines.get(key);
  }

  const at = (axis, i) => ({ n: axis.numbers[i], d: axis.denominator });

  /** The y over an x; undefined outside the curve. */
  function along(line, x) {
    const N = fw.number;
    const last = line.x.numbers.length - 1;
    if (N.compare(x, at(line.x, 0)) < 0 || N.compare(x, at(line.x, last)) > 0) {
      return undefined;
    }
    let low = 0;
    let high = last - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (N.compare(at(line.x, middle), x) <= 0) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    const rise = N.subtract(at(line.y, low + 1), at(line.y, low));
    const run = N.subtract(at(line.x, low + 1), at(line.x, low));
    const part = N.multiply(N.subtract(x, at(line.x, low)), N.divide(rise, run));
    return N.add(at(line.y, low), part);
  }

  /** Called by the files of curves. */
  fw.curve = (id, data) => {
    curves.set(id, data);
  };

  fw.curves = {
    has: (id) => curves.has(id),
    /** The value of a curve: of the altitude's, or of a refrigerant's dew or bubble line. */
    value(kind, refrigerant, x) {
      const line = lineOf(kind === "altitude" ? kind : refrigerant, kind);
      return line && along(line, x);
    },
  };
})((window.faultwright = window.faultwright || {}));
