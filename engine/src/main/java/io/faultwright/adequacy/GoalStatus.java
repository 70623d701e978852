package io.faultwright.adequacy;

import io.faultwright.model.Build;
import io.faultwright.model.Sorted;
import java.util.SortedSet;

/**
 * A goal, and how far the cases reach it. Goals that no possible situation can show are not made.
 *
 * @param goal what should be shown
 * @param shown whether the cases show it
 * @param possible builds on which it can be shown; none where builds are not told apart
 * @param shownOn those of them for which a case shows it; a case speaks for all builds that nothing
 *     in question tells apart
 */
public record GoalStatus(
    Goal goal, boolean shown, SortedSet<Build> possible, SortedSet<Build> shownOn) {
  public GoalStatus {
    possible = Sorted.set(possible);
    shownOn = Sorted.set(shownOn);
  }
}
