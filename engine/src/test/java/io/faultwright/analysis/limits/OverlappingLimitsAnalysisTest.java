package io.faultwright.analysis.limits;

import static io.faultwright.analysis.SmallBases.findings;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.RegionTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Where two rows of a table hold at once. */
class OverlappingLimitsAnalysisTest {
  private static List<Finding> found(String table) {
    return findings(
        FindingKind.OVERLAPPING_LIMITS,
        """
        equipment:
          families: { fell: { title: Fell } }
          models: { F-1: { family: fell, options: {}, software: ["1.0", "2.0"] } }
        readings:
          d: { ask: D, unit: K, range: 0 to 30 }
          e: { ask: E, unit: K, range: 0 to 30 }
          m: { ask: M, unit: K, range: 0 to 9 }
        limits:
          m: TABLE
        """
            .replace("TABLE", table));
  }

  @Test
  void theStretchThatTheyShare() {
    Finding finding =
        found("{ by: [d], between: step, rows: [{ d: 0 to 20, low: 1 }, { d: 15 to 30, low: 2 }] }")
            .get(0);
    assertEquals(List.of(new RegionTest("d", "15 to 20 K")), finding.region());
    assertEquals(
        Map.of("model", "F-1", "software", "1.0"), finding.witness().orElseThrow().equipment());
    assertEquals(2, finding.places().size());
  }

  @Test
  void onTwoDriversBothHaveToMeet() {
    String rows =
        "{ by: [d, e], between: step, rows: [{ d: 0 to 20, e: 0 to 10, low: 1 },"
            + " { d: 15 to 30, e: FROM to 20, low: 2 }] }";
    assertEquals(
        List.of(new RegionTest("d", "15 to 20 K"), new RegionTest("e", "5 to 10 K")),
        found(rows.replace("FROM", "5")).get(0).region());
    assertEquals(List.of(), found(rows.replace("FROM", "10")));
  }

  @Test
  void pointsMeetWhereTheyAreTheSame() {
    String rows =
        "{ by: [d], between: interpolate, rows: [{ d: 0, low: 1 }, { d: OTHER, low: 2 },"
            + " { d: 30, low: 2 }] }";
    assertEquals(
        List.of(new RegionTest("d", "30 K")), found(rows.replace("OTHER", "30")).get(0).region());
    assertEquals(List.of(), found(rows.replace("OTHER", "29")));
  }

  @Test
  void rowsForSomeEquipmentMeetOnEquipmentOfBoth() {
    String rows =
        "{ by: [software], rows: [{ software: 1.0, low: 1 }, { software: OTHER, low: 2 }] }";
    assertEquals(List.of(), found(rows.replace("OTHER", "2.0")));
    List<Finding> both = found(rows.replace("OTHER", "at least 1.0"));
    assertEquals(List.of(), both.get(0).region());
    assertEquals("1.0", both.get(0).witness().orElseThrow().equipment().get("software"));
  }
}
