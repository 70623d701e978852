package io.faultwright.sequence;

import java.util.List;

/**
 * Which check to make first, and which then?
 *
 * @param situations what can be the matter
 * @param outlays what checks cost
 * @param checks what can be asked
 * @param space what each check that stands in the order counts for, weighted, however seldom it is
 *     met; without it, what is hardly ever met is asked in whatever order, at length
 */
public record Problem(
    Situations situations, List<Outlay> outlays, List<Check> checks, double space) {
  public Problem {
    outlays = List.copyOf(outlays);
    checks = List.copyOf(checks);
  }

  /** A problem in which nothing but what is paid on the way counts. */
  public Problem(Situations situations, List<Outlay> outlays, List<Check> checks) {
    this(situations, outlays, checks, 0);
  }
}
