package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.page.BookPages;
import io.faultwright.page.Edition;
import io.faultwright.render.html.BookHtml;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** In which files things are written, and in which order, changes no byte of what is published. */
class OrderOfFilesTest {
  @TempDir Path temp;

  @ParameterizedTest
  @CsvSource({
    "../rules/pass-through-dishwashers, true",
    "../engine/src/test/resources/knowledge/freezer, false"
  })
  void doesNotMatter(Path folder, boolean charts) throws IOException {
    Sources sources = FolderReader.read(folder);
    KnowledgeBase kb = Resolver.resolve(sources);
    KnowledgeBase rearranged = Resolver.resolve(Rearranged.of(sources, new Random(5)));
    assertNotEquals(readings(kb), readings(rearranged));
    Published site = published(kb, charts, "one");
    Published other = published(rearranged, charts, "other");
    assertEquals(site.files().keySet(), other.files().keySet());
    site.files().forEach((path, bytes) -> assertArrayEquals(bytes, other.files().get(path), path));
    assertEquals(book(kb), book(rearranged));
  }

  /** Readings in the order in which they are written. */
  private static List<String> readings(KnowledgeBase kb) {
    return kb.readings().values().stream()
        .sorted(Comparator.comparing(Reading::place))
        .map(Reading::id)
        .toList();
  }

  /** Charts are left out where they take long. */
  private Published published(KnowledgeBase kb, boolean charts, String name) throws IOException {
    Path to = temp.resolve(name);
    if (charts) {
      return Published.publish(kb, Options.release(false), to);
    }
    new SitePublisher().publish(kb, new TreeMap<>(), Options.release(false), to);
    return Published.read(to);
  }

  /** What the PDF is printed from, without the charts, which are among the files of the site. */
  private static String book(KnowledgeBase kb) {
    Edition edition =
        new Edition(new TreeMap<>(), List.of(), new TreeMap<>(), false, true, Optional.empty());
    return new BookHtml().print(new BookPages(kb, edition, Paper.A4).book(), Paper.A4);
  }
}
