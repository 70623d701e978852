package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.NoSuchFileException;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FailuresTest {
  private final StringWriter err = new StringWriter();

  @Test
  void defectIsOneLineAndHowToReportIt() {
    IllegalStateException defect =
        new IllegalStateException("outer", new IllegalArgumentException("two\nlines"));
    assertEquals(3, failures(Map.of()).of(defect));
    assertTrue(
        err.toString()
            .startsWith("internal failure: java.lang.IllegalArgumentException: two lines\n"),
        err.toString());
    assertTrue(err.toString().contains("report it"), err.toString());
    assertFalse(err.toString().contains("\tat "), err.toString());
  }

  @Test
  void traceIsShownToThoseWhoAskForIt() {
    assertEquals(3, failures(Map.of("FAULTWRIGHT_TRACE", "1")).internal(new StackOverflowError()));
    assertTrue(err.toString().contains("\tat "), err.toString());
  }

  @Test
  void troubleWithFilesIsNobodysDefect() {
    assertEquals(2, failures(Map.of()).of(new NoSuchFileException("site/index.html")));
    assertTrue(
        err.toString().startsWith("error: cannot read or write `site/index.html`\n"),
        err.toString());
  }

  private Failures failures(Map<String, String> environment) {
    return new Failures(
        new Console(
            InputStream.nullInputStream(),
            new PrintWriter(new StringWriter()),
            new PrintWriter(err, true),
            new Console.Terminals(false, false),
            environment));
  }
}
