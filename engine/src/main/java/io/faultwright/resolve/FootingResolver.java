package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.model.QuizPlan.Footing;
import io.faultwright.model.Signed;
import io.faultwright.model.SignedKind;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads what an item of a quiz stands on. */
final class FootingResolver {
  static final List<String> KEYS = List.of("from", "meaning");
  private static final Pattern HASH = Pattern.compile("[0-9a-f]{" + Footing.DIGITS + ",64}");

  private final Context context;

  FootingResolver(Context context) {
    this.context = context;
  }

  /**
   * What the two keys say; empty where they are missing.
   *
   * @param required whether they have to be there
   */
  Optional<Footing> resolve(Fields fields, boolean required) {
    if (!required && KEYS.stream().noneMatch(fields::mentions)) {
      return Optional.empty();
    }
    Optional<Signed> from = fields.requireScalar("from").flatMap(this::from);
    Optional<String> meaning = fields.requireScalar("meaning").flatMap(this::meaning);
    return from.flatMap(on -> meaning.map(digits -> new Footing(fields.place("from"), on, digits)));
  }

  /** Need not be there any more: then the item is withdrawn. */
  private Optional<Signed> from(Scalar written) {
    String[] words = written.text().strip().split("\\s+", 2);
    Optional<SignedKind> kind = SignedKind.of(words[0]);
    if (kind.isEmpty() || words.length < 2) {
      problem(
          written,
          "does not say what the item is made from",
          kind.isEmpty() && words.length == 2
              ? NearMatch.help(words[0], SignedKind.words())
              : "write kind and id, as in `rule room-too-warm/fan-stands`");
      return Optional.empty();
    }
    return Optional.of(new Signed(kind.get(), words[1].strip()));
  }

  private Optional<String> meaning(Scalar written) {
    String digits = written.text().strip();
    if (!HASH.matcher(digits).matches()) {
      problem(
          written,
          "is not a meaning in " + Footing.DIGITS + " hexadecimal digits",
          "copy it from the file that `faultwright quiz` writes");
      return Optional.empty();
    }
    return Optional.of(digits);
  }

  private void problem(Scalar written, String message, String help) {
    context.problems().add(written.place(), Words.quoted(written.text()) + " " + message, help);
  }
}
