package io.faultwright.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The plain way to what a table leaves open: take rule after rule away from the space, each time
 * cutting every piece it meets along its borders.
 */
final class BoxSubtraction {
  private BoxSubtraction() {}

  /** Pieces that are left, apart from each other. */
  static List<List<Part>> gaps(Table table) {
    List<List<Part>> left = List.of(Table.everything(table.columns()));
    for (Table.Row row : table.rows()) {
      List<List<Part>> next = new ArrayList<>();
      left.forEach(piece -> next.addAll(minus(piece, row.parts())));
      left = next;
    }
    return left;
  }

  private static List<List<Part>> minus(List<Part> piece, List<Part> taken) {
    for (int column = 0; column < piece.size(); column++) {
      if (!piece.get(column).meets(taken.get(column))) {
        return List.of(piece);
      }
    }
    List<List<Part>> rest = new ArrayList<>();
    List<Part> core = new ArrayList<>(piece);
    for (int column = 0; column < piece.size(); column++) {
      for (Part outside : outside(core.get(column), taken.get(column))) {
        List<Part> fragment = new ArrayList<>(core);
        fragment.set(column, outside);
        rest.add(fragment);
      }
      core.set(column, inside(core.get(column), taken.get(column)));
    }
    return rest;
  }

  private static List<Part> outside(Part part, Part taken) {
    List<Part> parts = new ArrayList<>();
    if (part instanceof Span span && taken instanceof Span other) {
      span(span.from(), Math.min(span.to(), other.from())).ifPresent(parts::add);
      span(Math.max(span.from(), other.to()), span.to()).ifPresent(parts::add);
    } else if (part instanceof Values values && taken instanceof Values others) {
      TreeSet<Integer> rest = new TreeSet<>(values.chosen());
      rest.removeAll(others.chosen());
      if (!rest.isEmpty()) {
        parts.add(new Values(rest));
      }
    }
    return parts;
  }

  private static Optional<Span> span(int from, int to) {
    return from < to ? Optional.of(new Span(from, to)) : Optional.empty();
  }

  private static Part inside(Part part, Part taken) {
    if (part instanceof Span span && taken instanceof Span other) {
      return new Span(Math.max(span.from(), other.from()), Math.min(span.to(), other.to()));
    }
    TreeSet<Integer> both = new TreeSet<>(((Values) part).chosen());
    both.retainAll(((Values) taken).chosen());
    return new Values(both);
  }
}
