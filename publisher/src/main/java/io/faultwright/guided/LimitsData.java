package io.faultwright.guided;

import io.faultwright.json.Fields;
import io.faultwright.model.LimitsTable;
import java.util.List;
import java.util.Locale;

/** Tables of limits for the page. */
final class LimitsData {
  private final BuildNumbers builds;

  LimitsData(BuildNumbers builds) {
    this.builds = builds;
  }

  Fields of(LimitsTable table) {
    List<Fields> rows = table.rows().stream().map(this::row).toList();
    return new Fields()
        .put("drivers", table.drivers())
        .putIfAny("between", table.between().map(way -> way.name().toLowerCase(Locale.ROOT)))
        .put("rows", rows);
  }

  private Fields row(LimitsTable.Row row) {
    return new Fields()
        .put("builds", builds.of(row.builds()))
        .put("at", row.at().stream().map(Conditions::interval).toList())
        .putIfAny("low", row.low().map(Rationals::text))
        .putIfAny("high", row.high().map(Rationals::text));
  }
}
