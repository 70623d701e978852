package io.faultwright.cli;

import static io.faultwright.cli.SmallBase.ADA;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.Child;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/** Releases in processes of their own, killed at random moments. */
class ReleaseKilledTest {
  /** Each takes a Java machine of its own; {@code -Drelease.kills=50} tries as many. */
  private static final int KILLS = Integer.getInteger("release.kills", 3);

  private static final int LONGEST = 30;

  @TempDir Path temporary;
  private SmallBase base;
  private Path archive;

  @Test
  void aKillAtAnyMomentLeavesTheOldOrTheNewWhole(TestReporter reporter)
      throws IOException, InterruptedException {
    base = new SmallBase(temporary.resolve("kb"));
    archive = temporary.resolve("archive");
    base.signAll("engineering", ADA);
    base.signAll("field-service", "Ben Example");
    assertEquals(0, base.run("release", arguments(1)), base::err);
    int files = ReleaseCommandTest.files(archive.resolve("1")).size();
    Random random = new Random(8);
    int torn = 0;
    int whole = 0;
    for (int round = 0; round < KILLS; round++) {
      SortedMap<String, byte[]> before = releases();
      int next = whole + 2;
      kill(next, random.nextInt(files + 10), random.nextInt(LONGEST));
      torn += Files.exists(building(next)) ? 1 : 0;
      whole += Files.exists(archive.resolve(Integer.toString(next))) ? 1 : 0;
      SortedMap<String, byte[]> now = releases();
      before.forEach((path, content) -> assertArrayEquals(content, now.get(path), path));
      assertAllWhole(whole + 1);
    }
    reporter.publishEntry("kills " + KILLS, torn + " half written, " + whole + " whole");
    assertTrue(torn > 0, "no kill hit a release half written");
    assertEquals(0, base.run("release", arguments(whole + 2)), base::err);
    assertAllWhole(whole + 2);
    assertFalse(Files.exists(building(whole + 2)));
  }

  /** The folder that becomes a release. */
  private Path building(int number) {
    return archive.resolve("." + number + ".faultwright-new");
  }

  /** Every file of every release. */
  private SortedMap<String, byte[]> releases() throws IOException {
    SortedMap<String, byte[]> files = ReleaseCommandTest.files(archive);
    files.keySet().removeIf(path -> !path.matches("\\d+/.*"));
    return files;
  }

  /**
   * That there are so many releases, each as its list of checksums says, and no other is listed.
   */
  private void assertAllWhole(int count) throws IOException {
    List<String> numbers = IntStream.rangeClosed(1, count).mapToObj(Integer::toString).toList();
    try (Stream<Path> all = Files.list(archive)) {
      assertEquals(
          numbers,
          all.map(path -> path.getFileName().toString())
              .filter(name -> name.matches("\\d+"))
              .sorted(Comparator.comparing(Integer::valueOf))
              .toList());
    }
    for (String number : numbers) {
      ReleaseCommandTest.assertWhole(archive.resolve(number));
    }
    String index = Files.readString(archive.resolve("index.html"));
    assertFalse(index.contains("\"" + (count + 1) + "/"), index);
  }

  private String[] arguments(int number) {
    return new String[] {
      "--number", "" + number, "--date", "2026-03-02", "--to", archive.toString(), "--no-pdf"
    };
  }

  /** Ends the process some time after it has written so many files, if it has not ended itself. */
  private void kill(int number, int files, int milliseconds)
      throws IOException, InterruptedException {
    String[] arguments =
        Stream.concat(Stream.of("release", base.folder().toString()), Stream.of(arguments(number)))
            .toArray(String[]::new);
    Process child = Child.start(Main.class, arguments);
    Path list = building(number).resolve(".faultwright-published");
    while (child.isAlive() && lines(list) < files) {
      TimeUnit.MILLISECONDS.sleep(1);
    }
    TimeUnit.MILLISECONDS.sleep(milliseconds);
    child.destroyForcibly().waitFor();
  }

  private static long lines(Path list) {
    try (Stream<String> lines = Files.lines(list)) {
      return lines.count();
    } catch (IOException notYet) {
      return 0;
    }
  }
}
