package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChartCommandTest {
  /** Two families; the second has a fault that the first cannot have. */
  private static final String KB =
      """
      handbook:
        { title: Small, maker: Brantmoor Cold, revision: "1", date: 2026-03-02, language: en,
          disclaimer: Made up. }
      equipment:
        families: { fell: { title: Fell }, tarn: { title: Tarn }, beck: { title: Beck } }
        models:
          FL-1: { title: Fell 1, family: fell, options: {}, software: [1.4, 2.10] }
          TN-1: { title: Tarn 1, family: tarn, options: {}, software: [2.10] }
          BK-1: { title: Beck 1, family: beck, options: {} }
      readings:
        ice: { ask: "How is the ice?", values: [untouched, loose, none], normal: none }
      faults:
        valve-stuck: { title: Valve stuck, remedy: [Replace it.], verify: [Look.] }
        fan-dead: { title: Fan dead, remedy: [Replace it.], verify: [Look.] }
        board-dead: { title: Board dead, remedy: [Replace it.], verify: [Look.] }
      cases:
        stuck: { symptom: ice-left, given: { model: FL-1, ice: untouched }, expect: valve-stuck }
        dead: { symptom: ice-left, given: { model: FL-1, ice: loose }, expect: fan-dead }
        board: { symptom: ice-left, given: { model: TN-1, ice: loose }, expect: board-dead }
        beck: { symptom: ice-on-beck, given: { model: BK-1, ice: loose }, expect: valve-stuck }
      symptoms:
        ice-on-beck:
          title: Ice on a Beck
          applies: { family: beck }
          recognise: { ice: [untouched, loose] }
          rules:
            iced: { when: { ice: [untouched, loose] }, conclude: valve-stuck, because: It is. }
        ice-left:
          title: Ice is left on the first floor
          applies: { family: [fell, tarn] }
          recognise: { ice: [untouched, loose] }
          rules:
            valve: { when: { ice: untouched }, conclude: valve-stuck, because: It is. }
            fan: { when: { ice: loose, family: fell }, conclude: fan-dead, because: It is. }
      """;

  private static final String BOARD =
      "      board: { when: { ice: loose, family: tarn }, conclude: board-dead, because: It is. }\n";

  /** One reading of a minute, outside, which has to be taken. */
  private static final String FELL =
      "Model: FL-1: 1.0 min on average, 1.0 weighted by access;"
          + " no order that the symptom allows costs less\n";

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void write() throws IOException {
    write("kb/handbook.yaml", KB + BOARD);
    write("gap/handbook.yaml", KB);
  }

  private void write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private int run(String kb, String... args) {
    return command("chart", kb, args);
  }

  private int command(String command, String kb, String... args) {
    Console console =
        new Console(
            new ByteArrayInputStream(new byte[0]),
            new PrintWriter(out),
            new PrintWriter(err),
            new Console.Terminals(false, false),
            Map.of());
    return Faultwright.execute(
        console,
        Stream.concat(Stream.of(command, folder.resolve(kb).toString()), Stream.of(args))
            .toArray(String[]::new));
  }

  private String to(String name) {
    return folder.resolve(name).toString();
  }

  private static PDDocument opened(Path file) throws IOException {
    return Loader.loadPDF(Files.readAllBytes(file));
  }

  private String pdfText(String name) throws IOException {
    try (PDDocument pdf = opened(folder.resolve(name))) {
      return new PDFTextStripper().getText(pdf);
    }
  }

  @Test
  void aChartOfOnePageIsOneSvgFile() throws IOException {
    assertEquals(0, run("kb", "ice-left", "--for", "FL-1", "--to", to("chart.svg")));
    assertEquals("wrote " + to("chart.svg") + "\n" + FELL, out.toString());
    String svg = Files.readString(folder.resolve("chart.svg"));
    assertTrue(svg.startsWith("<?xml") && svg.contains(">Fan dead<"), svg);
    assertEquals("", err.toString());
  }

  /** The judge of the PDF is the text extraction of PDFBox. */
  @Test
  void thePdfHoldsTextAsText() throws IOException {
    assertEquals(0, run("kb", "ice-left", "--to", to("chart.PDF")), err.toString());
    assertTrue(out.toString().startsWith("wrote " + to("chart.PDF") + ": 2 pages\n"));
    String text = pdfText("chart.PDF");
    for (String part :
        List.of(
            "Ice is left on the first floor", "How is the", "Fan dead", "Board dead", "Made up.")) {
      assertTrue(text.contains(part), text);
    }
  }

  @Test
  void aModelLeavesOutWhatItCannotHave() throws IOException {
    assertEquals(0, run("kb", "ice-left", "--for", "FL-1", "--to", to("chart.pdf")));
    String text = pdfText("chart.pdf");
    assertTrue(text.contains("Fan dead") && text.contains("FL-1"), text);
    assertFalse(text.contains("Board dead") || text.contains("Which family"), text);
  }

  @Test
  void softwareNarrowsIt() throws IOException {
    assertEquals(0, run("kb", "ice-left", "--software", "1.4", "--to", to("chart.pdf")));
    String text = pdfText("chart.pdf");
    assertTrue(text.contains("1.4") && !text.contains("Board dead"), text);
  }

  @Test
  void theSameRulesGiveTheSameBytes() throws IOException {
    for (String name : List.of("a.pdf", "b.pdf", "a.svg", "b.svg")) {
      assertEquals(
          0, run("kb", "ice-left", "--for", "FL-1", "--to", to(name), "--paper", "letter"));
    }
    for (String kind : List.of(".pdf", ".svg")) {
      assertArrayEquals(
          Files.readAllBytes(folder.resolve("a" + kind)),
          Files.readAllBytes(folder.resolve("b" + kind)));
    }
    try (PDDocument pdf = opened(folder.resolve("a.pdf"))) {
      assertEquals(612, pdf.getPage(0).getMediaBox().getWidth());
      assertEquals("Ice is left on the first floor", pdf.getDocumentInformation().getTitle());
    }
  }

  @Test
  void namesThatDoNotExistAreToldWithTheNearest() {
    assertProblem("there is no symptom `ice-lift`", "did you mean `ice-left`?", "ice-lift");
    assertProblem("there is no model `FL-2`", "did you mean `FL-1`?", "ice-left", "--for", "FL-2");
    assertProblem(
        "there is no software `2.1` of `FL-1`",
        "did you mean `2.10`?",
        "ice-left",
        "--for",
        "FL-1",
        "--software",
        "2.1");
    assertProblem(
        "`ice-left` does not apply to `BK-1`", "it applies to: ", "ice-left", "--for", "BK-1");
  }

  private void assertProblem(String message, String help, String... args) {
    err.getBuffer().setLength(0);
    String[] all =
        Stream.concat(Stream.of(args), Stream.of("--to", to("x.svg"))).toArray(String[]::new);
    assertEquals(2, run("kb", all));
    assertTrue(err.toString().contains(message), err.toString());
    assertTrue(err.toString().contains(help), err.toString());
    assertFalse(Files.exists(folder.resolve("x.svg")));
  }

  /** The judge of the PDF is the text extraction of PDFBox. */
  @Test
  void aCardSaysWhatShowsEachOutcome() throws IOException {
    assertEquals(0, command("card", "kb", "ice-left", "--for", "TN-1", "--to", to("card.pdf")));
    assertEquals("wrote " + to("card.pdf") + "\n", out.toString());
    String text = pdfText("card.pdf");
    for (String part : List.of("TN-1", "Board dead", "Valve stuck", "ntouched", "Made up.")) {
      assertTrue(text.contains(part), text);
    }
    assertFalse(text.contains("Fan dead") || text.contains("amily"), text);
    try (PDDocument pdf = opened(folder.resolve("card.pdf"))) {
      assertEquals(421, pdf.getPage(0).getMediaBox().getHeight());
    }
  }

  @Test
  void fourCardsStandOnASheet() throws IOException {
    assertEquals(
        0, command("card", "kb", "ice-left", "--to", to("card.pdf"), "--four-up"), err.toString());
    assertEquals(4, pdfText("card.pdf").split("Board dead").length - 1);
    assertEquals(2, command("card", "kb", "ice-left", "--to", to("card.svg")));
    assertTrue(err.toString().contains("does not end in `.pdf`"), err.toString());
    assertEquals(1, command("card", "gap", "ice-left", "--to", to("gap.pdf")));
    assertTrue(err.toString().contains("no card was written"), err.toString());
  }

  @Test
  void anotherEndingIsWrongUse() {
    assertEquals(2, run("kb", "ice-left", "--to", to("chart.png")));
    assertTrue(err.toString().contains("ends neither in `.svg` nor in `.pdf`"), err.toString());
  }

  @Test
  void errorsKeepTheOldFile() throws IOException {
    write("chart.svg", "old");
    assertEquals(1, run("gap", "ice-left", "--to", to("chart.svg")));
    assertTrue(err.toString().contains("error[gap]"), err.toString());
    assertTrue(err.toString().contains("no chart was written"), err.toString());
    assertEquals("old", Files.readString(folder.resolve("chart.svg")));
    assertEquals(0, run("gap", "ice-left", "--for", "FL-1", "--to", to("chart.svg"), "--draft"));
    assertTrue(Files.readString(folder.resolve("chart.svg")).contains("DRAFT"));
  }
}
