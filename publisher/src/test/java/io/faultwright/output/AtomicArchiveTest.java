package io.faultwright.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.Child;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicArchiveTest {
  private static final int KILLS = 50;
  private static final int FILES = 20;

  /** Longest time, in microseconds, that a child may write before it is killed: a few folders. */
  private static final int LONGEST = 20_000;

  @TempDir Path temp;
  private Path root;

  @BeforeEach
  void name() {
    root = temp.resolve("archive");
  }

  /**
   * Adds folder after folder until it is killed; the first argument is the archive. It has written
   * one elsewhere before it says that it is ready, so that a kill hits it while it writes, and not
   * while its classes are loaded.
   */
  static final class Writer {
    private Writer() {}

    public static void main(String[] arguments) throws IOException {
      Path root = Path.of(arguments[0]);
      add(root.resolveSibling("practice-" + ProcessHandle.current().pid()), "1", FILES);
      System.out.println("ready");
      System.out.flush();
      for (int number = Integer.parseInt(arguments[1]); ; number++) {
        add(root, Integer.toString(number), FILES);
      }
    }
  }

  /** A folder of files that all hold its name, of which some can be written. */
  private static void add(Path root, String name, int writable) throws IOException {
    new AtomicArchive(root)
        .add(
            name,
            sink -> {
              for (int i = 0; i < FILES; i++) {
                if (i == writable) {
                  throw new IOException("the disk is full");
                }
                sink.write("sub" + i % 3 + "/" + i + ".txt", bytes(name.repeat(500)));
              }
            },
            () -> bytes(String.join(" ", folders(root))));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Names of the folders that can be seen. */
  private static List<String> folders(Path root) throws IOException {
    try (Stream<Path> all = Files.list(root)) {
      return all.filter(Files::isDirectory)
          .map(path -> path.getFileName().toString())
          .filter(name -> !name.startsWith("."))
          .sorted()
          .toList();
    }
  }

  private static SortedMap<String, String> content(Path folder) throws IOException {
    SortedMap<String, String> content = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        content.put(folder.relativize(file).toString().replace('\\', '/'), Files.readString(file));
      }
    }
    return content;
  }

  /** Every folder that can be seen is whole, and the page names none that is not there. */
  private void assertWhole() throws IOException {
    List<String> folders = folders(root);
    for (String name : folders) {
      SortedMap<String, String> content = content(root.resolve(name));
      content.keySet().removeIf(path -> path.startsWith("."));
      assertEquals(FILES, content.size(), name);
      content.forEach((path, text) -> assertEquals(name.repeat(500), text, name + "/" + path));
    }
    if (Files.exists(root.resolve(AtomicArchive.INDEX))) {
      String page = Files.readString(root.resolve(AtomicArchive.INDEX));
      assertTrue(folders.containsAll(List.of(page.split(" "))), page + " of " + folders);
    }
  }

  @Test
  void aKillAtAnyMomentLeavesWholeFolders() throws IOException, InterruptedException {
    Random random = new Random(8);
    int torn = 0;
    for (int round = 0; round < KILLS; round++) {
      int next = Files.exists(root) ? folders(root).size() + 1 : 1;
      kill(next, random.nextInt(LONGEST));
      if (Files.exists(root)) {
        assertWhole();
        torn += leftOver() ? 1 : 0;
      }
    }
    assertTrue(torn > 0, "no kill hit a folder half written");
    int written = folders(root).size();
    add(root, Integer.toString(written + 1), FILES);
    assertWhole();
    assertEquals(written + 1, folders(root).size());
    assertFalse(leftOver());
  }

  private void kill(int next, int microseconds) throws IOException, InterruptedException {
    Process child =
        Child.start(Writer.class, AtomicArchive.class, root.toString(), Integer.toString(next));
    try (InputStream out = child.getInputStream()) {
      assertEquals("ready\n", new String(out.readNBytes(6), StandardCharsets.US_ASCII));
      TimeUnit.MICROSECONDS.sleep(microseconds);
    } finally {
      child.destroyForcibly().waitFor();
    }
  }

  private boolean leftOver() throws IOException {
    try (Stream<Path> all = Files.list(root)) {
      return all.anyMatch(path -> path.getFileName().toString().endsWith(".faultwright-new"));
    }
  }

  @Test
  void aFailureAtAnyFileLeavesWhatWasThere() throws IOException {
    add(root, "1", FILES);
    SortedMap<String, String> before = content(root);
    for (int i = 0; i < FILES; i++) {
      int writable = i;
      assertThrows(IOException.class, () -> add(root, "2", writable));
      assertEquals(before, content(root));
    }
    add(root, "2", FILES);
    assertEquals(List.of("1", "2"), folders(root));
  }

  @Test
  void nothingIsEverReplaced() throws IOException {
    add(root, "1", FILES);
    SortedMap<String, String> before = content(root);
    assertThrows(Refused.class, () -> add(root, "1", FILES));
    AtomicFolder folder = new AtomicFolder(root.resolve("1"));
    assertThrows(Refused.class, () -> folder.publish(sink -> sink.write("a", bytes("b"))));
    assertEquals(before, content(root));
  }
}
