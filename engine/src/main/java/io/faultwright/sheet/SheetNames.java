package io.faultwright.sheet;

import java.util.Collection;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** The names of the sheets of a workbook, which may have 31 characters and no more. */
final class SheetNames {
  private static final int LONGEST = 31;

  private SheetNames() {}

  /** The sheet name of each table: its id, or a shortened one that no other table has. */
  static SortedMap<String, String> of(Collection<String> tables) {
    SortedMap<String, String> names = new TreeMap<>();
    Set<String> taken = new HashSet<>();
    new TreeSet<>(tables)
        .stream().filter(id -> id.length() <= LONGEST).forEach(id -> names.put(id, id));
    taken.addAll(names.values());
    for (String id : new TreeSet<>(tables)) {
      if (!names.containsKey(id)) {
        names.put(id, shortened(id, taken));
      }
    }
    return names;
  }

  private static String shortened(String id, Set<String> taken) {
    for (int i = 1; ; i++) {
      String ending = "~" + i;
      String name = id.substring(0, LONGEST - ending.length()) + ending;
      if (taken.add(name)) {
        return name;
      }
    }
  }

  /** The table that a sheet of this name holds, in the map that {@link #of} makes. */
  static Optional<String> table(String sheet, Map<String, String> names) {
    return names.entrySet().stream()
        .filter(name -> name.getValue().equalsIgnoreCase(sheet.strip()))
        .map(Map.Entry::getKey)
        .findFirst();
  }
}
