package io.faultwright.logbook;

import io.faultwright.operation.Reason;
import java.util.Optional;

/**
 * A phase that the model came into, and from where.
 *
 * @param now the phase
 * @param before the phase it came from; absent for the first
 */
public record Came(Began now, Optional<Began> before) {
  /**
   * A phase begins.
   *
   * @param step at which it begins
   * @param phase its number
   * @param reason why
   */
  public record Began(long step, int phase, Reason reason) {}
}
