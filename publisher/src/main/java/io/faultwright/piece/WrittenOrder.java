package io.faultwright.piece;

import io.faultwright.source.Place;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The keys of a map whose values know where they were written, in that order. */
final class WrittenOrder {
  private static final ClassValue<Optional<RecordComponent>> PLACE =
      new ClassValue<>() {
        @Override
        protected Optional<RecordComponent> computeValue(Class<?> type) {
          return Arrays.stream(type.getRecordComponents())
              .filter(component -> component.getType() == Place.class)
              .findFirst();
        }
      };

  private WrittenOrder() {}

  /** The keys; none where the values have no place. */
  static List<?> of(Map<?, ?> map) {
    Map<Place, Object> keys = new TreeMap<>();
    map.forEach((key, value) -> place(value).ifPresent(place -> keys.put(place, key)));
    return List.copyOf(keys.values());
  }

  private static Optional<Place> place(Object value) {
    return value instanceof Record record
        ? PLACE.get(record.getClass()).map(component -> place(record, component))
        : Optional.empty();
  }

  private static Place place(Record record, RecordComponent component) {
    try {
      component.getAccessor().setAccessible(true);
      return (Place) component.getAccessor().invoke(record);
    } catch (IllegalAccessException | InvocationTargetException closed) {
      throw new IllegalStateException(component.toString(), closed);
    }
  }
}
