package io.faultwright.resolve;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How dates are written: day, month and year in some order, with one sign between them.
 *
 * @param order each part once
 * @param shortYear whether a year has two digits, of this century
 */
public record DateForm(List<Part> order, boolean shortYear, char separator) {
  /** As ISO 8601 writes dates. */
  public static final DateForm ISO =
      new DateForm(List.of(Part.YEAR, Part.MONTH, Part.DAY), false, '-');

  private static final String SEPARATORS = "-./";

  public DateForm {
    order = List.copyOf(order);
  }

  /** A part of a date. */
  public enum Part {
    DAY,
    MONTH,
    YEAR
  }

  /** Reads {@code DD.MM.YYYY} and the like; empty where it is none. */
  static Optional<DateForm> of(String written) {
    for (char separator : SEPARATORS.toCharArray()) {
      List<String> parts = List.of(written.strip().split("\\Q" + separator + "\\E", -1));
      List<Part> order = order(parts);
      if (EnumSet.allOf(Part.class).equals(asSet(order)) && order.size() == parts.size()) {
        return Optional.of(new DateForm(order, parts.contains("YY"), separator));
      }
    }
    return Optional.empty();
  }

  /** The last of November 2026, so written. */
  public String example() {
    return order.stream()
        .map(
            part ->
                switch (part) {
                  case DAY -> "30";
                  case MONTH -> "11";
                  case YEAR -> shortYear ? "26" : "2026";
                })
        .collect(Collectors.joining(String.valueOf(separator)));
  }

  private static List<Part> order(List<String> parts) {
    List<Part> order = new ArrayList<>();
    for (String part : parts) {
      switch (part) {
        case "DD" -> order.add(Part.DAY);
        case "MM" -> order.add(Part.MONTH);
        case "YY", "YYYY" -> order.add(Part.YEAR);
        default -> {
          return List.of();
        }
      }
    }
    return order;
  }

  private static EnumSet<Part> asSet(List<Part> order) {
    EnumSet<Part> set = EnumSet.noneOf(Part.class);
    set.addAll(order);
    return set;
  }
}
