package io.faultwright.render.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.font.NameFonts;
import io.faultwright.layout.QrSymbol;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class FittingTest {
  private static final Shaper SHAPER = new Shaper(new NameFonts(List.of()));
  private static final double WIDTH = 500;

  private static Fitting fitting(String text) {
    Fitting fitting = Fitting.of(text, SHAPER, false, 40, WIDTH);
    fitting.lines().forEach(line -> assertTrue(line.width() * fitting.size() <= WIDTH + 1e-6));
    return fitting;
  }

  @Test
  void aShortNameIsAsLargeAsMayBe() {
    assertEquals(40, fitting("Ada Nør").size());
    assertEquals(1, fitting("Ada Nør").lines().size());
  }

  @Test
  void aLongNameGetsASecondLineBeforeItGetsSmall() {
    Fitting fitting =
        fitting("Maria da Conceição dos Santos Albuquerque de Vasconcelos e Figueiredo");
    assertEquals(2, fitting.lines().size());
    assertTrue(fitting.size() >= 20, "" + fitting.size());
  }

  @Test
  void aNameWithoutBlanksIsBrokenWhereItMust() {
    assertTrue(fitting("山".repeat(80)).lines().size() > 1);
    assertTrue(fitting("W".repeat(400)).lines().size() > 3);
  }

  /** A title that nobody writes makes a page that nobody reads, and not a run without an end. */
  @Test
  void anEndlessTitleComesToAnEnd() {
    QrSymbol code = QrSymbol.of("x", 20).orElseThrow();
    String title = "word ".repeat(400);
    CertificateSheet sheet =
        new CertificateSheet(
            "en",
            "2026-04-14",
            "Maker",
            "Certificate",
            "Ada",
            "passed",
            title,
            List.of(),
            "Sign",
            List.of("Number"),
            code,
            "QR code");
    assertTimeoutPreemptively(
        Duration.ofSeconds(30),
        () -> assertTrue(new CertificatePdf(new NameFonts(List.of())).write(sheet).length > 0));
  }
}
