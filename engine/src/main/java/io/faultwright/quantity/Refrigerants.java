package io.faultwright.quantity;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/** The refrigerants that come with the program; each is worked out when first asked for. */
public final class Refrigerants {
  private static final SortedMap<String, PublishedFluid> PUBLISHED = PublishedFluids.all();
  private static final Map<String, Refrigerant> WORKED_OUT = new ConcurrentHashMap<>();

  private Refrigerants() {}

  public static Optional<Refrigerant> find(String id) {
    return Optional.ofNullable(PUBLISHED.get(id))
        .map(fluid -> WORKED_OUT.computeIfAbsent(id, fluid::named));
  }

  /** Every id that {@link #find} knows. */
  public static SortedSet<String> ids() {
    return Collections.unmodifiableSortedSet(new TreeSet<>(PUBLISHED.keySet()));
  }
}
