package io.faultwright.dmn;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.wording.Wording;

/** What columns are called for people. */
final class Labels {
  private final KnowledgeBase kb;
  private final Wording wording;

  Labels(KnowledgeBase kb) {
    this.kb = kb;
    this.wording = Wording.published(kb);
  }

  Table.Input input(Column column) {
    return new Table.Input(label(column), column.expression(), column.type());
  }

  private String label(Column column) {
    if (column instanceof Column.Words words) {
      return title(words.reading());
    }
    if (column instanceof Column.Numbers numbers) {
      return withUnit(numbers.reading());
    }
    if (column instanceof Column.Sides sides) {
      return title(sides.reading()) + ", against its limits";
    }
    return column instanceof Column.Untaken untaken
        ? title(untaken.reading()) + ": cannot be taken"
        : "Group of machines";
  }

  /** The question of a reading, and the unit of its answer. */
  String question(String reading) {
    Reading definition = kb.readings().get(reading);
    return definition.ask() + unit(reading);
  }

  private String withUnit(String reading) {
    return title(reading) + unit(reading);
  }

  private String unit(String reading) {
    return kb.readings()
        .get(reading)
        .domain()
        .match(measured -> " (" + measured.unit().symbol() + ")", choice -> "");
  }

  String title(String reading) {
    return wording.subject(reading);
  }

  Wording wording() {
    return wording;
  }
}
