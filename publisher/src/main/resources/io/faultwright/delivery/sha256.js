// SHA-256 (FIPS 180-4) and HMAC (RFC 2104) over UTF-8: a page opened from a file may have none of the browser's.
(function (fw) {
  "use strict";

  const BLOCK = 64;
  const WORD = 4294967296;
  const [START, ROUND] = constants();

  /** The first 32 bits of the fractions of roots of the first 64 primes. */
  function constants() {
    const primes = [];
    for (let n = 2; primes.length < 64; n++) {
      if (primes.every((prime) => n % prime)) primes.push(n);
    }
    const fraction = (root) => Math.floor((root - Math.floor(root)) * WORD) | 0;
    return [primes.slice(0, 8).map((p) => fraction(Math.sqrt(p))), primes.map((p) => fraction(Math.cbrt(p)))];
  }

  const turn = (word, by) => (word >>> by) | (word << (32 - by));

  /** The message with a one bit, zeros, and its length in bits. */
  function padded(bytes) {
    const length = (Math.floor((bytes.length + 8) / BLOCK) + 1) * BLOCK;
    const whole = new Uint8Array(length);
    whole.set(bytes);
    whole[bytes.length] = 0x80;
    const view = new DataView(whole.buffer);
    view.setUint32(length - 8, Math.floor(bytes.length / (WORD / 8)));
    view.setUint32(length - 4, (bytes.length * 8) >>> 0);
    return view;
  }

  function schedule(view, from) {
    const w = new Int32Array(64);
    for (let i = 0; i < 16; i++) w[i] = view.getInt32(from + 4 * i);
    for (let i = 16; i < 64; i++) {
      const small = turn(w[i - 15], 7) ^ turn(w[i - 15], 18) ^ (w[i - 15] >>> 3);
      const large = turn(w[i - 2], 17) ^ turn(w[i - 2], 19) ^ (w[i - 2] >>> 10);
      w[i] = w[i - 16] + small + w[i - 7] + large;
    }
    return w;
  }

  function mixed(state, w) {
    let [a, b, c, d, e, f, g, h] = state;
    for (let i = 0; i < 64; i++) {
      const choice = (e & f) ^ (~e & g);
      const one = (h + (turn(e, 6) ^ turn(e, 11) ^ turn(e, 25)) + choice + ROUND[i] + w[i]) | 0;
      const majority = (a & b) ^ (a & c) ^ (b & c);
      const two = ((turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + majority) | 0;
      [a, b, c, d, e, f, g, h] = [(one + two) | 0, a, b, c, (d + one) | 0, e, f, g];
    }
    return [a, b, c, d, e, f, g, h].map((word, i) => (word + state[i]) | 0);
  }

  function sha256(bytes) {
    const view = padded(bytes);
    let state = START;
    for (let from = 0; from < view.byteLength; from += BLOCK) state = mixed(state, schedule(view, from));
    const digest = new DataView(new ArrayBuffer(32));
    state.forEach((word, i) => digest.setInt32(4 * i, word));
    return new Uint8Array(digest.buffer);
  }

  function joined(one, other) {
    const both = new Uint8Array(one.length + other.length);
    both.set(one);
    both.set(other, one.length);
    return both;
  }

  const utf8 = (text) => new TextEncoder().encode(text);

  /** HMAC-SHA256 of a text: 64 hexadecimal digits. */
  fw.hmac = function (key, text) {
    const bytes = utf8(key);
    const block = joined(bytes.length > BLOCK ? sha256(bytes) : bytes, new Uint8Array(BLOCK)).slice(0, BLOCK);
    const inner = sha256(joined(block.map((byte) => byte ^ 0x36), utf8(text)));
    const outer = sha256(joined(block.map((byte) => byte ^ 0x5c), inner));
    return Array.from(outer, (byte) => byte.toString(16).padStart(2, "0")).join("");
  };
})((window.faultwright = window.faultwright || {}));
