package io.faultwright.release;

import io.faultwright.model.Signed;
import io.faultwright.model.Sorted;
import io.faultwright.source.Place;
import java.util.List;
import java.util.SortedSet;

/**
 * What is known about the sign-off of one thing.
 *
 * @param of the thing
 * @param place where it stands
 * @param signatures by role, those that do not hold included
 * @param required roles that must sign it before a release
 * @param missing those of them that have not signed it at all
 */
public record SignOffState(
    Signed of,
    Place place,
    List<Signature> signatures,
    SortedSet<String> required,
    SortedSet<String> missing) {
  public SignOffState {
    signatures = List.copyOf(signatures);
    required = Sorted.set(required);
    missing = Sorted.set(missing);
  }

  /** Whether nothing about it stands in the way of a release. */
  public boolean holds() {
    return missing.isEmpty() && signatures.stream().allMatch(Signature::holds);
  }
}
