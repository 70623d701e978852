/* Exact numbers: fractions of whole numbers, {n, d} with d above zero. */
(function (fw) {
  "use strict";

  const TEN = 10n;

  function divisor(a, b) {
    let x = a < 0n ? -a : a;
    let y = b;
    while (y !== 0n) {
      [x, y] = [y, x % y];
    }
    return x === 0n ? 1n : x;
  }

  function make(n, d) {
    const sign = d < 0n ? -1n : 1n;
    const shared = divisor(n, d * sign);
    return { n: (n * sign) / shared, d: (d * sign) / shared };
  }

  const ZERO = { n: 0n, d: 1n };

  const read = new Map();

  /** Plain decimal text or a fraction, as the data have them; the same text is read once. */
  function of(text) {
    if (!read.has(text)) {
      read.set(text, reading(text));
    }
    return read.get(text);
  }

  function reading(text) {
    const bar = text.indexOf("/");
    if (bar >= 0) {
      return make(BigInt(text.slice(0, bar)), BigInt(text.slice(bar + 1)));
    }
    const point = text.indexOf(".");
    if (point < 0) {
      return { n: BigInt(text), d: 1n };
    }
    const places = BigInt(text.length - point - 1);
    return make(BigInt(text.slice(0, point) + text.slice(point + 1)), TEN ** places);
  }

  const add = (a, b) => make(a.n * b.d + b.n * a.d, a.d * b.d);
  const negate = (a) => ({ n: -a.n, d: a.d });
  const subtract = (a, b) => add(a, negate(b));
  const multiply = (a, b) => make(a.n * b.n, a.d * b.d);
  const divide = (a, b) => make(a.n * b.d, a.d * b.n);
  const absolute = (a) => (a.n < 0n ? negate(a) : a);

  /** Below, equal or above zero, as a compares with b. */
  function compare(a, b) {
    const left = a.n * b.d;
    const right = b.n * a.d;
    return left < right ? -1 : left > right ? 1 : 0;
  }

  function floor(a) {
    const whole = a.n / a.d;
    return a.n < 0n && whole * a.d !== a.n ? whole - 1n : whole;
  }

  /** A number as somebody types it, with either decimal sign; null where it is none. */
  function parse(text) {
    const plain = text
      .trim()
      .replace(/[\u2212\u2013]/g, "-")
      .replace(/[\s\u00a0\u202f']/g, "")
      .replace(",", ".");
    return /^[+-]?(\d{1,15}(\.\d{0,12})?|\.\d{1,12})$/.test(plain)
      ? of(plain.replace(/^\+/, "").replace(/\.$/, "").replace(/^(-?)\./, "$10."))
      : null;
  }

  /** Decimal text without trailing zeros, of at most so many places, rounded half up. */
  function decimal(a, places) {
    const power = TEN ** BigInt(places);
    const size = absolute(a);
    const scaled = (size.n * power * 2n + size.d) / (size.d * 2n);
    const digits = scaled.toString().padStart(places + 1, "0");
    const whole = digits.slice(0, digits.length - places);
    const part = digits.slice(digits.length - places).replace(/0+$/, "");
    const sign = a.n < 0n && scaled !== 0n ? "-" : "";
    return sign + whole + (part ? "." + part : "");
  }

  /** Whether it has a finite decimal of at most twelve places. */
  function isShort(a) {
    return (a.n * TEN ** 12n) % a.d === 0n;
  }

  /** Decimal text; exact where that is short, else rounded to six places. */
  const show = (a) => decimal(a, isShort(a) ? 12 : 6);

  /** The exact text in which the data have numbers. */
  const exact = (a) => (isShort(a) ? decimal(a, 12) : a.n + "/" + a.d);

  /** The same quantity in another unit of its dimension. */
  function convert(a, from, to) {
    const base = add(multiply(a, of(from.scale)), of(from.offset));
    return divide(subtract(base, of(to.offset)), of(to.scale));
  }

  /** The largest step of 1, 2 or 5 times a power of ten that is not coarser. */
  function stepWithin(resolution) {
    let power = { n: 1n, d: 1n };
    const ten = { n: TEN, d: 1n };
    while (compare(power, resolution) > 0) {
      power = divide(power, ten);
    }
    while (compare(multiply(power, ten), resolution) <= 0) {
      power = multiply(power, ten);
    }
    const fits = [5n, 2n].find((digit) => compare(multiply(power, { n: digit, d: 1n }), resolution) <= 0);
    return fits ? multiply(power, { n: fits, d: 1n }) : power;
  }

  /** As it is printed: never rounded past a step that the instrument can show. */
  function rounded(a, resolution) {
    const step = stepWithin(resolution);
    const isOnStep = (x) => floor(divide(x, step)) * step.n * x.d === x.n * step.d;
    if (isOnStep(a)) {
      return show(a);
    }
    const stepText = show(step);
    let places = stepText.includes(".") ? stepText.length - stepText.indexOf(".") - 1 : 0;
    const same = (x) => !isOnStep(x) && floor(divide(x, step)) === floor(divide(a, step));
    while (places < 30 && !same(of(decimal(a, places)))) {
      places++;
    }
    return decimal(a, places);
  }

  fw.number = {
    ZERO, of, parse, add, subtract, multiply, divide, negate, absolute, compare, floor, show, exact,
    decimal, convert, rounded, isShort,
  };
})((window.faultwright = window.faultwright || {}));
