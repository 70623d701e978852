package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.eclipse.jgit.api.Git;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {
  private static final String RULES = CommandLineTest.HEAD + CommandLineTest.SECOND;
  private static final String OTHER =
      RULES
          .replace("revision: \"1\"", "revision: \"2\"")
          .replace("ice: [untouched, loose]", "ice: not none");
  private static final String CHANGED =
      OTHER
          .replace("{ ice: loose }, conclude: fan-dead", "{ ice: loose }, conclude: valve-stuck")
          .replace("expect: fan-dead", "expect: valve-stuck");

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void write() throws IOException {
    write("old", RULES);
    write("same", OTHER);
    write("new", CHANGED);
    write("broken", RULES.replace("ice: loose }, conclude", "icy: loose }, conclude"));
  }

  private void write(String kb, String rules) throws IOException {
    Files.createDirectories(folder.resolve(kb));
    Files.writeString(folder.resolve(kb).resolve("handbook.yaml"), rules);
  }

  private int run(String... args) {
    Console console =
        new Console(
            new ByteArrayInputStream(new byte[0]),
            new PrintWriter(out),
            new PrintWriter(err),
            new Console.Terminals(false, false),
            Map.of());
    return Faultwright.execute(console, args);
  }

  private String kb(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void noChangeInMeaningExitsWithZero() {
    assertEquals(0, run("compare", kb("old"), kb("same")), err.toString());
    assertTrue(out.toString().endsWith("no change in meaning\n"), out.toString());
    assertEquals("", err.toString());
  }

  @Test
  void aChangedMeaningExitsWithOne() {
    assertEquals(1, run("compare", kb("old"), kb("new")));
    assertTrue(out.toString().contains("  before         fan-dead\n"), out.toString());
    assertTrue(out.toString().contains("  now            valve-stuck\n"), out.toString());
    assertTrue(out.toString().endsWith("the meaning changed\n"), out.toString());
  }

  @Test
  void jsonSaysTheSame() throws IOException {
    assertEquals(1, run("compare", kb("old"), kb("new"), "--format", "json"));
    JsonNode report = new ObjectMapper().readTree(out.toString());
    assertFalse(report.get("sameMeaning").asBoolean());
    JsonNode region = report.get("symptoms").get(0).get("regions").get(0);
    assertTrue(region.get("replayed").asBoolean());
    assertEquals("loose", region.get("witness").get("ice").asText());
  }

  @Test
  void whatCannotBeReadSaysWhichSideItIs() throws IOException {
    assertEquals(2, run("compare", kb("old"), kb("broken")));
    assertTrue(err.toString().contains("new revision `" + kb("broken") + "`: "), err.toString());
    assertTrue(err.toString().contains("did you mean `ice`?"), err.toString());
    assertEquals(2, run("compare", kb("broken"), kb("new"), "--format", "json"));
    JsonNode problem = new ObjectMapper().readTree(out.toString()).get("problems").get(0);
    assertTrue(problem.get("message").asText().startsWith("old revision `"), problem.toString());
  }

  @Test
  void gitRevisionsAreOfTheOtherFolderOrOfTheOneNamed() throws Exception {
    try (Git git = Git.init().setDirectory(folder.toFile()).setInitialBranch("main").call()) {
      commit(git, "revision-1");
      write("old", CHANGED);
      commit(git, "revision-2");
    }
    assertEquals(1, run("compare", "revision-1", kb("old")), err.toString());
    assertEquals(0, run("compare", "revision-2", kb("old")), err.toString());
    assertEquals(1, run("compare", "revision-1", "main", "--of", kb("old")), err.toString());
    assertEquals(2, run("compare", "revision-1", "revision-2"));
    assertTrue(err.toString().contains("name the knowledge base with `--of`"), err.toString());
    assertEquals(2, run("compare", "revison-1", kb("old")));
    assertTrue(err.toString().contains("did you mean `revision-1`?"), err.toString());
    assertEquals(2, run("compare", kb("odl"), "revision-1"));
    assertTrue(err.toString().contains("did you mean `" + kb("old") + "`?"), err.toString());
  }

  private static void commit(Git git, String tag) throws Exception {
    git.add().addFilepattern(".").call();
    git.commit()
        .setMessage(tag)
        .setSign(false)
        .setAuthor("Trainer", "trainer@example.org")
        .setCommitter("Trainer", "trainer@example.org")
        .call();
    git.tag().setName(tag).call();
  }

  @Test
  void aHandbookTellsWhatChanged() throws IOException {
    String site = folder.resolve("site").toString();
    int code = run("publish", kb("new"), "--to", site, "--since", kb("old"));
    assertEquals(0, code, out.toString() + err);
    String page = Files.readString(Path.of(site, "what-changed.html"));
    assertTrue(page.contains("Since revision 1, 2026-03-02"), page);
    assertTrue(page.contains("<dt>Before</dt><dd>Fan dead</dd>"), page);
    assertTrue(page.contains("<dt>Now</dt><dd>Valve stuck</dd>"), page);
    String start = Files.readString(Path.of(site, "index.html"));
    assertTrue(start.contains("href=\"what-changed.html\""), start);
  }

  @Test
  void nothingIsPublishedWhereTheOldRevisionCannotBeRead() {
    String site = folder.resolve("site").toString();
    assertEquals(2, run("publish", kb("new"), "--to", site, "--since", kb("broken")));
    assertTrue(err.toString().contains("old revision"), err.toString());
    assertFalse(Files.exists(Path.of(site)));
  }
}
