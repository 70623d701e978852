package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The page on the architecture says what the code is like. */
class ArchitectureTest {
  private static final Path FILE = Stored.DOCS.resolve("architecture.md");
  private static final Pattern ROW = Pattern.compile("^\\| (?:[a-z]+ )?\\| `([a-z.]+)` \\|.*");
  private static final Pattern TYPE = Pattern.compile("`([a-z]+(?:\\.[a-z]+)*\\.[A-Z][A-Za-z]+)`");

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

  @Test
  void everyArrowIsShown() {
    String listing =
        arrows().entrySet().stream().map(ArchitectureTest::line).collect(Collectors.joining("\n"))
            + "\n";
    MarkdownPage page = MarkdownPage.read(FILE);
    if (Stored.BLESS) {
      page.rewrite(Map.of(listed(page), listing));
    }
    assertEquals(listing, listed(MarkdownPage.read(FILE)).body());
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

  private static String line(Map.Entry<String, SortedSet<String>> arrow) {
    String line = arrow.getKey() + " → " + String.join(", ", arrow.getValue());
    return line.strip();
  }

  private static Fence listed(MarkdownPage page) {
    return page.fences().stream().filter(fence -> fence.says("arrows")).findFirst().orElseThrow();
  }
}
