package io.faultwright.model;

import io.faultwright.model.LimitsTable.Row;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Interval.End;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Limits given at points of one or two drivers, straight between them. Between four points the
 * figures are flat on either side of the diagonal from the low corner to the high one, so that they
 * are continuous and exactly linear in pieces. Where a point is missing, what it would hold up has
 * no figure.
 */
final class LimitsGrid {
  private final List<TreeSet<BigFraction>> lines;
  private final Map<List<BigFraction>, Optional<Band>> points;
  private final Map<List<BigFraction>, List<Facet>> facets = new ConcurrentHashMap<>();

  private LimitsGrid(
      List<TreeSet<BigFraction>> lines, Map<List<BigFraction>, Optional<Band>> points) {
    this.lines = lines;
    this.points = points;
  }

  static LimitsGrid of(List<Row> rows) {
    List<TreeSet<BigFraction>> lines = new ArrayList<>();
    rows.get(0).at().forEach(driver -> lines.add(new TreeSet<>(BigFraction::compareTo)));
    Map<List<BigFraction>, List<Row>> byPoint = new HashMap<>();
    for (Row row : rows) {
      List<BigFraction> point = row.at().stream().map(LimitsGrid::point).toList();
      byPoint.computeIfAbsent(point, key -> new ArrayList<>()).add(row);
      for (int i = 0; i < lines.size(); i++) {
        lines.get(i).add(point.get(i));
      }
    }
    Map<List<BigFraction>, Optional<Band>> points = new HashMap<>();
    byPoint.forEach((point, same) -> points.put(point, Limits.agreed(same)));
    return new LimitsGrid(lines, points);
  }

  private static BigFraction point(Interval at) {
    return at.low().map(End::value).orElseThrow();
  }

  Optional<Band> at(List<BigFraction> values) {
    return Facet.band(facets(values), values);
  }

  /** The pieces of the cell in which a point lies, those with figures first. */
  List<Facet> facets(List<BigFraction> values) {
    List<BigFraction> low = new ArrayList<>();
    List<BigFraction> high = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      BigFraction below = lines.get(i).floor(values.get(i));
      BigFraction above = lines.get(i).ceiling(values.get(i));
      if (below == null || above == null) {
        return List.of(Facet.NONE);
      }
      low.add(below);
      high.add(above);
    }
    List<BigFraction> key = new ArrayList<>(low);
    key.addAll(high);
    return facets.computeIfAbsent(key, corners -> new Cell(low, high).facets());
  }

  /** What lies between neighbouring lines; on a line it has no width. */
  private final class Cell {
    private final List<BigFraction> low;
    private final List<BigFraction> high;
    private final List<Integer> wide = new ArrayList<>();

    Cell(List<BigFraction> low, List<BigFraction> high) {
      this.low = low;
      this.high = high;
      for (int i = 0; i < low.size(); i++) {
        if (low.get(i).compareTo(high.get(i)) != 0) {
          wide.add(i);
        }
      }
    }

    List<Facet> facets() {
      if (wide.size() < 2) {
        return List.of(new Facet(Optional.empty(), true, figures(wide)));
      }
      Slope difference = along(0).plus(along(1).times(BigFraction.ONE.negate()));
      Facet first = half(difference, figures(List.of(0, 1)));
      Facet second = half(difference.times(BigFraction.ONE.negate()), figures(List.of(1, 0)));
      return first.figures().isPresent() ? List.of(first, second) : List.of(second, first);
    }

    /** The diagonal belongs to a half with figures. */
    private Facet half(Slope border, Optional<Facet.Figures> figures) {
      return new Facet(Optional.of(border), figures.isPresent(), figures);
    }

    /** How far along a driver, from 0 to 1. */
    private Slope along(int driver) {
      return Slope.between(low.size(), driver, low.get(driver), high.get(driver));
    }

    /** From the low corner to the high one, one driver after the other in this order. */
    private Optional<Facet.Figures> figures(List<Integer> order) {
      List<BigFraction> corner = new ArrayList<>(low);
      Optional<Band> from = points.getOrDefault(corner, Optional.empty());
      Optional<Facet.Figures> sum = from.map(this::flat);
      for (int driver : order) {
        corner.set(driver, high.get(driver));
        Optional<Band> to = points.getOrDefault(List.copyOf(corner), Optional.empty());
        sum = plus(sum, from, to, along(driver));
        from = to;
      }
      return sum;
    }

    private Facet.Figures flat(Band band) {
      return new Facet.Figures(
          band.low().map(figure -> Slope.flat(low.size(), figure)),
          band.high().map(figure -> Slope.flat(low.size(), figure)));
    }

    private Optional<Facet.Figures> plus(
        Optional<Facet.Figures> sum, Optional<Band> from, Optional<Band> to, Slope along) {
      return sum.flatMap(
          figures ->
              from.flatMap(
                  one ->
                      to.map(
                          other ->
                              new Facet.Figures(
                                  plus(figures.low(), one, other, Band::low, along),
                                  plus(figures.high(), one, other, Band::high, along)))));
    }

    private Optional<Slope> plus(
        Optional<Slope> sum,
        Band from,
        Band to,
        Function<Band, Optional<BigFraction>> end,
        Slope along) {
      return sum.flatMap(
          slope ->
              end.apply(from)
                  .flatMap(a -> end.apply(to).map(b -> slope.plus(along.times(b.subtract(a))))));
    }
  }
}
