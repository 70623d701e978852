package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.syntax.Node.Scalar;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** How an id may be written. */
final class Ids {
  private static final int LONGEST = 80;
  private static final Pattern PLAIN = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final Pattern MODEL = Pattern.compile("[A-Za-z0-9]+(-[A-Za-z0-9]+)*");
  private static final Set<String> RESERVED =
      Set.of("family", "model", "software", "any", "all", "not");
  private static final Set<String> RESERVED_VALUES = Set.of("any", "not");
  private static final Set<String> NAMEPLATE_WORDS = Set.of("text", "digits");

  private Ids() {}

  /** Reports an id that is not written as an id of its kind, or that is reserved. */
  static void check(Kind kind, Scalar key, Problems problems) {
    boolean model = kind == Kind.MODEL || kind == Kind.REFRIGERANT;
    String id = key.text();
    if (!(model ? MODEL : PLAIN).matcher(id).matches() || id.length() > LONGEST) {
      problems.add(
          key.place(), Words.quoted(id) + " is not the id of " + kind.one(), help(id, model));
    } else if (RESERVED.contains(id) || kind == Kind.OPTION && NAMEPLATE_WORDS.contains(id)) {
      problems.add(
          key.place(),
          "`" + id + "` is a word of the language and cannot be the id of " + kind.one(),
          "choose another id");
    }
  }

  /** Reports a value of a choice or an option that is not written as an id. */
  static void checkValue(Scalar key, Problems problems) {
    if (!PLAIN.matcher(key.text()).matches() || key.text().length() > LONGEST) {
      problems.add(
          key.place(),
          Words.quoted(key.text()) + " is not the id of a value",
          help(key.text(), false));
    } else if (RESERVED_VALUES.contains(key.text())) {
      problems.add(
          key.place(),
          "`" + key.text() + "` is a word of the language and cannot be a value",
          "choose another id; the title may be any text");
    }
  }

  /** Reports a name other than that of a thing that is not written as an id; whether it is. */
  static boolean checkName(String what, Scalar written, Problems problems) {
    boolean plain = PLAIN.matcher(written.text()).matches() && written.text().length() <= LONGEST;
    if (!plain) {
      problems.add(
          written.place(),
          Words.quoted(written.text()) + " is not " + what,
          help(written.text(), false));
    }
    return plain;
  }

  private static String help(String id, boolean model) {
    String rule =
        model
            ? "model numbers and refrigerants have letters, digits and single hyphens"
            : "ids have lower-case letters, digits and single hyphens";
    String mended =
        id.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    boolean tellable = !model && !mended.isEmpty() && mended.length() <= LONGEST;
    return tellable ? rule + ", as in `" + mended + "`" : rule + ", at most " + LONGEST;
  }
}
