package io.faultwright.page;

import io.faultwright.model.Family;
import io.faultwright.page.SearchSection.Choice;
import java.util.List;

/** The page on which everything is looked up. */
final class SearchSections {
  private final Desk desk;

  SearchSections(Desk desk) {
    this.desk = desk;
  }

  SearchSection section() {
    List<Choice> families =
        Alphabet.sorted(desk.kb().equipment().families().values(), Family::title).stream()
            .map(family -> new Choice(family.id(), family.title()))
            .toList();
    return new SearchSection(
        families.size() > 1 ? families : List.of(),
        new Link(desk.say("A to Z"), desk.links().page(Target.INDEX)));
  }
}
