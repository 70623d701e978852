package io.faultwright.report;

import io.faultwright.field.FrequencyUpdate;
import io.faultwright.quantity.Decimals;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** How often faults are met, before and after the confirmed jobs, for people. */
public final class FrequencyText {
  private static final List<String> HEADER =
      List.of("fault", "frequency", "share", "confirmed", "updated", "share");

  private FrequencyText() {}

  /** A line for each fault that was confirmed, and how many others there are. */
  public static String write(List<FrequencyUpdate> updates) {
    List<FrequencyUpdate> counted =
        updates.stream().filter(update -> update.counted() > 0).toList();
    List<List<String>> lines = new ArrayList<>(List.of(HEADER));
    counted.forEach(update -> lines.add(line(update)));
    int others = updates.size() - counted.size();
    return "how often faults are met\n"
        + (counted.isEmpty() ? "" : table(lines))
        + (others == 0 ? "" : "  " + Counts.of(others, "fault") + " not confirmed: as before\n");
  }

  private static List<String> line(FrequencyUpdate update) {
    return List.of(
        update.fault(),
        Decimals.show(update.before()),
        percent(update.shareBefore()),
        Long.toString(update.counted()),
        Decimals.show(update.after()),
        percent(update.shareAfter()));
  }

  /** One digit behind the point. */
  private static String percent(BigFraction share) {
    BigDecimal numerator = new BigDecimal(share.getNumerator()).movePointRight(2);
    return numerator.divide(new BigDecimal(share.getDenominator()), 1, RoundingMode.HALF_UP) + " %";
  }

  private static String table(List<List<String>> lines) {
    int[] widths =
        IntStream.range(0, HEADER.size())
            .map(at -> lines.stream().mapToInt(line -> line.get(at).length()).max().orElse(0))
            .toArray();
    return lines.stream().map(line -> row(line, widths)).collect(Collectors.joining());
  }

  private static String row(List<String> line, int[] widths) {
    StringBuilder text = new StringBuilder("  ").append(line.get(0));
    text.append(" ".repeat(widths[0] - line.get(0).length()));
    for (int at = 1; at < line.size(); at++) {
      text.append("  ").append(" ".repeat(widths[at] - line.get(at).length()));
      text.append(line.get(at));
    }
    return text.append('\n').toString();
  }
}
