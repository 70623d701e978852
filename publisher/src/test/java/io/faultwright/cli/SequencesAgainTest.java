package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A change of a sequence of operation remakes its page and those that show it, and no others. */
class SequencesAgainTest {
  private static final Path CYCLE =
      Path.of("../engine/src/test/resources/sequences/heating-cycle/sequence.yaml");

  private static final String EQUIPMENT =
      """
      equipment:
        families: { moss: { title: Moss } }
        options:
          controller:
            values: { k1: { title: K1, software: [2.9, 2.10] }, k2: { title: K2, software: [3.0] } }
        models:
          MO-1: { family: moss, options: { controller: k1 } }
          MO-2: { family: moss, options: { controller: k2 } }
      readings:
        delay: { ask: "How is the delay set?", unit: min, range: 0 to 10, resolution: 1 }
      faults:
        switch-stuck-closed: { title: Stuck closed, remedy: [Replace it.], verify: [Look.] }
        nothing-releases: { title: Nothing is released, remedy: [Free it.], verify: [Look.] }
      symptoms:
        no-release:
          title: Nothing comes
          rules:
            short: { when: { delay: below 5 min }, conclude: switch-stuck-closed, because: So. }
            long: { when: { delay: at least 5 min }, conclude: nothing-releases, because: So. }
      cases:
        short: { symptom: no-release, given: { delay: 1 min }, expect: switch-stuck-closed }
        long: { symptom: no-release, given: { delay: 9 min }, expect: nothing-releases }
      """;

  @TempDir Path temp;

  private SmallBase base() throws IOException {
    SmallBase base = new SmallBase(temp.resolve("rules"));
    base.write("equipment.yaml", EQUIPMENT);
    String cycle =
        Files.readString(CYCLE)
            .replace(
                "title: Restart delay\n        lasts:",
                "title: Restart delay\n        reading: delay\n        lasts:");
    base.write("sequence.yaml", cycle.replaceAll("    outcomes:\n(?:      .*\n)+", ""));
    return base;
  }

  private static void publish(SmallBase base, Path to) {
    assertEquals(0, base.run("publish", "--to", to.toString()), base::err);
  }

  private static SortedMap<String, byte[]> content(Path folder) throws IOException {
    SortedMap<String, byte[]> content = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        content.put(folder.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    content.keySet().removeIf(path -> path.startsWith(".faultwright-"));
    return content;
  }

  /** Paths of pages that are other files now. */
  private static SortedSet<String> rewritten(
      SortedMap<String, Object> before, SortedMap<String, Object> after) {
    SortedSet<String> pages = new TreeSet<>(after.keySet());
    pages.removeIf(path -> after.get(path).equals(before.get(path)) || !path.endsWith(".html"));
    return pages;
  }

  private static SortedMap<String, Object> keys(Path folder) throws IOException {
    SortedMap<String, Object> keys = new TreeMap<>();
    for (String path : content(folder).keySet()) {
      keys.put(path, Files.readAttributes(folder.resolve(path), "unix:ino,lastModifiedTime"));
    }
    return keys;
  }

  private void assertRemakes(String text, String other, String pages) throws IOException {
    SmallBase base = base();
    Path over = temp.resolve("over");
    publish(base, over);
    SortedMap<String, Object> before = keys(over);
    base.edit("sequence.yaml", text, other);
    publish(base, over);
    assertEquals(pages, rewritten(before, keys(over)).toString());
    Path fresh = temp.resolve("fresh");
    publish(base, fresh);
    SortedMap<String, byte[]> expected = content(fresh);
    SortedMap<String, byte[]> found = content(over);
    assertEquals(expected.keySet(), found.keySet());
    expected.forEach((path, bytes) -> assertArrayEquals(bytes, found.get(path), path));
  }

  @Test
  void anotherTimeRemakesItsOwnPage() throws IOException {
    assertRemakes("lasts: 25 s", "lasts: 30 s", "[sequence/heating-cycle.html]");
  }

  @Test
  void anotherFaultOfACourseRemakesThePagesOfBoth() throws IOException {
    assertRemakes(
        "fault: nothing-releases",
        "fault: switch-stuck-closed",
        "[fault/nothing-releases.html, fault/switch-stuck-closed.html, sequence/heating-cycle.html]");
  }

  @Test
  void anotherTitleRemakesWhatListsIt() throws IOException {
    assertRemakes(
        "title: Heating cycle",
        "title: Cycle of heating",
        "[a-z.html, fault/nothing-releases.html, fault/switch-stuck-closed.html, index.html,"
            + " reading/delay.html, sequence/heating-cycle.html]");
  }
}
