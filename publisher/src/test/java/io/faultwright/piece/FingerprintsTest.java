package io.faultwright.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.source.Place;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class FingerprintsTest {
  private record Thing(String id, Place place, List<String> words) {}

  private static Thing thing(int line, String... words) {
    return new Thing("thing", new Place("file.yaml", line, 1, 1), List.of(words));
  }

  private static Fingerprint of(Object... values) {
    return new Fingerprints().of(values);
  }

  @Test
  void equalValuesAreAlike() {
    assertEquals(of(thing(1, "a", "b")), of(thing(1, "a", "b")));
    assertEquals(of(Set.of("a", "b", "c")), of(Set.of("c", "a", "b")));
    assertEquals(of(Map.of("a", 1, "b", 2)), of(Map.of("b", 2, "a", 1)));
  }

  @Test
  void whatDiffersDiffers() {
    assertNotEquals(of(thing(1, "a", "b")), of(thing(1, "ab")));
    assertNotEquals(of(thing(1, "a")), of(thing(2, "a")));
    assertNotEquals(of("a", "b"), of("b", "a"));
    assertNotEquals(of(Optional.empty()), of(Optional.of("")));
    assertNotEquals(of(List.of(List.of("a"), List.of())), of(List.of(List.of(), List.of("a"))));
    assertNotEquals(of(new TreeMap<>(Map.of("a", "b"))), of(new TreeMap<>(Map.of("b", "a"))));
    assertNotEquals(of("1"), of(1));
  }

  @Test
  void placesCountOnlyWhereTheyAreAskedFor() {
    Fingerprint here = Fingerprints.withoutPlaces().of(thing(1, "a"));
    assertEquals(here, Fingerprints.withoutPlaces().of(thing(2, "a")));
    assertNotEquals(here, Fingerprints.withoutPlaces().of(thing(1, "b")));
  }

  private record Whole(String id, String title, SortedMap<String, Thing> parts) {}

  @Test
  void withinAThingTheOrderAloneCanCount() {
    Fingerprint here = ordered(new Whole("whole", "Whole", parts(1, 2)));
    assertEquals(here, ordered(new Whole("whole", "Whole", parts(7, 9))));
    assertNotEquals(here, ordered(new Whole("whole", "Whole", parts(2, 1))));
    assertNotEquals(
        here, Fingerprints.withoutPlaces().of(new Whole("whole", "Whole", parts(1, 2))));
  }

  /** They may be moved from file to file. */
  @Test
  void theOrderOfThingsDoesNotCount() {
    assertEquals(ordered(parts(1, 2)), ordered(parts(2, 1)));
  }

  private static Fingerprint ordered(Object value) {
    return Fingerprints.inWrittenOrder().of(value);
  }

  private static SortedMap<String, Thing> parts(int one, int other) {
    return new TreeMap<>(Map.of("one", thing(one, "a"), "other", thing(other, "b")));
  }

  @Test
  void whatIsNotKnownIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> of(new StringBuilder("a")));
  }
}
