package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/**
 * A recorded situation with what the rules must say.
 *
 * @param id identifier
 * @param place where it stands
 * @param symptom id of the symptom
 * @param given the situation, partial or whole
 * @param expect the answers; empty: {@code nothing yet}
 * @param confirmed whether a person says that these are right; where none does, they are what the
 *     rules once said, and the case neither passes nor fails
 * @param note why it is recorded
 * @param origin where a field case comes from
 * @param unclear what a technician did not understand of the procedure
 */
public record Case(
    String id,
    Place place,
    String symptom,
    Situation given,
    SortedSet<Answer> expect,
    boolean confirmed,
    String note,
    Optional<String> origin,
    List<String> unclear) {
  public Case {
    unclear = List.copyOf(unclear);
    expect = Sorted.set(expect);
  }
}
