package io.faultwright.field;

import io.faultwright.model.Answer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;

/** How often something was said, and what was found in those rows. */
final class Said {
  private static final Comparator<Disagreement> FREQUENT_FIRST =
      Comparator.comparing(Disagreement::rows)
          .reversed()
          .thenComparing(one -> Ground.names(one.confirmed()));

  private final Sample agreeing = new Sample();
  private final Map<SortedSet<Answer>, Sample> disagreeing = new HashMap<>();
  private long disagreed;

  /** The rows that a job belongs to; empty where there is no room for another kind of row. */
  Optional<Sample> rows(SortedSet<Answer> confirmed, boolean agrees, Room kinds) {
    if (agrees) {
      return Optional.of(agreeing);
    }
    disagreed++;
    if (!disagreeing.containsKey(confirmed) && kinds.take()) {
      disagreeing.put(confirmed, new Sample());
    }
    return Optional.ofNullable(disagreeing.get(confirmed));
  }

  GroundReport report(Ground ground, Separator separator) {
    List<Disagreement> disagreements = new ArrayList<>();
    disagreeing.forEach(
        (confirmed, rows) ->
            disagreements.add(
                new Disagreement(
                    confirmed, rows.rows(), rows.first(), contrast(ground, rows, separator))));
    disagreements.sort(FREQUENT_FIRST);
    return new GroundReport(ground, agreeing.rows(), disagreed, disagreements);
  }

  private Contrast contrast(Ground ground, Sample rows, Separator separator) {
    return ground.rules().isEmpty()
        ? Contrast.none(Contrast.Kind.NO_RULE)
        : separator.contrast(rows, agreeing);
  }
}
