package io.faultwright.model;

import java.util.Collections;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Who has to sign what before a release.
 *
 * @param roles the roles that must sign each thing of a kind; kinds without are not signed
 * @param fourEyes whether nobody may sign what they wrote
 */
public record SignOffRules(SortedMap<SignedKind, SortedSet<String>> roles, boolean fourEyes) {
  /** Nobody has to sign anything. */
  public static final SignOffRules NONE = new SignOffRules(new TreeMap<>(), false);

  public SignOffRules {
    SortedMap<SignedKind, SortedSet<String>> copy = new TreeMap<>();
    roles.forEach((kind, of) -> copy.put(kind, Sorted.set(of)));
    roles = Collections.unmodifiableSortedMap(copy);
  }

  /** Whether anything has to be signed. */
  public boolean asked() {
    return !roles.isEmpty();
  }

  /** The roles that must sign a thing of this kind. */
  public SortedSet<String> of(SignedKind kind) {
    return roles.getOrDefault(kind, Sorted.set(new TreeSet<>()));
  }
}
