package io.faultwright.dmn;

import java.util.Set;

/**
 * Ids as names of FEEL, the expression language of DMN. Ids have single hyphens between letters and
 * digits, so that neither a hyphen that became an underscore nor a double underscore meets another
 * id.
 */
final class Names {
  static final String MODEL = "model";
  static final String SOFTWARE = "software";

  /** The group of machines that the rules of a symptom do not tell apart. */
  static final String GROUP = "equipment__group";

  /**
   * Words of the language, and names of its functions and types that an id can be (DMN 1.3, 10).
   */
  private static final Set<String> TAKEN =
      Set.of(
          "and",
          "or",
          "not",
          "null",
          "true",
          "false",
          "if",
          "then",
          "else",
          "for",
          "in",
          "return",
          "some",
          "every",
          "satisfies",
          "between",
          "instance",
          "of",
          "function",
          "external",
          "number",
          "string",
          "boolean",
          "date",
          "time",
          "duration",
          "days",
          "years",
          "list",
          "context",
          "min",
          "max",
          "sum",
          "mean",
          "median",
          "mode",
          "count",
          "all",
          "any",
          "append",
          "concatenate",
          "contains",
          "floor",
          "ceiling",
          "abs",
          "modulo",
          "sqrt",
          "log",
          "exp",
          "odd",
          "even",
          "now",
          "today",
          "before",
          "after",
          "meets",
          "overlaps",
          "during",
          "starts",
          "finishes",
          "coincides",
          "includes",
          "sublist",
          "remove",
          "reverse",
          "union",
          "flatten",
          "product",
          "stddev",
          "sort",
          "substring",
          "replace",
          "split",
          "decimal",
          "item",
          "range");

  private Names() {}

  static String of(String id) {
    String name = id.replace('-', '_');
    boolean plain = Character.isLetter(name.charAt(0)) && !TAKEN.contains(name);
    return plain ? name : "_" + name;
  }

  /** Whether a reading cannot be taken. */
  static String untaken(String reading) {
    return of(reading) + "__cannot_be_taken";
  }

  /** Where a reading lies against its limits. */
  static String side(String reading) {
    return of(reading) + "__limits";
  }

  /** What comes before the rules of a symptom. */
  static String before(String symptom) {
    return of(symptom) + "__before";
  }

  /** The answer of a symptom. */
  static String answer(String symptom) {
    return of(symptom) + "__answer";
  }
}
