package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.measure.LargeHandbook;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Publishing over what was published before gives the bytes of publishing into a new folder. */
class PublishingAgainTest {
  private static final int SYMPTOMS = 2;
  private static final int MODELS = 5;

  @TempDir static Path temp;
  private static int folders;
  private static Path base;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeAll
  static void publishOnce() throws IOException {
    base = new PublishingAgainTest().published(files(), fresh());
  }

  private static SortedMap<String, String> files() {
    return LargeHandbook.files(SYMPTOMS, MODELS);
  }

  private static Path fresh() {
    return temp.resolve("folder-" + folders++);
  }

  private int run(String... arguments) {
    Console console =
        new Console(
            new ByteArrayInputStream(new byte[0]),
            new PrintWriter(out),
            new PrintWriter(err),
            new Console.Terminals(false, false),
            Map.of());
    return Faultwright.execute(console, arguments);
  }

  private Path published(SortedMap<String, String> files, Path to, String... options)
      throws IOException {
    Path kb = fresh();
    LargeHandbook.write(kb, files);
    List<String> arguments = new ArrayList<>(List.of("publish", kb.toString(), "--to"));
    arguments.add(to.toString());
    arguments.addAll(List.of(options));
    assertEquals(0, run(arguments.toArray(String[]::new)), err.toString());
    return to;
  }

  /** A folder with the same files, as it stands after another machine took it over. */
  private static Path copy(Path folder) throws IOException {
    Path copy = fresh();
    for (Map.Entry<String, byte[]> file : content(folder).entrySet()) {
      Path to = copy.resolve(file.getKey());
      Files.createDirectories(to.getParent());
      Files.write(to, file.getValue());
    }
    return copy;
  }

