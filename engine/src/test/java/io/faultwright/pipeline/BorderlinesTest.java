package io.faultwright.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.input.TableUse;
import io.faultwright.model.Answer;
import io.faultwright.quantity.Decimals;
import io.faultwright.run.Borderline;
import io.faultwright.run.Borderline.End;
import io.faultwright.run.Borderline.Found;
import io.faultwright.run.Borderline.Near;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.BufferedReader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BorderlinesTest {
  private static final String BASE =
      """
      handbook: { title: T, maker: Brantmoor Cold, revision: "1", date: 2026-03-02, language: en, disclaimer: D }
      readings:
        ambient: { ask: A, unit: °C, range: 0 to 40, accuracy: 1 K }
        discharge: { ask: D, unit: bar(g), range: 0 to 30, accuracy: 1 % of 35 }
        room: { ask: R, unit: °C, range: -40 to 30, accuracy: 0.5 K }
        coil: { ask: C, unit: °C, range: -40 to 30, accuracy: 0.5 K }
        apart: { difference: [room, coil] }
        condenser-top: { ask: T, values: [hot, warm] }
      limits:
        discharge:
          by: [ambient]
          between: interpolate
          rows:
            - { ambient: 0, high: 10 }
            - { ambient: 40, high: 20 }
      faults:
        dirty: { title: Dirty, remedy: [Clean it.], verify: [Read again.] }
        fine: { title: Fine, remedy: [Look on.], verify: [Read again.] }
      symptoms:
        by-limits:
          title: By limits
          never:
            hot: { when: { discharge: not above limits, condenser-top: hot }, because: Heat needs pressure. }
            warm: { when: { discharge: above limits, condenser-top: warm }, because: Pressure brings heat. }
          rules:
            high: { when: { discharge: above limits }, conclude: dirty, because: B }
            right: { when: { discharge: not above limits }, conclude: fine, because: B }
        by-difference:
          title: By difference
          rules:
            far: { when: { apart: above 8 K }, conclude: dirty, because: B }
            near: { when: { apart: at most 8 K }, conclude: fine, because: B }
      """;

  private static Optional<Borderline> of(String symptom, String given) {
    String text =
        BASE
            + "cases:\n  one: { symptom: "
            + symptom
            + ", given: {"
            + given
            + "}, expect: fine }\n";
    return new CaseRuns(new Sources(List.of(new SourceFile("handbook.yaml", text))))
        .named(List.of())
        .runs()
        .get(0)
        .borderline();
  }

  private static List<Answer> others(Found found) {
    return found.others().stream().flatMap(o -> o.verdict().answers().stream()).toList();
  }

  /** 14.9 bar is 0.1 from the limit at 20 °C; the gauge and the moving limit give 0.35 and 0.25. */
  @Test
  void aLimitMovesWithItsDriver() {
    Found found = (Found) of("by-limits", "ambient: 20, discharge: 14.9").orElseThrow();
    assertEquals(List.of(new Answer.OfFault("dirty")), others(found));
    assertEquals(
        List.of(
            new Near(
                "discharge",
                End.UPPER_LIMIT,
                Decimals.parse("15"),
                Decimals.parse("0.1"),
                Decimals.parse("0.35"),
                new TreeMap<>(Map.of("ambient", Decimals.parse("1"))))),
        found.near());
    assertEquals(Optional.of("condenser-top"), found.next());
    assertEquals(true, found.decides());
  }

  /** 0.35 bar of the gauge and 0.25 bar of the limit together are 0.6 bar, and no more. */
  @Test
  void bothTolerancesCount() {
    assertEquals(Optional.empty(), of("by-limits", "ambient: 20, discharge: 14.4"));
    assertEquals(true, of("by-limits", "ambient: 20, discharge: 14.41").isPresent());
  }

  @Test
  void theAccuraciesOfADifferenceAddUp() {
    Found found = (Found) of("by-difference", "room: 5, coil: -2.1").orElseThrow();
    assertEquals(List.of(new Answer.OfFault("dirty")), others(found));
    assertEquals(Optional.empty(), of("by-difference", "room: 5, coil: -2"));
  }

  @Test
  void rowSaysTheSameAloneAsAmongOthers() {
    String header = "case,symptom,ambient,discharge,note\n";
    List<String> rows =
        IntStream.range(0, 40)
            .mapToObj(i -> "c" + i + ",by-limits,20,14." + i + ",\"two\nlines, \"\"quoted\"\"\"\n")
            .toList();
    List<Optional<Borderline>> alone =
        rows.stream().flatMap(row -> run(header + row).stream()).toList();
    assertEquals(alone, run(header + String.join("", rows)));
    assertEquals(40, alone.size());
    assertTrue(alone.stream().anyMatch(Optional::isPresent));
  }

  private static List<Optional<Borderline>> run(String table) {
    CaseRuns runs = new CaseRuns(new Sources(List.of(new SourceFile("handbook.yaml", BASE))));
    List<Optional<Borderline>> found = new ArrayList<>();
    BufferedReader text = new BufferedReader(new StringReader(table));
    runs.of("t.csv", text, TableUse.OWN, run -> found.add(run.borderline()));
    return found;
  }
}
