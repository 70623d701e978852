package io.faultwright.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {
  @TempDir Path temp;

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void writesAndReplacesAndLeavesNothingElse() throws IOException {
    Path file = temp.resolve("deep/chart.svg");
    AtomicFile.write(file, utf8("one"));
    AtomicFile.write(file, utf8("two"));
    assertEquals("two", Files.readString(file));
    try (Stream<Path> beside = Files.list(file.getParent())) {
      assertEquals(1, beside.count());
    }
  }

  @Test
  void refusesAFolder() {
    assertThrows(Refused.class, () -> AtomicFile.write(temp, utf8("one")));
  }
}
