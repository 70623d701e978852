package io.faultwright.find;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How texts come apart into words. */
class TermsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "The valve, powered! | powered the valve",
        "BC-0412 | 0412 bc bc0412",
        "FL-12GP1 | 12gp1 fl fl12gp1",
        "hot-gas valve | gas hot hotgas valve",
        "R-404A/R-449A | 404a 449a r r404ar449a",
        "Heißgasventil für Kühlräume | fur heissgasventil kuhlraume",
        "STRASSE Straße | strasse",
        "\u0130stanbul \u00C5ngstr\u00F6m caf\u00E9 cafe\u0301 | angstrom cafe istanbul",
        "soft\u00ADware | software",
        "\uFB01lter \u2460 \u00BD | 1 2 filter",
        "\u039F\u03B4\u03CC\u03C2 \u03BF\u03B4\u03CC\u03C3 | \u03BF\u03B4\u03BF\u03C3",
        "\u4F60\u597D, \u4E16\u754C | \u4E16\u754C \u4F60\u597D",
        "-- … <> | ''"
      })
  void wordsArePlain(String text, String terms) {
    assertEquals(
        new TreeSet<>(Arrays.stream(terms.split(" ")).filter(t -> !t.isEmpty()).toList()),
        Terms.of(text));
  }
}
