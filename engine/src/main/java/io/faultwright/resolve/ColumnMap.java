package io.faultwright.resolve;

import io.faultwright.model.Sorted;
import io.faultwright.quantity.Unit;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * What the columns of somebody else's table mean.
 *
 * @param columns by their headings
 * @param always what holds for every row where the row does not say it, by case key, reading or
 *     equipment fact
 * @param ignored headings of columns that are of no concern
 * @param blanks cells that say nothing, folded
 * @param decimalComma whether numbers have a comma before their decimals
 */
public record ColumnMap(
    SortedMap<String, Column> columns,
    SortedMap<String, Scalar> always,
    SortedSet<String> ignored,
    SortedSet<String> blanks,
    boolean decimalComma) {
  /** Says nothing: every heading is an id. */
  public static final ColumnMap NONE =
      new ColumnMap(
          new TreeMap<>(), new TreeMap<>(), Sorted.set(Set.of()), Sorted.set(Set.of()), false);

  /** Keys of a case that a column may fill, apart from {@code given}. */
  public static final List<String> CASE_KEYS =
      List.of("case", "symptom", "expect", "note", "origin", "unclear");

  public ColumnMap {
    columns = Sorted.copy(columns);
    always = Sorted.copy(always);
    ignored = Sorted.set(ignored);
    blanks = Sorted.set(blanks);
  }

  /**
   * One column.
   *
   * @param heading as the map writes it
   * @param is the key of a case, reading or equipment fact it fills
   * @param unit of its bare numbers; absent: the reading's own
   * @param words what its words mean, by the folded word
   */
  public record Column(
      Scalar heading, String is, Optional<Unit> unit, SortedMap<String, String> words) {
    public Column {
      words = Sorted.copy(words);
    }
  }

  /** Words are compared without regard to case and outer blanks. */
  public static String folded(String word) {
    return word.strip().toLowerCase(Locale.ROOT);
  }
}
