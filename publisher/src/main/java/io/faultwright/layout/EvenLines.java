package io.faultwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * Breaks text into a given number of lines of different widths so that all are filled alike: the
 * sum of the squares of what is left free is least. No word is broken.
 */
final class EvenLines {
  private final String[] words;
  private final double[] ends;
  private final double blank;

  EvenLines(String text, double size, boolean bold) {
    this.words = Wrap.clean(text).split(" ");
    this.blank = Typography.width(" ", size, bold);
    this.ends = new double[words.length + 1];
    for (int i = 0; i < words.length; i++) {
      ends[i + 1] = ends[i] + Typography.width(words[i], size, bold) + blank;
    }
  }

  /** The lines; empty if the text does not fit on so many. */
  Optional<List<String>> lines(int count, IntToDoubleFunction widths) {
    double[] cost = unreached();
    cost[0] = 0;
    int[][] starts = new int[count][];
    for (int line = 0; line < count; line++) {
      double[] next = unreached();
      starts[line] = fill(cost, next, widths.applyAsDouble(line));
      cost = next;
    }
    return Double.isInfinite(cost[words.length]) ? Optional.empty() : Optional.of(traced(starts));
  }

  private double[] unreached() {
    double[] cost = new double[words.length + 1];
    Arrays.fill(cost, Double.POSITIVE_INFINITY);
    return cost;
  }

  /** Adds a line to every way to set the words so far; where each best line starts. */
  private int[] fill(double[] cost, double[] next, double width) {
    int[] starts = new int[words.length + 1];
    for (int from = 0; from < words.length; from++) {
      if (cost[from] < Double.POSITIVE_INFINITY) {
        fill(cost[from], next, width, from, starts);
      }
    }
    return starts;
  }

  /** Adds every line that starts with a word, as long as there is room for a further one. */
  private void fill(double cost, double[] next, double width, int from, int[] starts) {
    for (int to = from + 1; to <= words.length; to++) {
      double free = width - (ends[to] - ends[from] - blank);
      if (free < 0) {
        return;
      }
      double total = cost + free * free / (width * width);
      if (total < next[to]) {
        next[to] = total;
        starts[to] = from;
      }
    }
  }

  private List<String> traced(int[][] starts) {
    List<String> lines = new ArrayList<>();
    int to = words.length;
    for (int line = starts.length - 1; line >= 0; line--) {
      int from = starts[line][to];
      lines.add(0, String.join(" ", Arrays.asList(words).subList(from, to)));
      to = from;
    }
    return List.copyOf(lines);
  }
}
