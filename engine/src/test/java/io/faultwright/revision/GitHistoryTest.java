package io.faultwright.revision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GitHistoryTest {
  @TempDir Path root;

  private Path kb;

  @BeforeEach
  void commitTwice() throws IOException, GitAPIException {
    kb = root.resolve("rules/freezers");
    try (Git git = Git.init().setDirectory(root.toFile()).setInitialBranch("main").call()) {
      write("notes.yaml", "outside: true\n");
      commit(git, "Begin");
      write("rules/freezers/handbook.yaml", "handbook: { title: First }\r\n");
      write("rules/freezers/guides/welcome.md", "# Welcome\n");
      write("rules/freezers/.hidden/more.yaml", "hidden: true\n");
      write("rules/freezers/read-me.txt", "not read\n");
      commit(git, "First");
      git.tag().setName("revision-1").call();
      write("rules/freezers/handbook.yaml", "handbook: { title: Second }\n");
      write("rules/freezers/symptoms/a.yaml", "symptoms: {}\n");
      commit(git, "Second");
      write("rules/freezers/handbook.yaml", "handbook: { title: Not committed }\n");
    }
  }

  private static void commit(Git git, String message) throws GitAPIException {
    git.add().addFilepattern(".").call();
    git.commit()
        .setMessage(message)
        .setSign(false)
        .setAuthor("Trainer", "trainer@example.org")
        .setCommitter("Trainer", "trainer@example.org")
        .call();
  }

  private void write(String path, String text) throws IOException {
    Path file = root.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  @Test
  void aTagHasTheFilesAsTheyWere() {
    assertEquals(
        List.of("guides/welcome.md: # Welcome\n", "handbook.yaml: handbook: { title: First }\n"),
        read("revision-1"));
  }

  @Test
  void branchesAndCommitsAreRevisionsToo() {
    List<String> second =
        List.of(
            "guides/welcome.md: # Welcome\n",
            "handbook.yaml: handbook: { title: Second }\n",
            "symptoms/a.yaml: symptoms: {}\n");
    assertEquals(second, read("main"));
    assertEquals(second, read("HEAD"));
    assertEquals(read("revision-1"), read("HEAD~1"));
  }

  private List<String> read(String revision) {
    return new GitHistory(kb)
        .read(revision).files().stream().map(file -> file.path() + ": " + file.text()).toList();
  }

  @Test
  void anUnknownRevisionIsRefusedWithTheNearestOne() {
    assertRefused(
        kb, "revison-1", "there is no revision `revison-1`", "did you mean `revision-1`?");
    assertRefused(kb, "a^^{b", "there is no revision `a^^{b`", "known here: `main`, `revision-1`");
  }

  @Test
  void aRevisionWithoutTheKnowledgeBaseIsRefused() {
    String message = "in revision `HEAD~2` the folder `" + kb + "` has no file `handbook.yaml`";
    assertRefused(kb, "HEAD~2", message, "give a revision in which the knowledge base stood there");
  }

  @Test
  void aFolderOutsideOfAnyRepositoryIsRefused(@TempDir Path elsewhere) {
    assertFalse(new GitHistory(elsewhere).exists());
    assertTrue(new GitHistory(kb).exists());
    String message = "`" + elsewhere + "` lies in no Git repository, so it has no revision `main`";
    assertRefused(
        elsewhere,
        "main",
        message,
        "give two folders, or a knowledge base that lies in a repository");
  }

  private static void assertRefused(Path kb, String revision, String message, String help) {
    GitHistory history = new GitHistory(kb);
    Unreadable refused = assertThrows(Unreadable.class, () -> history.read(revision));
    assertEquals(List.of(new Problem(List.of(), message, help)), refused.problems());
  }

  @Test
  void nothingIsWrittenIntoTheRepository() throws IOException {
    long before = files();
    read("revision-1");
    assertEquals(before, files());
  }

  private long files() throws IOException {
    try (var all = Files.walk(root)) {
      return all.count();
    }
  }
}
