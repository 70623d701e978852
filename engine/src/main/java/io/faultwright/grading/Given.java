package io.faultwright.grading;

import java.util.List;
import java.util.Optional;

/**
 * An item as one participant got it, and what was chosen.
 *
 * @param item its id; participants may have got it with other figures
 * @param topic the symptom it is about
 * @param options ids of what there was to choose from; the same id means the same in all variants
 * @param right the only right one
 * @param chosen what the participant chose; nothing where the item was left out
 */
public record Given(
    String item, String topic, List<String> options, String right, Optional<String> chosen) {
  public Given {
    options = List.copyOf(options);
    if (!options.contains(right)) {
      throw new IllegalArgumentException("`" + right + "` is no option of `" + item + "`");
    }
  }

  /** Whether the right option was chosen; what is left out is wrong. */
  public boolean isRight() {
    return chosen.equals(Optional.of(right));
  }
}
