package io.faultwright.sheet;

import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Reading;
import io.faultwright.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A column of a sheet.
 *
 * @param id a fact of the equipment or a reading, or {@code low} or {@code high}
 * @param reading the reading whose values stand in it; absent where texts stand in it
 * @param unit the unit of that reading
 */
record SheetColumn(String id, Optional<String> reading, Optional<Unit> unit) {
  private static final List<String> ENDS = List.of("low", "high");

  /** The columns of a table: what it goes by in the written order, then both ends. */
  static List<SheetColumn> of(LimitsTable table, KnowledgeBase kb) {
    List<SheetColumn> columns = new ArrayList<>();
    table.by().forEach(id -> columns.add(new SheetColumn(id, measured(kb, id), unit(kb, id))));
    for (String end : ENDS) {
      columns.add(new SheetColumn(end, Optional.of(table.reading()), unit(kb, table.reading())));
    }
    return columns;
  }

  private static Optional<String> measured(KnowledgeBase kb, String id) {
    return unit(kb, id).map(unit -> id);
  }

  private static Optional<Unit> unit(KnowledgeBase kb, String id) {
    return Optional.ofNullable(kb.readings().get(id))
        .map(Reading::domain)
        .flatMap(
            domain ->
                domain.match(measured -> Optional.of(measured.unit()), choice -> Optional.empty()));
  }

  /** The heading with the unit, for instance {@code low [bar(g)]}. */
  String heading() {
    return id + unit.map(one -> " [" + one + "]").orElse("");
  }

  boolean isEnd() {
    return ENDS.contains(id);
  }

  boolean isSoftware() {
    return id.equals(Equipment.SOFTWARE);
  }
}
