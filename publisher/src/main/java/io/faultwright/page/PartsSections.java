package io.faultwright.page;

import io.faultwright.model.Part;
import io.faultwright.page.PartsSection.Item;
import io.faultwright.page.Target.Kind;
import java.util.List;

/** Every spare part with the faults that need it. */
final class PartsSections {
  private final Desk desk;

  PartsSections(Desk desk) {
    this.desk = desk;
  }

  PartsSection section() {
    return new PartsSection(
        Alphabet.sorted(desk.kb().parts().values(), Part::title).stream().map(this::item).toList());
  }

  private Item item(Part part) {
    return new Item(
        new Target(Kind.PART, part.id()).anchor(),
        part.title(),
        part.number().orElse(""),
        uses(part));
  }

  private List<Link> uses(Part part) {
    return desk.kb().faults().values().stream()
        .filter(fault -> fault.parts().contains(part.id()))
        .map(fault -> desk.links().fault(fault.id()))
        .toList();
  }
}
