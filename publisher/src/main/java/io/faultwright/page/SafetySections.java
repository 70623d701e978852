package io.faultwright.page;

import io.faultwright.model.Access;
import io.faultwright.model.Caution;
import io.faultwright.page.SafetySection.Item;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every caution with where it holds. */
final class SafetySections {
  private final Desk desk;

  SafetySections(Desk desk) {
    this.desk = desk;
  }

  SafetySection section() {
    return new SafetySection(
        desk.kb().handbook().disclaimer(),
        desk.kb().handbook().notes(),
        desk.kb().cautions().values().stream()
            .sorted(Cautions.GRAVEST_FIRST)
            .map(this::item)
            .toList());
  }

  private Item item(Caution caution) {
    return new Item(
        new Cautions(desk).panel(caution),
        caution.covers().stream().sorted().map(this::work).collect(Collectors.joining(", ")),
        uses(caution));
  }

  private String work(Access access) {
    return switch (access) {
      case OUTSIDE -> desk.say("work from outside");
      case PANEL -> desk.say("work with the panel open");
      case LIVE_VOLTAGE -> desk.say("work at live voltage");
      case REFRIGERANT_CIRCUIT -> desk.say("work at the refrigerant circuit");
    };
  }

  private List<Link> uses(Caution caution) {
    return Stream.concat(
            desk.uses()
                .readingsWithCaution(caution.id())
                .map(reading -> desk.links().reading(reading.id())),
            desk.uses()
                .faultsWithCaution(caution.id())
                .map(fault -> desk.links().fault(fault.id())))
        .toList();
  }
}
