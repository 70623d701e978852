package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.jgit.api.Git;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReviewCommandTest {
  @TempDir Path folder;

  private SmallBase base;
  private Path to;

  @BeforeEach
  void write() throws IOException {
    base = new SmallBase(folder.resolve("kb"));
    to = folder.resolve("review");
  }

  private int review(String... further) {
    return base.run(
        "review",
        Stream.concat(Stream.of("--to", to.toString()), Stream.of(further)).toArray(String[]::new));
  }

  private String page(String name) throws IOException {
    return Files.readString(to.resolve(name));
  }

  private String rule(String id) throws IOException {
    String page = page("symptom-warm.html");
    int start = page.indexOf("id=\"rule-" + id + "\"");
    return page.substring(start, page.indexOf("</section>", start));
  }

  @Test
  void aSignedRuleShowsItsSignerAndALapsedOneWhy() throws IOException {
    base.signAll("engineering", SmallBase.ADA);
    base.edit("handbook.yaml", "above 2 A", "above 2.5 A");
    assertEquals(1, review("--no-mistakes"), base.err());
    assertTrue(rule("low").contains("✓ Ada Example, engineering, 2026-03-01"), rule("low"));
    assertTrue(rule("low").contains("unverified name"), rule("low"));
    assertTrue(rule("high").contains("✗ Ada Example"), rule("high"));
    assertTrue(rule("high").contains("lapsed: rule <code>warm/high</code> changed"), rule("high"));
    assertTrue(page("index.html").contains("not signed as field-service"));
    assertTrue(page("findings.html").contains("lapsed-signature"));
  }

  @Test
  void theLastChangeComesFromTheHistoryOfTheFolder() throws Exception {
    try (Git git = Git.init().setDirectory(base.folder().toFile()).call()) {
      git.add().addFilepattern(".").call();
      git.commit()
          .setMessage("First <b>rules</b>")
          .setSign(false)
          .setAuthor("Trainer", "trainer@example.org")
          .setCommitter("Trainer", "trainer@example.org")
          .call();
    }
    review();
    assertTrue(rule("low").contains("First &lt;b&gt;rules&lt;/b&gt;"), rule("low"));
    for (String name : List.of("index.html", "symptom-warm.html")) {
      assertTrue(!page(name).contains("example.org"), "an address in " + name);
    }
  }

  @Test
  void mistakesThatNoCaseNoticesAreThereUnlessTheyAreLeftOut() throws IOException {
    review();
    assertTrue(page("index.html").contains("Of mistakes put into rules and limits, "));
    assertTrue(page("cases.html").contains("href=\"index.html\""));
    review("--no-mistakes");
    assertTrue(page("index.html").contains("No mistakes were put into rules"));
  }

  @Test
  void theSameRulesGiveTheSameBytes() throws IOException {
    review();
    Path first = Files.move(to, folder.resolve("first"));
    review();
    try (Stream<Path> all = Files.walk(first)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        Path again = to.resolve(first.relativize(file).toString());
        assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(again), again.toString());
      }
    }
  }

  @Test
  void filesOfOthersAreNotTouched() throws IOException {
    Files.createDirectories(to);
    Files.writeString(to.resolve("notes.txt"), "mine");
    assertEquals(2, review());
    assertTrue(base.err().contains("notes.txt"), base.err());
    assertEquals("mine", page("notes.txt"));
  }

  @Test
  void rulesThatCannotBeReadLeaveTheOldReport() throws IOException {
    review();
    String before = page("index.html");
    base.edit("handbook.yaml", "symptoms:", "symptms:");
    assertEquals(2, review());
    assertTrue(base.err().contains("handbook.yaml:"), base.err());
    assertEquals(before, page("index.html"));
  }
}
