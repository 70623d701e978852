package io.faultwright.sequence;

import java.util.List;

/**
 * Which check to make first, and which then?
 *
 * @param situations what can be the matter
 * @param outlays what checks cost
 * @param checks what can be asked
 */
public record Problem(Situations situations, List<Outlay> outlays, List<Check> checks) {
  public Problem {
    outlays = List.copyOf(outlays);
    checks = List.copyOf(checks);
  }
}
