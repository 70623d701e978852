package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Problem;
import io.faultwright.source.Place;
import io.faultwright.wording.SampleBase;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CheckJunitTest {
  private static final Surroundings AROUND =
      new Surroundings("rules/freezers/", Optional.empty(), Optional.empty());

  private static String written(boolean strict) {
    return new CheckJunit(AROUND, strict, false)
        .write(SampleBase.build(), SampleReport.SOURCES, SampleReport.build());
  }

  @Test
  void wholeReportIsStored() {
    Golden.check("check-junit.xml", written(false));
  }

  @Test
  void reportIsValid() {
    assertEquals(Optional.empty(), Validity.junit(written(false)));
    assertTrue(Validity.junit(written(false).replace("hostname", "host")).isPresent());
  }

  @Test
  void warningsFailOnlyWhereTheyCount() {
    String failure = "<failure message=\"no condition asks for `pressure`\"";
    assertTrue(written(true).contains(failure));
    assertEquals(-1, written(false).indexOf(failure));
    assertTrue(written(false).contains("warning[unused-reading]"));
  }

  @Test
  void failuresSayWhere() {
    assertTrue(written(false).contains("\">rules/freezers/rules/eis.yaml:2:3\n"));
  }

  @Test
  void problemsAreErrors() {
    String xml =
        new CheckJunit(AROUND, false, false)
            .write(
                SampleReport.SOURCES,
                List.of(
                    new Problem(List.of(), "there is no <handbook> here", ""),
                    Problem.at(new Place("rules/eis.yaml", 5, 17, 3), "`icy` is no reading", "")));
    assertEquals(Optional.empty(), Validity.junit(xml));
    assertTrue(xml.contains("tests=\"2\" failures=\"0\" errors=\"2\""), xml);
    assertTrue(xml.contains("message=\"there is no &lt;handbook&gt; here\""), xml);
    assertTrue(xml.contains("rules/freezers/rules/eis.yaml:5:17\n"), xml);
  }
}
