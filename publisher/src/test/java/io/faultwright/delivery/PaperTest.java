package io.faultwright.delivery;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.layout.Paper;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Quiz.Variant;
import io.faultwright.quiz.QuizWording.Line;
import io.faultwright.render.html.PaperHtml;
import io.faultwright.render.pdf.PdfBook;
import io.faultwright.render.pdf.PdfPrinter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The quiz on paper, read back as text, and the tables beside it. */
class PaperTest {
  private static final SmallQuiz SMALL = SmallQuiz.MADE;
  private static final List<String> PAGES = new ArrayList<>();
  private static PdfBook pdf;

  @BeforeAll
  static void print() throws IOException {
    pdf = set();
    try (PDDocument document = Loader.loadPDF(pdf.bytes())) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper text = new PDFTextStripper();
        text.setSortByPosition(true);
        text.setStartPage(page);
        text.setEndPage(page);
        PAGES.add(text.getText(document).replaceAll("\\s+", " "));
        PDRectangle size = document.getPage(page - 1).getMediaBox();
        assertEquals(Paper.A4.width(), size.getWidth(), 1);
        assertEquals(Paper.A4.height(), size.getHeight(), 1);
      }
    }
  }

  private static PdfBook set() throws IOException {
    List<HandOut> handOuts = List.of(SMALL.handOut(1), SMALL.handOut(2), SMALL.handOut(3));
    return new PdfPrinter().print(new PaperHtml().print(handOuts, Paper.A4), "2026-03-02");
  }

  /** Printed on both sides, no two participants share a sheet; no sheet is without its owner. */
  @Test
  void everyParticipantBeginsOnASheetOfTheirOwn() {
    assertEquals("", pdf.undrawn());
    for (int participant = 1; participant <= 3; participant++) {
      String heading = "Answer sheet of participant " + participant;
      int page = 0;
      while (!PAGES.get(page).contains(heading)) {
        page++;
      }
      assertEquals(0, page % 2, heading + " on page " + (page + 1));
      assertTrue(PAGES.get(page).contains("Give this sheet to your trainer by 2026-04-21."));
      String foot = "Participant " + participant + " morning " + SMALL.keys().quiz();
      assertTrue(PAGES.get(page).contains(foot), PAGES.get(page));
      assertTrue(PAGES.get(page + 1).contains(foot), PAGES.get(page + 1));
    }
  }

  @Test
  void everyQuestionIsPrintedWithItsChoices() {
    String all = String.join(" ", PAGES);
    int at = 0;
    for (int participant = 1; participant <= 3; participant++) {
      for (Question question : SMALL.handOut(participant).questions()) {
        for (Line line : question.known()) {
          at = found(all, line.label() + " " + line.text(), at);
        }
        at = found(all, question.text(), at);
        for (int i = 0; i < question.choices().size(); i++) {
          at = found(all, (i + 1) + " " + question.choices().get(i), at);
        }
      }
    }
  }

  private static int found(String all, String text, int from) {
    int at = all.indexOf(text, from);
    assertTrue(at >= 0, text + " after " + from);
    return at;
  }

  @Test
  void theSameQuizIsTheSameBytes() throws IOException {
    assertArrayEquals(pdf.bytes(), set().bytes());
  }

  @Test
  void thereIsATableToFillAndOneWithWhatIsRight() {
    assertEquals(
        "\uFEFFparticipant,name,handed-in,1,2,3,4,5,6,7,8\n", AnswerTables.toFill(SMALL.quiz()));
    List<String> key = AnswerTables.key(SMALL.quiz()).lines().toList();
    assertEquals("\uFEFFparticipant,1,2,3,4,5,6,7,8", key.get(0));
    Variant third = SMALL.quiz().variants().get(2);
    String[] cells = key.get(3).split(",");
    for (int i = 0; i < 8; i++) {
      Item item = third.items().get(i);
      assertTrue(item.choices().get(Integer.parseInt(cells[i + 1]) - 1).right(), item.id());
    }
  }
}
