/* What a table of limits says for one build. Outside its rows, and where rows disagree: nothing. */
(function (fw) {
  "use strict";

  const same = (a, b) => a === b || (a && b && fw.number.compare(a, b) === 0);
  const value = (text) => (text === undefined || text === null ? null : fw.number.of(text));

  function interval([low, lowIncluded, high, highIncluded]) {
    return { low: value(low), lowIncluded, high: value(high), highIncluded };
  }

  /** Whether a number lies in an interval. */
  function contains(within, number) {
    const N = fw.number;
    if (within.low !== null) {
      const order = N.compare(number, within.low);
      if (order < 0 || (order === 0 && !within.lowIncluded)) {
        return false;
      }
    }
    if (within.high !== null) {
      const order = N.compare(number, within.high);
      return order < 0 || (order === 0 && within.highIncluded);
    }
    return true;
  }

  /** The band that all rows give; undefined where there is none or they differ. */
  function agreed(rows) {
    const first = rows[0];
    return rows.length > 0 && rows.every((row) => same(row.low, first.low) && same(row.high, first.high))
      ? { low: first.low, high: first.high }
      : undefined;
  }

  /** A shared end belongs to the row that begins there, one quantity after the other. */
  function stepped(rows, values) {
    let here = rows.filter((row) => row.at.every((stretch, i) => contains(stretch, values[i])));
    values.forEach((number, i) => {
      const begins = (row) => row.at.length > i && same(row.at[i].low, number);
      const ends = (row) => row.at.length > i && same(row.at[i].high, number);
      if (here.some(begins)) {
        here = here.filter((row) => begins(row) || !ends(row));
      }
    });
    return agreed(here);
  }

  /** The points of a table next to a value, below and above; undefined beyond its ends. */
  function around(rows, i, number) {
    const N = fw.number;
    let low;
    let high;
    for (const row of rows) {
      const point = row.at[i].low;
      const order = N.compare(point, number);
      if (order <= 0 && (!low || N.compare(point, low) > 0)) {
        low = point;
      }
      if (order >= 0 && (!high || N.compare(point, high) < 0)) {
        high = point;
      }
    }
    return low && high && { low, high };
  }

  function pointBand(rows, point) {
    return agreed(rows.filter((row) => row.at.every((at, i) => same(at.low, point[i]))));
  }

  /** How far a value lies between two points, from 0 to 1. */
  function share(between, number) {
    const N = fw.number;
    return N.divide(N.subtract(number, between.low), N.subtract(between.high, between.low));
  }

  /** From the low corner to the high one, one quantity after the other in this order. */
  function along(rows, cell, values, order) {
    const N = fw.number;
    const corner = cell.map((between) => between.low);
    let from = pointBand(rows, corner);
    let sum = from && { low: from.low, high: from.high };
    for (const i of order) {
      corner[i] = cell[i].high;
      const to = pointBand(rows, corner);
      if (!sum || !from || !to) {
        return undefined;
      }
      const part = share(cell[i], values[i]);
      const grown = (end) =>
        sum[end] && from[end] && to[end]
          ? N.add(sum[end], N.multiply(part, N.subtract(to[end], from[end])))
          : null;
      sum = { low: grown("low"), high: grown("high") };
      from = to;
    }
    return sum;
  }

  /**
   * Between the points: straight along one quantity; along two on the plane of three corners, on
   * the side of the diagonal where the value lies.
   */
  function straight(rows, values) {
    const cell = values.map((number, i) => around(rows, i, number));
    if (cell.some((between) => !between)) {
      return undefined;
    }
    const wide = cell.map((_, i) => i).filter((i) => !same(cell[i].low, cell[i].high));
    if (wide.length < 2) {
      return along(rows, cell, values, wide);
    }
    const order = fw.number.compare(share(cell[0], values[0]), share(cell[1], values[1]));
    const first = along(rows, cell, values, [0, 1]);
    const second = along(rows, cell, values, [1, 0]);
    return order > 0 ? first : order < 0 ? second : first || second;
  }

  function prepared(table) {
    if (!table.ready) {
      table.ready = table.rows.map((row) => ({
        builds: new Set(row.builds),
        at: row.at.map(interval),
        low: value(row.low),
        high: value(row.high),
      }));
    }
    return table.ready;
  }

  fw.limits = {
    interval,
    contains,
    /**
     * The band for a build; undefined where there is none.
     *
     * values: of the quantities that the table follows; empty where they are not all known
     */
    band(table, build, values) {
      const rows = prepared(table).filter((row) => row.builds.has(build));
      const drivers = rows.every((row) => row.at.length === 0) ? 0 : table.drivers.length;
      if (drivers === 0) {
        return agreed(rows);
      }
      if (values.length < drivers) {
        return undefined;
      }
      return table.between === "interpolate" ? straight(rows, values) : stepped(rows, values);
    },
    /** Whether a build's limits depend on what the table follows. */
    follows(table, build) {
      return prepared(table).some((row) => row.builds.has(build) && row.at.length > 0);
    },
    /** "B", "W" or "A": below, within or above. */
    side(band, number) {
      if (band.low !== null && fw.number.compare(number, band.low) < 0) {
        return "B";
      }
      return band.high !== null && fw.number.compare(number, band.high) > 0 ? "A" : "W";
    },
  };
})((window.faultwright = window.faultwright || {}));
