package io.faultwright.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AtomicFolderTest {
  private static final int FILES = 5;

  @TempDir Path temp;
  private Path site;

  @BeforeEach
  void name() {
    site = temp.resolve("site");
  }

  private static Sink.Filler files(String text) {
    return sink -> {
      for (int i = 0; i < FILES; i++) {
        sink.write("sub" + i % 2 + "/" + i + ".html", (text + i).getBytes(StandardCharsets.UTF_8));
      }
    };
  }

  /** Every file below the folder but the marker, with its text. */
  private static SortedMap<String, String> content(Path folder) throws IOException {
    SortedMap<String, String> content = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String path = folder.relativize(file).toString().replace('\\', '/');
        content.put(path, Files.readString(file));
      }
    }
    content.remove(Marker.NAME);
    return content;
  }

  private void assertSite(String text) throws IOException {
    SortedMap<String, String> content = content(site);
    assertEquals(FILES, content.size());
    content.forEach((path, found) -> assertTrue(found.startsWith(text), path + ": " + found));
  }

  private void assertNothingElse() throws IOException {
    try (Stream<Path> beside = Files.list(temp)) {
      assertEquals("[]", beside.filter(path -> !path.equals(site)).toList().toString());
    }
  }

  @Test
  void publishesAndReplaces() throws IOException {
    new AtomicFolder(site).publish(files("one"));
    assertSite("one");
    new AtomicFolder(site).publish(files("two"));
    assertSite("two");
    assertNothingElse();
  }

  @Test
  void dropsFilesThatAreNoLongerPublished() throws IOException {
    new AtomicFolder(site).publish(files("one"));
    new AtomicFolder(site).publish(sink -> sink.write("only.html", new byte[0]));
    assertEquals("[only.html]", content(site).keySet().toString());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5})
  void aWriterThatFailsLeavesTheOldSiteWhole(int written) throws IOException {
    new AtomicFolder(site).publish(files("old"));
    assertThrows(
        IOException.class, () -> new AtomicFolder(site).publish(failingAfter(written, "new")));
    assertSite("old");
    assertNothingElse();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 3})
  void aFirstPublishThatFailsLeavesNothing(int written) throws IOException {
    assertThrows(
        IOException.class, () -> new AtomicFolder(site).publish(failingAfter(written, "new")));
    assertFalse(Files.exists(site));
    assertNothingElse();
  }

  private static Sink.Filler failingAfter(int files, String text) {
    return sink -> {
      for (int i = 0; i < files; i++) {
        sink.write(i + ".html", text.getBytes(StandardCharsets.UTF_8));
      }
      throw new IOException("disk full");
    };
  }

  /** A process that dies: an error at the n-th renaming, after which no line of ours runs. */
  private static final class Death extends Error {
    private static final long serialVersionUID = 1L;
  }

  private static Renaming dyingAt(int fatal) {
    int[] count = {0};
    return (from, to) -> {
      if (++count[0] == fatal) {
        throw new Death();
      }
      Files.move(from, to);
    };
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void aRunThatDiesIsPutRightByTheNext(int fatal) throws IOException {
    new AtomicFolder(site).publish(files("old"));
    assertThrows(Death.class, () -> new AtomicFolder(site, dyingAt(fatal)).publish(files("dead")));
    assertThrows(
        IOException.class, () -> new AtomicFolder(site).publish(failingAfter(2, "failed")));
    assertSite("old");
    new AtomicFolder(site).publish(files("new"));
    assertSite("new");
    assertNothingElse();
  }

  @Test
  void aRunThatDiesAfterTheSwapLeavesTheNewSite() throws IOException {
    new AtomicFolder(site).publish(files("new"));
    new AtomicFolder(temp.resolve(".site.faultwright-old")).publish(files("old"));
    new AtomicFolder(site).publish(files("newer"));
    assertSite("newer");
    assertNothingElse();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void aRefusedRenamingPutsTheOldSiteBack(int refused) throws IOException {
    new AtomicFolder(site).publish(files("old"));
    int[] count = {0};
    Renaming held =
        (from, to) -> {
          if (++count[0] == refused) {
            throw new AccessDeniedException(from.toString(), to.toString(), "held open");
          }
          Files.move(from, to);
        };
    assertThrows(
        AccessDeniedException.class, () -> new AtomicFolder(site, held).publish(files("new")));
    assertSite("old");
    new AtomicFolder(site).publish(files("new"));
    assertSite("new");
    assertNothingElse();
  }

  @Test
  void refusesAFolderThatItDidNotPublish() throws IOException {
    Files.createDirectories(site);
    Files.writeString(site.resolve("thesis.txt"), "mine");
    Refused refused =
        assertThrows(Refused.class, () -> new AtomicFolder(site).publish(files("new")));
    assertTrue(refused.getMessage().contains("thesis.txt"), refused.getMessage());
    assertEquals("mine", Files.readString(site.resolve("thesis.txt")));
    assertNothingElse();
  }

  @Test
  void refusesAPublishedFolderWithAStrangersFileInIt() throws IOException {
    new AtomicFolder(site).publish(files("old"));
    Files.writeString(site.resolve("sub1/notes.txt"), "mine");
    assertThrows(Refused.class, () -> new AtomicFolder(site).publish(files("new")));
    assertEquals("mine", Files.readString(site.resolve("sub1/notes.txt")));
    Files.delete(site.resolve("sub1/notes.txt"));
    assertSite("old");
  }

  @Test
  void refusesAFile() throws IOException {
    Files.writeString(site, "mine");
    assertThrows(Refused.class, () -> new AtomicFolder(site).publish(files("new")));
    assertEquals("mine", Files.readString(site));
  }

  @Test
  void takesAnEmptyFolderAndOneWithDesktopLitter() throws IOException {
    Files.createDirectories(site);
    new AtomicFolder(site).publish(files("one"));
    Files.writeString(site.resolve(".DS_Store"), "litter");
    new AtomicFolder(site).publish(files("two"));
    assertSite("two");
  }

  @Test
  void refusesASecondRunAtTheSameTime() throws IOException {
    new AtomicFolder(site)
        .publish(
            sink ->
                assertThrows(Refused.class, () -> new AtomicFolder(site).publish(files("other"))));
    new AtomicFolder(site).publish(files("after"));
    assertSite("after");
  }

  @ParameterizedTest
  @ValueSource(strings = {"../escape.html", "/escape.html", ".", Marker.NAME, "a/../../escape"})
  void writesNothingOutsideTheFolder(String path) {
    assertThrows(
        IllegalArgumentException.class,
        () -> new AtomicFolder(site).publish(sink -> sink.write(path, new byte[0])));
    assertFalse(Files.exists(temp.resolve("escape.html")));
  }

  @Test
  void replacesTheFolderBehindALink() throws IOException {
    Path real = Files.createDirectory(temp.resolve("real"));
    Files.createSymbolicLink(site, real);
    new AtomicFolder(site).publish(files("one"));
    assertTrue(Files.isSymbolicLink(site));
    assertEquals(FILES, content(real).size());
  }
}
