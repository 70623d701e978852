package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Equipment;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Option;
import io.faultwright.model.Sorted;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Reads what a choice, a family, a model or an option must be. */
final class NamedPatterns {
  private static final List<String> YES_NO = List.of("no", "yes");
  private static final Set<String> YES = Set.of("yes", "y", "true", "on", "1");
  private static final Set<String> NO = Set.of("no", "n", "false", "off", "0");

  private final Problems problems;

  NamedPatterns(Problems problems) {
    this.problems = problems;
  }

  Optional<OneOf> read(Place place, String text, Subject.Named subject) {
    return value(place, text, subject).map(value -> new OneOf(Sorted.set(List.of(value))));
  }

  /** One value of the subject; reports a text that is none. */
  Optional<String> value(Place place, String text, Subject.Named subject) {
    if (subject.values().contains(text)) {
      return Optional.of(text);
    }
    if (subject.complete()) {
      problems.add(place, unknown(text, subject), help(text, subject));
    }
    return Optional.empty();
  }

  private static String unknown(String text, Subject.Named subject) {
    boolean defined = subject.id().equals(Equipment.FAMILY) || subject.id().equals(Equipment.MODEL);
    return defined
        ? "unknown " + subject.id() + " " + Words.quoted(text)
        : Words.quoted(subject.id()) + " has no value " + Words.quoted(text);
  }

  private static String help(String text, Subject.Named subject) {
    if (text.endsWith(" limits")) {
      return "only measured readings have limits";
    }
    if (text.startsWith("not [")) {
      return "write `not:` with `" + subject.id() + ": [...]` below it";
    }
    if (text.contains(",")) {
      return "write several values as a list: `[" + text + "]`";
    }
    return yesOrNo(text, subject).orElseGet(() -> NearMatch.help(text, subject.values()));
  }

  private static Optional<String> yesOrNo(String text, Subject.Named subject) {
    String word = text.toLowerCase(Locale.ROOT);
    if (!subject.values().stream().sorted().toList().equals(YES_NO)) {
      return Optional.empty();
    }
    return YES.contains(word)
        ? Optional.of("did you mean `yes`?")
        : NO.contains(word) ? Optional.of("did you mean `no`?") : Optional.empty();
  }

  /** The value of an option that a scalar names; absent, with a problem, where it names none. */
  Optional<String> valueOf(Option option, Scalar written) {
    List<String> ids = option.values().stream().map(NamedValue::id).toList();
    Subject.Named named = new Subject.Named(option.id(), ids, false, true);
    return value(written.place(), written.text().strip(), named);
  }
}
