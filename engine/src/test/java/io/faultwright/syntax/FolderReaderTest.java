package io.faultwright.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderReaderTest {
  @TempDir Path folder;

  @BeforeEach
  void marker() throws IOException {
    write("handbook.yaml", "handbook: {}\n");
  }

  private void write(String name, String text) throws IOException {
    write(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private void write(String name, byte[] bytes) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.write(file, bytes);
  }

  private List<String> paths() {
    return FolderReader.read(folder).files().stream().map(SourceFile::path).toList();
  }

  private List<String> problems() {
    Unreadable unreadable = assertThrows(Unreadable.class, () -> FolderReader.read(folder));
    return unreadable.problems().stream().map(FolderReaderTest::show).toList();
  }

  private static String show(Problem problem) {
    String place = problem.places().isEmpty() ? "" : problem.places().get(0) + ": ";
    return place + problem.message() + " | " + problem.help();
  }

  @Test
  void yamlAnywhereAndGuidesBelowTheirFolder() throws IOException {
    write("b.yml", "");
    write("deep/er/a.YAML", "");
    write("guides/start.md", "# Start\n");
    write("guides/deep/more.md", "# More\n");
    write("README.md", "# Not a guide\n");
    write("notes.txt", "not read\n");
    assertEquals(
        List.of(
            "b.yml", "deep/er/a.YAML", "guides/deep/more.md", "guides/start.md", "handbook.yaml"),
        paths());
  }

  @Test
  void hiddenFilesAndFoldersAreSkipped() throws IOException {
    write(".hidden.yaml", "nonsense: [");
    write(".git/config.yaml", "nonsense: [");
    write("guides/.draft.md", "# Draft\n");
    assertEquals(List.of("handbook.yaml"), paths());
  }

  @Test
  void missingFolder() {
    Path missing = folder.resolve("nowhere");
    Unreadable unreadable = assertThrows(Unreadable.class, () -> FolderReader.read(missing));
    assertEquals(1, unreadable.problems().size());
    Problem problem = unreadable.problems().get(0);
    assertTrue(problem.places().isEmpty());
    assertEquals("there is no folder `" + missing + "`", problem.message());
  }

  @Test
  void fileInsteadOfFolder() {
    Path file = folder.resolve("handbook.yaml");
    assertThrows(Unreadable.class, () -> FolderReader.read(file));
  }

  @Test
  void missingMarkerNamesTheNearestFile() throws IOException {
    Files.delete(folder.resolve("handbook.yaml"));
    write("handbook.yml", "handbook: {}\n");
    assertEquals(
        List.of("the folder `" + folder + "` has no file `handbook.yaml` | rename `handbook.yml`"),
        problems());
  }

  @Test
  void wrongBytesHaveTheirPlaceAndEveryFileIsReported() throws IOException {
    byte[] latin = "a: 1\nä: caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1);
    write("latin.yaml", latin);
    write("cut.yaml", new byte[] {'a', ':', ' ', (byte) 0xE2, (byte) 0x82});
    write("after.yaml", new byte[] {'x', (byte) 0xFF});
    assertEquals(
        List.of(
            "after.yaml:1:2: the byte FF here is not UTF-8 text | save the file with the encoding"
                + " UTF-8",
            "cut.yaml:1:4: the byte E2 here is not UTF-8 text | save the file with the encoding"
                + " UTF-8",
            "latin.yaml:2:1: the byte E4 here is not UTF-8 text | save the file with the encoding"
                + " UTF-8"),
        problems());
  }

  @Test
  void lineEndsAndByteOrderMarkDoNotMatter() throws IOException {
    write("a.yaml", "\uFEFFa: 1\r\nb: 2\rc: 3\n");
    Sources sources = FolderReader.read(folder);
    assertEquals("a: 1\nb: 2\nc: 3\n", sources.find("a.yaml").orElseThrow().text());
  }

  @Test
  void linksThatLeaveTheFolderAreRefusedAndOthersSkipped(@TempDir Path outside) throws IOException {
    Path secret = Files.writeString(outside.resolve("secret.yaml"), "a: b\n");
    Files.createSymbolicLink(folder.resolve("leak.yaml"), secret);
    Files.createSymbolicLink(folder.resolve("leaks"), outside);
    Files.createSymbolicLink(folder.resolve("broken.yaml"), outside.resolve("nothing"));
    Files.createSymbolicLink(folder.resolve("inside.yaml"), folder.resolve("handbook.yaml"));
    Files.createSymbolicLink(folder.resolve("circle"), folder);
    String help = " | copy what it points to into the folder";
    assertEquals(
        List.of(
            "broken.yaml:1:1: the link `broken.yaml` leads out of the knowledge base" + help,
            "leak.yaml:1:1: the link `leak.yaml` leads out of the knowledge base" + help,
            "leaks:1:1: the link `leaks` leads out of the knowledge base" + help),
        problems());
    for (String link : List.of("broken.yaml", "leak.yaml", "leaks")) {
      Files.delete(folder.resolve(link));
    }
    assertEquals(List.of("handbook.yaml"), paths());
  }

  @Test
  void hugeFilesAreRefusedBeforeTheyAreRead() throws IOException {
    try (RandomAccessFile huge = new RandomAccessFile(folder.resolve("huge.yaml").toFile(), "rw")) {
      huge.setLength(33L * 1024 * 1024);
    }
    assertEquals(
        List.of("huge.yaml:1:1: the file has more than 32 MB | split it; files are merged by id"),
        problems());
  }
}
