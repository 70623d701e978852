package io.faultwright.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.Answer;
import io.faultwright.model.Case;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import io.faultwright.resolve.ColumnMap;
import io.faultwright.resolve.GivenCases;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ColumnMapTest {
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
                        fan: { ask: "Does it run?", values: yes/no }
                        room: { ask: "How warm is the room?", unit: °C, range: -40 to 40 }
                        coil: { ask: "How warm is the coil?", unit: °C, range: -40 to 40 }
                        apart: { difference: [room, coil] }
                        suction: { ask: "Suction?", unit: bar(g), range: -1 to 12 }
                      faults:
                        stuck: { title: Valve stuck, remedy: [Replace it.], verify: [Look.] }
                        dead: { title: Fan dead, remedy: [Replace it.], verify: [Look.] }
                      symptoms:
                        ice-left:
                          title: Ice is left
                          rules:
                            valve: { when: { ice: untouched }, conclude: stuck, because: It is. }
                      """))));

  private static final String MAP =
      """
      columns:
        Job: origin
        Unit: model
        Ice: { is: ice, words: { fest: untouched, lose: loose, "?": "" } }
        Fan: { is: fan, words: { oui: yes, "1": yes, non: no } }
        Suction psi: { is: suction, unit: psi(g) }
        Room F: { is: room, unit: °F }
        Found: { is: expect, words: { Valve: stuck, Both: stuck; dead } }
        Unclear: unclear
      always: { symptom: ice-left }
      ignore: [Customer]
      blank: [n/a, "-"]
      decimal: comma
      """;

  private static final String HEADER =
      "Job;Unit;Ice;Fan;Suction psi;Room F;Found;Unclear;Customer\n";

  private static ColumnMap map(String text) {
    return BASE.columns(SourceFile.of("map.yaml", text));
  }

  private static GivenCases read(String rows) {
    return ReadCases.read(
        SourceFile.of("jobs.csv", HEADER + rows), BASE, TableUse.foreign(map(MAP)));
  }

  private static Case one(String row) {
    GivenCases read = read(row);
    assertEquals(List.of(), read.problems());
    return read.cases().get(0).recorded();
  }

  @Test
  void cellsSayWhatTheMapMakesOfThem() {
    Case read = one("W-7;FL-1;FEST;1;14,5;-0,4;Valve;Which port?;Somebody\n");
    assertEquals("ice-left", read.symptom());
    assertEquals(Optional.of("W-7"), read.origin());
    assertEquals(Map.of("model", "FL-1"), read.given().equipment());
    assertEquals(new Value.Word("untouched"), read.given().readings().get("ice"));
    assertEquals(new Value.Word("yes"), read.given().readings().get("fan"));
    assertEquals(Set.of(new Answer.OfFault("stuck")), read.expect());
    assertEquals(List.of("Which port?"), read.unclear());
  }

  /** -0.4 °F is -18 °C exactly; one psi is 6.894757293168 kPa (NIST SP 811, appendix B.8). */
  @Test
  void bareNumbersHaveTheUnitOfTheirColumn() {
    Case read = one("W-7;FL-1;;;100;-0,4;;;\n");
    assertEquals(new Value.Number(Decimals.parse("-18")), read.given().readings().get("room"));
    Value.Number suction = (Value.Number) read.given().readings().get("suction");
    assertEquals(6.894757293168, suction.amount().doubleValue(), 1e-9);
  }

  @Test
  void numberWithAUnitKeepsIt() {
    Case read = one("W-7;FL-1;;;0,5 bar(g);;;;\n");
    assertEquals(new Value.Number(Decimals.parse("0.5")), read.given().readings().get("suction"));
  }

  @Test
  void blankWordsSayNothing() {
    Case read = one("W-7;FL-1;?;N/A;-;;;;\n");
    assertTrue(read.given().readings().isEmpty());
  }

  @Test
  void severalFaultsStandBehindOneWord() {
    assertEquals(2, one("W-7;FL-1;;;;;both;;\n").expect().size());
  }

  @Test
  void fullStopIsNotGuessedAt() {
    GivenCases read = read("W-7;FL-1;;;1.234;;;;\nW-8;FL-1;;;1,2;;;;\n");
    assertEquals(1, read.cases().size());
    Problem problem = read.problems().get(0);
    assertEquals("jobs.csv:2:12", problem.places().get(0).toString());
    assertTrue(problem.message().startsWith("`1.234` has a full stop"), problem.message());
  }

  @Test
  void wordThatTheMapDoesNotHaveIsReported() {
    Problem problem = read("W-7;FL-1;;ouais;;;;;\n").problems().get(0);
    assertEquals("`fan` has no value `ouais`, and the column map no such word", problem.message());
    assertEquals("known here: `1`, `cannot be taken`, `no`, `non`, `oui`, `yes`", problem.help());
    assertEquals("jobs.csv:2:11", problem.places().get(0).toString());
  }

  @Test
  void wordOfTheHandbookMayStandInThePlaceOfTheFileOwn() {
    assertEquals(new Value.Word("yes"), one("W-7;FL-1;;yes;;;;;\n").given().readings().get("fan"));
    assertEquals(Set.of(new Answer.OfFault("dead")), one("W-7;FL-1;;;;;dead;;\n").expect());
    assertEquals(
        2,
        one("W-7;FL-1;;;;;stuck; dead;;\n".replace("stuck; dead", "\"stuck; dead\""))
            .expect()
            .size());
    Problem problem = read("W-7;FL-1;;;;;Vlave;;\n").problems().get(0);
    assertEquals("did you mean `valve`?", problem.help());
  }

  @Test
  void rowWithTooManyCellsIsNotRun() {
    GivenCases read = read("W-7;FL-1;lose;1;1;1;Valve;a remark; with a separator;x\n");
    assertEquals(0, read.cases().size());
    assertEquals("the row has 10 cells, the header has 9", read.problems().get(0).message());
  }

  /** The quote of the first row would swallow the second one, and three more. */
  @Test
  void quoteThatIsNotClosedCostsOneRow() {
    String good = "W-8;FL-1;lose;1;1;1;Valve;\"said \"\"no\"\"\";x\n";
    GivenCases read = read("W-7;FL-1;\"lose;1;1;1;Valve;;x\n" + good.repeat(4));
    assertEquals(4, read.cases().size());
    assertEquals("jobs.csv:2:1", read.problems().get(0).places().get(0).toString());
    assertEquals(1, read.problems().size());
  }

  @Test
  void unknownColumnIsNotedAndLeftOut() {
    CaseInput input =
        ReadCases.open(
            SourceFile.of("jobs.csv", "Jobb;Ice;Phone\n;fest;1\n"),
            BASE,
            TableUse.foreign(map(MAP)));
    List<String> notes =
        input.notes().stream().map(note -> note.message() + " / " + note.help()).toList();
    assertEquals(
        List.of(
            "unknown column `Jobb` is left out / did you mean `Job`?",
            "unknown column `Phone` is left out / say in a column map what it is, or put it under"
                + " `ignore` there"),
        notes.subList(0, 2));
    assertTrue(
        notes.contains("the table has no column `Job` / did you mean `Jobb`?"), notes::toString);
    assertEquals(List.of(), input.next().orElseThrow().problems());
  }

  @Test
  void symptomIsRequired() {
    Unreadable refused =
        assertThrows(
            Unreadable.class,
            () ->
                ReadCases.open(
                    SourceFile.of("jobs.csv", "Ice\nfest\n"),
                    BASE,
                    TableUse.foreign(map("columns: { Ice: ice }"))));
    assertEquals("there is no column `symptom`", refused.problems().get(0).message());
    assertEquals(
        "Ice", refused.excerpt().orElseThrow().line(refused.problems().get(0).places().get(0)));
  }

  @Test
  void misspeltHeadingOfTheSymptomIsSaid() {
    Unreadable refused =
        assertThrows(
            Unreadable.class,
            () ->
                ReadCases.open(
                    SourceFile.of("jobs.csv", "Complaint;Ice\nice-left;fest\n"),
                    BASE,
                    TableUse.foreign(map("columns: { Complain: symptom }"))));
    assertEquals("there is no column `Complain`", refused.problems().get(0).message());
    assertEquals("did you mean `Complaint`?", refused.problems().get(0).help());
  }

  @Test
  void mapIsCheckedBeforeARowIsRead() {
    Unreadable refused =
        assertThrows(
            Unreadable.class,
            () ->
                map(
                    """
                    columns:
                      Ice: icy
                      Fan: { is: fan, unit: °C, words: { oui: yess, OUI: yes } }
                      Suction: { is: suction, unit: psig }
                      Pressure: { is: suction, unit: psi(g) }
                      Line: { is: room, unit: bar(g) }
                      Superheat: apart
                      Found: { is: expect, words: { Valve: stuk } }
                    always: { symptom: ice-lef, ice: fest }
                    ignore: Ice
                    decimal: coma
                    colums: {}
                    """));
    List<String> found =
        refused.problems().stream()
            .map(
                problem ->
                    problem.places().get(0).line()
                        + " "
                        + problem.message()
                        + " / "
                        + problem.help())
            .toList();
    assertEquals(
        List.of(
            "2 `icy` is no reading, no equipment fact and no key of a case / did you mean `ice`?",
            "3 `fan` is not measured, so it has no unit / remove `unit`",
            "3 `fan` has no value `yess` / did you mean `yes`?",
            "3 word `OUI` stands twice / case makes no difference; keep one of the two",
            "4 unknown unit `psig` / did you mean `psi(g)`?",
            "5 two columns are `suction` / put one of them under `ignore`",
            "6 `bar(g)` is a gauge pressure, but `room` is in `°C`, a temperature / write the value"
                + " in `°C`",
            "7 `apart` is computed, it is not given / map `coil` and `room`, and put this column"
                + " under `ignore`",
            "8 unknown fault `stuk` / did you mean `stuck`?",
            "9 unknown symptom `ice-lef` / did you mean `ice-left`?",
            "9 `ice` has no value `fest` / known here: `loose`, `none`, `untouched`",
            "11 `decimal` cannot be `coma` / did you mean `comma`?",
            "12 unknown key `colums` in the column map / did you mean `columns`?"),
        found.stream().sorted(Comparator.comparingInt(ColumnMapTest::line)).toList());
  }

  private static int line(String problem) {
    return Integer.parseInt(problem.split(" ")[0]);
  }

  @Test
  void emptyMapIsReported() {
    Unreadable refused = assertThrows(Unreadable.class, () -> map("# nothing\n"));
    assertEquals("the column map is empty", refused.problems().get(0).message());
  }
}
