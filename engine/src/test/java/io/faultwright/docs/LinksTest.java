package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Links between the documents lead somewhere. */
class LinksTest {
  private static final Pattern LINK = Pattern.compile("]\\(([^)\\s]+)\\)");
  private static final Path ROOT = Path.of("..");

  @TestFactory
  List<DynamicTest> everyDocument() throws IOException {
    List<Path> documents = new ArrayList<>();
    try (Stream<Path> files = Files.list(ROOT)) {
      files.filter(LinksTest::isPage).forEach(documents::add);
    }
    try (Stream<Path> files = Files.walk(Stored.DOCS)) {
      files.filter(LinksTest::isPage).forEach(documents::add);
    }
    assertFalse(documents.isEmpty());
    return documents.stream()
        .sorted()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    ROOT.relativize(file).toString(), () -> assertEquals(List.of(), broken(file))))
        .toList();
  }

  private static boolean isPage(Path file) {
    return file.toString().endsWith(".md");
  }

  private static List<String> broken(Path file) {
    return MarkdownPage.read(file).prose().stream()
        .flatMap(line -> LINK.matcher(line).results())
        .map(link -> link.group(1))
        .filter(link -> !link.matches("https?:.*") && !leads(file, link))
        .toList();
  }

  private static boolean leads(Path from, String link) {
    String[] parts = link.split("#", 2);
    Path target = parts[0].isEmpty() ? from : from.resolveSibling(parts[0]);
    return Files.exists(target) && (parts.length < 2 || hasHeading(target, parts[1]));
  }

  private static boolean hasHeading(Path file, String anchor) {
    MarkdownPage page = MarkdownPage.read(file);
    return IntStream.rangeClosed(1, 4)
        .boxed()
        .flatMap(level -> page.headings(level).stream())
        .map(LinksTest::anchor)
        .anyMatch(anchor::equals);
  }

  /** As usual for Markdown: lower case, hyphens for blanks, no punctuation. */
  private static String anchor(String heading) {
    return heading
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}\\s_-]", "")
        .replaceAll("\\s", "-");
  }
}
