package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;
import io.faultwright.syntax.Node.Scalar;
import java.util.IllformedLocaleException;
import java.util.Locale;
import java.util.Optional;

/** Reads language tags (BCP 47). */
final class LanguageTags {
  private LanguageTags() {}

  /** A tag in its usual spelling; reports one that is none. */
  static Optional<String> read(Scalar written, Problems problems) {
    Optional<String> tag = usual(written.text().strip());
    if (tag.isEmpty()) {
      problems.add(
          written.place(),
          Words.quoted(written.text()) + " is not a language tag",
          "write a tag such as `en` or `pt-BR`");
    }
    return tag;
  }

  /** The tag in its usual spelling; languages have two or three letters. */
  private static Optional<String> usual(String text) {
    try {
      Locale locale = new Locale.Builder().setLanguageTag(text).build();
      return Optional.of(locale.toLanguageTag())
          .filter(tag -> locale.getLanguage().matches("[a-z]{2,3}"));
    } catch (IllformedLocaleException wrong) {
      return Optional.empty();
    }
  }
}
