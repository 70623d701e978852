package io.faultwright.resolve;

/** Advice on numbers that are written in a way nobody should have to guess. */
final class NumberAdvice {
  private NumberAdvice() {}

  static String help(String text) {
    if (text.matches("[+-]?\\d+,\\d+.*")) {
      return "write decimals with a full stop: `" + text.replaceFirst(",", ".") + "`";
    }
    if (text.matches("[+-]?\\d+(\\.\\d+)?[eE][+-]?\\d+.*")) {
      return "write the number out in plain digits";
    }
    if (text.matches("[+-]?0[xX].*")) {
      return "write the number in plain decimal digits";
    }
    if (text.matches("[−–—].*")) {
      return "write the minus sign as a plain hyphen: `-" + text.substring(1).strip() + "`";
    }
    if (text.matches("[+-]?\\d+([ _'’]\\d+)+.*")) {
      return "write the digits without gaps";
    }
    return shapeHelp(text);
  }

  private static String shapeHelp(String text) {
    if (text.matches("\\d+\\s*(\\.\\.|-|–|—|\\.\\.\\.|…)\\s*\\d.*")) {
      return "write a stretch with `to`, as in `4 to 8`";
    }
    if (text.matches("[+-]?\\.\\d+.*")) {
      return "write the zero before the full stop: `" + text.replaceFirst("\\.", "0.") + "`";
    }
    if (text.matches("[+-]?\\d+\\.(\\D.*)?")) {
      return "write a digit behind the full stop";
    }
    if (text.matches("[+-]\\s+\\d.*")) {
      return "write the sign directly before the number";
    }
    if (text.matches("[+-]?\\d{19,}.*|[+-]?\\d+\\.\\d{19,}.*")) {
      return "a number has at most 18 digits before and behind the full stop";
    }
    return "write a number such as `12.5`, with its unit behind it if you like";
  }
}
