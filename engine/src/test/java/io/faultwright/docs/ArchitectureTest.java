package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page on the architecture says what the code is like. */
class ArchitectureTest {
  private static final Path FILE = Stored.DOCS.resolve("architecture.md");
  private static final Pattern ROW = Pattern.compile("^\\| (?:[a-z]+ )?\\| `([a-z.]+)` \\|.*");
  private static final Pattern TYPE = Pattern.compile("`([a-z]+(?:\\.[a-z]+)*\\.[A-Z][A-Za-z]+)`");

  private static final String ARROW = " → ";

  private final SourceTree engine = SourceTree.of("engine");
  private final SourceTree publisher = SourceTree.of("publisher");

  @Test
  void everyPackageHasItsRow() {
    SortedSet<String> rows = new TreeSet<>();
    for (String line : MarkdownPage.read(FILE).prose()) {
      ROW.matcher(line).results().forEach(row -> rows.add(row.group(1)));
    }
    assertEquals(new TreeSet<>(arrows().keySet()), rows);
  }

  /** The list says what may be used; that something is not used breaks nothing. */
  @Test
  void everyArrowIsShown() {
    SortedMap<String, List<String>> shown = shown();
    assertEquals(arrows().keySet(), shown.keySet());
    List<String> missing = new ArrayList<>();
    arrows()
        .forEach(
            (from, to) ->
                to.stream()
                    .filter(used -> !allows(shown.get(from), used))
                    .forEach(used -> missing.add(from + ARROW + used)));
    assertEquals(List.of(), missing, "new arrows; are they meant?");
  }

  private static boolean allows(List<String> shown, String used) {
    return shown.contains(used) || shown.equals(List.of("anything"));
  }

  private static SortedMap<String, List<String>> shown() {
    SortedMap<String, List<String>> shown = new TreeMap<>();
    MarkdownPage.read(FILE).fences().stream()
        .filter(fence -> fence.says("arrows"))
        .flatMap(fence -> fence.body().lines())
        .map(line -> line.split(ARROW))
        .forEach(parts -> shown.put(parts[0], List.of(parts[1].split(", "))));
    return shown;
  }

  @Test
  void everyClassNamedExists() {
    List<String> missing = new ArrayList<>();
    for (String line : MarkdownPage.read(FILE).prose()) {
      TYPE.matcher(line)
          .results()
          .map(found -> found.group(1))
          .filter(type -> !engine.has(type) && !publisher.has(type))
          .forEach(missing::add);
    }
    assertEquals(List.of(), missing);
  }

  private SortedMap<String, SortedSet<String>> arrows() {
    SortedMap<String, SortedSet<String>> arrows = new TreeMap<>(engine.arrows());
    arrows.putAll(publisher.arrows());
    return arrows;
  }
}
