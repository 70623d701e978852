package io.faultwright.dmn;

import io.faultwright.model.Build;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Facet;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Limits as decision tables: for each group of machines and each stretch of the readings that
 * limits follow, where a reading lies against the figures there. Every comparison is one of whole
 * or decimal numbers, so that nothing is rounded.
 */
final class SideTables {
  private final KnowledgeBase kb;
  private final Column.Groups groups;
  private final Amounts amounts;

  SideTables(KnowledgeBase kb, Column.Groups groups) {
    this.kb = kb;
    this.groups = groups;
    this.amounts = new Amounts(kb);
  }

  Table of(String reading, Labels labels) {
    LimitsTable table = kb.limits().get(reading);
    List<Stretches> drivers =
        table.drivers().stream().map(driver -> new Stretches(kb, table, driver)).toList();
    Map<Content, BitSet> rows = new LinkedHashMap<>();
    for (int group = 0; group < groups.builds().size(); group++) {
      for (Content content : content(table, drivers, groups.builds().get(group).get(0))) {
        rows.computeIfAbsent(content, key -> new BitSet()).set(group);
      }
    }
    List<Table.Input> inputs = new ArrayList<>();
    inputs.add(labels.input(groups));
    drivers.forEach(driver -> inputs.add(labels.input(driver.column())));
    return new Table(
        inputs,
        List.of(new Table.Output("", "string", "null")),
        rows.entrySet().stream().map(row -> row(row.getKey(), row.getValue())).toList());
  }

  /** A row but for its machines. */
  private record Content(List<String> tests, String result) {}

  private Table.Row row(Content content, BitSet machines) {
    List<String> tests = new ArrayList<>(List.of(groups.entry(machines)));
    tests.addAll(content.tests());
    return new Table.Row(tests, List.of(content.result()));
  }

  private List<Content> content(LimitsTable table, List<Stretches> drivers, Build build) {
    Limits limits = Limits.of(table, build);
    List<Stretches> followed = limits.followsDrivers() ? drivers : List.of();
    Map<String, List<int[]>> cells = new LinkedHashMap<>();
    for (int[] cell : cells(followed)) {
      result(table, facets(limits, followed, cell))
          .ifPresent(result -> cells.computeIfAbsent(result, key -> new ArrayList<>()).add(cell));
    }
    List<Content> rows = new ArrayList<>();
    cells.forEach(
        (result, same) ->
            Blocks.of(same, followed.size())
                .forEach(block -> rows.add(new Content(tests(drivers, block), result))));
    return rows;
  }

  /**
   * The pieces of the limits in a cell. A cell without width on some driver has those of a
   * neighbour that has, where the figures are the same there: limits are continuous where they have
   * figures.
   */
  private static List<Facet> facets(Limits limits, List<Stretches> drivers, int[] cell) {
    List<BigFraction> point = inside(drivers, cell);
    for (int[] beside : beside(drivers, cell)) {
      if (IntStream.range(0, beside.length).allMatch(i -> drivers.get(i).has(beside[i]))) {
        List<Facet> facets = limits.facets(inside(drivers, beside));
        boolean whole = facets.stream().allMatch(facet -> facet.figures().isPresent());
        if (whole && Facet.band(facets, point).equals(limits.at(point))) {
          return facets;
        }
      }
    }
    return limits.facets(point);
  }

  /** The cells next to one that are wide on every driver, the upper ones first. */
  private static List<int[]> beside(List<Stretches> drivers, int[] cell) {
    List<int[]> beside = List.of(new int[0]);
    for (int i = 0; i < cell.length; i++) {
      int at = cell[i];
      List<Integer> wide = drivers.get(i).isPoint(at) ? List.of(at + 1, at - 1) : List.of(at);
      beside =
          beside.stream().flatMap(begun -> wide.stream().map(one -> with(begun, one))).toList();
    }
    return beside;
  }

  private static List<BigFraction> inside(List<Stretches> drivers, int[] cell) {
    return IntStream.range(0, cell.length).mapToObj(i -> drivers.get(i).inside(cell[i])).toList();
  }

  private static List<String> tests(List<Stretches> drivers, List<BitSet> block) {
    return IntStream.range(0, drivers.size())
        .mapToObj(i -> i < block.size() ? drivers.get(i).column().entry(block.get(i)) : "-")
        .toList();
  }

  /** Every combination of one stretch of each driver. */
  private static List<int[]> cells(List<Stretches> drivers) {
    List<int[]> cells = List.of(new int[0]);
    for (Stretches driver : drivers) {
      cells =
          cells.stream()
              .flatMap(begun -> IntStream.range(0, driver.count()).mapToObj(i -> with(begun, i)))
              .toList();
    }
    return cells;
  }

  private static int[] with(int[] begun, int next) {
    int[] longer = Arrays.copyOf(begun, begun.length + 1);
    longer[begun.length] = next;
    return longer;
  }

  private Optional<String> result(LimitsTable table, List<Facet> facets) {
    if (facets.stream().allMatch(facet -> facet.figures().isEmpty())) {
      return Optional.empty();
    }
    List<Sum> drivers = table.drivers().stream().map(amounts::sum).toList();
    Sum value = amounts.sum(table.reading());
    String result = "null";
    for (int i = facets.size() - 1; i >= 0; i--) {
      Facet facet = facets.get(i);
      String side = facet.figures().map(figures -> side(value, figures, drivers)).orElse("null");
      result = facet.border().isEmpty() ? side : onSide(facet, drivers, side, result);
    }
    return Optional.of(result);
  }

  /** Limits that are split along a diagonal: whether the drivers lie on the side of a piece. */
  private String onSide(Facet facet, List<Sum> drivers, String side, String others) {
    Sum border = Sum.of(facet.border().orElseThrow(), drivers);
    String left = amounts.expression(border.times(amounts.times(border, List.of())));
    return "if " + left + (facet.edge() ? " >= 0" : " > 0") + " then " + side + " else " + others;
  }

  private String side(Sum value, Facet.Figures figures, List<Sum> drivers) {
    List<String> cases = new ArrayList<>();
    cases.add("if " + amounts.expression(value.times(times(value))) + " = null then null");
    figures.low().ifPresent(low -> cases.add(beyond(value, "<", Sum.of(low, drivers), Side.BELOW)));
    figures
        .high()
        .ifPresent(high -> cases.add(beyond(value, ">", Sum.of(high, drivers), Side.ABOVE)));
    cases.add(Feel.string(Column.Sides.name(Side.WITHIN)));
    return "(" + String.join(" else ", cases) + ")";
  }

  private BigFraction times(Sum value) {
    return amounts.times(value, List.of());
  }

  private String beyond(Sum value, String order, Sum figure, Side side) {
    BigFraction times = amounts.times(value, figure.numbers());
    return "if "
        + amounts.expression(value.times(times))
        + " "
        + order
        + " "
        + amounts.expression(figure.times(times))
        + " then "
        + Feel.string(Column.Sides.name(side));
  }
}
