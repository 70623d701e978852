package io.faultwright.field;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.field.Contrast.Kind;
import io.faultwright.model.Condition.InInterval;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Sorted;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Interval;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FieldBookTest {
  private static final String HEADER = "symptom,model,software,pressure,line,room,frost,expect\n";

  @Test
  void countsEveryRowOnce() {
    FieldReport report =
        FieldBase.report(
            "symptom,pressure,expect\n"
                + "weak,1,dirty\n"
                + "weak,1,leak\n"
                + "weak,3,\n"
                + "weak,99,dirty\n"
                + "wek,1,dirty\n"
                + "weak,7,escalate\n"
                + "weak,,nothing yet\n");
    assertEquals(new RowCounts(7, 5, 2, 3, 1, 1), report.counts());
    SymptomReport weak = report.symptoms().get(0);
    assertEquals(List.of(3L, 1L, 1L), List.of(weak.agreed(), weak.disagreed(), weak.open()));
  }

  @Test
  void disagreementsAreGroupedByRuleAndConfirmedFault() {
    GroundReport low =
        FieldBase.low(
            FieldBase.report(
                "symptom,pressure,expect\n"
                    + "weak,1,leak\nweak,1,shut\nweak,1,shut\nweak,1,dirty\n"));
    assertEquals(1, low.agreed());
    assertEquals(3, low.disagreed());
    assertEquals(2, low.disagreements().get(0).rows());
    assertEquals("shut", low.disagreements().get(0).confirmed().first().name());
    assertEquals(
        List.of(3, 4),
        low.disagreements().get(0).first().stream().map(place -> place.line()).toList());
    assertEquals(Kind.TOO_FEW, low.disagreements().get(0).contrast().kind());
  }

  @Test
  void onlyTheFirstPlacesAreKept() {
    String rows =
        IntStream.range(0, 40).mapToObj(i -> "weak,1,leak\n").collect(Collectors.joining());
    Disagreement leak =
        FieldBase.low(FieldBase.report("symptom,pressure,expect\n" + rows)).disagreements().get(0);
    assertEquals(40, leak.rows());
    assertEquals(5, leak.first().size());
    assertEquals(Kind.NOTHING_AGREES, leak.contrast().kind());
  }

  @Test
  void measuredReadingSeparates() {
    Separation found =
        separation(i -> row(i, "1", i < 12 ? "10" : "4", "even", -10 + 5 * (i % 5)), 12, 28);
    assertEquals("line", found.subject());
    assertEquals(new InInterval(Interval.above(Decimals.parse("7"))), found.pattern());
    assertEquals(12, found.disagreeing());
    assertEquals(0, found.agreeing());
    assertEquals(28, found.ofAgreeing());
  }

  /** Neither operand separates, but their difference does. */
  @Test
  void derivedReadingSeparates() {
    Separation found =
        separation(
            i -> {
              int room = -10 + 5 * (i % 5);
              return row(i, "1", String.valueOf(room + (i < 12 ? 9 : 3)), "even", room);
            },
            12,
            28);
    assertEquals("apart", found.subject());
    assertEquals(new InInterval(Interval.above(Decimals.parse("6"))), found.pattern());
  }

  @Test
  void wordSeparates() {
    Separation found = separation(i -> row(i, "1", "5", i < 11 ? "part" : "even"), 12, 28);
    assertEquals("frost", found.subject());
    assertEquals(new OneOf(Sorted.set(List.of("part"))), found.pattern());
    assertEquals(11, found.disagreeing());
    assertEquals(12, found.ofDisagreeing());
  }

  @Test
  void softwareSeparatesByVersion() {
    Separation found =
        separation(
            i -> "weak,FL-1," + (i < 12 ? (i % 2 == 0 ? "2.9" : "2.10") : "3.0") + ",1,5,0,even",
            12,
            28);
    assertEquals("software", found.subject());
    assertEquals(new OneOf(Sorted.set(List.of("2.9", "2.10"))), found.pattern());
  }

  /** The family follows from the model; it says the same in fewer words. */
  @Test
  void factThatFollowsSeparates() {
    Separation found =
        separation(i -> "weak," + (i < 12 ? "TN-2" : "FL-1") + ",3.0,1,5,0,even", 12, 28);
    assertEquals("family", found.subject());
  }

  @Test
  void whatChanceWouldBringDoesNotSeparate() {
    String table = table(i -> row(i, "1", String.valueOf(i * 7 % 11), "even"), 12, 28);
    assertEquals(
        Kind.NOTHING_SEPARATES,
        FieldBase.low(FieldBase.report(table)).disagreements().get(0).contrast().kind());
  }

  private static String row(int i, String pressure, String line, String frost) {
    return row(i, pressure, line, frost, 0);
  }

  private static String row(int i, String pressure, String line, String frost, int room) {
    String model = i % 2 == 0 ? "FL-1" : "TN-2";
    String software = List.of("2.9", "2.10", "3.0").get(i % 3);
    return String.join(",", "weak", model, software, pressure, line, "" + room, frost);
  }

  private static Separation separation(IntFunction<String> row, int disagreeing, int agreeing) {
    String table = table(row, disagreeing, agreeing);
    Contrast contrast = FieldBase.low(FieldBase.report(table)).disagreements().get(0).contrast();
    assertEquals(Kind.SEPARATED, contrast.kind());
    return contrast.separation().orElseThrow();
  }

  private static String table(IntFunction<String> row, int disagreeing, int agreeing) {
    return HEADER
        + IntStream.range(0, disagreeing + agreeing)
            .mapToObj(i -> row.apply(i) + (i < disagreeing ? ",leak\n" : ",dirty\n"))
            .collect(Collectors.joining());
  }

  @Test
  void frequenciesAreThoseBeforePlusWhatWasConfirmed() {
    FieldReport report =
        FieldBase.report("symptom,pressure,expect\nweak,1,dirty\nweak,1,leak; shut\nweak,1,\n");
    assertEquals(
        List.of("dirty 3 1 4", "leak 1 1 2", "shut 1.5 1 2.5"),
        report.frequencies().stream()
            .map(
                update ->
                    update.fault()
                        + " "
                        + Decimals.show(update.before())
                        + " "
                        + update.counted()
                        + " "
                        + Decimals.show(update.after()))
            .toList());
  }

  /** The mean of a Dirichlet distribution: (3 + 1) of (3 + 1 + 1.5 + 3). */
  @Test
  void sharesAreMeansOfTheDirichletDistribution() {
    FieldReport report =
        FieldBase.report("symptom,pressure,expect\nweak,1,dirty\nweak,1,leak; shut\n");
    assertEquals(
        Decimals.parse("4").divide(Decimals.parse("8.5")),
        report.frequencies().get(0).shareAfter());
    assertEquals(
        Decimals.parse("3").divide(Decimals.parse("5.5")),
        report.frequencies().get(0).shareBefore());
  }

  @Test
  void remarksAreListedWithTheirPlace() {
    FieldReport report =
        FieldBase.report("symptom,pressure,unclear\nweak,1,\nweak,1,Which port?\n");
    assertEquals("Which port?", report.remarks().get(0).text());
    assertEquals(3, report.remarks().get(0).place().line());
  }
}
