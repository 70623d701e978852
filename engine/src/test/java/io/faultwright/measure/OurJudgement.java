package io.faultwright.measure;

import io.faultwright.analysis.contradiction.ContradictionAnalysis;
import io.faultwright.analysis.gap.GapAnalysis;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.RegionTest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The findings of our analyses about a table, their regions read from the words in the report. */
final class OurJudgement {
  private static final Pattern STRETCH = Pattern.compile("(\\d+) to (\\d+) .*");
  private static final Pattern BOUND =
      Pattern.compile("(?:(at least|above|at most|below) )?(\\d+) .*");

  private final List<Column> columns;

  private OurJudgement(List<Column> columns) {
    this.columns = columns;
  }

  static Judgement of(Table table, SymptomSpace space) {
    return of(table, GapAnalysis.findings(space), ContradictionAnalysis.findings(space));
  }

  static Judgement of(Table table, List<Finding> gaps, List<Finding> contradictions) {
    OurJudgement reader = new OurJudgement(table.columns());
    List<List<Part>> boxes = new ArrayList<>();
    gaps.forEach(gap -> boxes.addAll(reader.boxes(gap.region())));
    SortedSet<String> pairs = new TreeSet<>();
    contradictions.forEach(clash -> pairs.addAll(Judgement.pairs(new TreeSet<>(clash.rules()))));
    return new Judgement(boxes, pairs);
  }

  /** One box, or several where a test accepts stretches that are apart. */
  private List<List<Part>> boxes(List<RegionTest> region) {
    List<List<Part>> boxes = List.of(Table.everything(columns));
    for (RegionTest test : region) {
      int column = columns.stream().map(Column::id).toList().indexOf(test.reading());
      List<List<Part>> narrowed = new ArrayList<>();
      for (List<Part> box : boxes) {
        for (Part part : parts(columns.get(column), test.accepts())) {
          List<Part> changed = new ArrayList<>(box);
          changed.set(column, part);
          narrowed.add(changed);
        }
      }
      boxes = narrowed;
    }
    return boxes;
  }

  private static List<Part> parts(Column column, String accepts) {
    List<String> words = Arrays.asList(accepts.replaceAll("^\\[|]$", "").split(", "));
    if (column instanceof Column.Choice choice) {
      return List.of(chosen(choice, words));
    }
    return words.stream().<Part>map(word -> span((Span) column.whole(), word)).toList();
  }

  private static Part chosen(Column.Choice column, List<String> words) {
    SortedSet<Integer> chosen = new TreeSet<>();
    String first = words.get(0);
    if (first.startsWith("not ")) {
      chosen.addAll(((Values) column.whole()).chosen());
      chosen.remove(column.values().indexOf(first.substring("not ".length())));
    } else {
      words.forEach(word -> chosen.add(column.values().indexOf(word)));
    }
    return new Values(chosen);
  }

  private static Span span(Span whole, String words) {
    Matcher stretch = STRETCH.matcher(words);
    if (stretch.matches()) {
      return Span.closed(Integer.parseInt(stretch.group(1)), Integer.parseInt(stretch.group(2)));
    }
    Span span = whole;
    for (String half : words.split(" and ")) {
      span = bounded(span, half);
    }
    return span;
  }

  private static Span bounded(Span span, String words) {
    Matcher bound = BOUND.matcher(words);
    if (!bound.matches()) {
      throw new IllegalArgumentException("no bound: " + words);
    }
    int value = Integer.parseInt(bound.group(2));
    String side = bound.group(1) == null ? "" : bound.group(1);
    return switch (side) {
      case "at least" -> new Span(2 * value, span.to());
      case "above" -> new Span(2 * value + 1, span.to());
      case "at most" -> new Span(span.from(), 2 * value + 1);
      case "below" -> new Span(span.from(), 2 * value);
      default -> Span.closed(value, value);
    };
  }
}
