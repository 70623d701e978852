package io.faultwright.resolve;

import io.faultwright.model.Condition;
import io.faultwright.model.Domain;
import io.faultwright.model.Option;
import io.faultwright.source.Place;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A value as text without places, and without the order of what is an unordered map in YAML. */
final class Normal {
  private Normal() {}

  static String of(Object value) {
    if (value instanceof Place) {
      return "";
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(Normal::of).orElse("-");
    }
    if (value instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(entry -> entry.getKey() + "=" + of(entry.getValue()))
          .collect(Collectors.joining("\n", "{", "}"));
    }
    if (value instanceof Collection<?> items) {
      return items.stream().map(Normal::of).collect(Collectors.joining(", ", "[", "]"));
    }
    return value instanceof Record ? ofRecord(value) : String.valueOf(value);
  }

  private static String ofRecord(Object value) {
    return Arrays.stream(value.getClass().getRecordComponents())
        .map(component -> part(value, component))
        .map(part -> isUnordered(value) && part instanceof List<?> list ? sorted(list) : of(part))
        .collect(Collectors.joining("; ", value.getClass().getSimpleName() + "(", ")"));
  }

  private static boolean isUnordered(Object value) {
    return value instanceof Condition.All
        || value instanceof Condition.Any
        || value instanceof Domain.Choice
        || value instanceof Option;
  }

  private static String sorted(List<?> list) {
    return list.stream().map(Normal::of).sorted().toList().toString();
  }

  private static Object part(Object value, RecordComponent component) {
    try {
      return component.getAccessor().invoke(value);
    } catch (ReflectiveOperationException impossible) {
      throw new AssertionError(impossible);
    }
  }
}
