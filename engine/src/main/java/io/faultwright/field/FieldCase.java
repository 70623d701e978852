package io.faultwright.field;

import io.faultwright.model.Case;
import io.faultwright.run.Firing;
import java.util.Optional;

/**
 * A recorded job beside what the rules say about it.
 *
 * @param recorded the job
 * @param confirmed whether it says what was found
 * @param firing what the rules say
 */
public record FieldCase(Case recorded, boolean confirmed, Firing firing) {
  /** Whether the rules say what was found; absent where nothing was. */
  public Optional<Boolean> agrees() {
    return confirmed ? Optional.of(firing.verdict().meets(recorded.expect())) : Optional.empty();
  }
}
