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

  /** The list says what may be used; that something is no longer used breaks nothing. */
  @Test
  void everyArrowIsShown() {
    MarkdownPage page = MarkdownPage.read(FILE);
    if (Stored.BLESS) {
      page.rewrite(Map.of(listed(page), listing()));
    }
    Map<String, SortedSet<String>> shown = shown(listed(MarkdownPage.read(FILE)));
    List<String> missing = new ArrayList<>();
    arrows()
        .forEach(
            (from, to) ->
                to.stream()
                    .filter(used -> !shown.getOrDefault(from, new TreeSet<>()).contains(used))
                    .forEach(used -> missing.add(from + ARROW + used)));
    assertEquals(List.of(), missing, "new arrows; are they meant?");
  }

  private String listing() {
    return arrows().entrySet().stream()
        .map(arrow -> (arrow.getKey() + ARROW + String.join(", ", arrow.getValue())).strip() + "\n")
        .collect(Collectors.joining());
  }

  private static Map<String, SortedSet<String>> shown(Fence listing) {
    Map<String, SortedSet<String>> shown = new TreeMap<>();
    for (String line : listing.body().lines().toList()) {
      String[] parts = line.split(ARROW.strip(), 2);
      shown.put(parts[0].strip(), new TreeSet<>(List.of(parts[1].strip().split(", "))));
    }
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

  private static Fence listed(MarkdownPage page) {
    return page.fences().stream().filter(fence -> fence.says("arrows")).findFirst().orElseThrow();
  }
}
