package io.faultwright.grading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Tells from what was handed in how good a quiz and each of its items are. */
public final class ItemAnalysis {
  private final List<Sheet> sheets;
  private final int[][] marks;
  private final int[] totals;
  private final Groups groups;

  private ItemAnalysis(List<Sheet> sheets) {
    this.sheets = sheets;
    int items = sheets.get(0).items().size();
    this.marks = new int[items][sheets.size()];
    this.totals = new int[sheets.size()];
    for (int who = 0; who < sheets.size(); who++) {
      for (int item = 0; item < items; item++) {
        marks[item][who] = given(item, who).isRight() ? 1 : 0;
        totals[who] += marks[item][who];
      }
    }
    this.groups = new Groups(totals);
  }

  /**
   * The report on some sheets.
   *
   * @param sheets at least one; all with the same items in the same order, at least one
   * @throws IllegalArgumentException where they are not
   */
  public static QuizReport of(List<Sheet> sheets) {
    Set<List<String>> items = new LinkedHashSet<>();
    sheets.forEach(sheet -> items.add(sheet.items().stream().map(Given::item).toList()));
    if (items.size() != 1 || items.contains(List.of())) {
      throw new IllegalArgumentException("sheets have different items, or none");
    }
    return new ItemAnalysis(List.copyOf(sheets)).report();
  }

  private QuizReport report() {
    List<ItemReport> items = new ArrayList<>();
    for (int item = 0; item < marks.length; item++) {
      items.add(report(item));
    }
    return new QuizReport(
        sheets.size(),
        Sample.mean(totals),
        Math.sqrt(Sample.variance(totals)),
        Reliability.of(marks, totals),
        items);
  }

  private Given given(int item, int who) {
    return sheets.get(who).items().get(item);
  }

  private ItemReport report(int item) {
    Optional<Double> corrected = Sample.correlation(marks[item], rest(item));
    List<Choice> choices = choices(item);
    boolean[] right = holding(item, Given::isRight);
    return new ItemReport(
        given(item, 0).item(),
        given(item, 0).topic(),
        Sample.mean(marks[item]),
        Sample.correlation(marks[item], totals),
        corrected,
        groups.upper(right) - groups.lower(right),
        choices,
        count(holding(item, given -> given.chosen().isEmpty())),
        flags(Sample.mean(marks[item]), corrected, choices));
  }

  /** The totals without an item. */
  private int[] rest(int item) {
    int[] rest = totals.clone();
    for (int who = 0; who < rest.length; who++) {
      rest[who] -= marks[item][who];
    }
    return rest;
  }

  /** What a participant may have done with an item. */
  private interface Deed {
    boolean of(Given given);
  }

  private boolean[] holding(int item, Deed deed) {
    boolean[] holds = new boolean[sheets.size()];
    for (int who = 0; who < holds.length; who++) {
      holds[who] = deed.of(given(item, who));
    }
    return holds;
  }

  private static int count(boolean[] holds) {
    int count = 0;
    for (boolean one : holds) {
      count += one ? 1 : 0;
    }
    return count;
  }

  /** Every option that some participant got, by id. */
  private List<Choice> choices(int item) {
    Set<String> options = new LinkedHashSet<>();
    Set<String> right = new LinkedHashSet<>();
    for (int who = 0; who < sheets.size(); who++) {
      options.addAll(given(item, who).options());
      right.add(given(item, who).right());
    }
    return options.stream()
        .map(option -> choice(item, option, right.contains(option)))
        .sorted(Comparator.comparing(Choice::right).reversed().thenComparing(Choice::option))
        .toList();
  }

  private Choice choice(int item, String option, boolean right) {
    boolean[] chosen = holding(item, given -> given.chosen().equals(Optional.of(option)));
    return new Choice(option, right, count(chosen), groups.upper(chosen), groups.lower(chosen));
  }

  private static Set<Flag> flags(
      double difficulty, Optional<Double> corrected, List<Choice> choices) {
    Set<Flag> flags = EnumSet.noneOf(Flag.class);
    if (corrected.isPresent() && corrected.get() < 0) {
      flags.add(Flag.AGAINST_THE_REST);
    }
    if (isWrongOptionPreferred(choices)) {
      flags.add(Flag.WRONG_OPTION_OF_THE_BEST);
    }
    if (difficulty == 1) {
      flags.add(Flag.EVERYBODY_RIGHT);
    }
    if (difficulty == 0) {
      flags.add(Flag.NOBODY_RIGHT);
    }
    return flags;
  }

  private static boolean isWrongOptionPreferred(List<Choice> choices) {
    double right = choices.stream().filter(Choice::right).mapToDouble(Choice::upper).sum();
    return choices.stream().anyMatch(choice -> !choice.right() && choice.upper() > right);
  }
}
