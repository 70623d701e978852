package io.faultwright.syntax;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import java.util.Locale;
import java.util.Optional;
import org.yaml.snakeyaml.reader.StreamReader;

/** Finds characters that no editor shows and no file of a knowledge base needs. */
public final class Characters {
  private static final String INVISIBLE = "\u0085\u2028\u2029\uFEFF";

  private Characters() {}

  /** Reports the first character of the file that is refused. */
  public static void check(SourceFile file, Problems problems) {
    firstRefused(file).ifPresent(problems::add);
  }

  /** Whether a text that was written with escapes has a character that is refused. */
  static boolean anyRefused(String text) {
    return !isPlain(text) && text.codePoints().anyMatch(Characters::refused);
  }

  /** Whether it is made of the characters that most texts are made of; quicker to tell. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char one = text.charAt(i);
      if ((one < ' ' || one > '~') && one != '\n') {
        return false;
      }
    }
    return true;
  }

  /** The first character of the file that is refused, if there is one. */
  static Optional<Problem> firstRefused(SourceFile file) {
    return anyRefused(file.text()) ? Optional.of(located(file)) : Optional.empty();
  }

  private static Problem located(SourceFile file) {
    int[] characters = file.text().codePoints().toArray();
    int line = 1;
    int lineStart = 0;
    int at = 0;
    while (!refused(characters[at])) {
      if (characters[at++] == '\n') {
        line++;
        lineStart = at;
      }
    }
    return problem(characters[at], new Place(file.path(), line, at - lineStart + 1, 1));
  }

  private static boolean refused(int character) {
    return INVISIBLE.indexOf(character) >= 0 || !StreamReader.isPrintable(character);
  }

  private static Problem problem(int character, Place place) {
    String code = String.format(Locale.ROOT, "U+%04X", character);
    return Problem.at(
        place,
        "an invisible control character (" + code + ") stands here",
        "delete the character; it often comes along when text is pasted from another program");
  }
}
