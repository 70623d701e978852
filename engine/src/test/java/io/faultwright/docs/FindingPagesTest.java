package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.finding.FindingKind;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every kind of finding has a page and a specimen, a knowledge base with exactly that mistake. The
 * page quotes the specimen and what the tool says about it, and its advice mends the specimen.
 */
class FindingPagesTest {
  private static final Path PAGES = Stored.DOCS.resolve("findings");
  private static final String INDEX = "README.md";
  private static final Pattern LINK = Pattern.compile("]\\(([a-z-]+)\\.md\\)");

  @TestFactory
  Stream<DynamicContainer> everyKind() {
    return Arrays.stream(FindingKind.values())
        .map(
            kind ->
                DynamicContainer.dynamicContainer(
                    kind.slug(),
                    List.of(
                        DynamicTest.dynamicTest("output", () -> checkOutput(kind)),
                        DynamicTest.dynamicTest("kinds", () -> checkKinds(kind)),
                        DynamicTest.dynamicTest("page", () -> checkPage(kind)),
                        DynamicTest.dynamicTest("quotations", () -> checkQuotations(kind)),
                        DynamicTest.dynamicTest("mending", () -> checkMending(kind)))));
  }

  private static void checkOutput(FindingKind kind) {
    Specimen specimen = new Specimen(kind);
    String output = specimen.output();
    Stored.check(specimen.expected(), output);
    assertTrue(output.contains("[" + kind.slug() + "]: "), output);
  }

  /** Nothing but this kind, apart from what the page names as unavoidable. */
  private static void checkKinds(FindingKind kind) {
    Set<FindingKind> named = beside(page(kind));
    named.add(kind);
    assertEquals(named, new Specimen(kind).kinds());
  }

  private static Set<FindingKind> beside(MarkdownPage page) {
    String prose = String.join("\n", page.prose());
    int from = prose.indexOf("\nBeside it: ");
    String sentence = from < 0 ? "" : prose.substring(from, prose.indexOf("\n\n", from));
    return LINK.matcher(sentence)
        .results()
        .map(link -> kind(link.group(1)))
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(FindingKind.class)));
  }

  private static FindingKind kind(String slug) {
    return FindingKind.valueOf(slug.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  private static void checkPage(FindingKind kind) {
    MarkdownPage page = page(kind);
    assertEquals(List.of(kind.slug()), page.headings(1));
    assertEquals(
        List.of(
            "What it means",
            "Why it matters at the machine",
            "A bad example",
            "What the tool says",
            "How to mend it"),
        page.headings(2));
    assertTrue(page.lines().get(2).startsWith("**" + severity(kind) + "**: "));
    assertEquals(
        List.of("yaml", "text", "diff"), page.fences().stream().map(Fence::language).toList());
  }

  private static void checkQuotations(FindingKind kind) {
    MarkdownPage page = page(kind);
    Specimen specimen = new Specimen(kind);
    Map<String, String> quoted =
        Map.of("yaml", specimen.rules(), "text", Stored.read(specimen.expected()));
    if (Stored.BLESS) {
      page.rewrite(
          page.fences().stream()
              .filter(fence -> quoted.containsKey(fence.language()))
              .collect(Collectors.toMap(fence -> fence, fence -> quoted.get(fence.language()))));
    }
    quoted.forEach((language, text) -> assertEquals(text, body(page(kind), language)));
  }

  private static void checkMending(FindingKind kind) {
    Fence diff =
        page(kind).fences().stream()
            .filter(fence -> fence.language().equals("diff"))
            .findFirst()
            .orElseThrow();
    assertEquals(Set.of(), new Specimen(kind).kindsAfter(diff));
  }

  private static String body(MarkdownPage page, String language) {
    return page.fences().stream()
        .filter(fence -> fence.language().equals(language))
        .map(Fence::body)
        .collect(Collectors.joining());
  }

  @Test
  void nothingIsLeftOver() {
    Set<String> slugs =
        Arrays.stream(FindingKind.values()).map(FindingKind::slug).collect(Collectors.toSet());
    assertEquals(slugs, Set.copyOf(Stored.names(Specimen.FOLDER)));
    Set<String> pages = slugs.stream().map(slug -> slug + ".md").collect(Collectors.toSet());
    pages.add(INDEX);
    assertEquals(pages, Set.copyOf(Stored.names(PAGES)));
  }

  /** The index has a line for each kind, in the order of the reports, with what its page says. */
  @Test
  void theIndexListsEveryKind() {
    Map<FindingKind, String> lines = new TreeMap<>();
    for (FindingKind kind : FindingKind.values()) {
      String summary = page(kind).lines().get(2).replaceFirst("\\*\\*.*?\\*\\*: ", "");
      lines.put(
          kind,
          "| [`%s`](%s.md) | %s | %s |"
              .formatted(kind.slug(), kind.slug(), severity(kind), summary));
    }
    List<String> table =
        MarkdownPage.read(PAGES.resolve(INDEX)).lines().stream()
            .filter(line -> line.startsWith("| ["))
            .toList();
    assertEquals(List.copyOf(lines.values()), table);
  }

  private static String severity(FindingKind kind) {
    return kind.severity().name().toLowerCase(Locale.ROOT);
  }

  private static MarkdownPage page(FindingKind kind) {
    return MarkdownPage.read(PAGES.resolve(kind.slug() + ".md"));
  }
}
