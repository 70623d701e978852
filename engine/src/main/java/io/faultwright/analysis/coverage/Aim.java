package io.faultwright.analysis.coverage;

import io.faultwright.adequacy.Goal;
import io.faultwright.model.Build;
import java.util.Collection;
import java.util.SortedSet;

/** A goal that can be reached, and how to tell whether it is. */
public interface Aim {
  Goal goal();

  /** Builds on which it can be reached; none where builds are not told apart. */
  SortedSet<Build> possible();

  /** Whether these cases reach it together. */
  boolean isShownBy(Collection<Sighting> cases);

  /** The builds that nothing in question tells apart from one of those a case may be about. */
  SortedSet<Build> alike(Sighting one);
}
