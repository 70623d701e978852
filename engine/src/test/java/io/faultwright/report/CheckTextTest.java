package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.wording.SampleBase;
import java.util.List;
import org.junit.jupiter.api.Test;

class CheckTextTest {
  @Test
  void findingsAreShownWithTheirLinesAndAWitness() {
    Golden.check("check.txt", text(SampleReport.build(), Ink.PLAIN));
  }

  @Test
  void cleanReportSaysWhatWasProved() {
    CheckReport clean = new CheckReport("Sample", List.of(), List.of(), List.of(), 0, 0);
    assertEquals("Sample\n\nno cases\nno errors, no warnings\n", text(clean, Ink.PLAIN));
  }

  @Test
  void colourChangesNothingButColour() {
    String coloured = text(SampleReport.build(), Ink.COLOURED);
    assertTrue(coloured.contains("\u001B[1;31merror[gap]\u001B[0m"));
    assertEquals(
        text(SampleReport.build(), Ink.PLAIN), coloured.replaceAll("\u001B\\[[0-9;]*m", ""));
  }

  @Test
  void textOfTheHandbookCannotSteerATerminal() {
    CheckReport hostile =
        new CheckReport("\u001B[2Jgone\u202Etxt", List.of(), List.of(), List.of(), 0, 0);
    String text = text(hostile, Ink.PLAIN);
    assertFalse(text.contains("\u001B"));
    assertFalse(text.contains("\u202E"));
  }

  private static String text(CheckReport report, Ink ink) {
    return new CheckText(SampleBase.build(), SampleReport.SOURCES, ink).write(report);
  }
}
