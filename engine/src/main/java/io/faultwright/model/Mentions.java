package io.faultwright.model;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Every text in a thing of the knowledge base, however deep: what it may mean by id is among them.
 * Found by looking at all components of all records, so that a new one cannot be forgotten.
 */
final class Mentions {
  private static final ClassValue<RecordComponent[]> COMPONENTS =
      new ClassValue<>() {
        @Override
        protected RecordComponent[] computeValue(Class<?> type) {
          return type.getRecordComponents();
        }
      };

  private final Set<String> texts = new TreeSet<>();

  private Mentions() {}

  /** The texts in something that consists of records, collections, maps and plain values. */
  static Set<String> in(Object thing) {
    Mentions mentions = new Mentions();
    mentions.add(thing);
    return mentions.texts;
  }

  private void add(Object thing) {
    if (thing instanceof String text) {
      texts.add(text);
    } else if (thing instanceof Record record) {
      addComponents(record);
    } else if (thing instanceof Collection<?> many) {
      many.forEach(this::add);
    } else if (thing instanceof Map<?, ?> map) {
      add(map.keySet());
      add(map.values());
    } else if (thing instanceof Optional<?> maybe) {
      maybe.ifPresent(this::add);
    }
  }

  private void addComponents(Record record) {
    for (RecordComponent component : COMPONENTS.get(record.getClass())) {
      if (!component.getType().isPrimitive()) {
        add(value(record, component));
      }
    }
  }

  private static Object value(Record record, RecordComponent component) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(record);
    } catch (IllegalAccessException | InvocationTargetException closed) {
      throw new IllegalStateException(component.toString(), closed);
    }
  }
}
