package io.faultwright.resolve;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** Whatever is written, the answer is a knowledge base or a list of problems with their places. */
class GarbageTest {
  private static final int ROUNDS = 1000;
  private static final String[] TOKENS = {
    "[",
    "]",
    "{",
    "}",
    ": ",
    "- ",
    "? ",
    ", ",
    "\n",
    "\n  ",
    "\t",
    "'",
    "\"",
    "#",
    "&a ",
    "*a",
    "!t ",
    "|\n",
    ">\n",
    "---\n",
    "%",
    "@",
    "`",
    "not ",
    "any",
    "all",
    "not:",
    "any:",
    "yes",
    "no",
    "true",
    "~",
    "null",
    "above ",
    "below limits",
    "cannot be taken",
    " to ",
    "1e3",
    "0x10",
    "1,5",
    "-10 °C",
    "5 bar(a)",
    "2.10",
    "99999999999999999999",
    "software",
    "model",
    "family",
    "fan-running",
    "conclude",
    "instead-of",
    "\u2028",
    "\uD83D\uDD25",
    "\u0000",
    "<<: ",
    "\\",
    "…"
  };

  private final List<SourceFile> files = List.copyOf(Knowledge.sources().files());

  @Test
  void mutationsOfAGoodKnowledgeBase() {
    int broken = 0;
    for (int seed = 0; seed < ROUNDS; seed++) {
      Random random = new Random(seed);
      List<SourceFile> mutated = new ArrayList<>(files);
      int index = random.nextInt(files.size());
      SourceFile file = files.get(index);
      mutated.set(index, SourceFile.of(file.path(), mutate(file.text(), random)));
      broken += isReadable(new Sources(mutated), seed) ? 0 : 1;
    }
    Assertions.assertTrue(broken > ROUNDS / 4, "too few mutations matter: " + broken);
  }

  @Test
  void tokensInAnyOrder() {
    for (int seed = 0; seed < ROUNDS; seed++) {
      Random random = new Random(seed);
      StringBuilder text = new StringBuilder(random.nextBoolean() ? "symptoms:\n  a:\n    " : "");
      for (int i = random.nextInt(40); i >= 0; i--) {
        text.append(TOKENS[random.nextInt(TOKENS.length)]);
      }
      isReadable(new Sources(List.of(SourceFile.of("handbook.yaml", text.toString()))), seed);
    }
  }

  private static boolean isReadable(Sources sources, int seed) {
    try {
      Resolver.resolve(sources);
      return true;
    } catch (Unreadable unreadable) {
      Places.assertExist(sources, unreadable.problems());
      return false;
    } catch (RuntimeException | StackOverflowError crash) {
      throw new AssertionError("seed " + seed, crash);
    }
  }

  private static String mutate(String text, Random random) {
    StringBuilder mutated = new StringBuilder(text);
    for (int i = random.nextInt(3); i >= 0; i--) {
      change(mutated, random);
    }
    return mutated.toString();
  }

  private static void change(StringBuilder text, Random random) {
    int at = random.nextInt(text.length() + 1);
    int end = Math.min(text.length(), at + 1 + random.nextInt(12));
    switch (random.nextInt(6)) {
      case 0 -> text.insert(at, TOKENS[random.nextInt(TOKENS.length)]);
      case 1 -> text.delete(at, end);
      case 2 -> text.replace(at, end, TOKENS[random.nextInt(TOKENS.length)]);
      case 3 -> text.insert(at, text.substring(Math.min(at, end), end));
      case 4 -> moveLine(text, random);
      default -> replaceWord(text, at, random);
    }
  }

  private static void moveLine(StringBuilder text, Random random) {
    List<String> lines = new ArrayList<>(text.toString().lines().toList());
    if (!lines.isEmpty()) {
      String line = lines.remove(random.nextInt(lines.size()));
      lines.add(random.nextInt(lines.size() + 1), line);
      text.replace(0, text.length(), String.join("\n", lines));
    }
  }

  /** Puts another word of the file in place of one. */
  private static void replaceWord(StringBuilder text, int at, Random random) {
    String[] words = text.toString().split("[\\s:,{}\\[\\]]+");
    int start = text.indexOf(" ", at) + 1;
    int end = text.indexOf(" ", start + 1);
    if (start > 0 && end > start) {
      text.replace(start, end, words[random.nextInt(words.length)]);
    }
  }
}
