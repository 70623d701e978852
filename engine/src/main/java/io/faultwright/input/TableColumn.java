package io.faultwright.input;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.quantity.Unit;
import io.faultwright.resolve.ColumnMap;
import io.faultwright.syntax.Node.Scalar;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column that fills something.
 *
 * @param is the key of a case, reading or equipment fact
 * @param measured whether its cells are numbers
 * @param unit of bare numbers; absent: the reading's own
 * @param words what words mean, by the folded word
 * @param ids what a cell may say without such a word; none where that is not listed
 */
record TableColumn(
    String is,
    boolean measured,
    Optional<Unit> unit,
    SortedMap<String, String> words,
    SortedSet<String> ids) {
  private static final Pattern NUMBER = Pattern.compile("([+-]?\\d+(?:[.,]\\d+)*)(.*)");

  /**
   * What a cell says, as the rule language would say it; empty where it says nothing, or cannot be
   * told.
   */
  Optional<Scalar> value(Scalar cell, ColumnMap map, Problems problems) {
    String word = ColumnMap.folded(cell.text());
    if (word.isEmpty() || map.blanks().contains(word)) {
      return Optional.empty();
    }
    Optional<String> meaning = Optional.ofNullable(words.get(word));
    if (meaning.isPresent()) {
      return meaning.filter(text -> !text.isEmpty()).map(text -> at(cell, text));
    }
    if (measured) {
      return number(cell, map.decimalComma(), problems);
    }
    unknown(cell).ifPresent(problems::add);
    return Optional.of(cell);
  }

  /** Where a column has words of its own, the nearest of them is worth saying. */
  private Optional<Problem> unknown(Scalar cell) {
    boolean plain = cell.text().indexOf(';') < 0 && cell.text().indexOf(':') < 0;
    if (words.isEmpty() || ids.isEmpty() || ids.contains(cell.text()) || !plain) {
      return Optional.empty();
    }
    SortedSet<String> known = new TreeSet<>(words.keySet());
    known.addAll(ids);
    return Optional.of(
        Problem.at(
            cell.place(),
            "`" + is + "` has no value `" + cell.text() + "`, and the column map no such word",
            NearMatch.help(cell.text(), known)));
  }

  private Optional<Scalar> number(Scalar cell, boolean comma, Problems problems) {
    Matcher parts = NUMBER.matcher(cell.text());
    if (!parts.matches()) {
      return Optional.of(cell);
    }
    String number = parts.group(1);
    if (comma && number.contains(".")) {
      problems.add(fullStop(cell, number));
      return Optional.empty();
    }
    String plain =
        comma && number.indexOf(',') == number.lastIndexOf(',') ? number.replace(',', '.') : number;
    String own = parts.group(2).strip();
    String behind = own.isEmpty() ? unit.map(Unit::symbol).orElse("") : own;
    return Optional.of(at(cell, (plain + " " + behind).strip()));
  }

  private static Problem fullStop(Scalar cell, String number) {
    return Problem.at(
        cell.place(),
        "`" + number + "` has a full stop, but the column map says `decimal: comma`",
        "write a comma before decimals, and nothing between thousands");
  }

  private static Scalar at(Scalar cell, String text) {
    return new Scalar(text, cell.quoted(), cell.place());
  }
}
