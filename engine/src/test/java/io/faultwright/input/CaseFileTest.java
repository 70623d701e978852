package io.faultwright.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.Answer;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import io.faultwright.resolve.GivenCase;
import io.faultwright.resolve.GivenCases;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CaseFileTest {
  private static final Resolution BASE =
      Resolver.resolution(
          new Sources(
              List.of(
                  new SourceFile(
                      "handbook.yaml",
                      """
                      handbook:
                        { title: Small, maker: Brantmoor Cold, revision: "1", date: 2026-03-02,
                          language: en, disclaimer: Made up. }
                      equipment:
                        families: { fell: { title: Fell } }
                        models: { FL-1: { title: Fell 1, family: fell, options: {} } }
                      readings:
                        ice: { ask: "How is the ice?", values: [untouched, loose, none] }
                        room: { ask: "How warm is the room?", unit: °C, range: -40 to 40 }
                      faults:
                        valve-stuck: { title: Valve stuck, remedy: [Replace it.], verify: [Look.] }
                        fan-dead: { title: Fan dead, remedy: [Replace it.], verify: [Look.] }
                      symptoms:
                        ice-left:
                          title: Ice is left
                          rules:
                            valve:
                              { when: { ice: untouched }, conclude: valve-stuck, because: It is. }
                            call: { when: { ice: loose }, escalate: hotline, because: It is. }
                      """))));

  @Test
  void tableHasACaseInEachRow() {
    GivenCases read =
        read(
            "cases.csv",
            """
            case,symptom,expect,model,ice,room
            one,ice-left,valve-stuck,FL-1,untouched,-18 °C
            two,ice-left,,,loose,"0.5"

            ,ice-left,nothing yet,,,
            """);
    assertEquals(List.of(), read.problems());
    assertEquals(List.of("one", "two", "row-4"), ids(read));
    GivenCase one = read.cases().get(0);
    assertTrue(one.judged());
    assertEquals(Set.of(new Answer.OfFault("valve-stuck")), one.recorded().expect());
    assertEquals("FL-1", one.recorded().given().equipment().get("model"));
    assertEquals(
        new Value.Number(Decimals.parse("-18")), one.recorded().given().readings().get("room"));
    assertFalse(read.cases().get(1).judged());
    assertTrue(read.cases().get(2).judged());
  }

  @Test
  void spreadsheetsMayUseSemicolonsAndTabs() {
    assertEquals(1, read("a.csv", "symptom;ice;expect\nice-left;loose;escalate\n").cases().size());
    assertEquals(1, read("a.tsv", "symptom\tice\nice-left\tloose\n").cases().size());
    assertEquals(1, read("standard input", "symptom,ice\nice-left,loose\n").cases().size());
  }

  @Test
  void cellOfExpectSaysWhatYamlSays() {
    assertExpect(
        "\"valve-stuck; fan-dead\"",
        new Answer.OfFault("valve-stuck"),
        new Answer.OfFault("fan-dead"));
    assertExpect("refer: ice-left", new Answer.OfReferral("ice-left"));
    assertExpect("escalate", new Answer.OfEscalation("hotline"));
    assertExpect("escalate: the office", new Answer.OfEscalation("the office"));
  }

  private static void assertExpect(String cell, Answer... expected) {
    GivenCases read = read("a.csv", "symptom,expect\nice-left," + cell + "\n");
    assertEquals(List.of(), read.problems());
    assertEquals(Set.of(expected), read.cases().get(0).recorded().expect());
  }

  @Test
  void rowThatIsWrongSpoilsNoOther() {
    GivenCases read =
        read(
            "cases.csv",
            """
            case,symptom,ice
            a,ice-left,untuched
            b,ice-left,loose
            "c,
            d",ice-left,nonsense
            b,ice-left,none
            """);
    assertEquals(List.of("b"), ids(read));
    assertEquals(
        List.of("cases.csv:2:12", "cases.csv:5:13", "cases.csv:6:1"),
        read.problems().stream().map(problem -> problem.places().get(0).toString()).toList());
    assertEquals("did you mean `untouched`?", read.problems().get(0).help());
  }

  @Test
  void unknownColumnIsSaidOnceAtTheHeader() {
    Problem problem = refused("cases.csv", "symptom,icy\nice-left,loose\nice-left,loose\n");
    assertEquals("unknown column `icy`", problem.message());
    assertEquals("cases.csv:1:9", problem.places().get(0).toString());
    assertEquals("did you mean `ice`?", problem.help());
  }

  @Test
  void tableNeedsASymptom() {
    assertEquals("there is no column `symptom`", refused("a.csv", "ice\nloose\n").message());
  }

  @Test
  void openQuoteIsReportedWhereItsRowBeginsAndSpoilsNoOther() {
    GivenCases read = read("a.csv", "symptom,ice\nice-left,\"loose\nice-left,none\n");
    assertEquals("a.csv:2:1", read.problems().get(0).places().get(0).toString());
    assertEquals(1, read.problems().size());
    assertEquals(List.of("row-3"), ids(read));
  }

  @Test
  void yamlNeedsNoExpectation() {
    GivenCases read =
        read(
            "cases.yaml",
            """
            cases:
              a: { symptom: ice-left, given: { model: FL-1, ice: loose, room: cannot be taken } }
            """);
    assertEquals(List.of(), read.problems());
    assertFalse(read.cases().get(0).judged());
    assertEquals(
        new Value.NotTaken(), read.cases().get(0).recorded().given().readings().get("room"));
  }

  @Test
  void otherSectionsAreRefused() {
    assertEquals(
        "a file of cases has no section `readings`",
        refused("a.yaml", "readings:\n  x: {}\n").message());
    assertEquals("the file has no cases", refused("a.yaml", "").message());
    assertEquals("the file must be a map, found a list", refused("a.yaml", "- a\n").message());
  }

  @Test
  void findingsOfACheckAreCases() {
    GivenCases read =
        read(
            "check.json",
            """
            {"handbook": "Small", "findings": [
              {"kind": "unused-reading", "symptom": null, "witness": null},
              {"kind": "gap", "symptom": "ice-left",
               "witness": {"model": "FL-1", "ice": "none", "room": "-12.5 °C"}}]}
            """);
    assertEquals(List.of(), read.problems());
    assertEquals(List.of("finding-2"), ids(read));
    assertEquals(
        new Value.Number(Decimals.parse("-12.5")),
        read.cases().get(0).recorded().given().readings().get("room"));
  }

  private static List<String> ids(GivenCases read) {
    return read.cases().stream().map(one -> one.recorded().id()).toList();
  }

  private static GivenCases read(String name, String text) {
    return ReadCases.read(SourceFile.of(name, text), BASE, TableUse.OWN);
  }

  private static Problem refused(String name, String text) {
    Unreadable refused = assertThrows(Unreadable.class, () -> read(name, text));
    return refused.problems().get(0);
  }
}
