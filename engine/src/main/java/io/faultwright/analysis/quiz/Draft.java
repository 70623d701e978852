package io.faultwright.analysis.quiz;

import io.faultwright.quiz.Item;
import io.faultwright.quiz.ItemKind;
import java.util.Optional;

/** An item without its figures. */
interface Draft {
  ItemKind kind();

  /** Id of the symptom it belongs to. */
  String symptom();

  /** What it is about; in a quiz, items about different things come first. */
  String theme();

  /** What tells it from every other draft, whatever its figures. */
  String key();

  /**
   * The item with figures.
   *
   * @param seed of the quiz
   * @param participant who gets it, counted from 1
   * @return empty where no figures were found of which it can be proved
   */
  Optional<Item> item(long seed, int participant);

  /** The id of its items. */
  default String id() {
    return kind().slug() + "-" + Assembly.digits(key());
  }
}
