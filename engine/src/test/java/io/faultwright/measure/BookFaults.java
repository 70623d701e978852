package io.faultwright.measure;

import java.util.Collection;
import java.util.List;

/** Faults of the generated handbook, with remedy and verification. */
final class BookFaults {
  private static final List<String> PLACES =
      List.of("coil", "compressor", "condenser", "drain", "door", "panel", "circuit", "controller");
  private static final List<String> TROUBLES =
      List.of("blocked", "worn", "loose", "leaking", "wired wrongly", "set wrongly", "iced up");

  private BookFaults() {}

  static String of(Collection<String> faults) {
    StringBuilder text = new StringBuilder("faults:\n");
    int number = 0;
    for (String fault : faults) {
      text.append(fault(fault, number++));
    }
    return text.toString();
  }

  private static String fault(String id, int number) {
    String place = PLACES.get(number % PLACES.size());
    String trouble = TROUBLES.get(number / PLACES.size() % TROUBLES.size());
    return """
          %1$s:
            title: Part %2$d of the %3$s %4$s
            about: Part %2$d of the %3$s is %4$s, and what it feeds no longer gets enough.
            remedy:
              - { do: "Isolate the unit, lock it out and prove it dead.", access: live-voltage }
              - { do: Take off the cover of the %3$s and find part %2$d., access: panel }
              - Replace part %2$d, and put the cover back with all of its screws.
            verify:
              - Let the unit run for twenty minutes and take the readings again.
              - Check that the %3$s is no longer %4$s.
            frequency: %5$d
        """
        .formatted(id, number, place, trouble, 1 + number % 9);
  }
}