  private static SortedMap<String, byte[]> content(Path folder) throws IOException {
    SortedMap<String, byte[]> content = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        content.put(
            folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
      }
    }
    return content;
  }

  private static SortedMap<String, Object> keys(Path folder) throws IOException {
    SortedMap<String, Object> keys = new TreeMap<>();
    for (String path : content(folder).keySet()) {
      keys.put(path, Files.readAttributes(folder.resolve(path), "unix:ino,lastModifiedTime"));
    }
    return keys;
  }

  private static void assertSame(Path one, Path other) throws IOException {
    SortedMap<String, byte[]> expected = content(one);
    SortedMap<String, byte[]> found = content(other);
    assertEquals(expected.keySet(), found.keySet());
    expected.forEach((path, bytes) -> assertArrayEquals(bytes, found.get(path), path));
  }

  /** Paths whose files are other files now. */
  private static SortedSet<String> rewritten(
      SortedMap<String, Object> before, SortedMap<String, Object> after) {
    SortedSet<String> rewritten = new TreeSet<>(after.keySet());
    rewritten.removeIf(path -> after.get(path).equals(before.get(path)));
    return rewritten;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          symptoms/complaint-001.yaml | because: Nothing else leaves | because: Only this leaves
          symptoms/complaint-001.yaml | title: The fan 1 does not | title: The fan 1 will not
          symptoms/complaint-001.yaml | about: What the customer tells | about: What somebody tells
          symptoms/complaint-000.yaml | low: 8, high: 14 | low: 9, high: 15
          symptoms/complaint-000.yaml | resolution: 0.5 | resolution: 0.25
          symptoms/complaint-000.yaml | title: Part 1 of | title: The part 1 of
          symptoms/complaint-000.yaml | Let the unit run for | Let the machine run for
          symptoms/complaint-000.yaml | complaint-000-case-1 | complaint-000-case-x
          symptoms/complaint-001.yaml | access: panel | access: outside
          symptoms/complaint-001.yaml | ask: What is the look | ask: How is the look
          handbook.yaml | revision: "1" | revision: "2"
          handbook.yaml | 2026-03-02 | 2026-04-05
          handbook.yaml | hotline: +00 000 000 | hotline: +00 111 111
          handbook.yaml | text: A fan can start | text: Any fan can start
          handbook.yaml | covers: [live-voltage] | covers: [live-voltage, panel]
          handbook.yaml | hot-gas: Hot gas | hot-gas: Warm gas
          handbook.yaml | Split unit, air-cooled. | Split unit.
          handbook.yaml | title: Machine FE-12 | title: Fell 12
          handbook.yaml | title: Panel open, minutes: 2 | title: Panel open, minutes: 9
          shared.yaml | because: What complains | because: Whatever complains
          shared.yaml | minutes: 1 | minutes: 3
          guides/guide-03.md | Isolate, lock out | Isolate it, lock out
          guides/guide-03.md | # Guide number 3 | # The third guide
          """)
  void oneChangeGivesTheBytesOfAFullPublish(String file, String text, String other)
      throws IOException {
    SortedMap<String, String> changed = files();
    assertTrue(changed.get(file).contains(text), file + " lacks " + text);
    changed.put(file, changed.get(file).replaceFirst(java.util.regex.Pattern.quote(text), other));
    Path over = published(changed, copy(base));
    assertSame(published(changed, fresh()), over);
  }

  @Test
  void tenSymptomsOfFiveModels() throws IOException {
    SortedMap<String, String> ten = LargeHandbook.files(10, MODELS);
    Path over = published(ten, fresh());
    String file = "symptoms/complaint-007.yaml";
    ten.put(file, ten.get(file).replaceFirst("conclude: [a-z0-9-]*", "escalate: hotline"));
    assertSame(published(ten, fresh()), published(ten, over));
  }

  @Test
  void whatStaysTheSameStaysInItsPlace() throws IOException {
    SortedMap<String, String> changed = files();
    String file = "symptoms/complaint-001.yaml";
    changed.put(file, changed.get(file).replaceFirst("because: Nothing", "because: Not a thing"));
    Path over = copy(base);
    SortedMap<String, Object> before = keys(over);
    published(changed, over);
    SortedSet<String> rewritten = rewritten(before, keys(over));
    assertTrue(rewritten.contains("symptom/complaint-001.html"), rewritten.toString());
    Set<String> lists = Set.of("worker.js", ".faultwright-made-from", ".faultwright-published");
    rewritten.removeIf(path -> lists.contains(path) || path.contains("complaint-001"));
    assertEquals("[]", rewritten.toString());
  }

  @Test
  void linesThatMoveChangeNothing() throws IOException {
    SortedMap<String, String> moved = files();
    moved.replaceAll((path, text) -> path.endsWith(".yaml") ? "# moved\n\n" + text : text);
    Path over = copy(base);
    SortedMap<String, Object> before = keys(over);
    published(moved, over);
    SortedSet<String> rewritten = rewritten(before, keys(over));
    rewritten.removeIf(path -> path.equals(".faultwright-published"));
    assertEquals("[]", rewritten.toString());
  }

  @Test
  void rulesInAnotherOrderGiveTheBytesOfAFullPublish() throws IOException {
    SortedMap<String, String> turned = files();
    turned.computeIfPresent("symptoms/complaint-001.yaml", (path, text) -> turned(text));
    assertSame(published(turned, fresh()), published(turned, copy(base)));
  }

  /** The first two rules change places. */
  private static String turned(String text) {
    String[] parts = text.split("(?m)^(?=      rule-\\d+:)", 4);
    return parts[0] + parts[2] + parts[1] + parts[3];
  }

  @Test
  void aSymptomOfferedOnLessGivesTheBytesOfAFullPublish() throws IOException {
    SortedMap<String, String> fewer = LargeHandbook.files(SYMPTOMS - 1, MODELS);
    assertSame(published(fewer, fresh()), published(fewer, copy(base)));
  }

  /** A chart that is damaged is not the one that the ledger speaks of. */
  @Test
  void aDamagedFileIsMadeAgain() throws IOException {
    Path over = copy(base);
    Path chart = over.resolve("charts/complaint-001-1.svg");
    Files.writeString(chart, Files.readString(chart).replace("Look", "Sook"));
    Files.delete(over.resolve("charts/complaint-000-1.svg"));
    assertSame(base, published(files(), over));
  }

  @ParameterizedTest
  @CsvSource({"charts of,charts off", "proof of,proof off", "made from,Made from"})
  void aDamagedLedgerIsNotBelieved(String text, String other) throws IOException {
    Path over = copy(base);
    Path ledger = over.resolve(".faultwright-made-from");
    String damaged = Files.readString(ledger).replaceFirst(text, other);
    assertNotEquals(Files.readString(ledger), damaged);
    Files.writeString(ledger, damaged);
    assertSame(base, published(files(), over));
  }

  /** A change that makes an error is found, and told as if nothing had been published before. */
  @Test
  void anErrorIsToldAsOnAFirstPublish() throws IOException {
    SortedMap<String, String> broken = files();
    String file = "symptoms/complaint-001.yaml";
    String text = broken.get(file);
    int rule = text.indexOf("      rule-01:");
    String gap = text.substring(0, rule) + text.substring(text.indexOf("      rule-02:"));
    broken.put(file, gap);
    Path kb = fresh();
    LargeHandbook.write(kb, broken);
    assertEquals(1, run("publish", kb.toString(), "--to", fresh().toString()));
    String first = err.toString();
    err.getBuffer().setLength(0);
    assertEquals(1, run("publish", kb.toString(), "--to", copy(base).toString()));
    assertTrue(first.contains("error["), first);
    assertEquals(first, err.toString());
  }

  @Test
  void aDraftOverAReleaseAndBackGivesTheBytesOfAFullPublish() throws IOException {
    Path draft = published(files(), fresh(), "--draft");
    assertSame(draft, published(files(), copy(base), "--draft"));
    assertSame(base, published(files(), draft));
  }

  @Test
  void theBookAndTheCardsAreKeptToo() throws IOException {
    Path full = published(files(), fresh(), "--pdf");
    String told = out.toString().replaceFirst("(?s).*: ", "");
    Path over = copy(full);
    SortedMap<String, Object> before = keys(over);
    out.getBuffer().setLength(0);
    published(files(), over, "--pdf");
    assertEquals(told, out.toString().replaceFirst("(?s).*: ", ""));
    SortedSet<String> rewritten = rewritten(before, keys(over));
    rewritten.removeIf(path -> path.startsWith(".faultwright-"));
    assertEquals("[]", rewritten.toString());
    assertSame(full, over);
  }
}
