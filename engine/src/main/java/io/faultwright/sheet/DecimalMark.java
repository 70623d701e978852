package io.faultwright.sheet;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Which mark a CSV file writes decimals with. Between commas it is the full stop. Elsewhere it is
 * what its numbers show; a file that does not show it is refused, not guessed at.
 */
final class DecimalMark {
  private static final Pattern MARKED = Pattern.compile("(?<![\\d.,])\\d+(?:[.,]\\d+)+");
  private static final Pattern EITHER = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");

  /** A number with a mark. */
  private record Seen(String text, Place place) {
    char mark() {
      return text.contains(",") ? ',' : '.';
    }

    boolean hasSeveral() {
      return text.replaceAll("\\d", "").length() > 1;
    }

    /** Whether the mark may stand between thousands. */
    boolean isEither() {
      return EITHER.matcher(text).matches();
    }
  }

  private final Problems problems;
  private final List<Seen> seen = new ArrayList<>();

  private DecimalMark(Problems problems) {
    this.problems = problems;
  }

  /**
   * Whether decimals have a comma; what cannot be told is reported.
   *
   * @param numbers the cells that hold numbers
   * @param separator what stands between cells
   */
  static boolean isComma(List<GridCell> numbers, char separator, Problems problems) {
    DecimalMark mark = new DecimalMark(problems);
    numbers.forEach(mark::look);
    if (separator == ',') {
      mark.seen.stream().filter(one -> one.text().contains(",")).forEach(mark::comma);
      return false;
    }
    return mark.isComma();
  }

  private void look(GridCell cell) {
    MARKED
        .matcher(cell.text())
        .results()
        .map(MatchResult::group)
        .forEach(text -> seen.add(new Seen(text, cell.scalar().place())));
  }

  private void comma(Seen one) {
    problems.add(
        one.place(),
        "the number `" + one.text() + "` has a comma, but commas stand between the cells",
        "write a full stop before decimals, and nothing between thousands");
  }

  private boolean isComma() {
    seen.stream().filter(Seen::hasSeveral).forEach(this::several);
    List<Seen> single = seen.stream().filter(one -> !one.hasSeveral()).toList();
    List<Seen> sure = single.stream().filter(one -> !one.isEither()).toList();
    if (sure.isEmpty()) {
      single.forEach(this::untold);
      return false;
    }
    char mark = sure.get(0).mark();
    single.stream().filter(one -> one.mark() != mark).forEach(one -> other(one, sure.get(0)));
    return mark == ',';
  }

  private void several(Seen one) {
    problems.add(
        one.place(),
        "the number `" + one.text() + "` has marks between thousands",
        "write the digits without gaps, and one mark before decimals");
  }

  private void untold(Seen one) {
    String whole = one.text().replaceAll("[.,]", "");
    String decimal = one.text().replace(',', '.');
    problems.add(
        one.place(),
        "`" + one.text() + "` can mean " + decimal + " or " + whole + ", and no number tells which",
        "write one digit more, as in `" + one.text() + "0`, or save the sheet as .xlsx");
  }

  private void other(Seen one, Seen first) {
    problems.add(
        new Problem(
            List.of(one.place(), first.place()),
            "`" + one.text() + "` and `" + first.text() + "` have different marks",
            "write all decimals of the file with the same mark, and none between thousands"));
  }
}
