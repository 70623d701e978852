package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The false stop at the end of a defrost, diagnosed from a log as the page on sequences tells it.
 */
class DemoLogTest {
  private static final Path DOCS = Path.of("..", "docs");

  private final Shell shell = new Shell();

  private int follow(String log, String... further) {
    List<String> all =
        new ArrayList<>(
            List.of(
                "follow",
                Path.of("..", "rules", "walk-in-freezers").toString(),
                "hot-gas-operation",
                "--model",
                "TN-20GA1",
                "--software",
                "2.10",
                "--symptom",
                "false-stop",
                "--log",
                DOCS.resolve("logs").resolve(log).toString()));
    all.addAll(List.of(further));
    return shell.run(all.toArray(String[]::new));
  }

  private String columns() {
    return DOCS.resolve("logs").resolve("tarn-20-columns.yaml").toString();
  }

  private void isOnThePage() throws IOException {
    String page = Files.readString(DOCS.resolve("sequences.md"));
    String said = shell.out().replace("../docs/", "docs/");
    assertTrue(page.contains("```text\n" + said + "```"), said);
  }

  @Test
  void withTheDelayAsDeliveredLogAndModelPart() throws IOException {
    assertEquals(1, follow("tarn-20-false-stop.csv", "--columns", columns()));
    isOnThePage();
  }

  @Test
  void withTheDelayThatIsSetTheFaultIsFound() throws IOException {
    String[] further = {
      "--columns", columns(), "--set", "low-pressure-delay=30 s", "--given", "liquid-valve-open=yes"
    };
    assertEquals(0, follow("tarn-20-false-stop.csv", further));
    isOnThePage();
  }

  @Test
  void aTypedLogTellsTheSame() {
    int code =
        follow(
            "tarn-20-false-stop.txt",
            "--set",
            "low-pressure-delay=30 s",
            "--given",
            "liquid-valve-open=yes");
    assertEquals(0, code);
    assertTrue(
        shell.out().contains("answer         Low-pressure delay too short (lp-delay-short)\n"),
        shell.out());
  }

  @Test
  void aReadingThatCannotBeReadIsTold() {
    assertEquals(2, follow("tarn-20-false-stop.txt", "--given", "liquid-valve-open=ys"));
    assertTrue(shell.err().contains("did you mean `yes`?"), shell.err());
    assertEquals(2, follow("tarn-20-false-stop.txt", "--symptom", "false-stp"));
  }

  @Test
  void givenReadingsNeedASymptom() {
    assertEquals(
        2,
        shell.run(
            "follow", "kb", "s", "--model", "M", "--log", "-", "--given", "liquid-valve-open=yes"));
    assertTrue(shell.err().contains("`--given` goes with `--symptom`"), shell.err());
  }
}
