package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whole outputs stored beside the tests; {@code -Dbless=true} writes them anew, never in CI. */
final class Golden {
  private static final Path FOLDER = Path.of("src/test/resources/io/faultwright/report");

  private Golden() {}

  static void check(String name, String actual) {
    Path file = FOLDER.resolve(name);
    try {
      if (Boolean.getBoolean("bless") && !"true".equals(System.getenv("CI"))) {
        Files.createDirectories(FOLDER);
        Files.writeString(file, actual);
      }
      assertEquals(Files.readString(file), actual, () -> file + " differs");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
