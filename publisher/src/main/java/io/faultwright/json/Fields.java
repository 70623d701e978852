package io.faultwright.json;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The fields of an object, in the order in which they are put. */
public final class Fields {
  private final Map<String, Object> values = new LinkedHashMap<>();

  public Fields put(String name, Object value) {
    values.put(name, value);
    return this;
  }

  /** Puts what there is. */
  public Fields putIfAny(String name, Optional<?> value) {
    value.ifPresent(known -> values.put(name, known));
    return this;
  }

  /** Puts a list that is not empty. */
  public Fields putIfAny(String name, Collection<?> list) {
    if (!list.isEmpty()) {
      values.put(name, list);
    }
    return this;
  }

  public Map<String, Object> map() {
    return Collections.unmodifiableMap(values);
  }
}
