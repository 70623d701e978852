package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Expectations stored in files. {@code -Dbless=true} writes them anew, but never where {@code
 * CI=true}.
 */
final class Stored {
  static final boolean BLESS = Boolean.getBoolean("bless") && !"true".equals(System.getenv("CI"));

  static final Path DOCS = Path.of("..", "docs");
  static final Path RESOURCES = Path.of("src", "test", "resources");

  private Stored() {}

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  /** Names of what lies in a folder, sorted. */
  static List<String> names(Path folder) {
    try (Stream<Path> children = Files.list(folder)) {
      return children.map(child -> child.getFileName().toString()).sorted().toList();
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  /** Compares a text with the stored one. */
  static void check(Path file, String actual) {
    try {
      if (BLESS) {
        Files.writeString(file, actual);
      }
      assertEquals(Files.readString(file), actual, () -> file + " differs");
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }
}
