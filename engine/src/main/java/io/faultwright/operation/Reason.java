package io.faultwright.operation;

import io.faultwright.model.Sequence.Transition;
import java.util.Optional;

/**
 * Why a phase began.
 *
 * @param line that led there; absent for the beginning
 * @param counter id of the counter that reached its limit; absent for most
 */
public record Reason(Optional<Transition> line, Optional<String> counter) {
  /** The beginning. */
  public static final Reason BEGINNING = new Reason(Optional.empty(), Optional.empty());
}
