package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.model.Access;
import io.faultwright.model.Reading;
import io.faultwright.model.SetUp;
import io.faultwright.model.Sorted;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads what comes before a reading: what is set up for it, and which readings are asked first. */
final class PreparationResolver {
  static final String SET_UP = "set-up";
  static final String AFTER = "after";

  private final Context context;
  private final Map<String, SetUp> setUps;

  PreparationResolver(Context context, Map<String, SetUp> setUps) {
    this.context = context;
    this.setUps = setUps;
  }

  /** Id of the set-up that a reading names; opening it cannot be graver than taking the reading. */
  Optional<String> setUp(Definition reading, Fields fields, Access access) {
    Optional<Scalar> written = fields.scalar(SET_UP);
    Optional<SetUp> setUp =
        written
            .map(named -> context.names().reference(Kind.SET_UP, named))
            .flatMap(id -> Optional.ofNullable(setUps.get(id)));
    setUp
        .filter(known -> known.access().compareTo(access) > 0 && isReadable(fields))
        .ifPresent(known -> tooEasy(reading, written.orElseThrow(), known, access));
    return setUp.map(SetUp::id);
  }

  private static boolean isReadable(Fields fields) {
    return fields.text("access").map(word -> Access.of(word).isPresent()).orElse(true);
  }

  private void tooEasy(Definition reading, Scalar written, SetUp setUp, Access access) {
    context
        .problems()
        .add(
            new Problem(
                List.of(written.place(), setUp.place()),
                reading.what()
                    + " has access `"
                    + access.word()
                    + "`, but what is set up for it needs `"
                    + setUp.access().word()
                    + "`",
                "write `access: "
                    + setUp.access().word()
                    + "` at the reading: who takes it is exposed to what its set-up opens"));
  }

  /** Ids of the readings that are asked before one. */
  SortedSet<String> after(Definition reading, Fields fields) {
    SortedSet<String> before = new TreeSet<>();
    for (Scalar written : fields.oneOrMore(AFTER)) {
      String id = context.names().reference(Kind.READING, written);
      if (id.equals(reading.id())) {
        problem(written, reading.what() + " comes after itself", "remove it");
      } else if (isComputed(id)) {
        problem(
            written,
            Words.quoted(id) + " is computed, and nobody asks for it",
            "name the readings that it is computed from");
      } else {
        before.add(id);
      }
    }
    return before;
  }

  private boolean isComputed(String id) {
    return Optional.ofNullable(context.outline().of(Kind.READING).get(id))
        .filter(ComputedReading::isOne)
        .isPresent();
  }

  /** Reports readings of which each is asked before the other. */
  void reportCircles(SortedMap<String, Reading> readings) {
    SortedMap<String, SortedSet<String>> after = new TreeMap<>();
    readings.forEach((id, reading) -> after.put(id, Sorted.set(reading.after())));
    Cycles.of(after).forEach(circle -> circle(circle, readings));
  }

  private void circle(List<String> circle, SortedMap<String, Reading> readings) {
    List<Place> places =
        circle.subList(0, circle.size() - 1).stream().map(id -> readings.get(id).place()).toList();
    context
        .problems()
        .add(
            new Problem(
                places,
                "readings wait for each other in a circle: `"
                    + String.join("` after `", circle)
                    + "`",
                "decide which is asked first, and take its `after` out"));
  }

  private void problem(Scalar written, String message, String help) {
    context.problems().add(written.place(), message, help);
  }
}
