package io.faultwright.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ItemAnalysisTest {
  /**
   * Sheets on which `1` is the right option and every other figure a wrong one; `-` is left out.
   */
  private static List<Sheet> sheets(List<String> rows) {
    return IntStream.range(0, rows.size())
        .mapToObj(who -> new Sheet("person " + (who + 1), items(rows.get(who))))
        .toList();
  }

  private static List<Given> items(String row) {
    return IntStream.range(0, row.length())
        .mapToObj(
            i ->
                new Given(
                    Integer.toString(i + 1),
                    "topic",
                    List.of("0", "1", "2"),
                    "1",
                    Optional.of(row.substring(i, i + 1)).filter(chosen -> !chosen.equals("-"))))
        .toList();
  }

  private static QuizReport report(String... rows) {
    return ItemAnalysis.of(sheets(List.of(rows)));
  }

  private static ItemReport published(int item) {
    return ItemAnalysis.of(sheets(PublishedAnswers.ROWS)).items().get(item - 1);
  }

  @Test
  void publishedReliability() {
    QuizReport report = ItemAnalysis.of(sheets(PublishedAnswers.ROWS));
    Reliability reliability = report.reliability().orElseThrow();
    assertEquals(10, report.participants());
    assertEquals(6.6, report.mean(), 1e-12);
    assertEquals(5.84, report.deviation() * report.deviation(), 1e-12);
    assertEquals(0.69635, reliability.kr20(), 0.000005);
    assertEquals(0.68417, reliability.kr21(), 0.000005);
    // By hand: the root of 5.84 x (1 - 0.69635).
    assertEquals(1.33166, reliability.standardError(), 0.00001);
  }

  /**
   * The figure that comes out where the variance of a sample and that of a population are mixed.
   */
  @Test
  void theVarianceOfTheTotalsIsThatOfThePopulation() {
    double kr20 = ItemAnalysis.of(sheets(PublishedAnswers.ROWS)).reliability().orElseThrow().kr20();
    assertEquals(0.7378, 10 / 9.0 * (1 - 2.18 / (5.84 * 10 / 9)), 0.00005);
    assertTrue(Math.abs(kr20 - 0.7378) > 0.04);
  }

  @Test
  void publishedCorrelations() {
    Map<Integer, List<Double>> published = new TreeMap<>();
    published.put(1, List.of(.7946, .7059));
    published.put(3, List.of(.2027, .0000));
    published.put(4, List.of(.6140, .4736));
    published.put(6, List.of(.4345, .2861));
    published.put(7, List.of(.1625, -.0274));
    published.put(9, List.of(.0828, -.1236));
    published.forEach(
        (item, expected) -> {
          assertEquals(expected.get(0), published(item).pointBiserial().orElseThrow(), 0.00005);
          assertEquals(expected.get(1), published(item).corrected().orElseThrow(), 0.00005);
        });
  }

  @Test
  void itemsAgainstTheRestAreFlagged() {
    Set<String> flagged =
        ItemAnalysis.of(sheets(PublishedAnswers.ROWS)).items().stream()
            .filter(item -> item.flags().contains(Flag.AGAINST_THE_REST))
            .map(ItemReport::item)
            .collect(Collectors.toSet());
    assertEquals(Set.of("7", "9"), flagged);
  }

  /** A correlation of nought is not taken for one below nought because of rounding. */
  @Test
  void aCorrelationOfNoughtIsNought() {
    assertEquals(0.0, published(3).corrected().orElseThrow());
    assertTrue(published(3).flags().isEmpty());
  }

  /** The covariance of all pairs of items, by the formula of Cronbach's alpha (from memory). */
  @Test
  void reliabilityEqualsTheOneFromCovariances() {
    Random random = new Random(7);
    for (int round = 0; round < 200; round++) {
      List<Sheet> sheets = sheets(rows(random, 2 + random.nextInt(30), 2 + random.nextInt(12)));
      Optional<Reliability> reliability = ItemAnalysis.of(sheets).reliability();
      Optional<Double> alpha = alpha(sheets);
      assertEquals(alpha.isPresent(), reliability.isPresent());
      alpha.ifPresent(a -> assertEquals(a, reliability.get().kr20(), 1e-9));
    }
  }

  private static List<String> rows(Random random, int people, int items) {
    List<String> rows = new ArrayList<>();
    for (int who = 0; who < people; who++) {
      double knows = random.nextDouble();
      rows.add(
          IntStream.range(0, items)
              .mapToObj(i -> random.nextDouble() < knows ? "1" : "0")
              .collect(Collectors.joining()));
    }
    return rows;
  }

  private static Optional<Double> alpha(List<Sheet> sheets) {
    int items = sheets.get(0).items().size();
    double own = 0;
    double shared = 0;
    for (int i = 0; i < items; i++) {
      for (int j = 0; j < items; j++) {
        double covariance = covariance(sheets, i, j);
        own += i == j ? covariance : 0;
        shared += i == j ? 0 : covariance;
      }
    }
    return Math.abs(own + shared) < 1e-9
        ? Optional.empty()
        : Optional.of(items / (items - 1.0) * shared / (own + shared));
  }

  private static double covariance(List<Sheet> sheets, int i, int j) {
    double one = sheets.stream().mapToDouble(sheet -> mark(sheet, i)).average().orElseThrow();
    double other = sheets.stream().mapToDouble(sheet -> mark(sheet, j)).average().orElseThrow();
    return sheets.stream()
        .mapToDouble(sheet -> (mark(sheet, i) - one) * (mark(sheet, j) - other))
        .average()
        .orElseThrow();
  }

  private static int mark(Sheet sheet, int item) {
    return sheet.items().get(item).isRight() ? 1 : 0;
  }

  /** Eleven persons: 27 in a hundred are three. By hand. */
  @Test
  void theBestAndTheWeakestAreCompared() {
    ItemReport item =
        report("111", "111", "110", "110", "100", "100", "100", "010", "000", "020", "002")
            .items()
            .get(1);
    // Best: two of 3 right, and two of 2 right for one place. Weakest: 000, 020 and 002, all wrong.
    assertEquals(1.0, item.discrimination(), 1e-12);
    assertEquals(Band.VERY_GOOD, item.band());
    assertEquals(5 / 11.0, item.difficulty(), 1e-12);
  }

  /** The order in which participants with the same total come does not matter. */
  @Test
  void thoseAtTheBorderCountInPart() {
    // Four persons, so one in each group; at the border two have 2 of 3, one of them item 1.
    QuizReport one = report("110", "011", "100", "000");
    QuizReport other = report("011", "110", "100", "000");
    assertEquals(0.5, one.items().get(0).discrimination(), 1e-12);
    assertEquals(one, other);
  }

  @Test
  void whatTellsNothingIsFlagged() {
    List<ItemReport> items = report("101", "102", "100").items();
    assertEquals(Set.of(Flag.EVERYBODY_RIGHT), items.get(0).flags());
    assertTrue(items.get(1).flags().contains(Flag.NOBODY_RIGHT));
    assertEquals(Optional.empty(), items.get(0).pointBiserial());
    assertEquals(Optional.empty(), items.get(1).corrected());
  }

  @Test
  void aWrongOptionThatTheBestPreferIsFlagged() {
    ItemReport item = report("1121", "1121", "1010", "0010", "0000", "0000", "0000").items().get(2);
    assertTrue(item.flags().contains(Flag.WRONG_OPTION_OF_THE_BEST));
    Choice wrong = item.choices().get(2);
    assertEquals("2", wrong.option());
    assertEquals(2, wrong.count());
    assertEquals(1.0, wrong.upper(), 1e-12);
  }

  @Test
  void whatIsLeftOutIsWrongAndCounted() {
    ItemReport item = report("1-", "11", "0-").items().get(1);
    assertEquals(2, item.omitted());
    assertEquals(1 / 3.0, item.difficulty(), 1e-12);
    assertEquals("1", item.choices().get(0).option());
    assertEquals(1, item.choices().get(0).count());
  }

  @Test
  void reliabilityNeedsTwoItemsAndTotalsThatDiffer() {
    assertEquals(Optional.empty(), report("1", "0").reliability());
    assertEquals(Optional.empty(), report("10", "01").reliability());
    assertEquals(Optional.empty(), report("10").reliability());
  }

  @Test
  void sheetsOfDifferentQuizzesAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> report("11", "111"));
    assertThrows(IllegalArgumentException.class, () -> report(""));
  }

  @Test
  void bandsBeginAtTheirFigures() {
    assertEquals(Band.VERY_GOOD, Band.of(0.40));
    assertEquals(Band.GOOD, Band.of(0.39));
    assertEquals(Band.GOOD, Band.of(0.30));
    assertEquals(Band.MARGINAL, Band.of(0.29));
    assertEquals(Band.MARGINAL, Band.of(0.20));
    assertEquals(Band.POOR, Band.of(0.19));
    assertEquals(Band.POOR, Band.of(-1));
  }

  @Test
  void theScoreIsTakenByTopic() {
    Given right = new Given("1", "a", List.of("x", "y"), "x", Optional.of("x"));
    Given wrong = new Given("2", "b", List.of("x", "y"), "x", Optional.of("y"));
    Score score = Score.of(new Sheet("7", List.of(right, wrong, right)), 66);
    assertEquals(new Share(2, 3), score.all());
    assertEquals(Map.of("a", new Share(2, 2), "b", new Share(0, 1)), score.topics());
    assertTrue(score.passed());
    assertTrue(!Score.of(new Sheet("7", List.of(right, wrong, right)), 67).passed());
  }
}
