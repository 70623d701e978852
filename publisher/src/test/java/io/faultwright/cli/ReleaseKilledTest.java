package io.faultwright.cli;

import static io.faultwright.cli.SmallBase.ADA;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.Child;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A release in a process of its own, killed while it writes. */
class ReleaseKilledTest {
  private static final List<Integer> AFTER_FILES = List.of(8, 40);

  @TempDir Path temporary;

  @Test
  void theReleaseBeforeStaysAndTheNextRunPutsItRight() throws IOException, InterruptedException {
    SmallBase base = new SmallBase(temporary.resolve("kb"));
    Path archive = temporary.resolve("archive");
    base.signAll("engineering", ADA);
    base.signAll("field-service", "Ben Example");
    assertEquals(0, base.run("release", arguments(archive, 1)), base::err);
    SortedMap<String, byte[]> first = ReleaseCommandTest.files(archive);
    for (int files : AFTER_FILES) {
      boolean whole = killed(base, archive, files);
      SortedMap<String, byte[]> now = ReleaseCommandTest.files(archive);
      first.forEach((path, content) -> assertTrue(Arrays.equals(content, now.get(path)), path));
      assertFalse(whole, "the process was done after " + files + " files");
    }
    assertEquals(0, base.run("release", arguments(archive, 2)), base::err);
    ReleaseCommandTest.assertWhole(archive.resolve("1"));
    ReleaseCommandTest.assertWhole(archive.resolve("2"));
    try (Stream<Path> all = Files.list(archive)) {
      assertEquals(
          List.of("1", "2", "index.html"),
          all.map(path -> path.getFileName().toString()).sorted().toList());
    }
  }

  private static String[] arguments(Path archive, int number) {
    return new String[] {
      "--number", "" + number, "--date", "2026-03-02", "--to", archive.toString(), "--no-pdf"
    };
  }

  /** Whether the second release was there when the process was killed. */
  private static boolean killed(SmallBase base, Path archive, int files)
      throws IOException, InterruptedException {
    String[] arguments =
        Stream.concat(
                Stream.of("release", base.folder().toString()), Stream.of(arguments(archive, 2)))
            .toArray(String[]::new);
    Process child = Child.start(Main.class, arguments);
    Path list = archive.resolve(".2.faultwright-new/.faultwright-published");
    while (child.isAlive() && lines(list) < files) {
      TimeUnit.MILLISECONDS.sleep(1);
    }
    child.destroyForcibly().waitFor();
    return Files.exists(archive.resolve("2"));
  }

  private static long lines(Path list) {
    try (Stream<String> lines = Files.lines(list)) {
      return lines.count();
    } catch (IOException notYet) {
      return 0;
    }
  }
}
