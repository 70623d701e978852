package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionCommandTest {
  private static final Path BASE = Path.of("../engine/src/test/resources/quiz");

  @TempDir Path folder;

  private final Shell shell = new Shell();
  private Path kb;
  private Path to;

  @BeforeEach
  void copy() throws IOException {
    kb = folder.resolve("kb");
    to = folder.resolve("pack");
    SmallBase.copy(BASE, kb);
  }

  private int session(String id, String... more) {
    String[] first = {"session", kb.toString(), id, "--to", to.toString()};
    return shell.run(Stream.concat(Stream.of(first), Stream.of(more)).toArray(String[]::new));
  }

  private void change(String name, String from, String into) throws IOException {
    Path file = kb.resolve(name);
    String text = Files.readString(file);
    assertTrue(text.contains(from), text);
    Files.writeString(file, text.replace(from, into));
  }

  @Test
  void theSameSessionGivesTheSameBytes() throws IOException {
    assertEquals(0, session("morning"), shell::err);
    assertTrue(shell.out().startsWith("written: " + to.resolve("index.html")), shell::out);
    byte[] handout = Files.readAllBytes(to.resolve("handout.pdf"));
    byte[] pages = Files.readAllBytes(to.resolve("index.html"));
    assertEquals(0, session("morning"), shell::err);
    assertArrayEquals(handout, Files.readAllBytes(to.resolve("handout.pdf")));
    assertArrayEquals(pages, Files.readAllBytes(to.resolve("index.html")));
    String text = text(handout);
    assertTrue(text.contains("A morning about ice"), text);
    assertTrue(text.contains("Hot gas melts the ice."), text);
    assertTrue(text.contains("The line is hot."), text);
    assertFalse(text.contains("DRAFT"), text);
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void aSessionThatIsNotThereIsRefusedWithTheNearest() {
    assertEquals(2, session("mornin"));
    assertTrue(shell.err().contains("there is no session `mornin`"), shell::err);
    assertTrue(shell.err().contains("morning"), shell::err);
    assertFalse(Files.exists(to));
  }

  @Test
  void wrongRulesWriteNothingUnlessItIsADraft() throws IOException {
    assertEquals(0, session("evening"), shell::err);
    byte[] before = Files.readAllBytes(to.resolve("index.html"));
    change("handbook.yaml", "expect: software-old", "expect: board-failed");
    assertEquals(1, session("evening"));
    assertTrue(shell.err().contains("nothing was written"), shell::err);
    assertArrayEquals(before, Files.readAllBytes(to.resolve("index.html")));
    assertEquals(0, session("evening", "--draft"), shell::err);
    assertTrue(Files.readString(to.resolve("index.html")).contains("DRAFT"));
    assertTrue(text(Files.readAllBytes(to.resolve("handout.pdf"))).contains("DRAFT"));
  }

  /** What nobody signed does not reach a class unmarked. */
  @Test
  void missingSignOffsAreMarked() throws IOException {
    change(
        "handbook.yaml", "  language: en\n", "  language: en\n  sign-off: { rule: engineering }\n");
    assertEquals(0, session("evening"), shell::err);
    assertTrue(shell.err().contains("note: DRAFT stands on every page"), shell::err);
    assertTrue(Files.readString(to.resolve("index.html")).contains("DRAFT"));
  }

  @Test
  void aLinkThatLeadsNowhereIsRefused() throws IOException {
    change("sessions.yaml", "Hot gas melts the ice.", "\"See [this](fault:no-such-fault).\"");
    assertEquals(2, session("morning"));
    assertTrue(shell.err().contains("`fault:no-such-fault` leads nowhere"), shell::err);
    assertTrue(shell.err().contains("sessions.yaml:"), shell::err);
    assertFalse(Files.exists(to));
  }

  @Test
  void markupOfTheTrainerIsText() throws IOException {
    change(
        "sessions.yaml",
        "Hot gas melts the ice.",
        "\"<script>alert(1)</script> ${7*7} <#list 1..9 as x>\"");
    change("sessions.yaml", "title: A morning about ice", "title: \"<b>Ice</b> ${1+1}\"");
    assertEquals(0, session("morning"), shell::err);
    String page = Files.readString(to.resolve("index.html"));
    assertFalse(page.contains("<script>alert"), page);
    assertFalse(page.contains("<b>Ice"), page);
    assertTrue(page.contains("${7*7}"));
  }
}
