package io.faultwright.page;

import java.util.ArrayList;
import java.util.List;

/** Divides what is too wide for a sheet of paper. */
final class Parts {
  private Parts() {}

  /** As few parts as it takes, of nearly equal size. */
  static <T> List<List<T>> of(List<T> all, int most) {
    int parts = (all.size() + most - 1) / most;
    List<List<T>> divided = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      divided.add(all.subList(part * all.size() / parts, (part + 1) * all.size() / parts));
    }
    return divided;
  }
}
