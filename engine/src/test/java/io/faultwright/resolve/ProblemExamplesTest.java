package io.faultwright.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Every folder below {@code problems} is a broken knowledge base with the problems it must give in
 * {@code expected.txt}. {@code -Dbless=true} rewrites the expectations, but never in CI.
 */
class ProblemExamplesTest {
  private static final Path FOLDER = Path.of("src/test/resources/problems");
  private static final boolean BLESS =
      Boolean.getBoolean("bless") && !"true".equals(System.getenv("CI"));

  @TestFactory
  List<DynamicTest> everyFolder() throws IOException {
    try (Stream<Path> folders = Files.list(FOLDER)) {
      return folders
          .sorted()
          .map(folder -> DynamicTest.dynamicTest(name(folder), () -> check(folder)))
          .toList();
    }
  }

  private static String name(Path folder) {
    return folder.getFileName().toString();
  }

  private static void check(Path folder) throws IOException {
    assertTrue(Files.isDirectory(folder), "only folders belong here");
    assertTrue(Files.exists(folder.resolve("handbook.yaml")), "an expectation without input");
    Sources sources = FolderReader.read(folder);
    Unreadable unreadable =
        assertThrows(Unreadable.class, () -> read(sources), "it has no problem");
    Places.assertExist(sources, unreadable.problems());
    compare(folder.resolve("expected.txt"), listing(unreadable.problems()));
  }

  private static void read(Sources sources) {
    SignOffReader.read(sources, Resolver.resolve(sources));
  }

  private static void compare(Path expected, String found) throws IOException {
    if (BLESS) {
      Files.writeString(expected, found);
    }
    assertTrue(Files.exists(expected), "no expectation; look at the output of -Dbless=true");
    assertEquals(Files.readString(expected), found);
  }

  private static String listing(List<Problem> problems) {
    return problems.stream().map(ProblemExamplesTest::lines).collect(Collectors.joining());
  }

  private static String lines(Problem problem) {
    String places =
        problem.places().stream().map(Object::toString).collect(Collectors.joining(" and "));
    return places + ": " + problem.message() + "\n  help: " + problem.help() + "\n";
  }
}
