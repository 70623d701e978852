package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookTest {
  private static final Pattern CONTENTS_LINE = Pattern.compile("(.+?)[ .]{3,}(\\d+)");

  /** Stands at the foot of every page, and in the head of a chart's page too. */
  private static final Pattern PAGE_OF = Pattern.compile("Page \\d+ of \\d+");

  /** The words of head and foot that stand on a page whatever else it holds. */
  private static final int WORDS_OF_FRAME = 25;

  /** A PNG file of one pixel. */
  private static final byte[] PIXEL =
      Base64.getDecoder()
          .decode(
              "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5E"
                  + "rkJggg==");

  @TempDir static Path temp;
  private static Published site;
  private static PDDocument book;
  private static List<String> pages;

  @BeforeAll
  static void publish() throws IOException {
    site =
        Published.publish(
            SampleBook.plain(), SampleChanges.release(SampleBook.plain()), temp.resolve("site"));
    book = Loader.loadPDF(site.files().get("handbook.pdf"));
    pages = pagesOf(book);
  }

  @AfterAll
  static void close() throws IOException {
    book.close();
  }

  private static List<String> pagesOf(PDDocument document) throws IOException {
    List<String> texts = new ArrayList<>();
    for (int i = 1; i <= document.getNumberOfPages(); i++) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      stripper.setStartPage(i);
      stripper.setEndPage(i);
      texts.add(stripper.getText(document).replace('\u00A0', ' '));
    }
    return texts;
  }

  @Test
  void everyPageHasWordsOfItsOwnAndItsNumber() {
    for (int i = 0; i < pages.size(); i++) {
      String page = pages.get(i);
      assertTrue(page.contains("Page " + (i + 1) + " of " + pages.size()), page);
      assertTrue(page.split("\\s+").length > WORDS_OF_FRAME, "page " + (i + 1) + ": " + page);
    }
  }

  @Test
  void pageNumbersOfTheContentsAreRight() {
    List<String> entries =
        pages.get(1).lines().filter(line -> CONTENTS_LINE.matcher(line).matches()).toList();
    assertEquals(12, entries.size(), "chapters, complaints and guides: " + entries);
    for (String entry : entries) {
      Matcher line = CONTENTS_LINE.matcher(entry);
      assertTrue(line.matches());
      String page = pages.get(Integer.parseInt(line.group(2)) - 1);
      assertTrue(page.contains(line.group(1).strip()), entry + " is not on that page:\n" + page);
    }
  }

  @Test
  void everythingIsInIt() {
    String all = String.join("\n", pages);
    for (String text :
        List.of(
            "Walk-in freezers, service handbook",
            "Revision 7, 2026-03-02",
            "All figures are invented.",
            "Ice is left on the coil after a hot-gas defrost",
            "Voltage at the defrost valve",
            "Prove it dead first.",
            "Evacuate and recharge.",
            "BC-0412",
            "Start a defrost and watch the coil.",
            "12.1",
            "Connecting gauges",
            "FL-20E",
            "Without voltage no gas flows.")) {
      assertTrue(all.contains(text), text);
    }
  }

  @Test
  void everySymptomHasItsPocketCard() {
    for (String symptom : SampleBook.plain().symptoms().keySet()) {
      assertTrue(site.files().containsKey("cards/" + symptom + ".pdf"), symptom);
      assertTrue(
          site.text("symptom/" + symptom + ".html").contains("../cards/" + symptom + ".pdf"),
          symptom);
    }
  }

  @Test
  void chartsStandAloneOnTheirSheetsAndStayText() {
    long charts =
        pages.stream().filter(page -> PAGE_OF.matcher(page).results().count() > 1).count();
    assertEquals(
        site.files().keySet().stream().filter(path -> path.startsWith("charts/")).count(), charts);
  }

  @Test
  void namesItselfAndItsLanguage() {
    assertEquals("Walk-in freezers, service handbook", book.getDocumentInformation().getTitle());
    assertEquals("Brantmoor Cold", book.getDocumentInformation().getAuthor());
    assertEquals("en", book.getDocumentCatalog().getLanguage());
    assertEquals(
        "2026-03-02T00:00:00Z",
        book.getDocumentInformation().getCreationDate().toInstant().toString());
  }

  @Test
  void bookmarksLeadToTheComplaints() {
    List<String> titles = new ArrayList<>();
    for (PDOutlineItem item : book.getDocumentCatalog().getDocumentOutline().children()) {
      titles.add(item.getTitle());
      item.children().forEach(child -> titles.add(child.getTitle()));
    }
    assertTrue(titles.contains("Room is too warm"), titles.toString());
    assertTrue(titles.contains("Equipment"), titles.toString());
  }

  @Test
  void fontsAreEmbedded() throws IOException {
    for (PDPage page : book.getPages()) {
      for (COSName name : page.getResources().getFontNames()) {
        PDFont font = page.getResources().getFont(name);
        assertTrue(font.isEmbedded(), font.getName());
      }
    }
  }

  @Test
  void sheetsHaveTheSizeAskedFor() throws IOException {
    Options options = new Options(false, List.of(), true, Paper.LETTER, new TreeMap<>());
    Published letter = Published.publish(SampleBook.plain(), options, temp.resolve("letter"));
    try (PDDocument document = Loader.loadPDF(letter.files().get("handbook.pdf"))) {
      assertEquals(612, document.getPage(0).getMediaBox().getWidth(), 1);
      assertEquals(792, document.getPage(0).getMediaBox().getHeight(), 1);
    }
    assertEquals(595, book.getPage(0).getMediaBox().getWidth(), 1);
  }

  @Test
  void hostileTextsArePrintedAsText() throws IOException {
    String hostile = "<b>x</b> ${7+7} &amp; \"' </style> ]]>";
    KnowledgeBase kb = new SampleBook(text -> text + " " + hostile).build();
    Published made = Published.publish(kb, Options.release(true), temp.resolve("hostile"));
    try (PDDocument document = Loader.loadPDF(made.files().get("handbook.pdf"))) {
      String all = String.join(" ", pagesOf(document)).replaceAll("\\s+", " ");
      assertTrue(all.contains("Prove it dead first. " + hostile), all);
    }
  }

  @Test
  void saysWhichCharactersItCannotDraw() throws IOException {
    KnowledgeBase kb = new SampleBook(text -> text + " \u05D0\u4F60 \u2212 \u03A9").build();
    Summary summary =
        new SitePublisher()
            .publish(kb, new TreeMap<>(), Options.release(true), temp.resolve("scripts"));
    assertEquals("\u05D0\u4F60", summary.undrawn());
  }

  @Test
  void picturesOfGuidesAreInIt() throws IOException {
    Options options =
        new Options(false, List.of(), true, Paper.A4, new TreeMap<>(Map.of("a coil.png", PIXEL)));
    SitePublisher publisher = new SitePublisher();
    publisher.publish(withPicture(), new TreeMap<>(), options, temp.resolve("pictures"));
    Published made = Published.read(temp.resolve("pictures"));
    assertArrayEquals(PIXEL, made.files().get("guide/a coil.png"));
    assertTrue(made.text("guide/gauges.html").contains("src=\"../guide/a%20coil.png\""));
    try (PDDocument document = Loader.loadPDF(made.files().get("handbook.pdf"))) {
      int pictures = 0;
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getXObjectNames()) {
          pictures += page.getResources().isImageXObject(name) ? 1 : 0;
        }
      }
      assertEquals(1, pictures);
    }
  }

  private static KnowledgeBase withPicture() {
    return new SampleBook(text -> text.equals("The end.") ? "![A coil](<a coil.png>)" : text)
        .build();
  }

  @Test
  void aDraftSaysSoOnEveryPage() throws IOException {
    Published draft =
        Published.publish(
            SampleBook.plain(), Options.draft(List.of(), true), temp.resolve("draft"));
    try (PDDocument document = Loader.loadPDF(draft.files().get("handbook.pdf"))) {
      for (String page : pagesOf(document)) {
        assertTrue(page.contains("DRAFT"), page);
      }
    }
  }

  @Test
  void equalBooksAreEqualBytes() throws IOException {
    Published again =
        Published.publish(
            SampleBook.plain(), SampleChanges.release(SampleBook.plain()), temp.resolve("again"));
    assertArrayEquals(site.files().get("handbook.pdf"), again.files().get("handbook.pdf"));
  }
}
